// An outline out of a DXF file: choose the file, see how it was read, choose otherwise.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { faultDrawing } from "../../drawing/outline_fault.js";
import { length, words } from "../../app/shell/units.js";
import { field, pick } from "../common/field.js";

/** @typedef {import("../../app/forms/outline_dxf.js").DxfReader} DxfReader */

/** @type {[string, string][]} */
const UNITS = [
  ["", "as the file says"],
  ["mm", "mm"],
  ["cm", "cm"],
  ["m", "m"],
  ["inch", "inch"],
  ["ft", "foot"],
];
/** @type {[string, string][]} */
const ORIGINS = [
  ["rule", "by its shape"],
  ["drawn", "as drawn"],
  ["point", "at a point"],
];
/** @type {[string, string][]} */
const TURNS = [
  ["0", "as drawn"],
  ["90", "a quarter left"],
  ["180", "upside down"],
  ["270", "a quarter right"],
];
/** @type {[string, string][]} */
const MIRROR = [
  ["no", "no"],
  ["yes", "front to back"],
];

/**
 * @param {string} name of the box that takes the points
 * @param {DxfReader} reader
 */
export function dxfPanel(name, { state, choose, set }) {
  const { file, busy, answer, wrong, fault, choices, layers } = state;
  const id = `dxf-${name}`;
  /**
   * @param {keyof import("../../app/forms/outline_dxf.js").Choices} choice
   * @param {string} label
   * @param {[string, string][]} options
   */
  const chosen = (choice, label, options) =>
    pick({
      name: `${id}-${choice}`,
      label,
      value: choices[choice],
      options,
      change: (value) => set(choice, value),
    });
  return html`<div class="dxf broad" data-test=${id}>
    <label class="button dxf-file" for="${id}-file"
      >${file ? "Read another DXF file" : "Read a DXF file"}
      <input
        id="${id}-file"
        data-test="${id}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${(/** @type {{target: HTMLInputElement}} */ { target }) => {
          if (target.files?.[0]) choose(target.files[0]);
          target.value = "";
        }} />
    </label>
    ${
      file
        ? html`<div role="status">
              ${busy ? html`<p class="hint">Reading ${file}…</p>` : nothing}
              ${
                answer
                  ? html`<p data-test="${id}-read">
                      <b>${file}</b>, read in ${answer.units}: ${size(answer.width_mm)} wide,
                      ${size(answer.height_mm)} high, ${answer.points_mm.length} points, arcs within
                      ${size(answer.within_mm)}. ${answer.rule}${leftOut(answer)}
                    </p>`
                  : nothing
              }
              ${wrong ? html`<p class="wrong" data-test="${id}-wrong">${wrong}</p>` : nothing}
            </div>
            ${fault?.lines_mm.length ? faultDrawing(fault) : nothing}
            <div class="fields">
              ${chosen("units", "Drawn in", UNITS)}
              ${
                layers.length > 1 || choices.layer
                  ? chosen("layer", "Layer", [
                      ["", "all"],
                      ...layers.map((layer) => /** @type {[string, string]} */ ([layer, layer])),
                    ])
                  : nothing
              }
              ${chosen("origin", "0, 0 is", ORIGINS)}
              ${
                choices.origin === "point"
                  ? field({
                      name: `${id}-point`,
                      label: "Point number",
                      value: choices.point,
                      keys: "numeric",
                      on: "change",
                      hint: "As the points are listed below, from 1.",
                      change: (value) => set("point", value),
                    })
                  : nothing
              }
              ${chosen("turn_deg", "Turned", TURNS)} ${chosen("mirror", "Mirrored", MIRROR)}
            </div>`
        : html`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`
    }
  </div>`;
}

/** @param {number} mm */
const size = (mm) => words(length(mm, { digits: 2 }));

/** @param {{left_out: {kind: string, count: number}[]}} answer */
function leftOut({ left_out: left }) {
  return left.length ? ` Left out: ${left.map(({ kind, count }) => `${count} ${kind}`).join(", ")}.` : "";
}
