// Findings in their order on the desk: what stops or warns first, what is not known, and what is
// well folded away. The cautions of every bend stand by themselves, so that they hide nothing.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { checkList, fill, flag, signOf } from "./finding.js";

/** @typedef {import("./finding.js").Check} Check */

/** @param {Check} check */
const everyTime = (check) => check.code.startsWith("general-");

/** @param {Check[]} checks */
export function urgentFindings(checks) {
  const urgent = checks.filter(
    (check) => !everyTime(check) && (check.level === "stop" || check.level === "caution"),
  );
  if (urgent.length === 0) return nothing;
  const stop = urgent.some((check) => check.level === "stop");
  return html`<section
    class="panel urgent ${stop ? "has-stop" : ""}"
    aria-label="Findings"
    data-test="urgent">
    ${checkList(urgent)}
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
          ${checkList(unknown)}
        </section>`
      : nothing
  }
  ${
    notes.length
      ? html`<section data-test="notes">
          <h2>How to do it</h2>
          ${checkList(notes)}
        </section>`
      : nothing
  }
  ${
    fine.length
      ? html`<details class="fine" data-test="fine">
          <summary>Passed checks: ${fine.length}</summary>
          ${checkList(fine)}
        </details>`
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
  return html`<section class="every-time" data-test="every-time">
    <h2>${flag("caution")} At the press, every time</h2>
    <ul>
      ${general.map(
        (check) =>
          html`<li>
            <b>${fill(check.template, check.numbers)}</b>
            ${fill(check.do_template ?? check.do, check.numbers)}
          </li>`,
      )}
    </ul>
  </section>`;
}
