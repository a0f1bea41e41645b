// A screen offers what its device may do and leaves out the rest; where that would puzzle, a sentence
// says who may.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { may, ownRole, whoMay, mayOpen } from "../../app/shell/rights.js";

/**
 * @param {string} right
 * @param {unknown} offered
 * @param {unknown} [otherwise]
 */
export const offer = (right, offered, otherwise = nothing) => (may(right) ? offered : otherwise);

/**
 * A link, where what it opens is for this device.
 * @param {string} address
 * @param {unknown} link
 * @param {unknown} [otherwise]
 */
export const way = (address, link, otherwise = nothing) => (mayOpen(address) ? link : otherwise);

/**
 * A whole screen that is somebody else's.
 * @param {string} right that it needs
 */
export function notYours(right) {
  const whose = ownRole() === "bench" ? "This device is a press screen" : "This device is an operator's";
  const owners = whoMay(right) === "owner";
  return html`<div class="state" data-test="not-yours">
    <h1>This is for the ${owners ? "owner" : "crew's phones"}</h1>
    <p>
      ${whose}.
      ${
        owners
          ? "The owner does this, or makes it an owner's device under Shop, Crew."
          : "Open it on a phone or computer of the crew."
      }
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`;
}
