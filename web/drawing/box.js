// A box flat and folded, from the plan's own numbers: nothing is worked out here but the scale.
import { html, svg } from "/vendor/lit-html/lit-html.js";
import { length, words } from "../app/shell/units.js";
import { textWidth } from "./labels.js";
import { pixelsOf } from "./rings.js";
import { shownWidth, tidyLength } from "./section.js";

/** @typedef {[number, number]} Point */
/** @typedef {[number, number, number, number]} Line */
/** @typedef {Api.Blank & {outline: Point[], lines: Api.BoxLine[]}} BoxBlank */
/** @typedef {Api.Plan & {folded: Api.Folded, blank: BoxBlank}} BoxPlan */

const SIZE = 18;

/**
 * The folded box: edges, bend lines lighter, what is hidden lightest; the side of a step shaded.
 * @param {Api.Folded} folded
 * @param {{pixels?: number, tallest?: number, test?: string, mark?: string}} [how] mark: a side to stress
 */
export function foldedDrawing(
  folded,
  { pixels = shownWidth(), tallest = pixels * 0.7, test = "folded", mark = "" } = {},
) {
  const room = SIZE * 2.4;
  const map = pixelsOf(folded.bounds, pixels - 2 * room, tallest - 1.6 * room);
  const [, bottom, right] = folded.bounds;
  const [wide, tall] = map([right, bottom]);
  const path = (/** @type {Line[]} */ lines) =>
    lines.map(([x1, y1, x2, y2]) => `M${map([x1, y1])}L${map([x2, y2])}`).join("");
  return html`<svg
    class="drawing folded"
    data-test=${test}
    role="img"
    aria-label=${describeFolded(folded)}
    width=${wide + 2 * room}
    height=${tall + 1.6 * room}
    viewBox="${-room} ${-SIZE * 0.7} ${wide + 2 * room} ${tall + 1.6 * room}">
    ${folded.faces
      .filter(({ side }) => mark && side === mark)
      .map(
        ({ outline }) =>
          svg`<path class="marked-face" d="M${outline.map((p) => map(p).join(" ")).join("L")}Z"/>`,
      )}
    <path class="hidden-line" d=${path(folded.lines.hidden)} />
    <path class="bend-edge" d=${path(folded.lines.bend)} />
    <path class="edge" d=${path(folded.lines.edge)} />
    ${folded.dimensions.map(({ name, from, to, mm }) => dimension(map(from), map(to), name, tidyLength(mm)))}
    ${folded.faces
      .filter(({ flat }) => flat === 1)
      .map(({ side, outline }) => sideName(side, outline.map(map), side === mark))}
  </svg>`;
}

/**
 * Beside its edge: length to the lower left, width to the lower right, height to the right.
 * @param {Point} from
 * @param {Point} to
 * @param {string} name
 * @param {string} text
 */
function dimension(from, to, name, text) {
  /** @type {Point} */
  const off =
    name === "length"
      ? [-SIZE * 0.5, SIZE * 0.95]
      : name === "width"
        ? [SIZE * 0.5, SIZE * 0.95]
        : [SIZE * 0.9, 0];
  const [a, b] = [from, to].map(([x, y]) => /** @type {Point} */ ([x + off[0], y + off[1]]));
  const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const width = textWidth(text, SIZE);
  return svg`<path class="dimension" d="M${a}L${b}"/>
    <path class="dimension tick"
      d="M${a[0] - 4} ${a[1] + 4}L${a[0] + 4} ${a[1] - 4}M${b[0] - 4} ${b[1] + 4}L${b[0] + 4} ${b[1] - 4}"/>
    <rect class="ground" x=${x - width / 2} y=${y - SIZE * 0.65} width=${width} height=${SIZE * 1.3}/>
    <text x=${x} y=${y} font-size=${SIZE} text-anchor="middle" dominant-baseline="central">${text}</text>`;
}

/**
 * @param {string} side
 * @param {Point[]} outline
 * @param {boolean} marked
 */
function sideName(side, outline, marked) {
  const x = outline.reduce((sum, p) => sum + p[0], 0) / outline.length;
  const y = outline.reduce((sum, p) => sum + p[1], 0) / outline.length;
  const width = textWidth(side, SIZE);
  return svg`<rect class="ground ${marked ? "marked-word" : ""}" x=${x - width / 2} y=${y - SIZE * 0.65}
      width=${width} height=${SIZE * 1.3}/>
    <text class="side-name ${marked ? "marked-word" : ""}" x=${x} y=${y} font-size=${SIZE}
      text-anchor="middle" dominant-baseline="central">${side}</text>`;
}

/**
 * @param {Api.Folded} folded
 * @returns {string}
 */
function describeFolded({ length_mm: long, width_mm: wide, height_mm: tall, faces }) {
  const sides = faces.filter(({ flat }) => flat === 1).map(({ side }) => side);
  return (
    `Box ${boxSize({ length_mm: long, width_mm: wide, height_mm: tall })}, folded, seen from the ` +
    `right front corner. Sides: ${sides.join(", ")}.`
  );
}

/**
 * "300 × 200 × 30 mm".
 * @param {{length_mm: number, width_mm: number, height_mm: number}} size
 * @returns {string}
 */
export function boxSize({ length_mm: long, width_mm: wide, height_mm: tall }) {
  return words({ text: [long, wide, tall].map(tidyLength).join(" × "), unit: length(0).unit });
}

/**
 * The flat blank to scale, inside up: cut line, bend lines with their numbers, overall sizes.
 * @param {BoxBlank} blank
 * @param {{pixels?: number, tallest?: number, test?: string}} [how]
 */
export function boxBlankDrawing(
  blank,
  { pixels = shownWidth(), tallest = pixels * 0.9, test = "blank" } = {},
) {
  const [longText, wideText] = [tidyLength(blank.length_mm), tidyLength(blank.width_mm)];
  const beside = textWidth(wideText, SIZE) + SIZE * 1.8;
  const map = pixelsOf([0, 0, blank.length_mm, blank.width_mm], pixels - beside - 12, tallest - SIZE * 3);
  const [across, down] = map([blank.length_mm, 0]);
  return html`<svg
    class="drawing blank box-blank"
    data-test=${test}
    role="img"
    aria-label=${describeBlank(blank)}
    width=${across + beside + 12}
    height=${down + SIZE * 3}
    viewBox="-6 -6 ${across + beside + 12} ${down + SIZE * 3}">
    <path class="sheet" d="M${blank.outline.map((p) => map(p).join(" ")).join("L")}Z" />
    ${blank.lines.map((line) => bendLine(line, map))}
    <path
      class="dimension"
      d="M0 ${down + SIZE * 1.3}H${across}M-4 ${
        down + SIZE * 1.3 + 4
      }l8 -8M${across - 4} ${down + SIZE * 1.3 + 4}l8 -8" />
    ${label(across / 2, down + SIZE * 1.3, longText)}
    <path
      class="dimension"
      d="M${across + SIZE} 0V${down}M${across + SIZE - 4} 4l8 -8M${across + SIZE - 4} ${down + 4}l8 -8" />
    <text x=${across + SIZE * 1.6} y=${down / 2} font-size=${SIZE} dominant-baseline="central">
      ${wideText}
    </text>
  </svg>`;
}

/**
 * @param {number} x
 * @param {number} y
 * @param {string} text
 */
function label(x, y, text) {
  const width = textWidth(text, SIZE);
  return svg`<rect class="ground" x=${x - width / 2} y=${y - SIZE * 0.7} width=${width} height=${SIZE * 1.4}/>
    <text x=${x} y=${y} font-size=${SIZE} text-anchor="middle" dominant-baseline="central">${text}</text>`;
}

/**
 * @param {Api.BoxLine} line
 * @param {(p: Point) => Point} map
 */
function bendLine({ bend, place, x1_mm: x1, y1_mm: y1, x2_mm: x2, y2_mm: y2, direction }, map) {
  const [a, b] = [map([x1, y1]), map([x2, y2])];
  // Lines of one side lie close together: their numbers stand apart along them.
  const share = 0.5 + (place % 2 ? -1 : 1) * 0.12 * Math.ceil((place - 1) / 1);
  const [x, y] = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  return svg`<path class="fold ${direction}" d="M${a}L${b}"/>
    <circle class="badge" cx=${x} cy=${y} r=${SIZE * 0.68}/>
    <text class="badge-number" x=${x} y=${y} font-size=${SIZE * 0.95} text-anchor="middle"
      dominant-baseline="central">${bend}</text>`;
}

/**
 * @param {BoxBlank} blank
 * @returns {string}
 */
function describeBlank(blank) {
  const lines = blank.lines.map((line) => `bend ${line.bend} ${line.side} ${line.direction}`);
  return (
    `Blank ${tidyLength(blank.length_mm)} by ${tidyLength(blank.width_mm)}, inside of the box up. ` +
    `${lines.join("; ")}.`
  );
}

/**
 * Whether it is drawn from a box.
 * @param {Api.Plan|null} plan
 * @returns {plan is BoxPlan}
 */
export const isBox = (plan) => Boolean(plan?.folded);
