// Short messages at the foot of the page, read out by screen readers.
import { html, render } from "/vendor/lit-html/lit-html.js";

/** @type {number|undefined} */
let timer;

/**
 * @param {string} words
 * @param {{label: string, act: () => void, goes?: boolean}} [button] stays until used when there is one;
 *   goes: by itself after a while
 */
export function notice(words, button) {
  const root = /** @type {HTMLElement} */ (document.getElementById("notices"));
  const clear = () => render(html``, root);
  const press = () => {
    clear();
    button?.act();
  };
  render(
    html`<div class="notice" data-test="notice">
      <span>${words}</span>
      <button type="button" @click=${press}>${button?.label ?? "Close"}</button>
    </div>`,
    root,
  );
  clearTimeout(timer);
  if (!button || button.goes) timer = setTimeout(clear, 8000);
}
