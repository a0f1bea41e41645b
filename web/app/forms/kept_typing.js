// What is typed into a form, kept on this device at every key, so that a reload or an empty battery loses
// nothing. Cleared when it is saved.
import { readKept, writeKept } from "../shell/kept_json.js";
import { settings } from "../shell/settings.js";

/** @param {string} address of the form's screen */
const key = (address) => `flangebook.typed.${address}`;

/**
 * @param {string} address
 * @returns {any} null where nothing was typed, or while this device was in other units; any: each form knows
 *   what it kept
 */
export function keptTyping(address) {
  const kept = /** @type {{units: string, typed: object}|null} */ (readKept(key(address)));
  return kept?.units === settings().units ? kept.typed : null;
}

/**
 * @param {string} address
 * @param {object} typed
 */
export const keepTyping = (address, typed) => writeKept(key(address), { units: settings().units, typed });

/** @param {string} address */
export const clearTyping = (address) => writeKept(key(address), null);
