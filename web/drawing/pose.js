// One step to scale: the sheet in the tools at a moment of the bend, seen from the end of the
// press, the operator on the left and the back gauge on the right.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { angle as shownAngle, words } from "../app/shell/units.js";
import "./frame.js";
import { nearMark, nearMiddle } from "./near.js";
import { boundsOf, closedPath } from "./rings.js";

/** @typedef {import("./rings.js").Ring} Ring */
/** @typedef {import("./motion.js").Shown} Shown */
/** @typedef {{left: number, bottom: number, right: number, top: number}} Window millimetres, y up */

/**
 * @param {Api.Drawing} drawing
 * @param {{pose: "before"|"after"|"during", close: boolean, opening: number|null, gauge: string,
 *   angle: number|null, words: string, moment?: Shown|null, near?: Api.Near|null, mark?: boolean,
 *   room?: import("./motion.js").HandRoom|null}} how
 *   opening: the die's V in mm, the measure for how much is shown; null without a die; gauge: its distance as
 *   text;
 *   angle: included, at the bottom of the stroke; moment: what is shown, where it is neither before nor
 *   after;
 *   near: the closest approach, kept in the picture; mark: whether it is marked now;
 *   room: what the picture opens to while the part is moved by hand;
 *   words: what the drawing shows, for who cannot see it
 */
export function poseDrawing(
  drawing,
  {
    pose,
    close,
    opening: die,
    gauge,
    angle,
    words: described,
    moment = null,
    near = null,
    mark = false,
    room = null,
  },
) {
  const opening = die ?? (drawing.bounds[2] - drawing.bounds[0]) / 6;
  const still = close ? closeWindow(opening, mark ? near : null) : partWindow(drawing, opening, near);
  const window = room && !close ? opened(still, room, opening) : still;
  const { left, bottom, right, top } = window;
  const now = moment ?? shownIn(drawing, pose === "after" ? "after" : "before");
  return html`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${described}
      data-test="pose"
      data-pose=${pose}
      viewBox="${left} ${-top} ${right - left} ${top - bottom}"
      preserveAspectRatio="xMidYMid meet">
      ${[drawing.bed, drawing.die].map(closedPath).map(tool)}
      <g transform="translate(0 ${now.down})">${now.tools.map(tool)}</g>
      ${drawing.die.length ? svg`<path class="axis" d="M0 ${-top - 999}V999" />` : nothing}
      <path class="gauge" transform="translate(${now.back} 0)" d=${now.gauge} />
      <path class="sheet" data-test="sheet" d=${now.sheet} />
      ${
        pose === "before" && drawing.gauge_point
          ? gaugeDimension(drawing.gauge_point, gauge, window)
          : nothing
      }
      ${pose === "after" && angle ? angleArc(drawing.after.sheet, angle, opening, window) : nothing}
      ${mark && near ? nearMark(near, window) : nothing}
    </svg>
  </drawing-frame>`;
}

/**
 * Before or after the bend, as the API drew it.
 * @param {Api.Drawing} drawing
 * @param {"before"|"after"} pose
 * @returns {Shown}
 */
function shownIn(drawing, pose) {
  const { sheet, ram, holder, punch, gauge } = drawing[pose];
  return {
    sheet: closedPath(sheet),
    tools: [ram, holder, punch].map(closedPath),
    down: 0,
    gauge: closedPath(gauge),
    back: 0,
  };
}

/** @param {string} path */
const tool = (path) => (path ? svg`<path class="tool" d=${path} />` : nothing);

/**
 * The bend itself, or the place where the part comes closest to a tool.
 * @param {number} opening
 * @param {Api.Near|null} near
 * @returns {Window}
 */
function closeWindow(opening, near) {
  const [x, y] = near ? nearMiddle(near) : [0, 0.1 * opening];
  return { left: x - 1.5 * opening, bottom: y - opening, right: x + 1.5 * opening, top: y + opening };
}

/**
 * The part before and after and the gauge, but never so much that the sheet becomes a hair:
 * what lies further out runs off the picture, but for the place where it comes closest to a tool.
 * @param {Api.Drawing} drawing
 * @param {number} opening
 * @param {Api.Near|null} near
 * @returns {Window}
 */
function partWindow(drawing, opening, near) {
  const [left, bottom, right, top] = boundsOf([drawing.before.sheet, drawing.after.sheet]);
  const most = 14 * opening;
  const stop = drawing.gauge_point ? drawing.gauge_point[0] + 1.5 * opening : 0;
  const shown = {
    left: Math.max(Math.min(left - 0.4 * opening, -1.4 * opening), -most),
    right: Math.min(Math.max(right + 0.4 * opening, stop, 1.4 * opening), Math.max(most, stop)),
  };
  const width = shown.right - shown.left;
  const window = {
    ...shown,
    bottom: Math.max(Math.min(bottom - 0.3 * opening, -1.1 * opening, -0.17 * width), -most / 2),
    top: Math.min(Math.max(top + 0.3 * opening, 1.6 * opening), 8 * opening),
  };
  const whole = near ? roomFor(window, nearMiddle(near), Math.max(opening, 0.1 * width)) : window;
  // below the die's top the gauge's distance is written
  return { ...whole, bottom: Math.min(whole.bottom, whole.top * -0.33) };
}

/**
 * The picture on its way to show all of a part that is moved by hand.
 * @param {Window} window
 * @param {import("./motion.js").HandRoom} room
 * @param {number} opening
 * @returns {Window}
 */
function opened(window, { bounds, share }, opening) {
  const whole = roomFor(roomFor(window, [bounds[0], bounds[1]], opening), [bounds[2], bounds[3]], opening);
  const mix = (/** @type {"left"|"right"|"bottom"|"top"} */ side) =>
    window[side] + (whole[side] - window[side]) * share;
  return { left: mix("left"), right: mix("right"), bottom: mix("bottom"), top: mix("top") };
}

/**
 * @param {Window} window
 * @param {[number, number]} place
 * @param {number} room
 * @returns {Window}
 */
const roomFor = ({ left, right, bottom, top }, [x, y], room) => ({
  left: Math.min(left, x - room),
  right: Math.max(right, x + room),
  bottom: Math.min(bottom, y - room),
  top: Math.max(top, y + room),
});

/**
 * The gauge distance on its dimension line, below the die's top face.
 * @param {[number, number]} point
 * @param {string} text
 * @param {Window} window
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
 * @param {Ring} sheet
 * @param {number} included
 * @param {number} opening
 * @param {Window} window
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

/**
 * @param {number} x
 * @param {number} y
 * @param {number} degrees
 */
const arrow = (x, y, degrees) =>
  svg`<g transform="translate(${x} ${-y})">
    <path class="px arrow ${degrees ? "back" : ""}" d="M0 0L-12 -5V5Z" /></g>`;

/**
 * @param {number} x
 * @param {number} y
 * @param {string} text
 * @param {number} [down] in pixels
 */
const label = (x, y, text, down = 0) =>
  svg`<g transform="translate(${x} ${-y})">
    <text class="px label" y=${down} text-anchor="middle"
      dominant-baseline="central">${text}</text></g>`;
