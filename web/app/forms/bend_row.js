// One bend as it is typed, of a section or of a box's side: to and from what the API takes.
import { typedNumber } from "./entry_form.js";
import { namedTools, toolsFromPart } from "./named_tools.js";
import { lengthToType, typedLength } from "../shell/units.js";

/** @typedef {"bend"|"closed_hem"|"open_hem"} Kind */
/**
 * @typedef {{angle: string, direction: "up"|"down", radius: string, kind: Kind, gap: string, die?: string,
 *   punch?: string}} BendRow die, punch: codes of tools asked for
 */

/** @type {[Kind, string][]} */
export const KINDS = [
  ["bend", "Bend"],
  ["closed_hem", "Closed hem"],
  ["open_hem", "Open hem"],
];

/** @returns {BendRow} */
export const newBend = () => ({ angle: "90", direction: "up", radius: "", kind: "bend", gap: "" });

/**
 * @param {Api.GivenBend} bend of a part
 * @returns {BendRow}
 */
export const bendFromPart = (bend) => ({
  angle: String(bend.included_angle_deg),
  direction: bend.direction,
  radius: lengthToType(bend.inside_radius_mm),
  kind: bend.kind ?? "bend",
  gap: bend.kind === "open_hem" ? lengthToType(bend.hem_gap_mm) : "",
  ...toolsFromPart(bend),
});

/**
 * @param {BendRow} bend
 * @param {"mm"|"in"} unit of bare lengths
 */
export const bendRequest = (bend, unit) => ({
  included_angle_deg: bend.kind === "bend" ? typedNumber(bend.angle) : 0,
  direction: bend.direction,
  kind: bend.kind,
  ...(bend.radius.trim() && bend.kind === "bend" ? { inside_radius_mm: typedLength(bend.radius, unit) } : {}),
  ...(bend.kind === "open_hem" ? { hem_gap_mm: typedLength(bend.gap, unit) } : {}),
  ...namedTools(bend),
});
