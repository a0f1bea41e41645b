// What a box of numbers understood, in both unit systems: shown beside it, never sent. The server reads what
// is sent; tests hold both to the same rows.
import {
  fixed,
  forceUnit,
  KN_PER_METRIC_TON,
  KN_PER_SHORT_TON,
  lengthUnit,
  M_PER_FOOT,
  MM_PER_INCH,
  pointed,
  ratingUnit,
  typedForce,
  typedLength,
} from "./units.js";

/** @typedef {{spellings: Record<string, number>, both: [string, number, number][]}} Quantity
 *   spellings: how much one of a unit is, in the API's unit; both: the units it is shown in, how much one is,
 *   and how many digits are shown at least */

const LENGTHS = { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, inch: MM_PER_INCH, '"': MM_PER_INCH, ft: 304.8 };
const TONS = { "short tons": KN_PER_SHORT_TON, t: KN_PER_METRIC_TON };

/** @type {Record<string, Quantity>} by the unit that stands at the box, without "per" */
const QUANTITIES = {
  length: { spellings: LENGTHS, both: [["mm", 1, 3], ["in", MM_PER_INCH, 4]] }, // prettier-ignore
  speed: {
    spellings: { "mm/s": 1, "in/s": MM_PER_INCH },
    both: [["mm/s", 1, 3], ["in/s", MM_PER_INCH, 3]], // prettier-ignore
  },
  force: {
    spellings: { kn: 1, n: 0.001, ...TONS },
    both: [["kN", 1, 1], ["short tons", KN_PER_SHORT_TON, 1]], // prettier-ignore
  },
  rating: {
    spellings: { "kn/m": 1, "n/mm": 1, "short tons/ft": KN_PER_SHORT_TON / M_PER_FOOT, "t/m": TONS.t },
    both: [["kN/m", 1, 1], ["short tons/ft", KN_PER_SHORT_TON / M_PER_FOOT, 1]], // prettier-ignore
  },
};

const NUMBER = /^([+-]?)(?:(?:(\d+)[ -])?(\d+)\/(\d+)|(\d+\.?\d*|\.\d+)) *(.*)$/;

/**
 * The quantity of a box, by the unit that stands at it, and its text as it is sent.
 * @param {string} typed
 * @param {string} unit
 * @returns {[Quantity, string]|null} null for a box of something else
 */
function asSent(typed, unit) {
  if (unit === lengthUnit()) return [QUANTITIES.length, typedLength(typed)];
  if (unit === `${lengthUnit()}/s`) return [QUANTITIES.speed, bare(typed) ? `${typed} ${unit}` : typed];
  if (unit === forceUnit().unit) return [QUANTITIES.force, typedForce(typed, forceUnit())];
  if (unit === ratingUnit().unit) return [QUANTITIES.rating, typedForce(typed, ratingUnit())];
  return null;
}

/** @param {string} typed */
const bare = (typed) => /^[\d.,]+$/.test(typed.trim());

/**
 * @param {string} typed
 * @param {string} unit as it stands at the box
 * @returns {number|null} in the API's unit; null where it is not read here
 */
export function valueOf(typed, unit) {
  const found = asSent(typed, unit);
  if (!found) return null;
  const [{ spellings }, sent] = found;
  const [, sign, whole = "0", top, bottom, decimal, spelled = ""] = NUMBER.exec(pointed(sent)) ?? [];
  const size = /** @type {Record<string, number>} */ (spellings)[spelled.toLowerCase().trim()];
  if (sign === undefined || !size || Number(bottom) === 0) return null;
  const number = top ? Number(whole) + Number(top) / Number(bottom) : Number(decimal);
  return (sign === "-" ? -number : number) * size;
}

/**
 * "2 mm = 0.0787 in"; empty where nothing was understood.
 * @param {string} typed
 * @param {string} unit as it stands at the box
 */
export function understood(typed, unit) {
  const value = valueOf(typed, unit);
  if (value === null) return "";
  const [{ both }] = /** @type {[Quantity, string]} */ (asSent(typed, unit));
  return both.map(([name, size, digits]) => `${tidy(value / size, digits)} ${name}`).join(" = ");
}

/**
 * @param {number} value
 * @param {number} digits
 */
const tidy = (value, digits) =>
  fixed(value, digits)
    .replace(/(\.\d*?)0+$/, "$1")
    .replace(/\.$/, "");
