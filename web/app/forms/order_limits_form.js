// What is wished of the order, as it is picked and typed; it moves with the part's bends and flats.
import { lengthToType, typedLength } from "../shell/units.js";

/**
 * @typedef {object} OrderLimitsForm
 * @property {string} first number of a bend, or ""
 * @property {string} last
 * @property {boolean} no_turn_over
 * @property {boolean} no_turn_end
 * @property {boolean} one_set_up
 * @property {number[]} critical_flats
 * @property {string} margin clearance wanted, as typed; empty: the usual
 */

export const USUAL_MARGIN_MM = 2; // the server's own when none is sent

/** @returns {OrderLimitsForm} */
export const noOrderLimits = () => ({
  first: "",
  last: "",
  no_turn_over: false,
  no_turn_end: false,
  one_set_up: false,
  critical_flats: [],
  margin: "",
});

/**
 * A card's wishes in boxes; old cards have none.
 * @param {Api.GivenOrderLimits|undefined} wishes
 * @returns {OrderLimitsForm}
 */
export function orderLimitsFromPart(wishes) {
  if (!wishes) return noOrderLimits();
  const { first, last, margin_mm: margin } = wishes;
  return {
    first: first ? String(first) : "",
    last: last ? String(last) : "",
    no_turn_over: Boolean(wishes.no_turn_over),
    no_turn_end: Boolean(wishes.no_turn_end),
    one_set_up: Boolean(wishes.one_set_up),
    critical_flats: [...(wishes.critical_flats ?? [])],
    margin: margin === undefined || margin === USUAL_MARGIN_MM ? "" : lengthToType(margin),
  };
}

/**
 * What POST /plan takes: only what is wished, nothing for nothing.
 * @param {OrderLimitsForm|undefined} form
 * @param {"mm"|"in"} unit
 * @returns {{wishes?: Record<string, unknown>}}
 */
export function orderLimitsRequest(form, unit) {
  const {
    first,
    last,
    no_turn_over,
    no_turn_end,
    one_set_up,
    critical_flats: flats,
    margin,
  } = form ?? noOrderLimits();
  const wishes = {
    ...(first ? { first: Number(first) } : {}),
    ...(last ? { last: Number(last) } : {}),
    ...(no_turn_over ? { no_turn_over } : {}),
    ...(no_turn_end ? { no_turn_end } : {}),
    ...(one_set_up ? { one_set_up } : {}),
    ...(flats.length ? { critical_flats: flats } : {}),
    ...(margin.trim() ? { margin_mm: typedLength(margin, unit) } : {}),
  };
  return Object.keys(wishes).length ? { wishes } : {};
}

/**
 * Bends and flats keep their wishes when others come or go before them.
 * @param {OrderLimitsForm|undefined} form
 * @param {number} gone number of the bend that goes, with the flat after it; 0 for one that comes at the left
 *   end
 * @returns {{wishes?: OrderLimitsForm}}
 */
export function orderLimitsShifted(form, gone) {
  if (!form) return {};
  const by = gone ? -1 : 1;
  const bend = (/** @type {string} */ typed) =>
    !typed || Number(typed) === gone ? "" : Number(typed) > gone ? String(Number(typed) + by) : typed;
  const flats = form.critical_flats
    .filter((flat) => !gone || flat !== gone + 1)
    .map((flat) => (flat > gone ? flat + by : flat));
  return { wishes: { ...form, first: bend(form.first), last: bend(form.last), critical_flats: flats } };
}

/**
 * What is left of it where bends and flats are numbered anew.
 * @param {OrderLimitsForm} form
 * @returns {OrderLimitsForm}
 */
export const unnumbered = (form) => ({ ...form, first: "", last: "", critical_flats: [] });

/**
 * In a few words, for the folded heading.
 * @param {OrderLimitsForm|undefined} form
 * @returns {string}
 */
export function orderLimitsWords(form) {
  const {
    first,
    last,
    no_turn_over,
    no_turn_end,
    one_set_up,
    critical_flats: flats,
    margin,
  } = form ?? noOrderLimits();
  return [
    first && `bend ${first} first`,
    last && `bend ${last} last`,
    no_turn_over && "never turned over",
    no_turn_end && "never turned end for end",
    one_set_up && "one set-up",
    flats.length && `flat${flats.length > 1 ? "s" : ""} ${flats.join(", ")} gauged`,
    margin.trim() && `${margin.trim()} clear`,
  ]
    .filter(Boolean)
    .join(", ");
}
