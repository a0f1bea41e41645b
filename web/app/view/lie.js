// How the sheet goes in: what to do with it since the bend before, which face is up, which end
// goes to the gauge; in a sign and in words.
import { html, svg } from "/vendor/lit-html/lit-html.js";

/** @typedef {"first"|"same"|"over"|"end"|"both"} Move */

/** @param {any} step @returns {Move} */
function moveOf(step) {
  if (step.number === 1) return "first";
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
};

// The sheet is drawn from the operator's side, lying on the die; the notch marks the gauged end.
const SHEET = svg`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`;
const OVER = svg`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`;
const END = svg`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`;
const DOWN = svg`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`;
const SAME = svg`<path class="sign-turn" d="M24 45H42M24 51H42" />`;
/** @type {Record<Move, unknown[]>} */
const SIGN = { first: [DOWN], same: [SAME], over: [OVER], end: [END], both: [OVER, END] };

/** The sign alone, with its words. @param {any} step */
export function moveSign(step) {
  const move = moveOf(step);
  return html`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${SHEET}${SIGN[move]}</svg><b>${DO[move]}.</b>`;
}

/** @param {any} step @param {number} flats how many flats the part has */
export function lie(step, flats) {
  const move = moveOf(step);
  return html`<div class="lie ${move}" data-test="lie" data-move=${move}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${SHEET}${SIGN[move]}</svg>
    <p><b data-test="move">${DO[move]}.</b> <span data-test="face">${step.inside_face === "up" ? "Top" : "Bottom"} face up.</span>
      ${endWords(step, flats)}</p>
  </div>`;
}

/** @param {any} step @param {number} flats */
function endWords({ gauged_end: end, gauged_against: against, gauge_x_mm: x, operation }, flats) {
  if (operation === "hem flatten") return html`<span data-test="end">The hem at the ${end} end goes under the flattening tool.</span>`;
  if (!end || x === null) return html`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;
  const flat = end === "left" ? 1 : flats;
  return html`<span data-test="end">${end === "left" ? "Left" : "Right"} end (flat ${flat}) to the gauge${against === "finished flange" ? ", against the finished flange" : ""}.</span>`;
}
