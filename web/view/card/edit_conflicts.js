// Changes that met another one, as they were typed: what each wanted, and how it was settled.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { differing } from "../../app/sync/card_fields.js";
import { way } from "../common/if_allowed.js";
import { valueWords } from "./conflict_fields.js";
import { madeAt, whoSent } from "../common/dates.js";

/**
 * @param {Api.SettledProposal[]} proposals newest first
 * @param {string} code of their card
 */
export function proposalList(proposals, code) {
  if (!proposals.length) return nothing;
  return html`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${proposals.map((one) => proposalLine(one, code))}
    </ol>
  </section>`;
}

/**
 * @param {Api.SettledProposal} one
 * @param {string} code
 */
function proposalLine(one, code) {
  const rows = differing(one.changes, one.before, { ...one.before, settings: one.before.settings ?? [] });
  return html`<li class="row revision" data-test="proposal">
    <h3>
      ${
        one.settled_by
          ? `Resolved by revision ${one.settled_by}`
          : way(`/c/${code}/resolve`, html`<a href="/c/${code}/resolve">To resolve</a>`, "To resolve")
      }
    </h3>
    <p class="more">${[madeAt(one), whoSent(one) ? `by ${whoSent(one)}` : ""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${rows.map(
        (row) => html`<li>${row.label}: ${valueWords(row, row.before)} to ${valueWords(row, row.yours)}</li>`,
      )}
    </ul>
  </li>`;
}
