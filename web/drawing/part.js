// The finished part and its blank, whatever it is: a section or a box.
import { boxBlankDrawing, foldedDrawing, isBox } from "./box.js";
import { blankDrawing } from "./blank.js";
import { sectionDrawing } from "./section.js";

/** @typedef {import("./box.js").BoxBlank} BoxBlank */

/**
 * @param {Api.Plan} plan
 * @param {{pixels?: number, tallest?: number, test?: string, mark?: number}} [how] mark: a bend to stress
 */
export function finishedDrawing(plan, { mark = 0, ...how } = {}) {
  if (!isBox(plan)) return sectionDrawing(plan, { mark, ...how });
  const side = plan.blank.lines.find((line) => line.bend === mark)?.side ?? "";
  return foldedDrawing(plan.folded, { ...how, mark: side });
}

/**
 * @param {Api.Blank} blank
 * @param {{pixels?: number, tallest?: number, test?: string}} [how]
 */
export function flatDrawing(blank, how = {}) {
  return blank.outline ? boxBlankDrawing(/** @type {BoxBlank} */ (blank), how) : blankDrawing(blank, how);
}
