// Where the gauge goes after a measured flange: the shop’s answer, else from the flange that the card
// was saved with.
import { readBetween } from "./saved_table.js";

/**
 * @typedef {{gauge_x_mm: number|null, error_mm: number|null, words?: string, to_check: string[],
 *   said?: Api.Said}} GaugeNext
 */

/** A flange within this of what was expected is as wanted. */
export const EVEN_MM = 0.05;

/**
 * As the shop reckons it (gauged_flange.next_gauge), between two rows of the card's own table.
 * @param {Api.Step} step
 * @param {number} measuredDeg
 * @param {number} flangeMm as measured
 * @param {number} stoodMm where the gauge stood
 * @returns {GaugeNext|null} null where the card does not tell
 */
export function fromFlange(step, measuredDeg, flangeMm, stoodMm) {
  const flange = step.gauged_flange;
  if (!flange) return null;
  const expected = readBetween(flange.rows, "measured_deg", measuredDeg, "flange_mm");
  if (expected === null) return null;
  const error = flangeMm - expected;
  if (Math.abs(error) > flange.most_error_mm) {
    const words = "That flange is further off than a gauge error can be. Check it before you set a new X.";
    return { gauge_x_mm: null, error_mm: error, words, to_check: FLANGE_CHECKS };
  }
  const next = Math.abs(error) <= EVEN_MM ? stoodMm : stoodMm - error;
  const reached = next >= flange.x_low_mm && next <= flange.x_high_mm;
  const words = reached ? "" : "The gauge does not reach far enough to correct the flange.";
  return { gauge_x_mm: reached ? next : null, error_mm: error, words, to_check: [] };
}

/** What to check, in this order, after a flange that cannot be; the shop says the same. */
const FLANGE_CHECKS = [
  "Measure again, to the face that the card's dimension goes to.",
  "Check which flange was measured.",
  "Read the gauge: did it stand at the X of the card, and the sheet against it?",
];

/**
 * @param {{correction: Api.Correction|null, gauge?: GaugeNext|null}} result
 * @returns {GaugeNext|null} null where no flange was measured
 */
export const gaugeAfter = ({ correction, gauge }) => correction?.flange ?? gauge ?? null;
