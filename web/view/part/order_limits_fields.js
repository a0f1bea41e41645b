// What the order must keep to: picked and ticked, folded away while nothing is wished.
import { html } from "/vendor/lit-html/lit-html.js";
import { live } from "/vendor/lit-html/directives/live.js";
import { bendNames, flatNames } from "../../app/forms/box_form.js";
import { lengthToType } from "../../app/shell/units.js";
import { noOrderLimits, USUAL_MARGIN_MM, orderLimitsWords } from "../../app/forms/order_limits_form.js";
import { field, pick } from "../common/field.js";
import { wrongAt } from "../common/form_errors.js";

/** @typedef {import("../../app/forms/order_limits_form.js").OrderLimitsForm} OrderLimitsForm */

export const ORDER_LIMIT_FIELDS = [
  "wishes.first",
  "wishes.last",
  "wishes.critical_flats",
  "wishes.margin_mm",
];

/** @type {Record<string, string>} */
export const ORDER_LIMIT_NAMES = {
  first: "Bend first",
  last: "Bend last",
  critical_flats: "Flats to gauge directly",
  margin_mm: "Clearance wanted",
};

/**
 * @param {import("../../app/forms/part_form.js").PartForm} form
 * @param {import("../common/form_errors.js").Errors} errors
 * @param {import("../../app/forms/part_form.js").Change} change
 */
export function orderLimitsFields(form, errors, change) {
  const wishes = form.wishes ?? noOrderLimits();
  /** @param {Partial<OrderLimitsForm>} part */
  const wish = (part) => change({ ...form, wishes: { ...wishes, ...part } });
  /** @type {[string, string][]} */
  const bends = form.box
    ? bendNames(form.box).map((name, i) => [String(i + 1), `Bend ${i + 1}: ${name}`])
    : form.bends.map((_, i) => [String(i + 1), `Bend ${i + 1}`]);
  const flats = form.box
    ? flatNames(form.box).map((name) => name[0].toUpperCase() + name.slice(1))
    : form.flats.map((_, i) => `Flat ${i + 1}`);
  const said = orderLimitsWords(wishes);
  return html`<details class="order-limits" data-test="order-limits">
    <summary>
      <span>Limits on the order: <b>${said || "none"}</b></span>
    </summary>
    <div class="fields">
      ${pick({
        name: "wishes.first",
        label: "Bend first",
        value: wishes.first,
        options: [["", "Any"], ...bends],
        wrong: wrongAt(errors, "wishes.first"),
        change: (first) => wish({ first }),
      })}
      ${pick({
        name: "wishes.last",
        label: "Bend last",
        value: wishes.last,
        options: [["", "Any"], ...bends],
        wrong: wrongAt(errors, "wishes.last"),
        change: (last) => wish({ last }),
      })}
    </div>
    ${tick("wishes.no_turn_over", "Never turn it over", wishes.no_turn_over, (no_turn_over) =>
      wish({ no_turn_over }),
    )}
    ${tick("wishes.no_turn_end", "Never turn it end for end", wishes.no_turn_end, (no_turn_end) =>
      wish({ no_turn_end }),
    )}
    ${tick("wishes.one_set_up", "One set-up: no change of tools", wishes.one_set_up, (one_set_up) =>
      wish({ one_set_up }),
    )}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${flats.map((name, i) =>
          tick(`wishes.flat-${i + 1}`, name, wishes.critical_flats.includes(i + 1), (on) =>
            wish({ critical_flats: flatsWith(wishes.critical_flats, i + 1, on) }),
          ),
        )}
      </div>
      ${wrongAt(errors, "wishes.critical_flats").map((words) => html`<span class="wrong">${words}</span>`)}
    </fieldset>
    ${field({
      next: true,
      name: "wishes.margin_mm",
      label: "Clearance wanted between part and tools",
      unit: form.unit,
      hint: "Empty: the usual.",
      placeholder: lengthToType(USUAL_MARGIN_MM),
      value: wishes.margin,
      wrong: wrongAt(errors, "wishes.margin_mm"),
      change: (margin) => wish({ margin }),
    })}
  </details>`;
}

/**
 * @param {number[]} flats
 * @param {number} flat
 * @param {boolean} on
 */
const flatsWith = (flats, flat, on) =>
  [...flats.filter((one) => one !== flat), ...(on ? [flat] : [])].sort((a, b) => a - b);

/**
 * @param {string} name
 * @param {string} label
 * @param {boolean} on
 * @param {(on: boolean) => void} change
 */
function tick(name, label, on, change) {
  return html`<label class="tick"
    ><input
      type="checkbox"
      name=${name}
      data-test=${name}
      .checked=${live(on)}
      @change=${(/** @type {{target: HTMLInputElement}} */ event) => change(event.target.checked)} /><span
      >${label}</span
    ></label
  >`;
}
