// How far a step may be set. Every angle and depth to set that this app shows passes here: it is
// inside what punch, die and press can do, or it is not shown.

/** @typedef {{set_angle_deg: number|null, punch_depth_mm: number|null}} Set */

/** What to check, in this order, when no setting mends a bend; the shop says the same. */
export const TO_CHECK = [
  "Read the angle again: the included angle between the flats, at this bend.",
  "Compare the tools in the press with the card: punch and die.",
  "Measure the thickness of the sheet.",
  "Zero the depth again, at first touch of the sheet.",
];

const MARGIN_DEG = 0.5;
const ON_CENTRE_MM = 0.05;
const DEG = 180 / Math.PI;

/**
 * How far a step may be set. A step of a card that an earlier release saved does not say it: then it
 * follows from the V as drawn, its own setting and its table, as in the shop (setting_json.limits_of).
 * @param {Api.Step} step
 * @returns {Api.SettingLimits|null} null where the step has no tools
 */
export function limitsOf(step) {
  if (step.limits !== undefined) return step.limits;
  const rows = /** @type {Set[]} */ ([step, ...(step.corrections ?? [])]).filter(isSetting);
  if (!rows.length) return null;
  const drawn = drawnV(step) + MARGIN_DEG;
  const sharpest = Math.max(Math.min(...rows.map((row) => row.set_angle_deg)), drawn);
  const depths = rows.filter((row) => row.set_angle_deg >= sharpest).map((row) => row.punch_depth_mm);
  if (!depths.length) return { sharpest_deg: 180, deepest_mm: 0, limited_by: ["die angle"] };
  const by = sharpest === drawn ? "die angle" : "saved table";
  return { sharpest_deg: sharpest, deepest_mm: Math.max(...depths), limited_by: [by] };
}

/**
 * Whether tools and press of a step reach a setting.
 * @param {Api.Step} step
 * @param {Set} setting
 */
export function inReach(step, setting) {
  const limits = limitsOf(step);
  if (!limits) return false;
  const { set_angle_deg: angle, punch_depth_mm: depth } = setting;
  const bends = angle === null || (angle >= limits.sharpest_deg && angle < 180);
  return bends && (depth === null || (depth > 0 && depth <= limits.deepest_mm));
}

/**
 * @param {Set} row
 * @returns {row is {set_angle_deg: number, punch_depth_mm: number}}
 */
const isSetting = (row) => typeof row.set_angle_deg === "number" && typeof row.punch_depth_mm === "number";

/**
 * The angle of the V in a saved drawing, 0 where none is drawn.
 * @param {Api.Step} step
 */
function drawnV({ drawing, v_opening_mm: opening }) {
  const floors = (drawing?.die ?? [])
    .filter(([x, y]) => Math.abs(x) < ON_CENTRE_MM && y < 0)
    .map(([, y]) => -y);
  return floors.length && opening ? 2 * Math.atan(opening / 2 / Math.min(...floors)) * DEG : 0;
}
