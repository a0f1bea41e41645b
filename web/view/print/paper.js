// What the screens that print have in common: which paper, the sheet as it will come out, the button.
import { html } from "/vendor/lit-html/lit-html.js";
import { changeSettings, settings } from "../../app/shell/settings.js";
import { choice } from "../common/field.js";

/** @param {() => void} redraw */
export function paperChoice(redraw) {
  return choice({
    name: "paper",
    label: "Paper",
    value: settings().paper,
    options: [
      ["A4", "A4"],
      ["Letter", "Letter"],
    ],
    change(value) {
      changeSettings({ paper: value === "Letter" ? "Letter" : "A4" });
      redraw();
    },
  });
}

/** @param {string} [words] */
export function printButton(words = "Print") {
  return html`<button type="button" class="button next" data-test="print" @click=${() => window.print()}>
    ${words}
  </button>`;
}

/**
 * The sheet on the screen. On a phone it is wider than the screen and moves within its frame.
 * @param {unknown} content
 * @param {{lying?: boolean, about: string}} how lying: landscape
 */
export function sheet(content, { lying = false, about }) {
  return html`<div class="sheet-frame" tabindex="0" role="region" aria-label=${about}>
    <div class="paper ${settings().paper.toLowerCase()} ${lying ? "lying" : "upright"}" data-test="sheet">
      ${content}
    </div>
  </div>`;
}
