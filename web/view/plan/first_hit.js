// The first hit of a bend that nobody has measured yet: what to expect of it, in plain words.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { angle } from "../../app/shell/units.js";

/** @param {number} degrees */
const tidy = (degrees) => angle(degrees).text.replace(/\.0$/, "");

/**
 * What nine in ten first hits come out at.
 * @param {Api.FirstHit} first
 */
export const comesOutWords = (first) =>
  `comes out ${tidy(first.comes_out_deg_low)} to ${tidy(first.comes_out_deg_high)}°`;

/** @param {Api.FirstHit} first as short as paper needs it */
export const comesOutShort = (first) => `${tidy(first.comes_out_deg_low)}–${tidy(first.comes_out_deg_high)}°`;

/**
 * The angle that a step is drawn at: of the last hit, with which the bend comes out as wanted, not where
 * a first hit stops.
 * @param {Api.Step} step
 * @param {{set_angle_deg: number|null, firstHit: Api.FirstHit|null}} setting in force
 * @returns {number|null}
 */
export const drawnAngle = (step, { set_angle_deg, firstHit }) =>
  firstHit ? /** @type {number|null} */ (step.expected_set_angle_deg) : set_angle_deg;

/**
 * Below the huge numbers: that this is the first hit, and that open is no scrap.
 * @param {Api.FirstHit|null|undefined} first null where the expected setting leads
 * @param {string} [more] a sentence after it
 */
export function firstHitLine(first, more = "") {
  if (!first) return nothing;
  return html`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${comesOutWords(first)}. If it is too open, make a second hit.
    <span class="drawn">${more}</span>
  </p>`;
}
