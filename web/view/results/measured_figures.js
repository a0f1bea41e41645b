// Figures before and after results, each with its picture.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { bandPicture } from "../../drawing/band.js";
import { angle, fixed, length, lengthUnit, MM_PER_INCH, words } from "../../app/shell/units.js";

/** @typedef {import("../../app/forms/test_bend_form.js").Band} Band */

/**
 * What a bend takes of the blank, and what the next blank is cut by.
 * @param {Api.LearnedDeduction} deduction
 */
export function blankWords({ before_mm: before, after_mm: after, flanges, strips }) {
  const mm = (/** @type {number} */ value) => words(length(value, { digits: 2 }));
  const more = after.nominal - before.nominal;
  const even = Number(fixed(more, 2)) === 0;
  const change = `${mm(Math.abs(more))} ${more > 0 ? "shorter" : "longer"}`;
  return html`<p data-test="deduction">
    A bend takes <b>${mm(after.nominal)}</b> (${mm(after.low)} to ${mm(after.high)}) off the sum of its
    flats${even ? ", as before" : html`: the next blank is <b>${change}</b> for each such bend`}. Rests on
    ${[counted(flanges, "measured flange"), counted(strips, "strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`;
}

/**
 * @param {number} count
 * @param {string} what
 */
const counted = (count, what) => (count ? `${count} ${what}${count > 1 ? "s" : ""}` : "");

/** @param {Api.LearnedFigure[]} figures */
export function measuredFigures(figures) {
  if (!figures.length) return html`<p data-test="no-figures">No figure changed.</p>`;
  const points = figures.flatMap((figure) => figure.points ?? []);
  const key = ["Thin: before. Thick: now. Rings: results"];
  if (points.some((point) => (point.weight ?? 1) < 0.25)) {
    key.push("small ones, of other sheet or tools, count little");
  }
  if (points.some((point) => point.outlier)) key.push("crosses: the odd ones out");
  return html`<div class="taught-figures" data-test="figures">${figures.map(measuredFigure)}</div>
    ${points.length ? html`<p class="hint">${key.join("; ")}.</p>` : nothing}`;
}

/** @param {Api.LearnedFigure} taught */
function measuredFigure(taught) {
  const { what, before, after, trials, points = [] } = taught;
  const show = (/** @type {number} */ value) => shownAs(taught.unit, value);
  const title = `${what[0].toUpperCase()}${what.slice(1)}`;
  return html`<section class="taught-figure" data-test="taught" data-what=${what}>
    <h3>
      ${title} <small>${trials === 0 ? "no results" : trials === 1 ? "1 result" : `${trials} results`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${banded(before, show)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${banded(after, show)}</dd>
      </div>
    </dl>
    ${bandPicture({
      before,
      after,
      points,
      size: taught.unit === "mm" && lengthUnit() === "in" ? MM_PER_INCH : 1,
      words:
        `${title}: before ${range(before, show)}, now ${range(after, show)}, ` +
        `${points.length} results drawn.`,
    })}
  </section>`;
}

/**
 * @param {Band} band
 * @param {(value: number) => import("../../app/shell/units.js").Shown} show
 */
const banded = (band, show) =>
  html`<b>${words(show(band.nominal))}</b>
    <span class="band">${show(band.low).text} to ${show(band.high).text}</span>`;

/**
 * @param {Band} band
 * @param {(value: number) => import("../../app/shell/units.js").Shown} show
 */
const range = ({ low, high }, show) => `${show(low).text} to ${words(show(high))}`;

/**
 * @param {string} unit
 * @param {number} value
 * @returns {import("../../app/shell/units.js").Shown}
 */
function shownAs(unit, value) {
  if (unit === "deg") return angle(value);
  if (unit === "mm") return length(value, { digits: 2 });
  return { text: fixed(value, 3), unit };
}
