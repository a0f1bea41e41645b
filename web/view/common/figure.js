// A number on its dimension line: what it is, how much, and the band it may fall in.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { trade } from "../guide/words.js";

/**
 * @param {string} what
 * @param {import("../../app/shell/units.js").Shown} shown
 * @param {{band?: [import("../../app/shell/units.js").Shown, import("../../app/shell/units.js").Shown] |
 *   null, note?: unknown,
 *   origin?: string, test?: string}} [more]
 */
export function figure(what, shown, { band = null, note = "", origin = "", test = "" } = {}) {
  return html`<div class="figure" data-test=${test || nothing}>
    <span class="what">${trade(what)}</span>
    <span class="value"
      >${shown.text}${shown.unit === "°" ? "°" : html`<span class="unit">${shown.unit}</span>`}</span
    >
    ${
      band || origin
        ? html`<span class="band"
            >${
              band
                ? html`${band[0].text} to ${band[1].text}${band[1].unit === "°" ? "°" : ` ${band[1].unit}`}`
                : nothing
            }${origin ? html` <i class="origin" data-test="origin">${origin}</i>` : nothing}</span
          >`
        : nothing
    }
    ${note && note !== nothing ? html`<span class="band">${note}</span>` : nothing}
  </div>`;
}
