// Who this device is to the shop. A shop that answers only its own machine asks nobody.
import { call, messageOf } from "../sync/api.js";
import { keepRights, ownRole } from "./rights.js";
import { forgetShop } from "../sync/local_shop.js";
import { changeSettings, settings } from "./settings.js";

/** @typedef {import("./rights.js").Role} Role */

/** @type {Record<Role, {word: string, does: string}>} */
export const ROLES = {
  operator: { word: "Operator", does: "reads cards, steps through them, types results and notes" },
  bench: { word: "Press screen", does: "shows the step chosen on a phone" },
  owner: { word: "Owner", does: "everything, this list too" },
};

/** What a device that is not let in may still show, where the owner left labels open. */
const OPEN_SCREENS = ["card", "step"];

/** @type {Api.Me|null} */
let me = null;
/** @type {string|null} why the shop turned this device away, null while it did not */
let out = null;
/** When this device was paired, by performance.now: a no that was asked for earlier says nothing. */
let pairedAt = -Infinity;
let asking = 0;

/** @returns {string|null} */
export const turnedAway = () => out;

/**
 * Whether a screen stays shut to this device.
 * @param {string} screen
 */
export function isShut(screen) {
  return out !== null && screen !== "pair" && !(me?.labels_open && OPEN_SCREENS.includes(screen));
}

/**
 * Ask the shop, and keep what this device may do.
 * @param {AbortSignal} [signal]
 * @returns {Promise<Api.Me>}
 */
export async function askWhoIAm(signal) {
  asking += 1;
  try {
    const { body } = /** @type {{body: Api.Me}} */ (await call("GET", "/me", { signal, timeout: 4000 }));
    me = body;
    if (keepRights(body)) document.dispatchEvent(new CustomEvent("rights"));
    return body;
  } finally {
    asking -= 1;
  }
}

/**
 * The shop said that this device is not paired: what it kept of the shop goes, what waits to be
 * sent stays until somebody pairs it again.
 * @param {string} why
 */
async function beTurnedAway(why) {
  if (out === why) return;
  out = why;
  await Promise.all([askWhoIAm().catch(() => null), forgetShop().catch(() => null)]);
  document.dispatchEvent(new CustomEvent("turned-away"));
}

/**
 * @param {string} code
 * @param {string} name
 * @returns {Promise<Api.Device>}
 * @throws {Problem}
 */
export async function pair(code, name) {
  const { body } = /** @type {{body: Api.Device}} */ (await call("POST", "/pair", { body: { code, name } }));
  if (!settings().name) changeSettings({ name: body.name });
  out = null;
  pairedAt = performance.now();
  await askWhoIAm();
  return body;
}

/** Take this device off the shop's list. */
export async function leave() {
  await call("POST", "/leave", {});
  await beTurnedAway("unknown");
}

/** Hear when the shop turns this device away, or says that it may do more or less than it thought. */
export function listenForPairing() {
  document.addEventListener("not-paired", (event) => {
    const { why, asked: when } = /** @type {CustomEvent<{why: string, asked: number}>} */ (event).detail;
    if (when > pairedAt) beTurnedAway(why);
  });
  document.addEventListener("other-role", askAgain);
  if (ownRole() !== "owner") askAgain(); // a newer shop may let an operator do more
}

/** The answer to "who am I" names the role too, and needs no second asking. */
function askAgain() {
  if (!asking) askWhoIAm().catch(() => null);
}

/**
 * @param {unknown} error
 * @returns {string}
 */
export const inWords = (error) => messageOf(error);
