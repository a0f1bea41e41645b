// What this device prefers. Kept on the device; no account.
import { readKept, writeKept } from "./kept_json.js";

/**
 * @typedef {{units: "mm"|"inch", inches: "decimal"|"fraction", theme: "system"|"day"|"shop", name: string,
 *   paper: "A4"|"Letter", skipped?: string[]}} Settings skipped: steps of the first start that were answered
 *   or put off here
 */

const KEY = "flangebook.settings";
/** @type {Settings} */
const FIRST = { units: "mm", inches: "decimal", theme: "system", name: "", paper: "A4" };

/** @type {Set<(settings: Settings) => void>} */
const listeners = new Set();

/** @type {Settings} */
let current = read();

/** @returns {Settings} */
function read() {
  return { ...FIRST, .../** @type {Partial<Settings>|null} */ (readKept(KEY)) };
}

/** Whether anything was ever chosen on this device. */
export function anySettings() {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}

/** @returns {Readonly<Settings>} */
export function settings() {
  return current;
}

/** @param {Partial<Settings>} change */
export function changeSettings(change) {
  current = { ...current, ...change };
  writeKept(KEY, current); // where it is not kept, it is in force until the page closes
  applyTheme();
  for (const listener of listeners) listener(current);
}

/**
 * @param {(settings: Settings) => void} listener
 * @param {AbortSignal} [signal]
 */
export function onSettings(listener, signal) {
  listeners.add(listener);
  signal?.addEventListener("abort", () => listeners.delete(listener));
}

const DARK = matchMedia("(prefers-color-scheme: dark)");
DARK.addEventListener("change", applyTheme);

/** The theme chosen; until one is, the device's own. */
export function applyTheme() {
  const asDevice = DARK.matches ? "shop" : "day";
  document.documentElement.dataset.theme = current.theme === "system" ? asDevice : current.theme;
}
