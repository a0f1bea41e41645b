// The fields on which two changes of a card differ: one box for each side, beside or above each other.
import { html } from "/vendor/lit-html/lit-html.js";
import { angle, length, words } from "../../app/shell/units.js";

/** @typedef {import("../../app/sync/card_fields.js").Row} Row */
/** @typedef {"shop"|"yours"} Side */

/**
 * @param {Row[]} rows
 * @param {Record<string, Side>} chosen
 * @param {string} whose
 * @param {(name: string, side: Side) => void} choose
 */
export function differences(rows, chosen, whose, choose) {
  return rows.map(
    (row) =>
      html`<fieldset class="resolve-row" data-test="differs" data-field=${row.name}>
        <legend>${row.label} <small>was ${valueWords(row, row.before)}</small></legend>
        ${side(row, "shop", "In the shop", chosen, choose)} ${side(row, "yours", whose, chosen, choose)}
      </fieldset>`,
  );
}

/**
 * @param {Row} row
 * @param {Side} which
 * @param {string} label
 * @param {Record<string, Side>} chosen
 * @param {(name: string, side: Side) => void} choose
 */
function side(row, which, label, chosen, choose) {
  return html`<label class="resolve-side" data-test=${which}>
    <span class="resolve-whose"
      ><input
        type="radio"
        name=${row.name}
        value=${which}
        .checked=${chosen[row.name] === which}
        @change=${() => choose(row.name, which)} />
      ${label}</span
    >
    <span class="resolve-value">${valueWords(row, row[which])}</span>
  </label>`;
}

/**
 * @param {Row} row
 * @param {import("../../app/sync/card_fields.js").Value} value
 * @returns {string}
 */
export function valueWords({ name }, value) {
  if (name === "archived") return value ? "Archived" : "In use";
  if (!name.startsWith("settings ")) return /** @type {string|undefined} */ (value) || "nothing";
  if (!value) return "as planned";
  const set = /** @type {Api.Setting} */ (value);
  const depth =
    set.punch_depth_mm === null || set.punch_depth_mm === undefined
      ? ""
      : `, depth ${words(length(set.punch_depth_mm, { digits: 2 }))}`;
  return `${words(angle(set.set_angle_deg ?? null))}${depth}`;
}
