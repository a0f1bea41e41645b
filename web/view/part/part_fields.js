// All boxes of a part, and what they are called.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { live } from "/vendor/lit-html/directives/live.js";
import { length, words } from "../../app/shell/units.js";
import { asBox } from "../../app/forms/part_form.js";
import { boxBoxes, boxCalled } from "../../app/forms/box_form.js";
import { boxFields } from "./box_fields.js";
import { choice, field, pick } from "../common/field.js";
import { fold } from "../common/fold.js";
import { conventionField, grainField, holesField, orderField } from "./part_extras.js";
import { TOOL_FIELDS, toolsFields } from "./named_tools_fields.js";
import { sectionRows } from "./section_rows.js";
import { orderLimitsWords } from "../../app/forms/order_limits_form.js";
import { toolsWords } from "../../app/forms/named_tools.js";
import { ORDER_LIMIT_NAMES, ORDER_LIMIT_FIELDS, orderLimitsFields } from "./order_limits_fields.js";
import { wrongAt } from "../common/form_errors.js";

/** @typedef {import("../../app/forms/part_form.js").PartForm} PartForm */

/**
 * @typedef {{metals: Api.Metal[], crib: {dies: Api.Die[], punches: Api.Punch[]}, plan: Api.Plan|null,
 *   editing: boolean, errors: import("../common/form_errors.js").Errors,
 *   change: import("../../app/forms/part_form.js").Change}} Around
 */

/**
 * @param {PartForm} form
 * @param {Around} around
 */
export function partFields(form, { metals, crib, plan, editing, errors, change }) {
  const known = metals.some(({ code }) => code === form.metal);
  /** @type {[string, string][]} */
  const choices = [
    ...(known
      ? []
      : [
          /** @type {[string, string]} */ ([
            form.metal,
            form.metal ? `${form.metal} (not in the shop)` : "Choose",
          ]),
        ]),
    ...metals.map(({ code, name }) => /** @type {[string, string]} */ ([code, name])),
  ];
  const { box } = form;
  return html`${choice({
      name: "shape",
      label: "What it is",
      value: box ? "box" : "section",
      options: [
        ["section", "Section"],
        ["box", "Box or tray"],
      ],
      change: (shape) => change(asBox(form, shape === "box")),
    })}
    ${field({
      next: true,
      name: "title",
      label: "Name of the part",
      value: form.title,
      wrong: wrongAt(errors, "title"),
      change: (title) => change({ ...form, title }),
    })}
    ${pick({
      name: "metal",
      label: "Metal",
      value: form.metal,
      options: choices,
      wrong: wrongAt(errors, "metal"),
      change: (metal) => change({ ...form, metal }),
    })}
    <div class="fields">
      ${field({
        next: true,
        name: "thickness_mm",
        label: "Thickness",
        unit: form.unit,
        placeholder: "3 or 16 ga",
        hint: plan ? understood(plan, form.thickness) : "",
        value: form.thickness,
        wrong: wrongAt(errors, "thickness_mm"),
        change: (thickness) => change({ ...form, thickness }),
      })}
      ${
        box
          ? nothing
          : field({
              next: true,
              name: "bend_length_mm",
              label: "Bend length",
              unit: form.unit,
              value: form.length,
              wrong: wrongAt(errors, "bend_length_mm"),
              change: (typed) => change({ ...form, length: typed }),
            })
      }
    </div>
    ${
      box
        ? html`${boxFields({ ...form, box }, errors, change)} `
        : html`<h2>Section, left to right <small>${form.unit}, °</small></h2>
            ${sectionRows(form, errors, change)}`
    }
    ${fold(
      html`More, if it matters <span class="fold-now">${moreWords(form)}</span>`,
      moreFields(form, { crib, plan, errors, change }),
      { test: "more-fold" },
    )}
    ${
      editing
        ? field({
            next: true,
            name: "reason",
            label: "Why this change, for the history",
            value: form.reason ?? "",
            wrong: wrongAt(errors, "reason"),
            change: (reason) => change({ ...form, reason }),
          })
        : nothing
    }`;
}

/**
 * What is set under "More", so that nobody has to open it to know.
 * @param {PartForm} form
 */
const moreWords = (form) =>
  [
    form.dimension !== "din6935" && "how flats are measured",
    form.grain && "rolling direction",
    form.holes.length > 0 && "holes",
    form.order && "order",
    orderLimitsWords(form.wishes) && "limits",
    toolsWords(form.tools) && "tools",
    form.note && "note",
  ]
    .filter(Boolean)
    .join(", ");

/**
 * What most parts do not need.
 * @param {PartForm} form
 * @param {Pick<Around, "crib"|"plan"|"errors"|"change">} around
 */
function moreFields(form, { crib, plan, errors, change }) {
  const order = plan?.order?.sequence;
  return html`${conventionField(form, change)}
    ${form.box ? nothing : html`${grainField(form, errors, change)} ${holesField(form, errors, change)}`}
    ${form.box && !plan && !form.order ? nothing : orderField(form, order, errors, change)}
    ${orderLimitsFields(form, errors, change)} ${toolsFields(form, crib, errors, change)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${live(form.note)}
        @input=${(/** @type {{target: HTMLTextAreaElement}} */ event) =>
          change({ ...form, note: event.target.value })}></textarea>
    </div>`;
}

/**
 * The thickness as the shop understood it, with the gauge it goes by, where that says more.
 * @param {Api.Plan} plan
 * @param {string} typed
 * @returns {string}
 */
function understood({ part, thickness_gauge: gauge }, typed) {
  const plain = /^[\d.,\s]+$/.test(typed);
  return [plain ? "" : words(length(part.thickness_mm, { digits: 2 })), gauge ?? ""]
    .filter(Boolean)
    .join(", ");
}

/**
 * Every box by its name.
 * @param {PartForm} form
 * @returns {string[]}
 */
export function fieldNames(form) {
  if (form.box) {
    return [
      "title",
      "metal",
      "thickness_mm",
      ...boxBoxes(form.box).map(([name]) => name),
      "box.relief_mm",
      "box.gap_mm",
      "order",
      ...ORDER_LIMIT_FIELDS,
      ...TOOL_FIELDS,
      "note",
      "reason",
    ];
  }
  return [
    "title",
    "metal",
    "thickness_mm",
    "bend_length_mm",
    ...form.flats.map((_, i) => `flats_mm.${i}`),
    ...form.bends.flatMap((bend, i) => [
      `bends.${i}.included_angle_deg`,
      `bends.${i}.inside_radius_mm`,
      ...(bend.kind === "open_hem" ? [`bends.${i}.hem_gap_mm`] : []),
      `bends.${i}.die`,
      `bends.${i}.punch`,
    ]),
    ...form.holes.flatMap((_, i) => [`holes.${i}.flat`, `holes.${i}.position_mm`, `holes.${i}.diameter_mm`]),
    "grain",
    "order",
    ...ORDER_LIMIT_FIELDS,
    ...TOOL_FIELDS,
    "note",
    "reason",
  ];
}

/** @type {Record<string, string>} */
const CALLED = {
  title: "Name",
  metal: "Metal",
  thickness_mm: "Thickness",
  bend_length_mm: "Bend length",
  grain: "Rolling direction",
  order: "Order",
  note: "Note",
  included_angle_deg: "angle",
  inside_radius_mm: "radius",
  hem_gap_mm: "gap",
  flat: "flat",
  position_mm: "place",
  diameter_mm: "size",
  die: "die",
  punch: "punch",
};

/**
 * "bends.1.included_angle_deg" as a person says it.
 * @param {string} name
 * @returns {string}
 */
export function calledOf(name) {
  if (name.startsWith("box")) return boxCalled(name);
  const [list, index, leaf] = name.split(".");
  if (list === "tools") return index === "die" ? "Die" : "Punch";
  if (list === "wishes") return ORDER_LIMIT_NAMES[index] ?? "Limits on the order";
  if (index === undefined) return CALLED[list] ?? list;
  const thing = { flats_mm: "Flat", bends: "Bend", holes: "Hole" }[list] ?? list;
  return `${thing} ${Number(index) + 1}${leaf ? `, ${CALLED[leaf] ?? leaf}` : ""}`;
}

/**
 * Enter goes to the next box: a card is saved by its button, never by a slip.
 * @param {KeyboardEvent} event
 */
export function enterGoesOn(event) {
  const box = event.target;
  if (event.key !== "Enter" || !(box instanceof HTMLInputElement)) return;
  event.preventDefault();
  const stops = [
    .../** @type {HTMLFormElement} */ (box.form).querySelectorAll(
      "input:not([type=radio]), textarea, [type=submit]",
    ),
  ];
  const next = stops.slice(stops.indexOf(box) + 1).find((stop) => stop.checkVisibility());
  if (next instanceof HTMLElement) next.focus();
}
