// The states a screen can be in besides showing its data.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { Problem, Unreachable } from "../../app/sync/api.js";
import { StorageSilent, storageIsSilent } from "../../app/sync/storage.js";

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

/** What stands there while nothing else can be shown yet. */
export const stillOpening = () =>
  html`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${
      storageIsSilent()
        ? "This device’s storage does not answer, so the shop is asked."
        : "This takes longer than it should."
    }
    The page goes on by itself. ${tryAgain}
  </div>`;

const tryAgain = html`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${() => location.reload()}>
    Try again
  </button></span
>`;

/** @param {unknown} error */
export function failed(error) {
  if (error instanceof StorageSilent) {
    return html`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${tryAgain}
    </div>`;
  }
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
