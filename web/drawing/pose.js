// One step to scale: the sheet in the tools before and after the bend, seen from the end of the
// press, the operator on the left and the back gauge on the right.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { angle as shownAngle, words } from "../app/units.js";
import "./frame.js";
import { boundsOf, closedPath } from "./rings.js";

/** @typedef {import("./rings.js").Ring} Ring */
/** @typedef {{sheet: Ring, punch: Ring, holder: Ring, ram: Ring, gauge: Ring}} Pose */
/** @typedef {{before: Pose, after: Pose, die: Ring, bed: Ring, gauge_point: [number, number]|null, bounds: number[]}} StepDrawing */
/** @typedef {{left: number, bottom: number, right: number, top: number}} Window millimetres, y up */

/**
 * @param {StepDrawing} drawing
 * @param {{pose: "before"|"after", close: boolean, opening: number|null, gauge: string, angle: number|null, words: string}} how
 *   opening: the die's V in mm, the measure for how much is shown; null without a die; gauge: its distance as text;
 *   angle: included, at the bottom of the stroke;
 *   words: what the drawing shows, for who cannot see it
 */
export function poseDrawing(drawing, { pose, close, opening: die, gauge, angle, words: described }) {
  const opening = die ?? (drawing.bounds[2] - drawing.bounds[0]) / 6;
  const window = close ? closeWindow(opening) : partWindow(drawing, opening);
  const { left, bottom, right, top } = window;
  const now = drawing[pose];
  return html`<drawing-frame class="pose-frame">
    <svg class="drawing pose" role="img" aria-label=${described} data-test="pose" data-pose=${pose}
      viewBox="${left} ${-top} ${right - left} ${top - bottom}" preserveAspectRatio="xMidYMid meet">
      ${[drawing.bed, drawing.die, now.ram, now.holder, now.punch].map(tool)}
      ${drawing.die.length ? svg`<path class="axis" d="M0 ${-top - 999}V999" />` : nothing}
      <path class="gauge" d=${closedPath(now.gauge)} />
      <path class="sheet" data-test="sheet" d=${closedPath(now.sheet)} />
      ${pose === "before" && drawing.gauge_point ? gaugeDimension(drawing.gauge_point, gauge, window) : nothing}
      ${pose === "after" && angle ? angleArc(now.sheet, angle, opening, window) : nothing}
    </svg>
  </drawing-frame>`;
}

/** @param {Ring} ring */
const tool = (ring) => (ring.length ? svg`<path class="tool" d=${closedPath(ring)} />` : nothing);

/** The bend itself. @param {number} opening @returns {Window} */
function closeWindow(opening) {
  return { left: -1.5 * opening, bottom: -0.9 * opening, right: 1.5 * opening, top: 1.1 * opening };
}

/**
 * The part before and after and the gauge, but never so much that the sheet becomes a hair:
 * what lies further out runs off the picture.
 * @param {StepDrawing} drawing @param {number} opening @returns {Window}
 */
function partWindow(drawing, opening) {
  const [left, bottom, right, top] = boundsOf([drawing.before.sheet, drawing.after.sheet]);
  const most = 14 * opening;
  const stop = drawing.gauge_point ? drawing.gauge_point[0] + 1.5 * opening : 0;
  const shown = {
    left: Math.max(Math.min(left - 0.4 * opening, -1.4 * opening), -most),
    right: Math.min(Math.max(right + 0.4 * opening, stop, 1.4 * opening), Math.max(most, stop)),
  };
  const width = shown.right - shown.left;
  return {
    ...shown,
    bottom: Math.max(Math.min(bottom - 0.3 * opening, -1.1 * opening, -0.17 * width), -most / 2),
    top: Math.min(Math.max(top + 0.3 * opening, 1.6 * opening), 8 * opening),
  };
}

/**
 * The gauge distance on its dimension line, below the die's top face.
 * @param {[number, number]} point @param {string} text @param {Window} window
 */
function gaugeDimension([x, y], text, { bottom }) {
  const line = bottom * 0.45;
  return svg`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${x} ${-y}V${-line}" />
    <path class="dimension" d="M0 ${-line}H${x}" />
    ${arrow(0, line, 180)}${arrow(x, line, 0)}
    <g transform="translate(${x} ${-y})"><circle class="px touch" r="5" /></g>
    ${label(x / 2, line, text, 17)}
  </g>`;
}

/**
 * The angle to set, on an arc from wing to wing.
 * @param {Ring} sheet @param {number} included @param {number} opening @param {Window} window
 */
function angleArc(sheet, included, opening, { left, right }) {
  const foot = Math.min(...sheet.filter(([x]) => Math.abs(x) < opening / 2).map(([, y]) => y));
  const radius = Math.max(1.25 * opening, 0.14 * (right - left));
  const half = (included / 2) * (Math.PI / 180);
  const [x, y] = [radius * Math.sin(half), foot + radius * Math.cos(half)];
  return svg`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-x} ${-y}A${radius} ${radius} 0 0 1 ${x} ${-y}" />
    ${label(0, foot + radius, words(shownAngle(included)))}
  </g>`;
}

/** @param {number} x @param {number} y @param {number} degrees */
const arrow = (x, y, degrees) =>
  svg`<g transform="translate(${x} ${-y})"><path class="px arrow ${degrees ? "back" : ""}" d="M0 0L-12 -5V5Z" /></g>`;

/** @param {number} x @param {number} y @param {string} text @param {number} [down] in pixels */
const label = (x, y, text, down = 0) =>
  svg`<g transform="translate(${x} ${-y})"><text class="px label" y=${down} text-anchor="middle" dominant-baseline="central">${text}</text></g>`;
