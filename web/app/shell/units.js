// Numbers as the device's owner reads them. Display only: every calculation is the server's.
import { settings } from "./settings.js";

export const MM_PER_INCH = 25.4;
export const KN_PER_SHORT_TON = 8.896443230521; // 2000 lbf
export const KN_PER_METRIC_TON = 9.80665;
const KG_PER_POUND = 0.45359237;
export const M_PER_FOOT = 0.3048;

/** @typedef {{text: string, unit: string}} Shown */

/** @returns {boolean} */
const inch = () => settings().units === "inch";

/**
 * @param {number} value
 * @param {number} digits
 * @returns {string}
 */
export function fixed(value, digits) {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", "−");
}

/**
 * A length.
 * @param {number|null|undefined} mm
 * @param {{digits?: number}} [how]
 * @returns {Shown}
 */
export function length(mm, how = {}) {
  if (mm === null || mm === undefined) return { text: "–", unit: "" };
  if (!inch()) return { text: fixed(mm, how.digits ?? 1), unit: "mm" };
  if (settings().inches === "fraction") return { text: sixtyFourths(mm / MM_PER_INCH), unit: "in" };
  return { text: fixed(mm / MM_PER_INCH, (how.digits ?? 1) + 2), unit: "in" };
}

/**
 * Nearest 1/64 inch, reduced: 1 5/16.
 * @param {number} inches
 * @returns {string}
 */
function sixtyFourths(inches) {
  const all = Math.round(Math.abs(inches) * 64);
  let top = all % 64;
  let bottom = 64;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const whole = Math.floor(all / 64);
  const sign = inches < 0 && all > 0 ? "−" : "";
  if (top === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ""}${top}/${bottom}`;
}

/**
 * @param {number|null|undefined} kn
 * @param {{up?: boolean}} [how] up: rounded up, for what a press is set by
 * @returns {Shown}
 */
export function force(kn, { up = false } = {}) {
  if (kn === null || kn === undefined) return { text: "–", unit: "" };
  const value = inch() ? kn / KN_PER_SHORT_TON : kn;
  const digits = Math.abs(value) < 10 ? 1 : 0;
  return { text: fixed(up ? roundedUp(value, digits) : value, digits), unit: inch() ? "tons" : "kN" };
}

/**
 * @param {number|null|undefined} knPerM
 * @param {{up?: boolean}} [how] up: rounded up, for what a press is set by
 * @returns {Shown}
 */
export function forcePerLength(knPerM, { up = false } = {}) {
  if (knPerM === null || knPerM === undefined) return { text: "–", unit: "" };
  const value = inch() ? (knPerM / KN_PER_SHORT_TON) * M_PER_FOOT : knPerM;
  const digits = Math.abs(value) < 20 ? 1 : 0;
  return { text: fixed(up ? roundedUp(value, digits) : value, digits), unit: inch() ? "tons/ft" : "kN/m" };
}

/**
 * @param {number} value
 * @param {number} digits
 */
function roundedUp(value, digits) {
  const parts = 10 ** digits;
  return Math.ceil(value * parts - 1e-9) / parts;
}

/**
 * @param {number|null|undefined} deg
 * @param {number} [digits]
 * @returns {Shown}
 */
export function angle(deg, digits = 1) {
  return deg === null || deg === undefined
    ? { text: "–", unit: "" }
    : { text: fixed(deg, digits), unit: "°" };
}

/**
 * @param {number|null|undefined} kg
 * @returns {Shown}
 */
export function mass(kg) {
  if (kg === null || kg === undefined) return { text: "–", unit: "" };
  const value = inch() ? kg / KG_PER_POUND : kg;
  return { text: fixed(value, value < 10 ? 2 : 1), unit: inch() ? "lb" : "kg" };
}

/**
 * A value by the end of its name, as the API names things.
 * @param {string} name
 * @param {number} value
 * @returns {Shown}
 */
export function byName(name, value) {
  if (/_(low|high)$/.test(name)) return byName(name.replace(/_(low|high)$/, ""), value);
  if (name.endsWith("_kn_per_m")) return forcePerLength(value);
  if (name.endsWith("_mm_s")) {
    const speed = length(value, { digits: 0 });
    return { text: speed.text, unit: `${speed.unit}/s` };
  }
  if (name.endsWith("_mm")) return length(value, { digits: Math.abs(value) < 10 ? 2 : 1 });
  if (name.endsWith("_kn")) return force(value);
  if (name.endsWith("_deg")) return angle(value);
  if (name.endsWith("_kg")) return mass(value);
  if (name.endsWith("_percent")) return { text: fixed(value, 0), unit: "%" };
  const parts = Math.abs(value) < 10 ? 100 : Math.abs(value) < 100 ? 10 : 1; // three figures
  return { text: String(Math.round(value * parts) / parts), unit: "" };
}

/**
 * One string: "12.5 mm", "88.4°".
 * @param {Shown} shown
 * @returns {string}
 */
export function words(shown) {
  return shown.unit === "°" ? `${shown.text}°` : `${shown.text} ${shown.unit}`.trim();
}

/**
 * As a sentence says it: 46 mm, not 46.0 mm; thousandths of an inch stay.
 * @param {Shown} shown
 * @returns {string}
 */
export function inSentence({ text, unit }) {
  return words({ text: unit === "in" ? text : text.replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, ""), unit });
}

/**
 * The words of a check in this device's units.
 * @param {string} template
 * @param {Record<string, number>} numbers
 */
export function fill(template, numbers) {
  return template.replace(/\{(\w+)\}/g, (whole, name) =>
    name in numbers ? inSentence(byName(name, numbers[name])) : whole,
  );
}

/** The unit forces are shown and typed in, and how many kN one of it is. */
export function forceUnit() {
  return inch() ? { unit: "tons", size: KN_PER_SHORT_TON } : { unit: "kN", size: 1 };
}

/** The same for forces per length, in kN/m. */
export function ratingUnit() {
  return inch() ? { unit: "tons/ft", size: KN_PER_SHORT_TON / M_PER_FOOT } : { unit: "kN/m", size: 1 };
}

/**
 * A force or a force per length for an input box, without unit.
 * @param {number|null|undefined} value [kN] or [kN/m]
 * @param {{size: number}} unit
 * @returns {string}
 */
export function forceToType(value, { size }) {
  if (value === null || value === undefined) return "";
  return size === 1 ? String(value) : String(Number((value / size).toFixed(4)));
}

/**
 * What a box of force sends: a bare number has this device's unit, and tons are its tons. The server reads
 * all else and says what it does not understand.
 * @param {string} typed
 * @param {{unit: string}} unit
 * @returns {string}
 */
export function typedForce(typed, { unit }) {
  const text = pointed(typed);
  if (BARE.test(text)) return `${text} ${unit}`.replace(" tons", " short tons");
  return text.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i, (_, number, per = "") => {
    const feet = per ? per.includes("ft") : inch();
    return `${number}${feet ? "short tons" : "t"}${per}`;
  });
}

/**
 * The unit a bare number typed into a length field means on this device.
 * @returns {"mm"|"in"}
 */
export function lengthUnit() {
  return inch() ? "in" : "mm";
}

/**
 * What a length field sends: bare numbers get this device's unit, anything else goes as typed,
 * because the server reads units and says what it does not understand.
 * @param {string} typed
 * @param {"mm"|"in"} [unit] of a bare number
 * @returns {string}
 */
export function typedLength(typed, unit = lengthUnit()) {
  const text = pointed(typed);
  return BARE.test(text) || (unit === "in" && FRACTION.test(text)) ? `${text} ${unit}` : text;
}

/**
 * With a decimal point for a decimal comma, unless the comma may part thousands.
 * @param {string} typed
 */
export function pointed(typed) {
  const text = typed.trim().replace("−", "-"); // as the screen writes it
  return TWO_WAYS.test(text) ? text : text.replace(/^([+-]?\d+),(\d+)(?![\d.,])/, "$1.$2");
}

const BARE = /^[+-]?(\d+\.?\d*|\.\d+)$/;
// Some write a thousand so, others a decimal.
const TWO_WAYS = /^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/;
const FRACTION = /^[+-]?(\d+[\s-]+)?\d+\s*\/\s*\d+$/;

/**
 * What a number may mean that can be read in two ways, or lacks its unit: 1,200 and, in mm, 1/8.
 * @param {string} typed
 * @param {"mm"|"in"} [unit] of a bare number
 * @returns {string[]} each as it can be typed; empty when there is nothing to ask
 */
export function meanings(typed, unit = lengthUnit()) {
  const text = typed.trim().replace("−", "-");
  const [, first, last, after] = TWO_WAYS.exec(text) ?? [];
  if (first) {
    const point = String(Number(`${first}.${last}`));
    return [point, `${first}${last}`].map((one) => (after ? `${one} ${after}` : one));
  }
  return unit === "mm" && FRACTION.test(text) ? [`${text} in`] : [];
}

/**
 * A typed length with its unit, as far as this device reads it: a decimal number of mm or inches.
 * @param {string|undefined} typed as typedLength gives it
 * @returns {number|null} null for anything else
 */
export function typedMm(typed) {
  const [, value, unit] = /^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.exec(typed ?? "") ?? [];
  return value ? Number(value) * (unit === "in" ? MM_PER_INCH : 1) : null;
}

/**
 * A length for an input box, without unit.
 * @param {number|null|undefined} mm
 * @returns {string}
 */
export function lengthToType(mm) {
  if (mm === null || mm === undefined) return "";
  const value = inch() ? mm / MM_PER_INCH : mm;
  return String(Number(value.toFixed(inch() ? 4 : 3)));
}
