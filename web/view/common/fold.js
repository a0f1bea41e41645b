// What is not needed at this moment: one line on a phone, open where there is room.
import { html, nothing } from "/vendor/lit-html/lit-html.js";

/** Whether the screen has room for what a phone folds away. */
export const roomy = () => matchMedia("(min-width: 1000px)").matches;

/**
 * @param {unknown} title
 * @param {unknown} inside
 * @param {{test?: string, open?: boolean}} [how]
 */
export const fold = (title, inside, { test = "", open = roomy() } = {}) =>
  html`<details class="fold" data-test=${test || nothing} ?open=${open}>
    <summary><h2>${title}</h2></summary>
    ${inside}
  </details>`;
