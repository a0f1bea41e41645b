// Where the tools of a plan stand along the bed.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { length, words } from "../../app/shell/units.js";
import { flag } from "../common/finding.js";

/**
 * Where the tools stand, if that is not simply the middle.
 * @param {{stations?: Api.Station[]}} plan
 */
export function stationList({ stations: list = [] }) {
  if (list.length < 2 && !list.some((one) => one.off_centre_level !== "ok")) return nothing;
  return html`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${list.map(
        (one) =>
          html`<li>
            <b>Station ${one.number}</b> ${one.punch}${one.turned ? ", reversed," : nothing} over ${one.die}:
            ${standsAt(one.centre_mm)}; step${one.steps.length > 1 ? "s" : ""} ${one.steps.join(", ")}.
            ${
              one.off_centre_level === "ok"
                ? nothing
                : html`${flag(one.off_centre_level)} load off the middle, see the findings.`
            }
          </li>`,
      )}
    </ul>`;
}

/**
 * At which station a step is bent, where there are several.
 * @param {{stations?: Api.Station[]}} plan
 * @param {Api.Step} step
 * @returns {string}
 */
export function stationOf({ stations: list = [] }, step) {
  const one = list.find(({ steps }) => steps.includes(step.number));
  return one && list.length > 1 ? `Station ${one.number}, ${standsAt(one.centre_mm)}` : "";
}

/**
 * @param {number} mm
 * @returns {string}
 */
function standsAt(mm) {
  if (Math.abs(mm) < 0.5) return "in the middle";
  const far = words(length(Math.abs(mm), { digits: 0 }));
  return `its middle ${far} to the ${mm > 0 ? "right" : "left"} of the press's middle`;
}
