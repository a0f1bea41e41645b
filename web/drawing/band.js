// A figure before and after results: two bands on one line, the results as points.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { axis } from "./axes.js";

/**
 * @typedef {{low: number, nominal: number, high: number}} Band
 * @typedef {{id: string, value: number, outlier?: boolean, weight?: number}} Point
 * weight: what a trial counts here, 0 to 1
 */

const WIDTH = 340;
const EDGE = 24;
const FONT = 17;

/**
 * @param {{before: Band, after: Band, points?: Point[], size?: number, words: string}} picture size: how much
 *   one shown unit is
 */
export function bandPicture({ before, after, points = [], size = 1, words }) {
  const all = [before.low, before.high, after.low, after.high, ...points.map((point) => point.value)];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  if (low === high) return nothing;
  const across = axis(low, high, { from: EDGE, to: WIDTH - EDGE, size, most: 5 });
  const { at } = across;
  return html`<svg
    class="drawing band-picture"
    viewBox="0 0 ${WIDTH} 112"
    role="img"
    aria-label=${words}
    data-test="band-picture">
    ${across.marks.map(
      (mark) =>
        svg`<path class="faint" d="M${mark.at} 8V84"/>
          <text class="quiet" x=${mark.at} y="104" text-anchor="middle"
            font-size=${FONT}>${mark.text}</text>`,
    )}
    <path
      class="was"
      d="M${at(before.low)} 24H${at(before.high)}M${at(before.low)} 17v14M${at(before.high)} 17v14M${at(
        before.nominal,
      )} 17v14"
      data-test="band-before" />
    <path class="now" d="M${at(after.low)} 52H${at(after.high)}" data-test="band-after" />
    <path class="now-middle" d="M${at(after.nominal)} 42v20" />
    ${points.map((point) => pointMark(at(point.value), 74, point))}
  </svg>`;
}

/**
 * Small where it counts little.
 * @param {number} x
 * @param {number} y
 * @param {Point} point
 */
function pointMark(x, y, { id, outlier, weight = 1 }) {
  return outlier
    ? svg`<path class="result-odd" d="M${x - 6} ${y - 6}l12 12M${x + 6} ${y - 6}l-12 12"
        data-test="band-point" data-id=${id} data-odd="true"/>`
    : svg`<circle class="result-point" cx=${x} cy=${y} r=${weight < 0.25 ? 3 : 6} data-test="band-point"
        data-id=${id}/>`;
}
