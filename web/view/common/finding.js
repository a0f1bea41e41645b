// Findings: a word in a shape, what it says, what to do.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { fill } from "../../app/shell/units.js";

/** @typedef {Api.Check & {steps?: number[], sign?: Sign}} Check */

/** @type {Record<Sign, string>} */
const WORD = {
  stop: "Stop",
  caution: "Caution",
  unknown: "Unknown",
  note: "Note",
  ok: "OK",
};
/**
 * The order of severity.
 * @type {Sign[]}
 */
export const WORST_FIRST = ["stop", "caution", "unknown", "note", "ok"];

const MARK = {
  stop: svg`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
  // The general warning sign, the shape of W001 of ISO 7010, open: an upright triangle of equal sides.
  caution: svg`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,
  unknown: svg`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,
  note: svg`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
  ok: svg`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`,
};

/** @typedef {"ok"|"note"|"unknown"|"caution"|"stop"} Sign */

/**
 * @param {Sign} level
 * @param {string} [word]
 */
export function flag(level, word = WORD[level]) {
  return html`<span class="flag ${level}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${MARK[level]}</svg>${word}</span
  >`;
}

/**
 * Its level; a note where nothing is wrong but a step says how to do it.
 * @param {Check} check
 * @returns {Sign}
 */
export const signOf = ({ level, sign, do: help, step, steps = [] }) =>
  sign ?? (level === "ok" && help && (step || steps.length) ? "note" : level);

/**
 * Sentences of the shop, their numbers in this device's units.
 */

/** @param {Api.Said} said */
export const sentence = ({ template, numbers }) => fill(template, numbers);

/**
 * What is to be done, with places for the numbers; cards saved up to 0.3 have it in a field of its own.
 * @param {Check} check
 */
export const remedyOf = ({ do: help, do_template: older }) => older ?? help;

/**
 * A sentence of a plan; cards saved up to 0.3 have some in metric words alone.
 * @param {Partial<Api.Said> & {words?: string}} said
 */
export const sentenceOrWords = ({ template, numbers = {}, words = "" }) =>
  template ? fill(template, numbers) : words;

/** @param {Api.Said[]} said */
export const sentences = (said) => said.map(sentence).join(" ");

/**
 * At which steps a finding was made.
 * @param {Check} check
 */
function stepsOf({ step, steps = [] }) {
  if (steps.length > 1) return html`<b>Steps ${steps.join(", ")}.</b> `;
  return step ? html`<b>Step ${step}.</b> ` : nothing;
}

/**
 * Worst first.
 * @param {Check[]} checks
 * @param {{quiet?: boolean}} [how] quiet leaves out what is ok
 */
export function checkList(checks, { quiet = false } = {}) {
  const shown = checks
    .filter((check) => !quiet || check.level !== "ok")
    .sort((a, b) => WORST_FIRST.indexOf(signOf(a)) - WORST_FIRST.indexOf(signOf(b)));
  if (shown.length === 0) return nothing;
  return html`<ul class="checks" data-test="checks">
    ${shown.map(
      (check) =>
        html`<li class="check" data-level=${check.level} data-code=${check.code}>
          ${flag(signOf(check))}
          <div class="say">
            ${stepsOf(check)}${fill(check.template, check.numbers)}
            ${check.do ? html`<div class="do">${fill(remedyOf(check), check.numbers)}</div>` : nothing}
          </div>
        </li>`,
    )}
  </ul>`;
}

/**
 * Worst first, a line for each kind; a tap says what to do, and at which other steps it is the same.
 * What stops is open.
 * @param {Check[]} checks
 */
export function findingLines(checks) {
  /** @type {Map<string, Check[]>} */
  const kinds = new Map();
  for (const check of checks) {
    const kind = `${signOf(check)} ${check.code}`;
    kinds.set(kind, [...(kinds.get(kind) ?? []), check]);
  }
  const worst = [...kinds.values()].sort(
    ([a], [b]) => WORST_FIRST.indexOf(signOf(a)) - WORST_FIRST.indexOf(signOf(b)),
  );
  return html`<ul class="checks lines" data-test="checks">
    ${worst.map(
      (kind) =>
        html`<li class="check" data-level=${kind[0].level} data-code=${kind[0].code}>
          ${findingLine(kind)}
        </li>`,
    )}
  </ul>`;
}

/** @param {Check[]} kind findings of one level and code */
function findingLine([check, ...others]) {
  const said = html`${flag(signOf(check))}
    <div class="say">${stepsOf(check)}${fill(check.template, check.numbers)} ${also(others)}</div>`;
  if (!check.do && others.length === 0) return said;
  return html`<details ?open=${check.level === "stop"}>
    <summary>${said}</summary>
    ${others.map((one) => html`<p class="say">${stepsOf(one)}${fill(one.template, one.numbers)}</p>`)}
    ${check.do ? html`<p class="do">${fill(remedyOf(check), check.numbers)}</p>` : nothing}
  </details>`;
}

/** @param {Check[]} others */
function also(others) {
  const steps = others.flatMap(({ step, steps: more = [] }) => (more.length ? more : (step ?? [])));
  if (others.length === 0) return nothing;
  if (steps.length === 0) return html`<b>And ${others.length} more.</b>`;
  return html`<b>Also step${steps.length > 1 ? "s" : ""} ${steps.join(", ")}.</b>`;
}
