// The strip of a test bend to scale: its bend line, its two measures.
import { html } from "/vendor/lit-html/lit-html.js";
import { length, words } from "../app/shell/units.js";

const WIDTH = 400;
const EDGE = 30;

/**
 * @param {number} longMm
 * @param {number} wideMm along the bend
 */
export function stripDrawing(longMm, wideMm) {
  const scale = Math.min((WIDTH - 2 * EDGE - 34) / longMm, 170 / wideMm);
  const [long, wide] = [longMm * scale, wideMm * scale];
  const [left, top] = [EDGE + 34, 24];
  const [right, bottom, middle] = [left + long, top + wide, left + long / 2];
  const saidLong = words(length(longMm, { digits: 0 }));
  const saidWide = words(length(wideMm, { digits: 0 }));
  return html`<svg
    class="drawing strip"
    viewBox="0 0 ${WIDTH} ${Math.round(bottom + 52)}"
    role="img"
    aria-label="A strip ${saidLong} long and ${saidWide} wide, bent in its middle"
    data-test="strip">
    <path class="sheet" d="M${left} ${top}H${right}V${bottom}H${left}Z" />
    <path class="fold" d="M${middle} ${top - 14}V${bottom + 14}" />
    <path
      class="dimension"
      d="M${left} ${bottom + 20}H${right}M${left} ${bottom + 15}v10M${right} ${bottom + 15}v10" />
    <text x=${middle} y=${bottom + 44} text-anchor="middle" font-size="18">${saidLong}</text>
    <path
      class="dimension"
      d="M${left - 16} ${top}V${bottom}M${left - 21} ${top}h10M${left - 21} ${bottom}h10" />
    <text
      x=${left - 26}
      y=${(top + bottom) / 2}
      text-anchor="middle"
      font-size="18"
      transform="rotate(-90 ${left - 26} ${(top + bottom) / 2})">
      ${saidWide}
    </text>
  </svg>`;
}
