// The first start: what a device was asked in an empty shop, and what it guesses before it is asked.
import { anySettings, changeSettings, settings } from "./settings.js";

/** @typedef {"units"|"press"|"tools"} Step */

/** Where lengths are read in inches, by the region a browser names with its language (from memory of the
 * Unicode CLDR's measurement systems). */
const INCH_REGIONS = ["US", "LR", "MM"];

/**
 * @param {string} language as a browser names it: en-US
 * @returns {"mm"|"inch"}
 */
function usualUnits(language) {
  try {
    return INCH_REGIONS.includes(new Intl.Locale(language).region ?? "") ? "inch" : "mm";
  } catch {
    return "mm"; // no name of a language
  }
}

/** In force until somebody answers; a device that chose anything before keeps what it chose. */
export function guessUnits() {
  if (!anySettings()) changeSettings({ units: usualUnits(navigator.language) });
}

/** @param {Step} step */
export const isSkipped = (step) => (settings().skipped ?? []).includes(step);

/** @param {Step} step */
export const skip = (step) => changeSettings({ skipped: [...(settings().skipped ?? []), step] });

/**
 * The steps of a shop that is not set up; none where it is, or where all were answered or put off.
 * @param {Partial<Api.Shop>|undefined} shop
 * @returns {{step: Step, done: boolean}[]}
 */
export function firstSteps(shop) {
  if (!shop?.punches || !shop.dies) return [];
  const press = Boolean(shop.press);
  const tools = shop.punches.length > 0 && shop.dies.length > 0;
  /** @type {{step: Step, done: boolean}[]} */
  const steps = [
    { step: "units", done: isSkipped("units") },
    { step: "press", done: press },
    { step: "tools", done: tools },
  ];
  const open = steps.slice(1).some(({ step, done }) => !done && !isSkipped(step));
  const untouched = !press && !tools && !isSkipped("units");
  return open || untouched ? steps : [];
}
