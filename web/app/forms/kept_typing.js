// What is typed into a form, kept on this device at every key, so that a reload or an empty battery loses
// nothing. Cleared when it is saved.
import { settings } from "../shell/settings.js";

/** @param {string} address of the form's screen */
const key = (address) => `flangebook.typed.${address}`;

/**
 * @param {string} address
 * @returns {any} null where nothing was typed, or while this device was in other units; any: each form knows
 *   what it kept
 */
export function keptTyping(address) {
  try {
    const kept = JSON.parse(localStorage.getItem(key(address)) ?? "null");
    return kept?.units === settings().units ? kept.typed : null;
  } catch {
    return null; // storage blocked or damaged
  }
}

/**
 * @param {string} address
 * @param {object} typed
 */
export function keepTyping(address, typed) {
  try {
    localStorage.setItem(key(address), JSON.stringify({ units: settings().units, typed }));
  } catch {
    // This browser keeps nothing: leaving the screen asks first.
  }
}

/** @param {string} address */
export function clearTyping(address) {
  try {
    localStorage.removeItem(key(address));
  } catch {
    // Nothing was kept either.
  }
}
