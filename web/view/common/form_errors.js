// What the server found wrong, at the field it is about; lists are counted from 0 in its paths.
import { html, nothing } from "/vendor/lit-html/lit-html.js";

/** @typedef {Record<string, string[]>} Errors */

/**
 * Does a path mean this field or something inside it?
 * @param {string} path
 * @param {string} name
 */
const within = (path, name) => path === name || path.startsWith(`${name}.`);

/**
 * @param {Errors} errors
 * @param {string} name
 * @returns {string[]}
 */
export function wrongAt(errors, name) {
  return Object.entries(errors)
    .filter(([path]) => within(path, name))
    .flatMap(([, words]) => words);
}

/**
 * What fits no field shown.
 * @param {Errors} errors
 * @param {string[]} names
 * @returns {string[]}
 */
export function wrongElsewhere(errors, names) {
  return Object.entries(errors)
    .filter(([path]) => !names.some((name) => within(path, name)))
    .flatMap(([, words]) => words);
}

/**
 * All of it in one place, each line leading to its field.
 * @param {Errors} errors
 * @param {(path: string) => string} called what the field is called
 * @param {string[]} names of the fields shown
 */
export function errorSummary(errors, called, names) {
  const entries = Object.entries(errors);
  if (entries.length === 0) return nothing;
  return html`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${entries.map(([path, words]) => {
        const name = names.filter((one) => within(path, one)).sort((a, b) => b.length - a.length)[0];
        const said = name ? faultWords(called(name), words) : words.join(" ");
        return html`<li>
          ${
            name
              ? html`<button type="button" class="link" @click=${() => focusField(name)}>${said}</button>`
              : said
          }
        </li>`;
      })}
    </ul>
  </div>`;
}

/**
 * Named once: "Flat 1 runs into flat 4" needs no "Flat 1:" before it.
 * @param {string} called
 * @param {string[]} words
 * @returns {string}
 */
export function faultWords(called, words) {
  const said = words.join(" ");
  return said.startsWith(called) ? said : `${called}: ${said}`;
}

/** @param {Element|null} element that a closed fold may hide */
export function unhide(element) {
  for (let hides = element?.closest("details"); hides; hides = hides.parentElement?.closest("details")) {
    hides.open = true;
  }
}

/**
 * Opens what hides it, too.
 * @param {string} name
 */
export function focusField(name) {
  const element = document.getElementById(name);
  unhide(element);
  element?.focus({ preventScroll: true });
  element?.scrollIntoView({ block: "center" });
}
