// The shop's press screens by name, and which one this device is or last showed a card on.
import { readKept, writeKept } from "../shell/kept_json.js";
import { call } from "../sync/api.js";

/**
 * @typedef {{name: string, code: string|null, step: number, etag: string|null}} Seen a bench as this display
 *   last saw it
 */

const HERE = "flangebook.bench.here";
const LAST = "flangebook.bench.last";

/**
 * @param {AbortSignal} [signal]
 * @returns {Promise<Api.PressScreen[]>}
 */
export async function pressScreenList(signal) {
  const { body } = /** @type {{body: Api.PressScreens}} */ (
    await call("GET", "/press-screens", { signal, timeout: 3000 })
  );
  return body.press_screens;
}

/**
 * Make an empty press screen.
 * @param {string} name
 * @returns {Promise<Api.PressScreen>}
 */
export async function addPressScreen(name) {
  const { body } = /** @type {{body: Api.PressScreen}} */ (
    await call("PUT", `/press-screens/${encodeURIComponent(name)}`, {
      body: { code: null, step: 0 },
    })
  );
  return body;
}

/**
 * Take a press screen out.
 * @param {string} name
 */
export async function removePressScreen(name) {
  await call("DELETE", `/press-screens/${encodeURIComponent(name)}`);
}

/**
 * How a press screen is called in a sentence.
 * @param {string} name
 */
export const pressScreenWords = (name) => (/^\d/.test(name) ? `press screen ${name}` : name);

/**
 * The same as a heading.
 * @param {string} name
 */
export const pressScreenTitle = (name) => (/^\d/.test(name) ? `Press screen ${name}` : name);

/**
 * Which press screen this display stands at.
 * @returns {Seen|null}
 */
export function pressScreenHere() {
  const seen = /** @type {Partial<Seen>|null} */ (readKept(HERE));
  return typeof seen?.name === "string"
    ? /** @type {Seen} */ ({ code: null, step: 0, etag: null, ...seen })
    : null;
}

/** @param {Seen|null} seen */
export const keepPressScreenHere = (seen) => writeKept(HERE, seen);

/**
 * Where this phone last showed a card.
 * @returns {string}
 */
export const lastPressScreen = () => String(readKept(LAST) ?? "");

/** @param {string} name */
export const keepLastPressScreen = (name) => writeKept(LAST, name);
