// Form fields with their label, hint and the server's word on what was wrong.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { live } from "/vendor/lit-html/directives/live.js";
import { understood } from "../../app/shell/understood.js";
import { meanings } from "../../app/shell/units.js";
import { trade } from "../guide/words.js";

/**
 * @typedef {object} FieldOptions
 * @property {string} name also the id
 * @property {string} label
 * @property {string|number} value
 * @property {(value: string) => void} change
 * @property {string} [hint]
 * @property {string[]} [wrong] what the server said about it
 * @property {string[]} [meant] what was perhaps meant, where the text alone does not tell
 * @property {"text"|"decimal"|"numeric"} [keys] which keyboard a phone shows
 * @property {string} [placeholder]
 * @property {string} [unit]
 * @property {number} [mark] its number in the sketch beside the form
 * @property {string} [list] id of the list with what may be typed
 * @property {boolean} [next] a phone's Enter key goes to the next box
 * @property {"input"|"change"} [on] told at every key, or when the field is left
 */

/**
 * What a form does when it is sent: the page stays.
 * @param {() => void} job
 */
export const submitting = (job) => (/** @type {Event} */ event) => {
  event.preventDefault();
  job();
};

/** @param {FieldOptions} options */
export function field({
  name,
  label,
  value,
  change,
  hint = "",
  wrong = [],
  meant = meanings(String(value)),
  keys = "text",
  placeholder = "",
  unit = "",
  on = "input",
  next = false,
  list = "",
  mark = 0,
}) {
  const told = (/** @type {{target: HTMLInputElement}} */ event) => change(event.target.value);
  const read = wrong.length ? "" : understood(String(value), unit);
  return html`<div class="field ${wrong.length ? "has-wrong" : ""}">
    <label for=${name}
      >${numbered(mark)}${trade(label)}${unit ? html` <span class="hint">(${unit})</span>` : nothing}</label
    >
    <input
      id=${name}
      name=${name}
      data-test=${name}
      autocomplete="off"
      spellcheck="false"
      inputmode=${keys}
      enterkeyhint=${next ? "next" : nothing}
      placeholder=${placeholder}
      list=${list || nothing}
      .value=${live(String(value))}
      aria-invalid=${wrong.length ? "true" : "false"}
      aria-describedby="${name}-more"
      @input=${on === "input" ? told : nothing}
      @change=${on === "change" ? told : nothing} />
    <span id="${name}-more">
      ${wrong.map((words) => html`<span class="wrong" data-test="wrong-${name}">${words}</span>`)}
      ${read ? html`<span class="hint" data-test="read-${name}">${read}</span>` : nothing}
      ${hint ? html`<span class="hint">${hint}</span>` : nothing}
    </span>
    ${wrong.length ? mayMean(name, meant, change) : nothing}
  </div>`;
}

/** @param {number} mark */
const numbered = (mark) =>
  mark ? html`<span class="mark-in-label" aria-hidden="true">${mark}</span> ` : nothing;

/**
 * One tap for each thing that was perhaps meant.
 * @param {string} name
 * @param {string[]} offered
 * @param {(value: string) => void} change
 */
function mayMean(name, offered, change) {
  return html`<div class="may-mean">
    ${offered.map(
      (one) =>
        html`<button type="button" class="button" data-test="may-mean-${name}" @click=${() => change(one)}>
          ${one}
        </button>`,
    )}
  </div>`;
}

/**
 * Several lines of text.
 * @param {FieldOptions & {lines: number}} options
 */
export function textArea({ name, label, value, change, lines, hint = "", wrong = [], unit = "" }) {
  return html`<div class="field broad ${wrong.length ? "has-wrong" : ""}">
    <label for=${name}>${label}${unit ? html` <span class="hint">(${unit})</span>` : nothing}</label>
    <textarea
      id=${name}
      name=${name}
      data-test=${name}
      rows=${lines}
      .value=${live(String(value))}
      aria-invalid=${wrong.length ? "true" : "false"}
      aria-describedby="${name}-more"
      @input=${(/** @type {{target: HTMLTextAreaElement}} */ event) => change(event.target.value)}></textarea>
    <span id="${name}-more">
      ${wrong.map((words) => html`<span class="wrong" data-test="wrong-${name}">${words}</span>`)}
      ${hint ? html`<span class="hint">${hint}</span>` : nothing}
    </span>
  </div>`;
}

/**
 * @param {{name: string, label: string, value: string, options: [string, string][],
 *   change: (value: string) => void, wrong?: string[]}} options
 */
export function pick({ name, label, value, options, change, wrong = [] }) {
  return html`<div class="field ${wrong.length ? "has-wrong" : ""}">
    <label for=${name}>${label}</label>
    <div class="picked">
      <select
        id=${name}
        name=${name}
        data-test=${name}
        aria-invalid=${wrong.length ? "true" : "false"}
        aria-describedby="${name}-more"
        @change=${(/** @type {{target: HTMLSelectElement}} */ event) => change(event.target.value)}>
        ${options.map(
          ([key, words]) => html`<option value=${key} .selected=${live(key === value)}>${words}</option>`,
        )}
      </select>
    </div>
    <span id="${name}-more"
      >${wrong.map((words) => html`<span class="wrong" data-test="wrong-${name}">${words}</span>`)}</span
    >
  </div>`;
}

/**
 * A few choices side by side, one chosen.
 * @param {{name: string, label: string, value: string, options: [string, string][],
 *   change: (value: string) => void}} options
 */
export function choice({ name, label, value, options, change }) {
  return html`<div class="field" role="radiogroup" aria-label=${label}>
    <span class="legend" aria-hidden="true">${label}</span>
    <div class="choice" data-test=${name}>
      ${options.map(
        ([key, words]) =>
          html`<label>
            <input
              type="radio"
              name=${name}
              value=${key}
              .checked=${live(key === value)}
              @change=${() => change(key)} />
            <span>${words}</span>
          </label>`,
      )}
    </div>
  </div>`;
}

/**
 * Put the focus where the server found fault. Called when the screen is drawn, and at once: a moment
 * later it could take the focus from the box in which somebody types by then.
 * @param {Record<string, string[]>} errors
 */
export function focusFirstWrong(errors) {
  if (Object.keys(errors).length === 0) return;
  /** @type {HTMLElement|null} */ (document.querySelector('[aria-invalid="true"]'))?.focus();
}
