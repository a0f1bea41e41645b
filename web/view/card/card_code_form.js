// Typing a card's code: slips are told at once, a whole code opens its card.
import { html } from "/vendor/lit-html/lit-html.js";
import { live } from "/vendor/lit-html/directives/live.js";
import { displayCode, readCode } from "../../app/scan/card_code.js";
import { go } from "../../app/shell/router.js";

/** @typedef {{code: string, asked: boolean}} Typed asked: whether Open was pressed on what stands there */

/**
 * Nothing typed yet.
 * @returns {Typed}
 */
export const nothingTyped = () => ({ code: "", asked: false });

/**
 * @param {Typed} typed changed as somebody types
 * @param {import("../../app/sync/stored.js").Summary[]} list the cards on this device
 * @param {() => void} draw
 * @param {string} hint said while there is nothing to say of the code
 */
export function codeForm(typed, list, draw, hint) {
  const read = readCode(typed.code);
  const fault = read.fault || (typed.asked && !read.whole ? tooShort(read.code) : "");
  /** @param {Event} event */
  const open = (event) => {
    event.preventDefault();
    typed.asked = true;
    if (read.whole) go(`/c/${read.code}`);
    else draw();
  };
  return html`<form class="code-form" @submit=${open}>
    <label for="code">Code on the label</label>
    <div class="code-line">
      <input
        id="code"
        data-test="code"
        autocomplete="off"
        autocapitalize="characters"
        spellcheck="false"
        enterkeyhint="go"
        maxlength="20"
        placeholder="ABC-1234"
        .value=${live(typed.code)}
        aria-invalid=${fault ? "true" : "false"}
        aria-describedby="code-more"
        @input=${(/** @type {{target: HTMLInputElement}} */ event) => {
          typed.code = event.target.value;
          typed.asked = false;
          draw();
        }} />
      <button class="button ${read.whole ? "next" : ""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${fault ? html`<span class="wrong" data-test="code-fault">${fault}</span>` : codeHint(read, list, hint)}
    </p>
  </form>`;
}

/**
 * @param {import("../../app/scan/card_code.js").ReadCode} read
 * @param {import("../../app/sync/stored.js").Summary[]} list
 * @param {string} hint
 */
function codeHint(read, list, hint) {
  if (!read.whole) return hint;
  const card = list.find((one) => one.code === read.code);
  return card
    ? html`<span data-test="code-found"
        >${displayCode(read.code)} is <b>${card.title || "untitled"}</b>.</span
      >`
    : html`<span data-test="code-unknown"
        >A valid code, but not on this device yet. Open asks the shop.</span
      >`;
}

/** @param {string} code */
const tooShort = (code) =>
  code
    ? `A card code has seven characters. This is ${code.length}.`
    : "Type the seven characters printed on the label.";
