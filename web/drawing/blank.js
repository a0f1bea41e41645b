// The flat blank with its bend lines, drawn to scale from the plan's numbers.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { angle, inSentence, words } from "../app/shell/units.js";
import { textWidth } from "./labels.js";
import { shownWidth, tidyLength } from "./section.js";

/** @typedef {{at: number, width: number, row: number}} Spot */

const SIZE = 18;
const ROW = SIZE * 1.5;

/**
 * Length lies across. A blank much wider than long is drawn with its width cut short by a
 * break line, as a draughtsman does, and says so.
 * @param {Api.Blank} blank
 * @param {{pixels?: number, tallest?: number, test?: string}} [how]
 */
export function blankDrawing(blank, { pixels = shownWidth(), tallest = pixels * 0.45, test = "blank" } = {}) {
  const widthText = tidyLength(blank.width_mm);
  const across = pixels - textWidth(widthText, SIZE) - SIZE * 2;
  const scale = across / blank.length_mm;
  const broken = blank.width_mm * scale > tallest;
  const tall = broken ? tallest : Math.max(blank.width_mm * scale, 3);
  const tops = spread(
    blank.bend_lines.map((line) => [line.at_mm * scale, SIZE * 1.8 + textWidth(turn(line), SIZE)]),
    across,
  );
  const feet = spread(
    blank.bend_lines.map((line) => [line.at_mm * scale, textWidth(tidyLength(line.at_mm), SIZE)]),
    across,
  );
  const over = rows(tops) * ROW + SIZE * 0.4;
  const under = rows(feet) * ROW + SIZE * 0.4;
  const foot = over + tall;
  return html`<svg
      class="drawing blank"
      data-test=${test}
      role="img"
      aria-label=${describeBlank(blank)}
      viewBox="-8 -4 ${pixels + 8} ${foot + under + ROW * 1.4}">
      ${
        broken
          ? brokenSheet(across, over, foot)
          : svg`<rect class="sheet" x="0" y=${over} width=${across} height=${tall}/>`
      }
      ${blank.bend_lines.map((line, i) => bendLine(line, line.at_mm * scale, tops[i], feet[i], over, foot))}
      ${overall(across, foot + under + SIZE * 0.7, tidyLength(blank.length_mm))}
      ${beside(across + SIZE, over, foot, widthText)}
    </svg>
    ${
      broken
        ? html`<p class="hint">Width ${words({ text: widthText, unit: "" })} is drawn short at the break.</p>`
        : nothing
    }`;
}

/**
 * @param {Api.BendLine} line
 * @returns {string}
 */
function turn(line) {
  const degrees = line.included_angle_deg ? inSentence(angle(line.included_angle_deg)) : "hem";
  return `${line.direction} ${degrees}`;
}

/**
 * @param {Api.Blank} blank
 * @returns {string}
 */
function describeBlank(blank) {
  const lines = blank.bend_lines.map(
    (line) => `bend ${line.bend} ${turn(line)} at ${tidyLength(line.at_mm)}`,
  );
  return `Blank ${tidyLength(blank.length_mm)} by ${tidyLength(blank.width_mm)}. ${lines.join("; ")}.`;
}

/**
 * Labels over their lines, in as few rows as keep them apart.
 * @param {[number, number][]} wanted middle and width of each
 * @param {number} across
 * @returns {Spot[]}
 */
function spread(wanted, across) {
  /** @type {number[]} */
  const reached = [];
  return wanted.map(([line, width]) => {
    const at = Math.min(Math.max(line, width / 2), Math.max(across - width / 2, width / 2));
    let row = reached.findIndex((end) => end <= at - width / 2);
    if (row < 0) row = reached.length;
    reached[row] = at + width / 2 + 4;
    return { at, width, row };
  });
}

/**
 * @param {Spot[]} spots
 * @returns {number}
 */
const rows = (spots) => Math.max(0, ...spots.map((spot) => spot.row + 1));

/**
 * @param {Api.BendLine} line
 * @param {number} x
 * @param {Spot} top
 * @param {Spot} bottom
 * @param {number} over
 * @param {number} foot
 */
function bendLine(line, x, top, bottom, over, foot) {
  const y = over - SIZE * 0.4 - ROW * (top.row + 0.5);
  const low = foot + SIZE * 0.4 + ROW * (bottom.row + 0.5);
  const left = top.at - top.width / 2;
  return svg`<path class="fold ${line.direction}" d="M${x} ${over}V${foot}"/>
    <path class="leader" d="M${x} ${over}V${y + SIZE * 0.8}M${x} ${foot}V${low - SIZE * 0.8}"/>
    <rect class="ground" x=${left} y=${y - SIZE * 0.75} width=${top.width} height=${SIZE * 1.5}/>
    <circle class="badge" cx=${left + SIZE * 0.75} cy=${y} r=${SIZE * 0.68}/>
    <text class="badge-number" x=${left + SIZE * 0.75} y=${y} font-size=${SIZE * 0.95} text-anchor="middle"
      dominant-baseline="central">${line.bend}</text>
    <text x=${left + SIZE * 1.7} y=${y} font-size=${SIZE} dominant-baseline="central">${turn(line)}</text>
    <rect class="ground" x=${bottom.at - bottom.width / 2} y=${low - SIZE * 0.7} width=${bottom.width}
      height=${SIZE * 1.4}/>
    <text x=${bottom.at} y=${low} font-size=${SIZE} text-anchor="middle"
      dominant-baseline="central">${tidyLength(line.at_mm)}</text>`;
}

/**
 * @param {number} across
 * @param {number} over
 * @param {number} foot
 */
function brokenSheet(across, over, foot) {
  const middle = (over + foot) / 2;
  const zig =
    `L${across * 0.52} ${middle + 3}L${across * 0.54} ${middle - 14}` +
    `L${across * 0.58} ${middle + 8}L${across * 0.6} ${middle - 9}`;
  const zag =
    `L${across * 0.6} ${middle - 1}L${across * 0.58} ${middle + 16}` +
    `L${across * 0.54} ${middle - 6}L${across * 0.52} ${middle + 11}`;
  return svg`<path class="sheet" d="M0 ${over}V${middle + 3}${zig}L${across} ${middle - 9}V${over}Z"/>
    <path class="sheet" d="M0 ${foot}V${middle + 11}L${across * 0.52} ${middle + 11}${zag
      .split("L")
      .slice(1)
      .reverse()
      .map((p) => `L${p}`)
      .join("")}L${across} ${middle - 1}V${foot}Z"/>`;
}

/**
 * @param {number} across
 * @param {number} y
 * @param {string} text
 */
function overall(across, y, text) {
  const width = textWidth(text, SIZE);
  return svg`<path class="dimension"
      d="M0 ${y}H${across}M-4 ${y + 4}L4 ${y - 4}M${across - 4} ${y + 4}L${across + 4} ${y - 4}"/>
    <rect class="ground" x=${across / 2 - width / 2} y=${y - SIZE * 0.7} width=${width} height=${SIZE * 1.4}/>
    <text x=${across / 2} y=${y} font-size=${SIZE} text-anchor="middle"
      dominant-baseline="central">${text}</text>`;
}

/**
 * @param {number} x
 * @param {number} over
 * @param {number} foot
 * @param {string} text
 */
function beside(x, over, foot, text) {
  const tick = (/** @type {number} */ at) => `M${x - 4} ${at + 4}L${x + 4} ${at - 4}`;
  return svg`<path class="dimension" d="M${x} ${over}V${foot}${tick(over)}${tick(foot)}"/>
    <text x=${x + SIZE * 0.6} y=${(over + foot) / 2} font-size=${SIZE}
      dominant-baseline="central">${text}</text>`;
}
