// One step small: the part in the tools before, at its closest to a tool, and after, black lines.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { momentsOf, nearOf } from "../step/step_moments.js";
import { isSmall, nearLabel, nearMiddle } from "../../drawing/near.js";
import { boundsOf, closedPath, openPath } from "../../drawing/rings.js";

/** @typedef {import("../../drawing/motion.js").Shown} Shown */

/**
 * Two or three small pictures with a word under each. A step that does not say how it moves has no
 * picture in between.
 * @param {import("../step/step_moments.js").Drawn} step
 */
export function smallPoses(step) {
  const { drawing } = step;
  const moments = momentsOf(step);
  const near = nearOf(step);
  const box = windowOf(drawing, step.v_opening_mm, moments ? near : null);
  return html`<div class="small-poses" data-test="small-poses">
    ${small("before", "before", still(drawing.before), drawing, box)}
    ${
      moments
        ? small("during", near ? nearLabel(near).join(" ") : "half way", moments.shown, drawing, box, near)
        : nothing
    }
    ${small("after", "after", still(drawing.after), drawing, box)}
  </div>`;
}

/**
 * @param {Api.Pose} pose
 * @returns {Shown}
 */
const still = ({ sheet, ram, holder, punch, gauge }) => ({
  sheet: closedPath(sheet),
  tools: [ram, holder, punch].map(closedPath).filter(Boolean),
  down: 0,
  gauge: closedPath(gauge),
  back: 0,
});

/** @typedef {{from: number, to: number, low: number, high: number}} Box */

/**
 * @param {Api.Drawing} drawing
 * @param {number|null} die
 * @param {Api.Near|null} near
 * @returns {Box}
 */
function windowOf(drawing, die, near) {
  const [left, bottom, right, top] = boundsOf([drawing.before.sheet, drawing.after.sheet]);
  const opening = die ?? (right - left) / 6;
  const [x, y] = near ? nearMiddle(near) : [0, 0];
  return {
    from: Math.min(left, -1.5 * opening, x - opening) - 2,
    to: Math.max(right, drawing.gauge_point?.[0] ?? 0, 1.5 * opening, x + opening) + 2,
    low: Math.min(bottom - 0.3 * opening, -1.3 * opening, y - opening),
    high: Math.max(top + 0.3 * opening, 2 * opening, y + opening),
  };
}

/**
 * @param {string} name
 * @param {string} said
 * @param {Shown} now
 * @param {Api.Drawing} drawing
 * @param {Box} box
 * @param {Api.Near|null} [near] marked with a ring
 */
function small(name, said, now, drawing, { from, to, low, high }, near = null) {
  return html`<figure class="small" data-moment=${name}>
    <svg
      class="small-pose"
      viewBox="${from} ${-high} ${to - from} ${high - low}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${closedPath(drawing.die)} />
      <g transform="translate(0 ${now.down})">
        ${now.tools.map((path) => svg`<path class="tool" d=${path}/>`)}
      </g>
      <path class="gauge" transform="translate(${now.back} 0)" d=${now.gauge} />
      <path class="sheet" d=${now.sheet} />
      ${near ? mark(near, to - from) : nothing}
    </svg>
    <figcaption data-test="small-${name}">${said}</figcaption>
  </figure>`;
}

/**
 * @param {Api.Near} near
 * @param {number} width of the picture, mm
 */
function mark(near, width) {
  if (!isSmall(near, width)) return svg`<path class="ring" d=${openPath([near.on_sheet, near.on_tool])}/>`;
  const [x, y] = nearMiddle(near);
  return svg`<circle class="ring" cx=${x} cy=${-y} r=${width * 0.05}/>`;
}
