// Where something typed is: saved here and not yet in the shop, saved in the shop, or to resolve.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { may } from "../../app/shell/rights.js";
import { flag } from "../common/finding.js";
import { offer } from "../common/if_allowed.js";

/** @typedef {import("../../app/sync/stored.js").Waiting} Waiting */

/**
 * @param {Waiting} entry
 * @returns {string}
 */
export function whereWords(entry) {
  if (entry.refused) {
    return entry.missing
      ? "The shop was restored from a backup and does not know its card"
      : `Refused: ${entry.refused}`;
  }
  if (entry.parked) return "Saved here. The card was changed meanwhile: to resolve";
  if (entry.late) return `Saved here, not yet in the shop. ${entry.late}`;
  return "Saved here, not yet in the shop. Waiting to be sent";
}

/**
 * What a card's screen says of changes that are on this device only, and of those to resolve.
 * @param {import("../../app/sync/card_edits.js").CardHere} card with what waits
 */
export function changesAside(card) {
  const edits = card.here ?? [];
  const open = card.proposals ?? [];
  if (!edits.length && !open.length) return nothing;
  const refused = edits.filter((entry) => entry.refused);
  return html`<section class="changes-aside" aria-label="Changes on their way">
    ${
      open.length
        ? html`<div class="to-resolve" data-test="to-resolve">
            <p>
              ${flag("caution", "To resolve")} This card was changed in two places at once. Both are kept.
            </p>
            ${offer(
              "cards.revise",
              html`<a class="button next" href="/c/${card.code}/resolve" data-test="resolve"
                >Resolve ${open.length === 1 ? "it" : `${open.length} changes`}</a
              >`,
              html`<p data-test="owners">The owner decides which holds.</p>`,
            )}
          </div>`
        : nothing
    }
    ${
      edits.length
        ? html`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${waitWords(edits.length, open.length > 0)}
            ${refused.length ? html`<a href="/settings">${refused.length} refused: look</a>` : nothing}
          </p>`
        : nothing
    }
  </section>`;
}

/**
 * @param {number} many changes of one card
 * @param {boolean} toResolve whether another change has to be settled first
 */
function waitWords(many, toResolve) {
  const waits = many === 1 ? "One change of this card waits" : `${many} changes of this card wait`;
  if (toResolve) return `${waits} until the other one is resolved.`;
  return `${waits} and ${many === 1 ? "is sent automatically" : "are sent automatically"}.`;
}

/**
 * After saving: where it is now.
 * @param {"shop"|"here"|"settle"|"same"} where
 */
export function savedWords(where) {
  if (where === "shop") return "Saved in the shop.";
  if (where === "here") return "Saved here, not yet in the shop. It is sent automatically.";
  if (where === "settle") {
    return `The card was changed meanwhile. Both are kept: ${
      may("cards.revise") ? "decide which holds." : "the owner decides which holds."
    }`;
  }
  return "Nothing was changed.";
}
