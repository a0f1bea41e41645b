// A new tool from what is engraved on it: pick its shape by the picture, type two or three sizes; the rest
// is assumed, said so, and drawn as it is typed.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { specsOf } from "../../app/forms/entry_form.js";
import { openingsFrom, SHAPES } from "../../app/forms/quick_tool.js";
import { inSentence, length, lengthUnit, ratingUnit } from "../../app/shell/units.js";
import { sharedFrame, smallOutline } from "../../drawing/tool_outline.js";
import { field } from "../common/field.js";
import { flag } from "../common/finding.js";
import { assumedWords, outlineView } from "./tool_form.js";

/** @typedef {import("../../app/forms/quick_tool.js").Shape} Shape */
/** @typedef {import("../../app/forms/tool_fields.js").Draft} Draft */
/**
 * @typedef {object} Form
 * @property {"punches"|"dies"} kind
 * @property {Shape} shape
 * @property {Draft} draft
 * @property {(name: string, value: string) => void} change
 * @property {Record<string, string[]>} wrong by box
 * @property {import("./tool_form.js").Preview|null} preview
 * @property {unknown} first the box of its code
 * @property {(shape: Shape) => void} pick
 * @property {() => void} allSizes
 */

/** @type {Record<string, {label?: string, hint?: string, blank?: string}>} */
const OWN = {
  height_mm: { hint: "May stay empty." },
  segments_mm: { hint: "Lengths with commas between. Empty: one piece as long as needed, assumed." },
  rating_kn_per_m: { hint: "As engraved. Empty is unknown." },
};

/** @param {Form} form */
export function quickForm(form) {
  const { kind, shape, preview } = form;
  return html`<div class="workbench">
    <section class="panel what">
      <h2>Which looks like it?</h2>
      ${shapes(kind, shape, form.pick)}
      <h2>What is engraved on it</h2>
      <div class="fields">
        ${shape.boxes.map((name) => (name === "openings" ? blockBoxes(form) : sizeBox(form, name)))}
        ${form.first}
      </div>
      <button type="button" class="button" data-test="all-sizes" @click=${form.allSizes}>All sizes</button>
    </section>
    <section class="panel outline">
      <h2>As it is counted with</h2>
      ${outlineView(preview)} ${assumedLine(preview)}
    </section>
  </div>`;
}

/**
 * @param {"punches"|"dies"} kind
 * @param {Shape} chosen
 * @param {(shape: Shape) => void} pick
 */
function shapes(kind, chosen, pick) {
  const all = SHAPES[kind] ?? [];
  const frame = sharedFrame(all.map(({ ring }) => ring));
  return html`<div class="shapes" role="radiogroup" aria-label="Shape">
    ${all.map(
      (shape) =>
        html`<label>
          <input
            type="radio"
            name="picture"
            value=${shape.key}
            data-test="shape-${shape.key}"
            .checked=${shape.key === chosen.key}
            @change=${() => pick(shape)} />
          ${smallOutline(shape.ring, frame)}<span>${shape.title}</span>
        </label>`,
    )}
  </div>`;
}

/**
 * @param {Form} form
 * @param {string} name
 */
function sizeBox({ kind, draft, change, wrong, preview }, name) {
  const spec = specsOf(kind).find((one) => one.name === name);
  if (!spec) return nothing;
  const unit = spec.type === "rating" ? ratingUnit().unit : spec.type === "number" ? spec.unit : lengthUnit();
  return field({
    name,
    label: spec.label,
    unit,
    keys: spec.type === "lengths" ? "text" : "decimal",
    value: draft[name] ?? "",
    change: (value) => change(name, value),
    wrong: wrong[name],
    hint: assumedWords(preview?.assumed[name]) || OWN[name]?.hint,
    placeholder: preview && name in preview.assumed ? "assumed" : "",
  });
}

/** What stands in the two boxes of a block, which the draft keeps row by row. */
const block = { openings: "", vs: "", angles: "" };

/** @param {Form} form */
function blockBoxes({ draft, change, wrong }) {
  if (block.openings !== (draft.openings ?? "")) Object.assign(block, { openings: "", vs: "", angles: "" });
  /** @param {Partial<typeof block>} part */
  const set = (part) => {
    Object.assign(block, part);
    block.openings = openingsFrom(block.vs, block.angles);
    change("openings", block.openings);
  };
  const said = Object.entries(wrong).filter(([path]) => path.startsWith("openings"));
  const about = (/** @type {boolean} */ angle) =>
    said.filter(([path]) => path.endsWith("angle_deg") === angle).flatMap(([, words]) => words);
  return html`<div class="broad">
      ${field({
        name: "vs",
        label: "V openings",
        unit: lengthUnit(),
        value: block.vs,
        change: (vs) => set({ vs }),
        wrong: about(false),
        hint: "All of the block, with commas between.",
      })}
    </div>
    ${field({
      name: "angles",
      label: "Angle of the V’s",
      unit: "°",
      keys: "text",
      value: block.angles,
      change: (angles) => set({ angles }),
      wrong: about(true),
      hint: "One for all, or one for each, with commas between.",
    })}`;
}

/** @param {import("./tool_form.js").Preview|null} preview */
function assumedLine(preview) {
  const sizes = Object.entries(preview?.assumed ?? {});
  if (sizes.length === 0) return nothing;
  const listed = sizes.map(([name, mm]) => `${CALLED[name] ?? name} ${inSentence(length(mm))}`).join(", ");
  return html`<p data-test="assumed">
    ${flag("unknown", "Assumed")} ${listed}: usual proportions, common practice without a source. Answers that
    depend on them say so; measure and enter them under All sizes.
  </p>`;
}

/** @type {Record<string, string>} */
const CALLED = {
  height_mm: "height",
  body_width_mm: "width of the body",
  neck_relief_mm: "throat",
  width_mm: "width",
  shoulder_radius_mm: "shoulder radius",
};
