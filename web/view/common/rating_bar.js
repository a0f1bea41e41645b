// A load against a rating: a bar with a mark, and the same in words and numbers.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { fixed, force, forcePerLength, words } from "../../app/shell/units.js";
import { flag } from "./finding.js";

const FULL = 200; // bar units at the rating; the bar ends at 125 %

/** @param {Api.Rating[]} ratings */
export function ratingBars(ratings) {
  return html`<ul class="ratings" data-test="ratings">
    ${ratings.map(ratingBar)}
  </ul>`;
}

/** @param {Api.Rating} rating */
function ratingBar(rating) {
  const { what, share_percent: share, level } = rating;
  return html`<li class="rating" data-level=${level} data-what=${what}>
    <span class="rating-of"><b>${TITLES[what] ?? what}</b>${nameOf(rating)}</span>
    ${flag(level, share === null ? "Unknown" : `${fixed(share, 0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${share === null ? "open" : ""}" d="M0 9H250" />
      ${share === null ? nothing : bar(share)}
    </svg>
    <span class="rating-words">${saying(rating)}</span>
  </li>`;
}

/** @param {Api.Rating} rating */
const nameOf = ({ what, name }) => (what.startsWith("press") || !name ? "" : ` ${name}`);

/** @param {Api.Rating} rating */
export const ratingName = (rating) => `${TITLES[rating.what] ?? rating.what}${nameOf(rating)}`;

/** @type {Record<string, string>} */
const TITLES = {
  press: "Press",
  "press per metre": "Bed and ram, per length",
  punch: "Punch",
  die: "Die",
  holder: "Holder",
  "die holder": "Die holder",
};

/**
 * @param {Api.Rating} rating
 * @returns {string}
 */
function saying({ load_kn, load_kn_per_m, rating_kn, rating_kn_per_m, share_percent }) {
  const load = load_kn_per_m === undefined ? words(force(load_kn)) : words(forcePerLength(load_kn_per_m));
  if (share_percent === null) return `${load}; rating unknown. Read it off the plate before you bend.`;
  const most = load_kn_per_m === undefined ? words(force(rating_kn)) : words(forcePerLength(rating_kn_per_m));
  return `${load} of ${most}`;
}

/** @param {number} share */
function bar(share) {
  const reach = Math.min((share / 100) * FULL, 250);
  return svg`<path class="bar-load" d="M0 9H${reach}" /><path class="bar-most" d="M${FULL} 0V18" />`;
}
