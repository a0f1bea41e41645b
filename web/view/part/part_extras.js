// The parts of a part that often need no word: how flats are measured, grain, holes, order, note.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { live } from "/vendor/lit-html/directives/live.js";
import { bendNames } from "../../app/forms/box_form.js";
import { typedOrder } from "../../app/forms/part_form.js";
import { field, pick } from "../common/field.js";
import { wrongAt } from "../common/form_errors.js";

/** @typedef {import("../../app/forms/part_form.js").PartForm} PartForm */
/** @typedef {import("../../app/forms/part_form.js").Change} Change */
/** @typedef {import("../common/form_errors.js").Errors} Errors */

/** @type {Record<PartForm["dimension"], {title: string, words: string, mark: unknown}>} */
const CONVENTIONS = {
  din6935: {
    title: "Outside",
    words:
      "To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend " +
      "(DIN 6935).",
    mark: svg`<path d="M14 30H58M14 26v8M58 26v8"/>`,
  },
  mould_line: {
    title: "Outside corner, always",
    words: "To the corner where the outer faces meet, sharp bends too.",
    mark: svg`<path d="M8 30H58M8 26v8M58 26v8"/>`,
  },
  inside: {
    title: "Inside",
    words: "From inside face to inside face.",
    mark: svg`<path d="M20 8H58M20 4v8M58 4v8"/>`,
  },
};

/**
 * @param {PartForm} form
 * @param {Change} change
 */
export function conventionField(form, change) {
  return html`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${CONVENTIONS[form.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(CONVENTIONS).map(
        ([key, { title, words, mark }]) =>
          html`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${key}"
              value=${key}
              .checked=${live(form.dimension === key)}
              @change=${() => change({ ...form, dimension: /** @type {PartForm["dimension"]} */ (key) })} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${key === "inside" ? svg`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>` : sharp(key)}
              </g>
              <g class="measure-line">${mark}</g>
            </svg>
            <span><b>${title}</b> ${words}</span>
          </label>`,
      )}
    </div>
  </details>`;
}

/**
 * A square bend, or a sharp one where the two outside ways differ.
 * @param {string} key
 */
function sharp(key) {
  return key === "din6935"
    ? svg`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`
    : svg`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`;
}

/**
 * @param {PartForm} form
 * @param {Errors} errors
 * @param {Change} change
 */
export function holesField(form, errors, change) {
  /**
   * @param {number} i
   * @param {Partial<import("../../app/forms/part_form.js").HoleRow>} part
   */
  const edit = (i, part) => change({ ...form, holes: form.holes.with(i, { ...form.holes[i], ...part }) });
  return html`<details class="holes">
    <summary>Holes near a bend${form.holes.length ? `: ${form.holes.length}` : ""}</summary>
    <p class="hint">Only those that could be pulled out of shape.</p>
    ${form.holes.map((hole, i) => {
      const name = `holes.${i}`;
      return html`<fieldset class="hole">
        <legend>Hole ${i + 1}</legend>
        <div class="fields">
          ${field({
            next: true,
            name: `${name}.flat`,
            label: "On flat",
            keys: "numeric",
            value: hole.flat,
            wrong: wrongAt(errors, `${name}.flat`),
            change: (flat) => edit(i, { flat }),
          })}
          ${field({
            next: true,
            name: `${name}.position_mm`,
            label: "Middle from its left end",
            unit: form.unit,
            value: hole.position,
            wrong: wrongAt(errors, `${name}.position_mm`),
            change: (position) => edit(i, { position }),
          })}
          ${field({
            next: true,
            name: `${name}.diameter_mm`,
            label: "Size across",
            unit: form.unit,
            value: hole.diameter,
            wrong: wrongAt(errors, `${name}.diameter_mm`),
            change: (diameter) => edit(i, { diameter }),
          })}
        </div>
        <button
          type="button"
          class="button"
          data-test="remove-hole-${i + 1}"
          @click=${() =>
            change({ ...form, holes: form.holes.toSpliced(i, 1) }, { undo: `Hole ${i + 1} is out.` })}>
          Remove hole ${i + 1}
        </button>
      </fieldset>`;
    })}
    <button
      type="button"
      class="button"
      data-test="add-hole"
      @click=${() =>
        change(
          { ...form, holes: [...form.holes, { flat: "", position: "", diameter: "" }] },
          { focus: `holes.${form.holes.length}.flat` },
        )}>
      + Hole
    </button>
  </details>`;
}

/**
 * The order: the planner's until somebody moves a bend or types one.
 * @param {PartForm} form
 * @param {number[]|undefined} planned
 * @param {Errors} errors
 * @param {Change} change
 */
export function orderField(form, planned, errors, change) {
  const names = form.box ? bendNames(form.box) : [];
  const sequence = form.order ?? planned ?? form.bends.map((_, i) => i + 1);
  /**
   * @param {number} from
   * @param {number} to
   */
  const move = (from, to) =>
    change(
      { ...form, order: sequence.toSpliced(from, 1).toSpliced(to, 0, sequence[from]) },
      { focus: `order-${sequence[from]}-${to < from ? "earlier" : "later"}` },
    );
  return html`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${form.order ? `${form.order.join(", ")} (yours)` : "found by the planner"}</b></span
      >
    </summary>
    ${field({
      next: true,
      name: "order",
      label: "Bend numbers, first to last",
      hint: "Empty: the planner chooses.",
      value: form.order?.join(", ") ?? "",
      wrong: wrongAt(errors, "order"),
      on: "change",
      change: (typed) => change({ ...form, order: typedOrder(typed) }),
    })}
    <ol class="order-rows">
      ${sequence.map(
        (bend, i) =>
          html`<li>
            <span>Bend ${bend}${names[bend - 1] ? `: ${names[bend - 1]}` : ""}</span>
            <button
              type="button"
              class="button"
              id="order-${bend}-earlier"
              aria-label="Bend ${bend} earlier"
              ?disabled=${i === 0}
              @click=${() => move(i, i - 1)}>
              ↑
            </button>
            <button
              type="button"
              class="button"
              id="order-${bend}-later"
              aria-label="Bend ${bend} later"
              ?disabled=${i === sequence.length - 1}
              @click=${() => move(i, i + 1)}>
              ↓
            </button>
          </li>`,
      )}
    </ol>
    ${
      form.order
        ? html`<button
            type="button"
            class="button"
            data-test="free-order"
            @click=${() => change({ ...form, order: null })}>
            Let the planner choose
          </button>`
        : nothing
    }
  </details>`;
}

/**
 * @param {PartForm} form
 * @param {Errors} errors
 * @param {Change} change
 */
export function grainField(form, errors, change) {
  return pick({
    name: "grain",
    label: "Rolling direction against the bend lines",
    value: form.grain,
    wrong: wrongAt(errors, "grain"),
    options: [
      ["", "Not known"],
      ["across", "Bend lines across the grain"],
      ["with", "Bend lines along the grain"],
    ],
    change: (value) => change({ ...form, grain: /** @type {PartForm["grain"]} */ (value) }),
  });
}
