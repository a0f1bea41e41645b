// Findings in their order on the desk: what stops or warns first, what is not known, and what is
// well folded away. The cautions of every bend stand by themselves, so that they hide nothing.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { fill } from "../../app/shell/units.js";
import { checkList, findingLines, flag, remedyOf, signOf } from "./finding.js";
import { fold } from "./fold.js";

/** @typedef {import("./finding.js").Check} Check */

/** @param {Check} check */
const everyTime = (check) => check.code.startsWith("general-");

/** @param {Check[]} checks */
export function urgentFindings(checks) {
  return urgent(checks, (check) => check.level === "stop" || check.level === "caution");
}

/**
 * What stops, before any figure.
 * @param {Check[]} checks
 */
export const stops = (checks) => urgent(checks, (check) => check.level === "stop");

/** @param {Check[]} checks */
export const cautions = (checks) => urgent(checks, (check) => check.level === "caution");

/**
 * @param {Check[]} checks
 * @param {(check: Check) => boolean} which
 */
function urgent(checks, which) {
  const shown = checks.filter((check) => !everyTime(check) && which(check));
  if (shown.length === 0) return nothing;
  const stop = shown.some((check) => check.level === "stop");
  return html`<section
    class="panel urgent ${stop ? "has-stop" : ""}"
    aria-label="Findings"
    data-test="urgent">
    ${findingLines(shown)}
  </section>`;
}

/** @param {Check[]} checks */
export function otherFindings(checks) {
  const unknown = checks.filter((check) => check.level === "unknown");
  const notes = checks.filter((check) => signOf(check) === "note");
  const fine = checks.filter((check) => signOf(check) === "ok");
  return html`${
    unknown.length
      ? html`<section>
          <h2>Not known</h2>
          ${findingLines(unknown)}
        </section>`
      : nothing
  }
  ${
    notes.length
      ? html`<section data-test="notes">
          ${fold("How to do it", findingLines(notes), { test: "notes-fold" })}
        </section>`
      : nothing
  }
  ${
    fine.length
      ? fold(`Passed checks: ${fine.length}`, checkList(fine), { test: "fine", open: false })
      : nothing
  }`;
}

/**
 * What is true of every bend.
 * @param {Check[]} checks
 */
export function everyTimeCautions(checks) {
  const general = checks.filter(everyTime);
  if (general.length === 0) return nothing;
  const rules = html`<ul>
    ${general.map(
      (check) =>
        html`<li>
          <b>${fill(check.template, check.numbers)}</b>
          ${fill(remedyOf(check), check.numbers)}
        </li>`,
    )}
  </ul>`;
  return html`<section class="every-time">
    ${fold(html`${flag("caution")} At the press, every time`, rules, { test: "every-time" })}
  </section>`;
}
