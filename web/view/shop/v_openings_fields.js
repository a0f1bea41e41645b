// The V's of a block: a row of boxes each, one of them drawn up.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { live } from "/vendor/lit-html/directives/live.js";
import { BOX_OF, FACES, rowsOf, without, withChange, withOneMore } from "../../app/forms/v_openings.js";
import { lengthUnit, ratingUnit } from "../../app/shell/units.js";
import { field, pick } from "../common/field.js";

/** @typedef {import("../../app/forms/tool_fields.js").Draft} Draft */

/**
 * @param {object} box
 * @param {Draft} box.draft
 * @param {(name: string, value: string) => void} box.change
 * @param {Record<string, string[]>} box.wrong by box; of the second V "openings.1", of a box of its
 *   "openings.1.angle_deg"
 */
export function openingsBox({ draft, change, wrong }) {
  const text = draft.openings ?? "";
  const rows = rowsOf(text);
  return html`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${rows.map((row, index) =>
      opening(row, index, {
        rows,
        wrong,
        up: draft.up || "1",
        set: (part) => change("openings", withChange(text, index, part)),
        raise: () => change("up", String(index + 1)),
        drop: () => dropped(index),
      }),
    )}
    ${(wrong.openings ?? []).map((words) => html`<p class="wrong" data-test="wrong-openings">${words}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${() => change("openings", withOneMore(text))}>
      Add a V
    </button>
  </div>`;

  /** @param {number} index */
  function dropped(index) {
    const up = Number(draft.up || "1");
    change("openings", without(text, index));
    if (up > index + 1 || up >= rows.length) change("up", String(Math.max(up - 1, 1)));
  }
}

/**
 * @param {import("../../app/forms/v_openings.js").OpeningRow} row
 * @param {number} index
 * @param {{rows: unknown[], wrong: Record<string, string[]>, up: string,
 *   set: (part: Partial<import("../../app/forms/v_openings.js").OpeningRow>) => void, raise: () => void,
 *   drop: () => void}} how
 */
function opening(row, index, { rows, wrong, up, set, raise, drop }) {
  const [number, own] = [index + 1, `openings.${index}`];
  /** @param {keyof typeof BOX_OF} api */
  const wrongAt = (api) => wrong[`${own}.${api}`] ?? [];
  const boxes = Object.keys(BOX_OF).map((api) => `${own}.${api}`);
  const others = Object.entries(wrong)
    .filter(([path]) => (path === own || path.startsWith(`${own}.`)) && !boxes.includes(path))
    .flatMap(([, words]) => words);
  /**
   * @param {keyof typeof BOX_OF} api
   * @param {string} label
   * @param {string} unit
   * @param {string} [placeholder]
   */
  const cell = (api, label, unit, placeholder = "") =>
    field({
      name: `opening-${number}-${BOX_OF[api]}`,
      label,
      unit,
      placeholder,
      value: row[BOX_OF[api]],
      keys: api === "code" ? "text" : "decimal",
      change: (value) => set({ [BOX_OF[api]]: value }),
      wrong: wrongAt(api),
    });
  return html`<fieldset class="opening" data-test="opening-${number}">
    <legend>V ${number}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${number}
          data-test="up-${number}"
          .checked=${live(up === String(number))}
          @change=${raise} />
        drawn up</label
      >
      ${
        rows.length > 1
          ? html`<button
              type="button"
              class="button"
              data-test="drop-${number}"
              aria-label="Take out V ${number}"
              @click=${drop}>
              Take out
            </button>`
          : nothing
      }
    </div>
    <div class="fields three">
      ${cell("v_opening_mm", "V opening", lengthUnit())} ${cell("angle_deg", "Angle", "°")}
      ${cell("shoulder_radius_mm", "Shoulder radius", lengthUnit())}
      ${pick({
        name: `opening-${number}-face`,
        label: "Face",
        value: row.face || "top",
        options: FACES,
        change: (face) => set({ face }),
        wrong: wrongAt("face"),
      })}
      ${cell("centre_mm", "Off the middle", lengthUnit(), "0")}
      ${cell("rating_kn_per_m", "Rating", ratingUnit().unit, "as the block")}
      ${cell("code", "Code", "", "automatic")}
    </div>
    ${others.map((words) => html`<p class="wrong">${words}</p>`)}
  </fieldset>`;
}
