// The section as a list: flat, bend, flat, bend, flat; the list reads as the sheet lies, left to right.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { keyed } from "/vendor/lit-html/directives/keyed.js";
import { KINDS } from "../../app/forms/bend_row.js";
import {
  bendAdded,
  bendRemoved,
  mayBeHem,
  MOST_BENDS,
  withBend,
  withFlat,
} from "../../app/forms/part_form.js";
import { choice, field, pick } from "../common/field.js";
import { toolsWords } from "../../app/forms/named_tools.js";
import { toolBoxes } from "./named_tools_fields.js";
import { wrongAt } from "../common/form_errors.js";

/** @typedef {import("../../app/forms/part_form.js").PartForm} PartForm */
/** @typedef {import("../common/form_errors.js").Errors} Errors */
/** @typedef {import("../../app/forms/part_form.js").Change} Change */

/** @type {[string, string][]} */
const TURNS = [
  ["up", "↑ up"],
  ["down", "↓ down"],
];

/**
 * @param {PartForm} form
 * @param {Errors} errors
 * @param {Change} change
 */
export function sectionRows(form, errors, change) {
  const full = form.bends.length >= MOST_BENDS;
  return html`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${full}
        @click=${() => change(bendAdded(form, "left"), { focus: "flats_mm.0" })}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${form.flats.map(
        (_, i) =>
          html`${flatRow(form, i, errors, change)}${
            i < form.bends.length ? bendRow(form, i, errors, change) : nothing
          }`,
      )}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${full}
        @click=${() => change(bendAdded(form, "right"), { focus: `flats_mm.${form.flats.length}` })}>
        + Bend at the right end
      </button>
    </div>
    ${full ? html`<p class="hint">A part has at most ${MOST_BENDS} bends.</p>` : nothing}`;
}

/**
 * @param {PartForm} form
 * @param {number} i
 * @param {Errors} errors
 * @param {Change} change
 */
function flatRow(form, i, errors, change) {
  const name = `flats_mm.${i}`;
  return html`<li class="flat-row">
    ${field({
      next: true,
      name,
      label: `Flat ${i + 1}`,
      value: form.flats[i],
      wrong: wrongAt(errors, name),
      change: (value) => change(withFlat(form, i, value)),
    })}
  </li>`;
}

/**
 * @param {PartForm} form
 * @param {number} i
 * @param {Errors} errors
 * @param {Change} change
 */
function bendRow(form, i, errors, change) {
  const bend = form.bends[i];
  const name = `bends.${i}`;
  const hem = bend.kind !== "bend";
  const angleName = `${name}.included_angle_deg`;
  const leftovers = Object.fromEntries(
    Object.entries(errors).filter(
      ([path]) => path === name || path === `${name}.kind` || path === `${name}.direction`,
    ),
  );
  return html`<li class="bend-row ${hem ? "is-hem" : ""}" data-bend=${i + 1}>
    <span class="badge-mark" aria-hidden="true">${i + 1}</span>
    <div class="bend-main">
      ${
        hem
          ? html`<p class="hem-word">${bend.kind === "closed_hem" ? "Closed hem" : "Open hem"}</p>`
          : field({
              next: true,
              name: angleName,
              label: `Bend ${i + 1}`,
              unit: "°",
              keys: "decimal",
              value: bend.angle,
              wrong: wrongAt(errors, angleName),
              change: (value) => change(withBend(form, i, { angle: value })),
            })
      }
      ${choice({
        name: `${name}.direction`,
        label: `Bend ${i + 1} turns`,
        value: bend.direction,
        options: TURNS,
        change: (value) => change(withBend(form, i, { direction: value === "down" ? "down" : "up" })),
      })}
    </div>
    ${Object.values(leftovers)
      .flat()
      .map((words) => html`<p class="wrong" data-test="wrong-${name}">${words}</p>`)}
    ${bend.kind === "open_hem" ? gapField(form, i, errors, change) : nothing}
    ${keyed(i, more(form, i, errors, change))}
  </li>`;
}

/**
 * @param {PartForm} form
 * @param {number} i
 * @param {Errors} errors
 * @param {Change} change
 */
function gapField(form, i, errors, change) {
  const name = `bends.${i}.hem_gap_mm`;
  return field({
    next: true,
    name,
    label: "Clear gap inside",
    unit: form.unit,
    value: form.bends[i].gap,
    wrong: wrongAt(errors, name),
    change: (value) => change(withBend(form, i, { gap: value })),
  });
}

/**
 * What most bends do not need.
 * @param {PartForm} form
 * @param {number} i
 * @param {Errors} errors
 * @param {Change} change
 */
function more(form, i, errors, change) {
  const bend = form.bends[i];
  const radius = `bends.${i}.inside_radius_mm`;
  const wanted = [bend.radius && `Radius ${bend.radius}`, toolsWords(bend)].filter(Boolean).join(", ");
  return html`${wanted ? html`<p class="hint bend-wanted">${wanted}</p>` : nothing}
    <details class="bend-more">
      <summary>
        <span class="unseen">Bend ${i + 1}: </span
        ><span class="bend-more-words">Radius, tools, kind, remove</span>
      </summary>
      ${
        bend.kind === "bend"
          ? field({
              next: true,
              name: radius,
              label: "Inside radius wanted",
              unit: form.unit,
              hint: "Empty: what the tools give.",
              value: bend.radius,
              wrong: wrongAt(errors, radius),
              change: (value) => change(withBend(form, i, { radius: value })),
            })
          : nothing
      }
      ${toolBoxes(`bends.${i}`, bend, errors, (tools) => change(withBend(form, i, tools)))}
      ${
        mayBeHem(form, i) || bend.kind !== "bend"
          ? pick({
              name: `bends.${i}.kind`,
              label: "Kind",
              value: bend.kind,
              options: KINDS,
              change: (value) =>
                change(
                  withBend(form, i, {
                    kind: /** @type {import("../../app/forms/bend_row.js").Kind} */ (value),
                  }),
                ),
            })
          : html`<p class="hint">Only the first and the last bend can be a hem.</p>`
      }
      <button
        type="button"
        class="button wide"
        data-test="remove-bend-${i + 1}"
        ?disabled=${form.bends.length < 2}
        @click=${() =>
          change(bendRemoved(form, i), {
            focus: `flats_mm.${i}`,
            undo: `Bend ${i + 1} and flat ${i + 2} are out.`,
          })}>
        Remove bend ${i + 1} and flat ${i + 2}
      </button>
    </details>`;
}
