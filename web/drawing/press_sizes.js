// Where the sizes of a press are measured: from the front and from the side, each size with its number.
// A sketch of no press in particular, and not to scale.
import { html, svg } from "/vendor/lit-html/lit-html.js";

/**
 * The number of each size in the sketch.
 * @type {Record<string, number>}
 */
export const MARKS = {
  bed_length_mm: 1,
  between_frames_mm: 2,
  open_height_mm: 3,
  stroke_mm: 4,
  throat_mm: 5,
  ram_width_mm: 6,
  ram_height_mm: 7,
  bed_width_mm: 8,
  bed_height_mm: 9,
  gauge_x_min_mm: 10,
  gauge_x_max_mm: 10,
  gauge_r_min_mm: 11,
  gauge_r_max_mm: 11,
  finger_height_mm: 12,
  finger_depth_mm: 13,
};

/**
 * @param {number} x
 * @param {number} y
 * @param {number} number
 */
const badge = (x, y, number) =>
  svg`<circle class="mark" cx=${x} cy=${y} r="13"/>
    <text class="mark-number" x=${x} y=${y + 6} text-anchor="middle" font-size="16">${number}</text>`;

/**
 * @param {number} x1
 * @param {number} x2
 * @param {number} y
 * @param {number} number
 * @param {number} [at] where its number stands; the middle where none is given
 */
const across = (x1, x2, y, number, at = (x1 + x2) / 2) =>
  svg`<path class="dimension" d="M${x1} ${y}H${x2}M${x1} ${y - 6}v12M${x2} ${y - 6}v12"/>
    ${badge(at, y, number)}`;

/**
 * @param {number} x
 * @param {number} y1
 * @param {number} y2
 * @param {number} number
 * @param {number} [at]
 */
const upright = (x, y1, y2, number, at = (y1 + y2) / 2) =>
  svg`<path class="dimension" d="M${x} ${y1}V${y2}M${x - 6} ${y1}h12M${x - 6} ${y2}h12"/>
    ${badge(x, at, number)}`;

/** @param {string} d */
const solid = (d) => svg`<path class="tool" d=${d} />`;

export const pressSizes = () =>
  html`<div class="press-sizes" data-test="press-sizes">
    <figure>
      <svg class="drawing" viewBox="0 0 360 300" role="img" aria-label="The press from the front">
        ${solid("M40 20H70V280H40Z")}${solid("M290 20H320V280H290Z")}${solid("M55 60H305V120H55Z")}
        ${solid("M30 200H330V260H30Z")} ${across(70, 290, 160, 2)} ${across(30, 330, 285, 1)}
      </svg>
      <figcaption>From the front</figcaption>
    </figure>
    <figure>
      <svg class="drawing" viewBox="0 0 360 300" role="img" aria-label="The press from the side">
        ${solid("M120 12H345V288H120V262H285V42H120Z")} ${solid("M150 42H190V110H150Z")}
        ${solid("M150 190H190V262H150Z")} ${solid("M160 110H180V125L170 140L160 125Z")}
        ${solid("M158 170H165L170 176L175 170H182V190H158Z")} ${solid("M225 158H262V168H225Z")}
        <path class="centre" d="M170 20V282" />
        ${upright(110, 110, 190, 3)} ${upright(70, 110, 150, 4)} ${across(170, 285, 72, 5, 250)}
        ${across(150, 190, 28, 6, 206)} ${upright(135, 42, 110, 7, 76)} ${across(150, 190, 275, 8, 206)}
        ${upright(135, 190, 262, 9, 226)} ${across(170, 225, 218, 10)} ${upright(205, 158, 170, 11, 138)}
        ${upright(272, 158, 168, 12, 190)} ${across(225, 262, 140, 13, 243)}
      </svg>
      <figcaption>From the side; the back gauge stands on the right</figcaption>
    </figure>
  </div>`;
