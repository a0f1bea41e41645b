// What the forms of the shop's lists share: the box for a new code, and the buttons under the form.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { WRITES } from "../../app/sync/shop_lists.js";
import { may } from "../../app/shell/rights.js";
import { field } from "../common/field.js";

/** @typedef {import("../../app/forms/entry_editing.js").Edit} Edit */

/**
 * @param {Edit} edit
 * @param {import("../../app/forms/list_entry.js").ListEntry} job
 */
export function codeBox({ state, change }, job) {
  const wrong = job.taken(state.draft.code) ? ["This code is in use already."] : state.wrong.code;
  return field({
    name: "code",
    label: "Code",
    value: state.draft.code,
    change: (value) => change("code", value),
    wrong,
    hint: "As marked on the tool. It stays.",
  });
}

/**
 * The boxes of a form, which only who may save them can type in.
 * @param {string} right
 * @param {unknown} boxes
 */
export const onlyRead = (right, boxes) =>
  may(right)
    ? boxes
    : html`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${boxes}</fieldset>`;

/**
 * @param {Edit} edit
 * @param {import("../../app/forms/list_entry.js").ListEntry} job
 * @param {string} one
 */
export function saveButtons({ state, takeOut }, job, one) {
  const question =
    `Take ${job.code} out of the shop? ` +
    `Saved cards keep their set-up, new plans no longer use this ${one}.`;
  if (!may(WRITES[job.kind])) {
    return html`<div class="buttons"><a class="button" href="/shop/${job.kind}">Back to the list</a></div>`;
  }
  return html`<div role="alert">
      ${state.others.map((said) => html`<p class="wrong-line" data-test="not-saved">${said}</p>`)}
    </div>
    <div class="buttons">
      <button
        class="button next"
        data-test="save"
        ?disabled=${state.busy || job.taken(state.draft.code ?? "")}>
        ${state.busy ? "Saving…" : `Save the ${one}`}
      </button>
      <a class="button" href="/shop/${job.kind}">Back to the list</a>
      ${
        job.isNew
          ? nothing
          : html`<button
              type="button"
              class="button"
              data-test="take-out"
              ?disabled=${state.busy}
              @click=${() => confirm(question) && takeOut()}>
              Take it out…
            </button>`
      }
    </div>`;
}
