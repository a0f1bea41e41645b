// Where the part comes closest to a tool: a ring round the place, the distance beside it.
import { nothing, svg } from "/vendor/lit-html/lit-html.js";
import { length, words } from "../app/shell/units.js";

/**
 * @param {Api.Near} near
 * @returns {[number, number]}
 */
export const nearMiddle = ({ on_sheet: [x1, y1], on_tool: [x2, y2] }) => [(x1 + x2) / 2, (y1 + y2) / 2];

/**
 * The two lines of its label.
 * @param {Api.Near} near
 * @returns {[string, string]}
 */
export function nearLabel({ distance_mm: distance, tool }) {
  const size = words(length(Math.abs(distance)));
  return distance <= 0 ? [size, `into ${tool}`] : [size, `to ${tool}`];
}

/**
 * A gap too small to see gets a ring round it.
 * @param {Api.Near} near
 * @param {number} width of the picture, mm
 */
export const isSmall = (near, width) => Math.abs(near.distance_mm) < 0.1 * width;

/** @param {[number, number]} point */
const dot = ([x, y]) => svg`<g transform="translate(${x} ${-y})"><circle class="px near-dot" r="4" /></g>`;

/**
 * The label stands on the side where the picture has more room.
 * @param {Api.Near} near
 * @param {{left: number, right: number, bottom: number, top: number}} window
 */
export function nearMark(near, { left, right, bottom, top }) {
  const [x, y] = nearMiddle(near);
  const [[x1, y1], [x2, y2]] = [near.on_sheet, near.on_tool];
  const side = x - left > right - x ? -1 : 1;
  const rise = y - bottom > 0.7 * (top - bottom) ? 1 : -1;
  const [first, second] = nearLabel(near);
  return svg`<g class="near ${near.distance_mm <= 0 ? "hit" : ""}" data-test="near" data-tool=${near.tool}>
    <path class="near-line" d="M${x1} ${-y1}L${x2} ${-y2}" />
    ${isSmall(near, right - left) ? nothing : [near.on_sheet, near.on_tool].map(dot)}
    <g transform="translate(${x} ${-y})">
      ${isSmall(near, right - left) ? svg`<circle class="px near-ring" r="17" />` : nothing}
      <path class="px near-leader" d="M${side * 12} ${rise * 12}L${side * 34} ${rise * 30}H${side * 44}" />
      <text class="px label near-label" x=${side * 50} y=${rise * 30 - 2}
        text-anchor=${side > 0 ? "start" : "end"}>${first}<tspan x=${side * 50}
          dy="1.1em">${second}</tspan></text>
    </g>
  </g>`;
}
