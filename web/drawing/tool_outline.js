// Outlines of tools, to scale: one large with its measures, or small ones side by side.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { lengthUnit, words } from "../app/shell/units.js";
import { boundsOf, closedPath, viewBox } from "./rings.js";
import { tidyLength } from "./section.js";

/** @typedef {import("./rings.js").Ring} Ring */

const WIDTH = 360;
const EDGE = 50; // room for the measures

/**
 * One tool large, or the parts of a press side by side at one scale: outline, the line of the bend,
 * width and height.
 * @param {{name: string, ring: Ring}[]} parts
 */
export function toolOutlines(parts) {
  const boxes = parts.map(({ ring }) => boundsOf([ring]));
  const room = WIDTH - 2 * EDGE;
  const scale = Math.min(
    ...boxes.map(([left, bottom, right, top]) => Math.min(room / (right - left), room / (top - bottom))),
  );
  return parts.map(({ name, ring }, index) => oneOutline(name, ring, boxes[index], scale));
}

/**
 * @param {string} name
 * @param {Ring} ring
 * @param {[number, number, number, number]} box
 * @param {number} scale
 */
function oneOutline(name, ring, [left, bottom, right, top], scale) {
  const height = Math.round((top - bottom) * scale + 2 * EDGE);
  const shift = (WIDTH - (right - left) * scale) / 2 - left * scale;
  /** @param {number} x */
  const across = (x) => shift + x * scale;
  /** @param {number} y */
  const down = (y) => EDGE + (top - y) * scale;
  return html`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${WIDTH} ${height}"
      role="img"
      aria-label="${name || "Outline"} to scale, ${size(right - left)} wide, ${size(top - bottom)} high"
      data-test="outline">
      ${axis(left, right, across(0), height)}
      <path
        class="tool"
        d=${closedPath(ring)}
        transform="translate(${shift} ${EDGE + top * scale}) scale(${scale})" />
      ${measureAcross(across(left), across(right), height - 16, size(right - left))}
      ${measureUp(down(bottom), down(top), across(right) + 16, size(top - bottom))}
    </svg>
    ${name ? html`<figcaption>${name}</figcaption>` : nothing}
  </figure>`;
}

/**
 * @param {number} mm
 * @returns {string}
 */
const size = (mm) => words({ text: tidyLength(mm), unit: lengthUnit() });

/**
 * @param {number} left
 * @param {number} right
 * @param {number} x
 * @param {number} height
 */
function axis(left, right, x, height) {
  if (left > 0 || right < 0) return nothing;
  return svg`<path class="centre" d="M${x} 6V${height - 6}"/>`;
}

/**
 * @param {number} x1
 * @param {number} x2
 * @param {number} y
 * @param {string} text
 */
function measureAcross(x1, x2, y, text) {
  return svg`<path class="dimension" d="M${x1} ${y}H${x2}M${x1} ${y - 5}v10M${x2} ${y - 5}v10"/>
    <text class="measure" x=${(x1 + x2) / 2} y=${y - 8} text-anchor="middle" font-size="20">${text}</text>`;
}

/**
 * @param {number} y1
 * @param {number} y2
 * @param {number} x
 * @param {string} text
 */
function measureUp(y1, y2, x, text) {
  const middle = (y1 + y2) / 2;
  return svg`<path class="dimension" d="M${x} ${y1}V${y2}M${x - 5} ${y1}h10M${x - 5} ${y2}h10"/>
    <text class="measure" x=${x + 22} y=${middle} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${x + 22} ${middle})">${text}</text>`;
}

/**
 * A small outline in a frame that all of its kind share, so that they compare.
 * @param {Ring|undefined} ring
 * @param {[number, number, number, number]} frame
 */
export function smallOutline(ring, frame) {
  if (!ring?.length) return nothing;
  return html`<svg class="small-outline" viewBox=${viewBox(frame, 2)} aria-hidden="true">
    <path class="tool" d=${closedPath(ring)} />
  </svg>`;
}

/**
 * The frame that holds every outline.
 * @param {(Ring|undefined)[]} rings
 * @returns {[number, number, number, number]}
 */
export function sharedFrame(rings) {
  const drawn = /** @type {Ring[]} */ (rings.filter((ring) => ring?.length));
  return drawn.length ? boundsOf(drawn) : [0, 0, 1, 1];
}
