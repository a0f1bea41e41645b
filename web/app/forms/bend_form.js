// One bend to check: between the boxes, the address and the request.
import { typedNumber } from "./entry_form.js";
import { lengthUnit, typedLength } from "../shell/units.js";

/**
 * @typedef {{metal: string, thickness_mm: string, bend_length_mm: string, included_angle_deg: string,
 *   die: string, punch: string, punch_radius_mm: string}} BendForm
 */

/** @type {BendForm} */
const FIRST = {
  metal: "",
  thickness_mm: "",
  bend_length_mm: "",
  included_angle_deg: "90",
  die: "",
  punch: "",
  punch_radius_mm: "",
};

/**
 * What a field is called in the address.
 * @type {Record<keyof BendForm, string>}
 */
const SHORT = {
  metal: "metal",
  thickness_mm: "thickness",
  bend_length_mm: "length",
  included_angle_deg: "angle",
  die: "die",
  punch: "punch",
  punch_radius_mm: "tip",
};

const NAMES = /** @type {(keyof BendForm)[]} */ (Object.keys(SHORT));
const NEEDED = /** @type {const} */ (["metal", "thickness_mm", "bend_length_mm", "included_angle_deg"]);

/** @param {keyof BendForm} name */
const isLength = (name) => name.endsWith("_mm");

/**
 * @param {URLSearchParams} query
 * @returns {BendForm}
 */
export function formFromQuery(query) {
  const form = { ...FIRST };
  for (const name of NAMES) {
    const given = query.get(SHORT[name])?.slice(0, 60);
    if (given === undefined || given === null) continue;
    const unit = ` ${lengthUnit()}`;
    form[name] = isLength(name) && given.endsWith(unit) ? given.slice(0, -unit.length) : given;
  }
  return form;
}

/**
 * The address that opens this bend again, on a device of either unit.
 * @param {BendForm} form
 * @returns {string}
 */
export function queryFromForm(form) {
  const query = new URLSearchParams();
  for (const name of NAMES) {
    const typed = form[name].trim();
    if (typed !== "") query.set(SHORT[name], isLength(name) ? typedLength(typed) : typed);
  }
  return query.toString();
}

/**
 * What is still to be typed.
 * @param {BendForm} form
 * @returns {(keyof BendForm)[]}
 */
export function missing(form) {
  return NEEDED.filter((name) => form[name].trim() === "");
}

/**
 * @param {BendForm} form
 * @returns {Record<string, unknown>}
 */
export function bendRequest(form) {
  /** @type {Record<string, unknown>} */
  const request = {};
  for (const name of NAMES) {
    const typed = form[name].trim();
    if (typed === "") continue;
    request[name] = isLength(name)
      ? typedLength(typed)
      : name === "included_angle_deg"
        ? typedNumber(typed)
        : typed;
  }
  return request;
}
