// The section while it is typed: the last good drawing stays, faint, while something is not right.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { finishedDrawing } from "../../drawing/part.js";
import { Problem, Unreachable } from "../../app/sync/api.js";
import { length, words } from "../../app/shell/units.js";
import { flag, sentence } from "../common/finding.js";
import { allowFor } from "../common/force.js";
import { calledOf } from "./part_fields.js";
import { faultWords } from "../common/form_errors.js";

/**
 * @param {{plan: Api.Plan|null, error: unknown, busy: boolean, form:
 *   import("../../app/forms/part_form.js").PartForm}}
 *   state
 * @param {{open: [string, string][], stale: boolean, waiting: unknown}} more waiting: a long search, in place
 *   of the words; on a wide screen it stands beside
 */
export function partPicture({ plan, error, busy }, { open, stale, waiting }) {
  const narrow = innerWidth < 1000;
  return html`<div
    class="part-picture ${plan && stale ? "stale" : ""} ${waiting === nothing ? "" : "searching"}"
    data-test="picture"
    data-stale=${String(stale)}>
    ${
      plan?.section
        ? finishedDrawing(
            plan,
            narrow
              ? { pixels: innerWidth - 56, tallest: 200 }
              : { pixels: Math.min(860, innerWidth - 560), tallest: 440 },
          )
        : nothing
    }
    ${
      waiting === nothing
        ? html`<p class="picture-words" role="status" data-test="picture-words">
            ${said(plan, error, busy, open)}
          </p>`
        : narrow
          ? waiting
          : nothing
    }
  </div>`;
}

/** @param {Problem} error */
function firstFault(error) {
  const [first] = Object.entries(error.errors);
  return first ? faultWords(calledOf(first[0]), first[1]) : error.message;
}

/**
 * @param {Api.Plan|null} plan
 * @param {unknown} error
 * @param {boolean} busy
 * @param {[string, string][]} open
 */
function said(plan, error, busy, open) {
  if (open.length) {
    const named = open
      .slice(0, 4)
      .map(([, called]) => called)
      .join(", ");
    return `Still to type: ${named}${open.length > 4 ? ` and ${open.length - 4} more` : ""}.`;
  }
  if (error instanceof Unreachable) {
    return "The shop's server does not answer. What you type stays on this device.";
  }
  if (error instanceof Problem) return `Not right yet. ${firstFault(error)}`;
  if (error) return String(error);
  if (!plan) return busy ? "Working it out…" : "";
  const blank = plan.blank.outline
    ? `Blank ${length(plan.blank.length_mm, { digits: 2 }).text} × ` +
      `${words(length(plan.blank.width_mm, { digits: 2 }))}`
    : `Blank ${words(length(plan.blank.length_mm, { digits: 2 }))}`;
  const [stop] = plan.checks.filter(({ level }) => level === "stop");
  return html`<span>${[blank, ...madeWith(plan)].join(" · ")}</span>
    ${plan.worst === "ok" ? nothing : flag(plan.worst)}
    ${stop ? html`<span class="picture-stop">${sentence(stop)}</span>` : nothing}`;
}

const MOST_NAMED = 8; // so many bends in their order still stand in a line

/**
 * With what, how hard, in what order: each in a few words.
 * @param {Api.Plan} plan
 * @returns {string[]}
 */
function madeWith({ steps, order }) {
  if (!steps.length) return [];
  const tools = ["punch", "die"].map((kind) => [
    ...new Set(steps.map((step) => step[/** @type {"punch"|"die"} */ (kind)]).filter(Boolean)),
  ]);
  const hardest = steps.reduce((most, step) =>
    (step.force_kn_high ?? 0) > (most.force_kn_high ?? 0) ? step : most,
  );
  const sequence = order?.sequence ?? [];
  return [
    tools.every((codes) => codes.length) ? tools.map((codes) => codes.join(", ")).join(" on ") : "",
    hardest.force_kn_high ? words(allowFor(hardest)) : "",
    sequence.length > 1 && sequence.length <= MOST_NAMED ? `order ${sequence.join(" ")}` : "",
  ].filter(Boolean);
}
