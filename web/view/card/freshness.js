// Whether the saved plan would come out otherwise today, with today's tools and figures.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { may } from "../../app/shell/rights.js";
import { byName, words } from "../../app/shell/units.js";
import { offer } from "../common/if_allowed.js";
import { heads } from "../common/table_heads.js";

/**
 * @param {Api.Freshness|null} fresh null while nobody has said
 * @param {{busy: boolean, fault: string, take: () => void, settings: number}} how settings: how many steps
 *   have one from a result
 */
export function freshness(fresh, { busy, fault, take, settings }) {
  if (!fresh?.differs) return nothing;
  return html`<details class="freshness panel" data-test="fresh">
    <summary>
      <span><b>${fresh.words}</b> The card stays as it is. Show the difference</span>
    </summary>
    <div class="table">
      <table>
        ${heads("Where", "What", "On the card", "Today")}
        <tbody>
          ${fresh.differences.map(
            (one) =>
              html`<tr>
                <th scope="row">${one.where}</th>
                <td>${one.what}</td>
                <td>${said(one, "saved")}</td>
                <td>${said(one, "fresh")}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    ${
      settings && may("cards.revise")
        ? html`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`
        : nothing
    }
    <p class="wrong" role="alert">${fault}</p>
    ${offer(
      "cards.revise",
      html`<button class="button" data-test="take-fresh" ?disabled=${busy} @click=${take}>
        ${busy ? "Planning…" : "Take the fresh plan"}
      </button>`,
      html`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`,
    )}
  </details>`;
}

/**
 * In this device's units where it is a figure.
 * @param {Api.Difference} one
 * @param {"saved"|"fresh"} which
 */
function said(one, which) {
  const value = which === "saved" ? one.saved_value : one.fresh_value;
  const measured = one.field && /_(mm|kn|kn_per_m|deg|kg)$/.test(one.field);
  return measured && typeof value === "number" ? words(byName(one.field ?? "", value)) : one[which];
}
