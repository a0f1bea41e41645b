// The boxes for tools asked for by name, folded away while none is, and why a step has the tools it has.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { toolsWords } from "../../app/forms/named_tools.js";
import { sentenceOrWords } from "../common/finding.js";
import { field } from "../common/field.js";
import { wrongAt } from "../common/form_errors.js";

/** @typedef {import("../../app/forms/named_tools.js").NamedTools} NamedTools */
/** @typedef {import("../common/form_errors.js").Errors} Errors */

export const TOOL_FIELDS = ["tools.die", "tools.punch"];

/**
 * @param {string} place where in the part: "tools", or a bend by its number
 * @param {Partial<NamedTools>} typed
 * @param {Errors} errors
 * @param {(tools: Partial<NamedTools>) => void} change
 */
export function toolBoxes(place, typed, errors, change) {
  const box = (/** @type {"die"|"punch"} */ kind, /** @type {string} */ label) =>
    field({
      next: true,
      name: `${place}.${kind}`,
      label,
      hint: "Its code. Empty: what suits best.",
      list: kind === "die" ? "codes-of-dies" : "codes-of-punches",
      value: typed[kind] ?? "",
      wrong: wrongAt(errors, `${place}.${kind}`),
      change: (code) => change({ [kind]: code }),
    });
  return html`<div class="fields">${box("die", "Die")} ${box("punch", "Punch")}</div>`;
}

/**
 * The dies that a block makes, one for each V; any other tool or metal itself.
 * @param {import("../../app/sync/shop_lists.js").Item} item
 * @returns {{code: string, name?: string}[]}
 */
export const vOf = (item) =>
  /** @type {Partial<Api.Die>} */ (item).shape === "multi_v"
    ? /** @type {Api.Die} */ (item).openings
    : [item];

/**
 * For the whole part.
 * @param {import("../../app/forms/part_form.js").PartForm} form
 * @param {{dies: Api.Die[], punches: Api.Punch[]}} crib
 * @param {Errors} errors
 * @param {import("../../app/forms/part_form.js").Change} change
 */
export function toolsFields(form, { dies, punches }, errors, change) {
  const codes = dies.flatMap(vOf).map(({ code }) => code);
  return html`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${toolsWords(form.tools) || "chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${toolBoxes("tools", form.tools ?? {}, errors, (tools) =>
        change({ ...form, tools: { die: "", punch: "", ...form.tools, ...tools } }),
      )}
    </details>
    ${codeList("codes-of-dies", codes)}
    ${codeList(
      "codes-of-punches",
      punches.map(({ code }) => code),
    )}`;
}

/**
 * @param {string} id
 * @param {string[]} codes
 */
const codeList = (id, codes) =>
  html`<datalist id=${id}>${codes.map((code) => html`<option value=${code}></option>`)}</datalist>`;

/**
 * Nothing for usual tools; cards of an earlier release have the words alone.
 * @param {{tools_reason?: string, tools_reason_said?: Api.Said}} of a bend or a
 *   step
 */
export function toolsReason({ tools_reason, tools_reason_said }) {
  const why = sentenceOrWords({ ...tools_reason_said, words: tools_reason });
  return why ? html`<p class="tools-reason" data-test="tools-reason">${why}</p>` : nothing;
}
