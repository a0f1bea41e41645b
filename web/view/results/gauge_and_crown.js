// What a result says beside the angle: where the gauge goes for the next piece, and how open the middle is.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { EVEN_MM, gaugeAfter } from "../../app/results/next_gauge.js";
import { angle, inSentence, length } from "../../app/shell/units.js";
import { flag, sentenceOrWords } from "../common/finding.js";
import { setFigure } from "../step/setting.js";

/** @param {import("../../app/results/keep_setting.js").Result} result */
export function gaugeNext(result) {
  const gauge = gaugeAfter(result);
  if (!gauge) return nothing;
  if (gauge.gauge_x_mm === null) return noGauge(gauge);
  return html`<div class="set-figures" data-test="new-gauge">
      ${setFigure("Gauge X now", length(gauge.gauge_x_mm, { digits: 2 }), "new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${flangeWords(gauge.error_mm)}</p>`;
}

/** @param {import("../../app/results/next_gauge.js").GaugeNext} gauge */
function noGauge({ error_mm: error, words: why, said, to_check: checks }) {
  if (!checks.length) return html`<p data-test="no-gauge">${sentenceOrWords({ ...said, words: why })}</p>`;
  return html`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${flag("stop")} <b>No new gauge X.</b> ${flangeWords(error)} No gauge is that far off.</p>
    <ol>
      ${checks.map((one) => html`<li>${one}</li>`)}
    </ol>
  </div>`;
}

/** @param {number|null} error */
function flangeWords(error) {
  if (error === null) return "";
  if (Math.abs(error) <= EVEN_MM) return "Flange as wanted: leave the gauge.";
  return `Flange ${inSentence(length(Math.abs(error), { digits: 2 }))} too ${error > 0 ? "long" : "short"}.`;
}

/** @param {Api.Correction|null} correction */
export function crown(correction) {
  const found = correction?.crown;
  if (!found) return nothing;
  return html`<div class="crown" data-test="crown">
    <p>${crownWords(found)}</p>
    ${found.shim ? shimList(found.shim) : nothing}
  </div>`;
}

/** @param {Api.Crown} found */
function crownWords({ middle_open_deg: open, shim, said, words }) {
  if (!shim) return sentenceOrWords({ ...said, words });
  return html`<b>The middle is ${inSentence(angle(open))} more open than the ends.</b> First crown the middle
    by ${inSentence(length(shim.middle_mm, { digits: 2 }))}, or shim the die:`;
}

/** @param {{strip_mm: number, lengths_mm: number[]}} shim */
function shimList({ strip_mm: thick, lengths_mm: strips }) {
  const long = strips.map((mm) => length(mm, { digits: 0 }).text).join(", ");
  const unit = length(strips[0], { digits: 0 }).unit;
  return html`<p data-test="shim">
    ${strips.length === 1 ? "1 strip" : `${strips.length} strips`} of
    ${inSentence(length(thick, { digits: 2 }))} under the middle of the die, one on the other, ${long} ${unit}
    long. Nothing at the ends. Then set what stands above, which is for the ends; bend again and measure.
  </p>`;
}

/** @param {Api.Correction} correction */
export const thicknessWords = ({ thickness_mm: sheet }) =>
  sheet ? ` Calculated for the ${inSentence(length(sheet, { digits: 2 }))} that the sheet measures.` : "";
