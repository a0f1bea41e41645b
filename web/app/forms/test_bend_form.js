// A test bend: what is typed, what is asked of the server, what is sent.
import { bendRequest } from "./bend_form.js";
import { NOTHING_TYPED, readMeasured } from "../results/measured_bend.js";
import { settings } from "../shell/settings.js";
import { typedLength } from "../shell/units.js";

/** @typedef {import("./bend_form.js").BendForm} BendForm */
/**
 * @typedef {import("../results/measured_bend.js").Typed & {depth: string, flat: string, leftFlange: string,
 *   rightFlange: string}} Measured
 */
/** @typedef {"choose"|"bend"|"measure"|"taught"} Stage */
/** @typedef {Omit<Api.Band, "origin">} Band */
/**
 * @typedef {object} State
 * @property {Stage} stage
 * @property {BendForm} form
 * @property {Measured} typed
 * @property {Api.OneBend|null} bend the answer to the bend that was chosen
 * @property {Api.TestBendAnswer|null} answer
 * @property {string} id of the test bend, made here so that sending it twice does no harm
 * @property {Record<string, string[]>} wrong
 * @property {string} general
 * @property {boolean} busy
 */

/** @type {Measured} */
export const NOTHING_MEASURED = {
  ...NOTHING_TYPED,
  depth: "",
  flat: "",
  leftFlange: "",
  rightFlange: "",
};

/**
 * Lengths of a test bend by their names in the API.
 * @type {[keyof Measured, string][]}
 */
const LENGTHS = [
  ["depth", "punch_depth_mm"],
  ["flat", "flat_length_mm"],
  ["leftFlange", "flange_left_mm"],
  ["rightFlange", "flange_right_mm"],
  ["radius", "radius_mm"],
];

/** @param {Measured} typed */
export const somethingMeasured = (typed) =>
  Object.entries(typed).some(([name, text]) => name !== "places" && name !== "lot" && text.trim() !== "");

/**
 * What goes to the server; the server reads the lengths.
 * @param {string} id
 * @param {BendForm} form
 * @param {Pick<Api.OneBend, "die"|"punch"|"set_angle_deg">} bend as it was answered
 * @param {Measured} typed
 * @returns {{body: Record<string, unknown>, wrong: Record<string, string[]>}}
 */
export function testBend(id, form, bend, typed) {
  const { angles, wrong } = readMeasured(typed);
  const { metal, thickness_mm, bend_length_mm, included_angle_deg } = bendRequest(form);
  /** @type {Record<string, unknown>} */
  const body = {
    id,
    metal,
    thickness_mm,
    bend_length_mm,
    included_angle_deg,
    die: bend.die,
    punch: bend.punch,
    ...angles,
  };
  body.set_angle_deg = typed.set.trim() ? setAngle(typed.set, wrong) : bend.set_angle_deg;
  for (const [key, name] of LENGTHS) if (typed[key].trim()) body[name] = typedLength(typed[key]);
  if (typed.lot.trim()) body.lot = typed.lot.trim();
  if (typed.note.trim()) body.note = typed.note.trim();
  if (settings().name) body.by = settings().name;
  return { body, wrong };
}

/**
 * @param {string} typed
 * @param {Record<string, string[]>} wrong
 */
function setAngle(typed, wrong) {
  const { angles } = readMeasured({ ...NOTHING_MEASURED, one: typed });
  if (angles.measured_deg === undefined) {
    wrong.set_angle_deg = ["Type the angle that was set in degrees, such as 88.5."];
  }
  return angles.measured_deg;
}
