// Every die of the crib that could make this bend, best first, with the reason for its rank.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { placeWords } from "../../app/sync/shop_lists.js";
import { angle, fixed, length, words } from "../../app/shell/units.js";
import { allowFor, expected } from "../common/force.js";
import { flag, sentence } from "../common/finding.js";

/**
 * @param {Api.Option[]} options
 * @param {(die: string) => void} use
 */
export function dieOptions(options, use) {
  const ranked = [...options].sort((a, b) => a.rank - b.rank);
  return html`<ol class="rows options" data-test="options">
    ${ranked.map(
      (option) =>
        html`<li class="row option" data-die=${option.die} data-level=${option.level}>
          <button
            type="button"
            aria-pressed=${option.chosen ? "true" : "false"}
            @click=${() => use(option.die)}>
            <span class="lead"
              >${option.chosen ? "✓ " : ""}${option.die}
              <small>V ${fixed(option.v_over_t, 1)} × thickness</small></span
            >
            ${option.level === "ok" ? nothing : flag(option.level)}
            <span class="facts"> ${facts(option).map((one) => fact(...one))} </span>
            <span class="more">${sentence(option.reason_said)} ${placeWords(option)}.</span>
          </button>
        </li>`,
    )}
  </ol>`;
}

/**
 * @param {Api.Option} option
 * @returns {[string, string, string?][]}
 */
const facts = (option) => [
  [
    "allow for",
    words(allowFor(option, "force_kn_per_m")),
    `expected ${expected(option, "force_kn_per_m").text}`,
  ],
  ["radius", words(length(option.inside_radius_mm))],
  ["flange from", words(length(option.min_flange_mm))],
  ["set", words(angle(option.set_angle_deg))],
];

/**
 * @param {string} what
 * @param {string} value
 * @param {string} [beside]
 */
const fact = (what, value, beside) =>
  html`<span class="fact"
    ><small>${what}</small>
    <span class="amount">${value}</span
    >${beside ? html` <small class="beside">${beside}</small>` : nothing}</span
  >`;
