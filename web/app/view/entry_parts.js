// What the forms of the shop's lists share: the box for a new code, and the buttons under the form.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { field } from "./field.js";

/** @typedef {import("../editing.js").Edit} Edit */

/** @param {Edit} edit @param {import("../list_entry.js").ListEntry} job */
export function codeBox({ state, change }, job) {
  const wrong = job.taken(state.draft.code) ? ["This code is in use already."] : state.wrong.code;
  return field({ name: "code", label: "Code", value: state.draft.code, change: (value) => change("code", value), wrong, hint: "As marked on the tool. It stays." });
}

/** @param {Edit} edit @param {import("../list_entry.js").ListEntry} job @param {string} one */
export function saveButtons({ state, save, takeOut }, job, one) {
  const question = `Take ${job.code} out of the shop? Saved cards keep their set-up, new plans no longer use this ${one}.`;
  return html`
    <div role="alert">${state.others.map((said) => html`<p class="wrong-line" data-test="not-saved">${said}</p>`)}</div>
    <div class="buttons">
      <button class="button next" data-test="save" ?disabled=${state.busy || job.taken(state.draft.code ?? "")}>${state.busy ? "Saving…" : `Save the ${one}`}</button>
      <a class="button" href="/shop/${job.kind}">Back to the list</a>
      ${job.isNew ? nothing : html`<button type="button" class="button" data-test="take-out" ?disabled=${state.busy} @click=${() => confirm(question) && takeOut()}>Take it out…</button>`}
    </div>`;
}
