// A number on its dimension line: what it is, how much, and the band it may fall in.
import { html, nothing } from "/vendor/lit-html/lit-html.js";

/**
 * @param {string} what
 * @param {import("../units.js").Shown} shown
 * @param {{band?: [import("../units.js").Shown, import("../units.js").Shown] | null, note?: string, test?: string}} [more]
 */
export function figure(what, shown, { band = null, note = "", test = "" } = {}) {
  return html`<div class="figure" data-test=${test || nothing}>
    <span class="what">${what}</span>
    <span class="value">${shown.text}${shown.unit === "°" ? "°" : html`<span class="unit">${shown.unit}</span>`}</span>
    ${band ? html`<span class="band">${band[0].text} to ${band[1].text}${band[1].unit === "°" ? "°" : ` ${band[1].unit}`}</span>` : nothing}
    ${note ? html`<span class="band">${note}</span>` : nothing}
  </div>`;
}
