// The states a screen can be in besides showing its data.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { Problem, Unreachable } from "../api.js";

/** @param {string} words */
export const loading = (words) => html`<p class="state" data-test="loading">${words}</p>`;

/**
 * @param {string} title
 * @param {unknown} [more]
 */
export const empty = (title, more = nothing) =>
  html`<div class="state" data-test="empty">
    <h1>${title}</h1>
    ${more}
  </div>`;

/** @param {unknown} error */
export function failed(error) {
  if (error instanceof Unreachable) {
    return html`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;
  }
  const words = error instanceof Problem ? error.message : String(error);
  if (!(error instanceof Problem)) console.error(error);
  return html`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${words}
  </div>`;
}
