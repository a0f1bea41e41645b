// Whether the saved plan would come out otherwise today, with today's tools and figures.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { byName, words } from "../units.js";

/** @typedef {{where: string, what: string, field?: string, saved: string, fresh: string, saved_value?: unknown, fresh_value?: unknown}} Difference */

/** @param {{differs: boolean, words: string, differences: Difference[]}|null} fresh null while nobody has said */
export function freshness(fresh) {
  if (!fresh?.differs) return nothing;
  return html`<details class="freshness panel" data-test="fresh">
    <summary><span><b>${fresh.words}</b> The card stays as it is. Show the difference</span></summary>
    <div class="table"><table>
      <thead><tr><th scope="col">Where</th><th scope="col">What</th><th scope="col">On the card</th><th scope="col">Today</th></tr></thead>
      <tbody>${fresh.differences.map(
        (one) => html`<tr><th scope="row">${one.where}</th><td>${one.what}</td><td>${said(one, "saved")}</td><td>${said(one, "fresh")}</td></tr>`,
      )}</tbody>
    </table></div>
  </details>`;
}

/** In this device's units where it is a figure. @param {Difference} one @param {"saved"|"fresh"} which */
function said(one, which) {
  const value = which === "saved" ? one.saved_value : one.fresh_value;
  const measured = one.field && /_(mm|kn|kn_per_m|deg|kg)$/.test(one.field);
  return measured && typeof value === "number" ? words(byName(one.field ?? "", value)) : one[which];
}
