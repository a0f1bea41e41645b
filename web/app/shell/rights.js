// What this device may do, as the shop last said it. Kept on the device, so that its screens are the
// same without the shop. Until the shop has said anything it is the shop's own computer, the owner's:
// any other device is told when it is paired.
import { readKept, writeKept } from "./kept_json.js";
import { match } from "./routes.js";

/** @typedef {"bench"|"operator"|"owner"} Role */
/**
 * @typedef {{role: Role|null, refused: Record<string, Role>}} Rights refused: what it may not do, and the
 *   least role that may
 */

const KEY = "flangebook.rights";
/** @type {Rights} */
const OWNER = { role: "owner", refused: {} };

let current = read();

/** @returns {Rights} */
function read() {
  const kept = /** @type {Rights|null} */ (readKept(KEY));
  return kept?.refused ? kept : OWNER; // where nothing can be read, the shop says it again
}

/**
 * What the device is to the shop; null when it is not paired.
 * @returns {Role|null}
 */
export const ownRole = () => current.role;

/**
 * Whether this device may do it.
 * @param {string} right by the shop's name for it
 */
export const may = (right) => !Object.hasOwn(current.refused, right);

/**
 * Whether a screen is for this device.
 * @param {string} address
 */
export function mayOpen(address) {
  const needs = match(address.split("?")[0])?.route.needs;
  return !needs || may(needs);
}

/**
 * Who may.
 * @param {string} right
 * @returns {Role}
 */
export const whoMay = (right) => current.refused[right] ?? "owner";

/**
 * Keep what the shop said.
 * @param {Rights} said
 * @returns {boolean} whether it is something else than before
 */
export function keepRights({ role, refused = {} }) {
  const said = { role, refused };
  if (JSON.stringify(said) === JSON.stringify(current)) return false;
  current = said;
  writeKept(KEY, current); // where it is not kept, it is in force until the page closes
  return true;
}

/**
 * Each answer of the shop names the role; another one than is known has to be looked into.
 * @param {string|null} role
 */
export function hearRole(role) {
  if (role && role !== current.role) document.dispatchEvent(new CustomEvent("other-role"));
}
