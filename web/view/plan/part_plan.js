// The plan under the part: what to cut, what to fetch, what to do, what may go wrong.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { flatDrawing } from "../../drawing/part.js";
import { poseDrawing } from "../../drawing/pose.js";
import { inReach } from "../../app/results/setting_limits.js";
import { angle, length, words } from "../../app/shell/units.js";
import { drawnAngle } from "./first_hit.js";
import { everyTimeCautions, otherFindings, urgentFindings } from "../common/findings_in_order.js";
import { fold, roomy } from "../common/fold.js";
import { orderPanel, saysOrder } from "./order_panel.js";
import { toolsReason } from "../part/named_tools_fields.js";
import { originWords } from "../common/figure_origin.js";
import { momentsOf, nearWords } from "../step/step_moments.js";
import { blankFigures, blankTable, handling, stepName, stepsTable, toolsList } from "./plan_parts.js";

/** @typedef {{save: (kind: "svg"|"dxf") => void, order: import("./order_panel.js").Ways}} Hands */

/**
 * @param {Api.Plan} plan
 * @param {Hands} hands
 */
export function partPlan(plan, { save, order }) {
  return html`${urgentFindings(plan.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>${blankFigures(plan.blank)}${roomy() ? flatDrawing(plan.blank, { pixels: 560 }) : nothing}</div>
        <div>
          ${fold("Bend lines and drawings", bendLines(plan.blank, save), { test: "bend-lines-fold" })}
        </div>
      </div>
    </section>
    ${
      saysOrder(plan)
        ? html`<section>
            <h2>Order</h2>
            ${orderPanel(plan, order)}
          </section>`
        : nothing
    }
    <section>
      <h2>Fetch</h2>
      ${toolsList(plan.tools, plan.steps.length, plan.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${plan.order && !saysOrder(plan) ? html`<p data-test="order-words">${plan.order.words}</p>` : nothing}
      <div class="step-drawings">${plan.steps.map((step) => stepFold(step, plan.part.thickness_mm))}</div>
      ${fold("All settings in a table", stepsTable(plan), { test: "steps-fold" })}
    </section>
    ${otherFindings(plan.checks)} ${everyTimeCautions(plan.checks)}`;
}

/**
 * @param {Api.Blank} blank
 * @param {Hands["save"]} save
 */
function bendLines(blank, save) {
  return html`${roomy() ? nothing : flatDrawing(blank, { pixels: innerWidth - 24 })} ${blankTable(blank)}
    ${otherAllowances(blank.bend_lines)}
    <div class="buttons">
      <button type="button" class="button" data-test="blank-svg" @click=${() => save("svg")}>
        Drawing as SVG
      </button>
      <button type="button" class="button" data-test="blank-dxf" @click=${() => save("dxf")}>
        Drawing as DXF
      </button>
    </div>`;
}

/**
 * A step in a line: what is bent, what is set, where the gauge stands. A tap shows how.
 * @param {Api.Step} step
 * @param {number} thickness
 */
function stepFold(step, thickness) {
  const reached = inReach(step, step) ? step.set_angle_deg : null;
  const set = [words(angle(reached)), `X ${length(step.gauge_x_mm, { digits: 1 }).text}`];
  const line = html`${step.number}. ${stepName(step)} <span class="step-set">${set.join(", ")}</span>`;
  return fold(line, stepDrawing(step, thickness), { test: "step-fold" });
}

/**
 * What other sources make of an allowance, where they differ by more than a little.
 * @param {Api.BendLine[]} lines
 */
function otherAllowances(lines) {
  const differing = lines.filter((line) => line.opinions?.length);
  if (differing.length === 0) return nothing;
  return html`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${differing.length === 1 ? `bend ${differing[0].bend}` : `${differing.length} bends`}
    </summary>
    ${differing.map(
      (line) =>
        html`<p>
          <b>Bend ${line.bend}:</b>
          ${line.opinions
            .map((one) => `${one.name} ${words(length(one.bend_allowance_mm, { digits: 2 }))}`)
            .join("; ")}.
        </p>`,
    )}
  </details>`;
}

/**
 * Where there is no V to measure by, the usual one for this sheet.
 * @param {Api.Step} step
 * @param {number} thickness
 */
function stepDrawing(step, thickness) {
  if (!step.drawing) return nothing;
  const gauge = length(step.gauge_x_mm, { digits: 2 });
  const drawn = drawnAngle(step, { set_angle_deg: step.set_angle_deg, firstHit: step.first_hit ?? null });
  const set = words(angle(drawn));
  const how = {
    close: false,
    opening: step.v_opening_mm ?? 8 * thickness,
    gauge: gauge.text,
    angle: drawn,
    near: momentsOf(step)?.near ?? null,
  };
  return html`<figure class="step-drawing" data-step=${step.number}>
    <figcaption>
      ${handling(step)} ${toolsReason(step)}
      <small data-test="origins">${originWords(step.origin)}</small>
      ${
        step.motion
          ? html`<span class="near-words ${step.clearance?.hits?.length ? "hit" : ""}" data-test="near-words"
              >${nearWords(step)}</span
            >`
          : nothing
      }
    </figcaption>
    <div class="poses">
      ${poseDrawing(step.drawing, {
        ...how,
        pose: "before",
        words: `Step ${step.number} before the bend: the sheet on the die, gauge at ${words(gauge)}.`,
      })}
      ${during(step, how)}
      ${poseDrawing(step.drawing, {
        ...how,
        pose: "after",
        words: `Step ${step.number} at the bottom of the stroke, ${set}.`,
      })}
    </div>
  </figure>`;
}

/**
 * The closest approach, with what was found.
 * @param {Api.Step} step
 * @param {{close: boolean, opening: number|null, gauge: string, angle: number|null,
 *   near: Api.Near|null}} how
 */
function during(step, how) {
  const moments = momentsOf(step);
  if (!moments) return nothing;
  return poseDrawing(/** @type {Api.Drawing} */ (step.drawing), {
    ...how,
    pose: "during",
    moment: moments.shown,
    mark: true,
    words: `Step ${step.number}. ${nearWords(step)}`,
  });
}
