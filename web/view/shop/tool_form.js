// The form for a tool or the press: groups of boxes, with the outline drawn beside the boxes that
// shape it.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { faultDrawing } from "../../drawing/outline_fault.js";
import { MARKS, pressSizes } from "../../drawing/press_sizes.js";
import { toolOutlines } from "../../drawing/tool_outline.js";
import { settings } from "../../app/shell/settings.js";
import { GROUPS, UNKNOWN_RATING } from "../../app/forms/tool_fields.js";
import {
  KN_PER_METRIC_TON,
  byName,
  force,
  forcePerLength,
  forceUnit,
  inSentence,
  lengthUnit,
  ratingUnit,
  typedForce,
  words,
} from "../../app/shell/units.js";
import { checkList, flag } from "../common/finding.js";
import { dxfPanel } from "./dxf_panel.js";
import { field, pick, textArea } from "../common/field.js";
import { fold as foldAway } from "../common/fold.js";
import { openingsBox } from "./v_openings_fields.js";

/** @typedef {import("../../app/forms/tool_fields.js").FieldSpec} FieldSpec */
/** @typedef {import("../../app/forms/tool_fields.js").FieldGroup} FieldGroup */
/**
 * @typedef {{parts: {name: string, ring: import("../../drawing/rings.js").Ring}[],
 *   checks: import("../common/finding.js").Check[], wrong: string[], assumed: Record<string, number>,
 *   fault: import("../../drawing/outline_fault.js").Fault|null}} Preview
 */

/**
 * @typedef {(kind: import("../../app/forms/outline_dxf.js").DxfKind, name: string) =>
 *   import("../../app/forms/outline_dxf.js").DxfReader} Reader
 */

/**
 * @param {object} form
 * @param {import("../../app/forms/entry_form.js").Drawn} form.kind
 * @param {import("../../app/forms/tool_fields.js").Draft} form.draft
 * @param {(name: string, value: string) => void} form.change
 * @param {Record<string, string[]>} form.wrong by box
 * @param {Preview|null} form.preview null before the first answer
 * @param {Record<string, [string, string][]>} [form.options] of picks that depend on the shop
 * @param {unknown} [form.first] boxes before the first group's own
 * @param {Reader} form.reader of DXF files, by box
 * @param {FieldGroup[]} [form.groups] the groups shown; without any, all of the kind
 */
export function toolForm({
  kind,
  draft,
  change,
  wrong,
  preview,
  options = {},
  first = nothing,
  reader,
  groups = GROUPS[kind],
}) {
  return html`<div class="workbench">
    ${groups.map(
      (group, index) =>
        html`<section class="panel ${group.part}">
          <h2>${group.title}</h2>
          ${index === 0 ? first : nothing} ${group.part === "outline" ? outlineView(preview) : nothing}
          <div class="fields">
            ${group.fields
              .filter(({ when, hidden }) => !hidden && (!when || when(draft)))
              .map((spec) =>
                spec.type === "openings"
                  ? openingsBox({ draft, change, wrong })
                  : box(spec, draft[spec.name] ?? "", (value) => change(spec.name, value), {
                      wrong: wrong[spec.name],
                      options: options[spec.name],
                      assumed: preview?.assumed[spec.name],
                      reader,
                    }),
              )}
          </div>
        </section>`,
    )}
  </div>`;
}

/**
 * What is counted with for an empty box.
 * @param {number|undefined} mm
 */
export const assumedWords = (mm) =>
  mm === undefined ? "" : `Counted with ${inSentence(byName("assumed_mm", mm))}, assumed.`;

/** @param {Preview|null} preview */
export function outlineView(preview) {
  return html`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${
      preview?.fault
        ? faultDrawing(preview.fault)
        : preview?.parts.length
          ? html`<div class="outlines">${toolOutlines(preview.parts)}</div>`
          : html`<p class="hint">The outline appears as you type.</p>`
    }
    ${preview?.wrong.map((said) => html`<p class="wrong" data-test="outline-wrong">${said}</p>`)}
    ${preview ? checkList(preview.checks, { quiet: true }) : nothing}
  </div>`;
}

/**
 * @param {FieldSpec} spec
 * @param {string} value
 * @param {(value: string) => void} change
 * @param {{wrong?: string[], options?: [string, string][], assumed?: number, reader: Reader}} more
 */
function box(spec, value, change, { wrong = [], options = spec.options, assumed, reader }) {
  const { name, label, type } = spec;
  if (type === "pick" || type === "yes") {
    const all = spec.blank
      ? [/** @type {[string, string]} */ (["", spec.blank]), ...(options ?? [])]
      : (options ?? []);
    return wide(spec, pick({ name, label, value, options: all, change, wrong }));
  }
  if (type === "points" || type === "note") {
    const drawn = spec.dxf ? dxfPanel(name, reader(spec.dxf, name)) : nothing;
    return folded(spec, value, html`${drawn}${area(spec, value, change, wrong)}`);
  }
  const unit = unitOf(spec);
  const keys = ["number", "length", "force", "rating", "speed"].includes(type) ? "decimal" : "text";
  const boxed = field({
    name,
    label,
    mark: MARKS[name],
    value,
    change,
    wrong,
    unit,
    keys,
    hint: [assumedWords(assumed), hintOf(spec, value)].filter(Boolean).join(" "),
    placeholder: spec.blank ?? (assumed === undefined ? "" : "assumed"),
  });
  if (type === "rating") {
    return html`<div class="broad">
      ${boxed}${value.trim() ? nothing : flag("unknown", `${label} unknown`)}
    </div>`;
  }
  return wide(spec, boxed);
}

/**
 * @param {FieldSpec} spec
 * @param {unknown} boxed
 */
const wide = ({ broad, type }, boxed) =>
  broad || type === "lengths" ? html`<div class="broad">${boxed}</div>` : boxed;

/**
 * @param {FieldSpec} spec
 * @param {string} value
 * @param {unknown} boxed
 */
function folded({ folded: fold, label }, value, boxed) {
  return fold
    ? html`<details class="broad" ?open=${Boolean(value)}>
        <summary>${label}</summary>
        ${boxed}
      </details>`
    : boxed;
}

/** @param {FieldSpec} spec */
function unitOf({ type, unit = "" }) {
  if (type === "force") return forceUnit().unit;
  if (type === "rating") return ratingUnit().unit;
  if (type === "speed") return `${lengthUnit()}/s`;
  return ["length", "lengths", "points"].includes(type) ? lengthUnit() : unit;
}

/**
 * @param {FieldSpec} spec
 * @param {string} value
 * @param {(value: string) => void} change
 * @param {string[]} wrong
 */
function area(spec, value, change, wrong) {
  const { name, label, hint, type } = spec;
  return textArea({
    name,
    label,
    value,
    change,
    wrong,
    hint,
    unit: unitOf(spec),
    lines: type === "points" ? 7 : 2,
  });
}

/**
 * What helps to fill a box, in this device's units.
 * @param {FieldSpec} spec
 * @param {string} value
 */
function hintOf({ type, hint = "", counted_mm: counted }, value) {
  const more = [hint];
  if (counted !== undefined) {
    more.push(`Empty: ${inSentence(byName("counted_mm", counted))} is counted with (common practice).`);
  }
  if (type === "rating" && !value.trim()) more.push(UNKNOWN_RATING);
  if (type === "force" || type === "rating") more.push(tonsHint(type, value));
  if (type === "lengths") more.push(piecesHint(value));
  return more.filter(Boolean).join(" ");
}

/**
 * Which tons are meant, and what they are on a device in mm.
 * @param {import("../../app/forms/tool_fields.js").FieldType} type
 * @param {string} value
 */
function tonsHint(type, value) {
  if (settings().units === "inch") return "Short tons, of 2000 lb; metric ones with a t.";
  const tons = typedForce(value, { unit: "" }).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];
  if (!tons) return "";
  const kn = Number(tons) * KN_PER_METRIC_TON;
  return `In metric tons: ${words(type === "force" ? force(kn) : forcePerLength(kn))}.`;
}

/**
 * How many pieces are typed.
 * @param {string} value
 */
function piecesHint(value) {
  const count = value.split(/[,;\n]/).filter((piece) => piece.trim()).length;
  return count ? (count === 1 ? "1 piece." : `${count} pieces.`) : "";
}

const PLATE = GROUPS.press.slice(0, 1);
const MORE = GROUPS.press.slice(1);

/**
 * The press: what stands on its plate, and folded what may stay unknown, with a sketch of where each size is
 * measured.
 * @param {Omit<Parameters<typeof toolForm>[0], "kind"|"groups">} form
 * @param {{kept: boolean, open: boolean}} how kept: the shop has a press already; open: the rest, from the
 *   first
 */
export function pressForm(form, { kept, open }) {
  const unknown = MORE.flatMap(({ fields }) => fields).filter(
    ({ name, blank, type }) => (blank === "unknown" || type === "rating") && !form.draft[name]?.trim(),
  ).length;
  return html`${toolForm({ ...form, kind: "press", groups: PLATE })}
    <details class="fold more-figures" data-test="more-figures" ?open=${open}>
      <summary>
        More figures${unknown ? html` <span class="soft">(${unknown} not known)</span>` : nothing}
      </summary>
      <p>Each may stay unknown. An answer that depends on one says so and asks for it.</p>
      ${kept ? sketchFolded() : pressSizes()} ${toolForm({ ...form, kind: "press", groups: MORE })}
    </details>`;
}

const sketchFolded = () =>
  foldAway("Where each size is measured", pressSizes(), { test: "sketch", open: false });
