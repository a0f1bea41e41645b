// One step small, for paper: the part in the tools at the bottom of the stroke, the flat sheet
// before it dashed, black lines only.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { boundsOf, closedPath } from "./rings.js";

/** @param {import("./pose.js").StepDrawing} drawing @param {number} opening the die's V in mm */
export function smallPose(drawing, opening) {
  const [left, bottom, right, top] = boundsOf([drawing.before.sheet, drawing.after.sheet]);
  const low = Math.min(bottom - 0.3 * opening, -1.3 * opening);
  const high = Math.max(top + 0.3 * opening, 2 * opening);
  const [from, to] = [Math.min(left, -1.5 * opening) - 2, Math.max(right, drawing.gauge_point?.[0] ?? 0, 1.5 * opening) + 2];
  return html`<svg class="small-pose" viewBox="${from} ${-high} ${to - from} ${high - low}" preserveAspectRatio="xMidYMid meet" aria-hidden="true">
    ${drawing.after.punch.length ? svg`<path class="tool" d=${closedPath(drawing.after.punch)}/>` : nothing}
    <path class="tool" d=${closedPath(drawing.die)}/>
    <path class="gauge" d=${closedPath(drawing.before.gauge)}/>
    <path class="was" d=${closedPath(drawing.before.sheet)}/>
    <path class="sheet" d=${closedPath(drawing.after.sheet)}/>
  </svg>`;
}
