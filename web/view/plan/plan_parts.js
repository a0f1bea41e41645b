// A plan's pieces, the same on the desk, on a card and on paper.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { placeWords } from "../../app/sync/shop_lists.js";
import { inReach } from "../../app/results/setting_limits.js";
import { angle, length, mass, words } from "../../app/shell/units.js";
import { allowFor, expected } from "../common/force.js";
import { tidyLength } from "../../drawing/section.js";
import { figure } from "../common/figure.js";
import { comesOutWords } from "./first_hit.js";
import { gaugedWords, moveSign } from "./orientation.js";
import { wayWords } from "../step/step_moments.js";

/** @typedef {"set_angle_deg"|"punch_depth_mm"} ToSet */

/** Where a tool lies, as written on the rack. */
export const place = placeWords;

/**
 * Segments to lay together: 500 + 100 = 600 mm.
 * @param {Api.Tool} tool
 * @returns {string}
 */
export function segments({ segments_mm: pieces, segments_total_mm: total }) {
  if (!pieces?.length) return "";
  const sum = pieces.map((mm) => tidyLength(mm)).join(" + ");
  const unit = length(0).unit;
  return pieces.length > 1 ? `${sum} = ${tidyLength(total ?? 0)} ${unit}` : `${sum} ${unit}`;
}

/**
 * What to fetch.
 * @param {Api.Tool[]} tools
 * @param {number} [stepCount]
 * @param {Api.Step[]} [steps] that tell which punch is turned round
 */
export function toolsList(tools, stepCount = 0, steps = []) {
  if (!tools?.length) {
    return html`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`;
  }
  return html`<ul class="tools" data-test="tools">
    ${tools.map(
      (tool) =>
        html`<li class="tool-row" data-kind=${tool.kind} data-code=${tool.code}>
          <span class="kind">${tool.kind}</span>
          <span class="name"><b>${tool.code}</b> ${tool.name}</span>
          <span class="where">${place(tool)}</span>
          <span class="more"
            >${[
              segments(tool),
              stepsWords(tool.steps, stepCount),
              turnedWords(tool, steps),
              conditionWords(tool.condition),
            ]
              .filter(Boolean)
              .join(" · ")}</span
          >
        </li>`,
    )}
  </ul>`;
}

/**
 * @param {number[]} steps
 * @param {number} all
 * @returns {string}
 */
function stepsWords(steps, all) {
  if (!steps?.length || steps.length === all) return "";
  return `step${steps.length > 1 ? "s" : ""} ${steps.join(", ")}`;
}

/**
 * A punch that stands the other way round than it is drawn in the crib.
 * @param {Api.Tool} tool
 * @param {Api.Step[]} steps
 * @returns {string}
 */
export function turnedWords({ kind, code }, steps) {
  const used = steps.filter((step) => kind === "punch" && step.punch === code);
  const turned = used.filter((step) => step.punch_turned);
  if (!turned.length) return "";
  return `reversed${
    turned.length < used.length
      ? ` for ${stepsWords(
          turned.map(({ number }) => number),
          0,
        )}`
      : ""
  }`;
}

/**
 * @param {string} condition
 * @returns {string}
 */
function conditionWords(condition) {
  if (condition === "good" || !condition) return "";
  return condition === "unknown" ? "condition unknown" : condition;
}

/**
 * The blank in figures.
 * @param {Api.Blank} blank
 */
export function blankFigures(blank) {
  const same = blank.length_mm_low === blank.length_mm_high || blank.length_mm_low === undefined;
  return html`<div class="figures blank">
      ${figure("Blank length", length(blank.length_mm, { digits: 2 }), {
        test: "blank-length",
        band: same
          ? null
          : [length(blank.length_mm_low, { digits: 2 }), length(blank.length_mm_high, { digits: 2 })],
      })}
      ${figure("Blank width", length(blank.width_mm, blank.outline ? { digits: 2 } : {}), {
        test: "blank-width",
        band:
          blank.width_mm_low === undefined || blank.width_mm_low === blank.width_mm_high
            ? null
            : [length(blank.width_mm_low, { digits: 2 }), length(blank.width_mm_high, { digits: 2 })],
      })}
      ${figure("Mass", mass(blank.mass_kg), { test: "blank-mass" })}
    </div>
    ${blank.rests_on ? html`<p data-test="blank-rests-on">Blank by ${blank.rests_on}.</p>` : nothing}
    ${blank.lines ? html`<p data-test="relief">${reliefWords(blank)}</p>` : nothing}`;
}

/**
 * The cut-outs at the corners, where two pairs of sides meet.
 * @param {Api.Blank} blank
 * @returns {string}
 */
export function reliefWords({ relief, lines = [] }) {
  const sides = new Set(lines.map(({ side }) => /** @type {string} */ (side)));
  const corner =
    ["left", "right"].some((side) => sides.has(side)) && ["front", "back"].some((side) => sides.has(side));
  if (!corner || !relief) return "";
  return relief.shape === "none"
    ? "Corners without relief."
    : `Corner reliefs ${relief.shape}, ${words(length(relief.size_mm, { digits: 1 }))} ${
        relief.shape === "round" ? "across." : "a side."
      }`;
}

/**
 * Every bend line with what it takes.
 * @param {Api.Blank} blank
 */
export function blankTable(blank) {
  /** @param {number|null} mm */
  const bare = (mm) => length(mm, { digits: 2 }).text;
  /** @type {[string, (line: Api.BendLine) => string][]} */
  const columns = [
    ["At", (line) => bare(line.at_mm)],
    ["Angle", (line) => words(angle(line.included_angle_deg))],
    ["Inside radius", (line) => bare(line.inside_radius_mm)],
    ["Allowance", (line) => bare(line.bend_allowance_mm)],
    ["Deduction", (line) => bare(line.bend_deduction_mm)],
    ["K-factor", (line) => (typeof line.k_factor === "number" ? line.k_factor.toFixed(2) : "–")],
  ];
  return html`<div class="lines-frame">
    <table class="blank-table stacks" role="table" data-test="bend-lines">
      <caption>
        Bend lines, ${length(0).unit} from
        ${blank.lines ? "the left end; front and back from the front end" : "the left end"}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">Bend</th>
          ${columns.map(([head]) => html`<th role="columnheader" scope="col" class="number">${head}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${blank.bend_lines.map(
          (line) =>
            html`<tr role="row" data-bend=${line.bend}>
              <th role="rowheader" scope="row">${line.bend} ${sideOf(blank, line)}${line.direction}</th>
              ${columns.map(
                ([head, show], i) =>
                  html`<td
                    role="cell"
                    class="number"
                    data-head=${head}
                    data-test=${i === 0 ? "line-at" : nothing}>
                    ${show(line)}
                  </td>`,
              )}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

/**
 * @param {Api.Blank} blank
 * @param {Api.BendLine} line
 * @returns {string}
 */
function sideOf({ lines }, { bend }) {
  const side = lines?.find((one) => one.bend === bend)?.side;
  return side ? `${side} ` : "";
}

/**
 * Which way the sheet goes in: what to do with it since the step before, then how it lies.
 * @param {Api.Step} step
 * @param {number} [flats]
 */
export function handling(step, flats = 0) {
  const turned = step.turn_over || step.turn_end || step.turn_quarter;
  const against =
    step.gauged_against && step.gauged_against !== "flat edge" ? `, against the ${step.gauged_against}` : "";
  const end = step.gauged_end ? `${capital(gaugedWords(step, flats))} to the gauge${against}, ` : "";
  return html`<span class="handling">
    ${
      turned
        ? html`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(Boolean(step.turn_quarter))}
            data-over=${String(step.turn_over)}
            data-end=${String(step.turn_end)}
            >${moveSign(step)}</span
          > `
        : nothing
    }
    ${wayWords(step, { short: true })} ${end}${step.inside_face === "up" ? "top" : "bottom"} face
    up.${hits(step)}
  </span>`;
}

/** @param {string} text */
const capital = (text) => text[0].toUpperCase() + text.slice(1);

/**
 * A large radius in many small bends.
 * @param {Api.Step} step
 */
function hits({ hits: many }) {
  if (!many) return nothing;
  const places = many.gauge_x_mm.map((mm) => tidyLength(mm)).join(", ");
  return html` <span data-test="hits"
    >${many.count} bumps, ${words(length(many.pitch_mm, { digits: 2 }))} apart, gauge X ${places}.</span
  >`;
}

/**
 * What a step does, in words.
 * @param {Api.Step} step
 * @returns {string}
 */
export function stepName(step) {
  const what = step.operation && step.operation !== "bend" ? step.operation : "bend";
  const name = step.side ? `Bend ${step.bend}, ${step.side}` : `Bend ${step.bend}`;
  return what === "bend" ? name : `${name}, ${what}`;
}

/**
 * A set value with its band under it.
 * @param {Api.Step} step
 * @param {ToSet} name
 * @param {(value: number|null|undefined) => import("../../app/shell/units.js").Shown} show
 */
function banded(step, name, show) {
  const low = step[`${name}_low`];
  const high = step[`${name}_high`];
  const band =
    low === null || low === undefined || low === high
      ? nothing
      : html`<small class="band">${show(low).text} to ${words(show(high))}</small>`;
  return html`${words(show(step[name]))}${band}`;
}

/**
 * An angle or depth to set. The band of a step that an earlier release saved may go past its tools: it is
 * left out.
 * @param {Api.Step} step
 * @param {ToSet} name
 * @param {(value: number|null|undefined) => import("../../app/shell/units.js").Shown} show
 */
function setting(step, name, show) {
  if (!inReach(step, step)) return words(show(null));
  if (step.first_hit) return ledByFirstHit(step, name, show);
  return step.limits ? banded(step, name, show) : words(show(step[name]));
}

/**
 * The first hit, with what it comes out at and what is expected to be set in the end.
 * @param {Api.Step} step
 * @param {ToSet} name
 * @param {(value: number|null|undefined) => import("../../app/shell/units.js").Shown} show
 */
function ledByFirstHit(step, name, show) {
  const first =
    name === "set_angle_deg"
      ? `first hit, ${comesOutWords(/** @type {Api.FirstHit} */ (step.first_hit))}; then about `
      : "then about ";
  return html`${words(show(step[name]))}<small class="band"
      >${first}${words(show(step[`expected_${name}`]))}</small
    >`;
}

/**
 * The steps in a table that becomes a stack of blocks on a phone.
 * @param {Api.Plan} plan
 * @param {{link?: (number: number) => string}} [how]
 */
export function stepsTable(plan, { link } = {}) {
  /** @param {number|null|undefined} mm */
  const mm2 = (mm) => length(mm, { digits: 2 });
  const flats = plan.part?.flats_mm?.length ?? 0;
  return html`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step", "Gauge X", "Gauge R", "Set angle", "Depth", "Allow for", "Tools", "Sheet"].map(
            (head) => html`<th role="columnheader" scope="col">${head}</th>`,
          )}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${plan.steps.map(
          (step) =>
            html`<tr role="row" data-step=${step.number}>
              <th role="rowheader" scope="row">
                ${
                  link
                    ? html`<a href=${link(step.number)}>${step.number}. ${stepName(step)}</a>`
                    : html`${step.number}. ${stepName(step)}`
                }
                <small>${words(angle(step.included_angle_deg))} ${step.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${words(mm2(step.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${words(mm2(step.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${setting(step, "set_angle_deg", angle)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${setting(step, "punch_depth_mm", mm2)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${words(allowFor(step))}<small class="band">expected ${words(expected(step))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[step.punch, step.die].filter(Boolean).join(" / ") || "none"}${
                  step.punch_turned ? html` <span class="punch-turned">punch reversed</span>` : nothing
                }
              </td>
              <td role="cell" data-head="Sheet" class="long">${handling(step, flats)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
