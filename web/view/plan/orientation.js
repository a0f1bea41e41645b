// How the sheet goes in: what to do with it since the bend before, which face is up, which end
// goes to the gauge; in a sign and in words.
import { html, svg } from "/vendor/lit-html/lit-html.js";

/** @typedef {"first"|"same"|"over"|"end"|"both"|"quarter"|"quarter-over"} Move */

/**
 * @param {Api.Step} step
 * @returns {Move}
 */
function moveOf(step) {
  if (step.number === 1) return "first";
  if (step.turn_quarter) return step.turn_over ? "quarter-over" : "quarter";
  if (step.turn_over && step.turn_end) return "both";
  if (step.turn_over) return "over";
  return step.turn_end ? "end" : "same";
}

/** @type {Record<Move, string>} */
const DO = {
  first: "Lay it in",
  same: "As it lies",
  over: "Turn it over",
  end: "Turn it end for end",
  both: "Turn it over and end for end",
  quarter: "Turn it a quarter",
  "quarter-over": "Turn it over and a quarter",
};

// The sheet is drawn from the operator's side, lying on the die; the notch marks the gauged end.
const SHEET = svg`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`;
const OVER = svg`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`;
const END = svg`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`;
const DOWN = svg`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`;
const QUARTER = svg`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`;
const SAME = svg`<path class="sign-turn" d="M24 45H42M24 51H42" />`;
/** @type {Record<Move, unknown[]>} */
const SIGN = {
  first: [DOWN],
  same: [SAME],
  over: [OVER],
  end: [END],
  both: [OVER, END],
  quarter: [QUARTER],
  "quarter-over": [OVER, QUARTER],
};

/**
 * The sign alone, with its words.
 * @param {Api.Step} step
 */
export function moveSign(step) {
  const move = moveOf(step);
  return html`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${SHEET}${SIGN[move]}</svg
    ><b>${DO[move]}.</b>`;
}

/**
 * @param {Api.Step} step
 * @param {number} flats how many flats the part has
 */
export function orientation(step, flats) {
  const move = moveOf(step);
  return html`<div class="lie ${move}" data-test="lie" data-move=${move}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${SHEET}${SIGN[move]}</svg>
    <p>
      <b data-test="move">${DO[move]}.</b>
      <span data-test="face">${step.inside_face === "up" ? "Top" : "Bottom"} face up.</span>
      ${endWords(step, flats)}
    </p>
  </div>`;
}

/**
 * Which edge goes to the gauge: of a box a side by its name.
 * @param {Api.Step} step
 * @param {number} flats how many flats the part has
 * @returns {string}
 */
export function gaugedWords({ gauged_end: end, gauged_side: side }, flats) {
  if (side) return `${side} side`;
  return `${end} end${flats ? ` (flat ${end === "left" ? 1 : flats})` : ""}`;
}

/**
 * @param {Api.Step} step
 * @param {number} flats
 */
function endWords(step, flats) {
  const { gauged_end: end, gauged_against: against, gauge_x_mm: x, operation } = step;
  if (operation === "hem flatten") {
    return html`<span data-test="end">The hem at the ${end} end goes under the flattening tool.</span>`;
  }
  if (!end || x === null) {
    return html`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;
  }
  const which = gaugedWords(step, flats);
  return html`<span data-test="end"
    >${which[0].toUpperCase()}${which.slice(1)} to the
    gauge${against === "finished flange" ? ", against the finished flange" : ""}.</span
  >`;
}
