// A force as it is read at the press: first what to allow for, then, smaller, what is expected.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { force, forcePerLength, words } from "../../app/shell/units.js";
import { figure } from "./figure.js";

/** @typedef {"force_kn"|"force_kn_per_m"} Name */
/** @typedef {{[N in Name|`${Name}_high`]?: number|null}} Forces of what has some, with those to allow for */

/**
 * What to set the press by, rounded up: it is what the ratings are checked with.
 * @param {Forces} from
 * @param {Name} [name]
 */
export const allowFor = (from, name = "force_kn") => shown(name)(from[`${name}_high`], { up: true });

/**
 * @param {Forces} from
 * @param {Name} [name]
 */
export const expected = (from, name = "force_kn") => shown(name)(from[name]);

/** @param {Name} name */
const shown = (name) => (name === "force_kn" ? force : forcePerLength);

/**
 * "58 kN expected 41 kN", or nothing where no force is known.
 * @param {Forces} from
 */
export function forceWords(from) {
  if (from.force_kn === null || from.force_kn === undefined) return nothing;
  return html`<b>${words(allowFor(from))}</b>
    <small class="expected">expected ${words(expected(from))}</small>`;
}

/**
 * As a figure on its dimension line.
 * @param {string} what
 * @param {Forces} from
 * @param {Name} [name]
 * @param {{note?: unknown, origin?: string}} [more]
 */
export function forceFigure(what, from, name = "force_kn", { note = nothing, origin = "" } = {}) {
  return figure(what, allowFor(from, name), {
    note: html`expected ${words(expected(from, name))}${note}`,
    origin,
    test: name,
  });
}
