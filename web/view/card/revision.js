// An older state of a card, whole: what it was, its settings, its steps.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { boxSize, isBox } from "../../drawing/box.js";
import { finishedDrawing } from "../../drawing/part.js";
import { inReach } from "../../app/results/setting_limits.js";
import { angle, length, words } from "../../app/shell/units.js";
import { checkList } from "../common/finding.js";
import { stepsTable } from "../plan/plan_parts.js";

/** @param {Api.Snapshot} snapshot */
export function revisionView({ title, note, part, plan, settings }) {
  return html`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${title}</b>, ${words(length(part.thickness_mm, { digits: 2 }))},
      ${
        isBox(plan) ? boxSize(plan.folded) : `${words(length(part.bend_length_mm))} long`
      }${note ? html`. ${note}` : nothing}
    </p>
    ${finishedDrawing(plan)}
    ${
      settings.length
        ? html`<ul class="changes">
            ${settings.map(
              (one) =>
                html`<li>Step ${one.step} ${setWords(plan.steps[one.step - 1], one)}: ${one.reason}</li>`,
            )}
          </ul>`
        : nothing
    }
    ${stepsTable(plan)} ${checkList(plan.checks, { quiet: true })}
  </div>`;
}

/**
 * @param {Api.Step} step
 * @param {Api.Setting} one
 */
function setWords(step, one) {
  const set = { set_angle_deg: one.set_angle_deg ?? null, punch_depth_mm: one.punch_depth_mm ?? null };
  if (!step || !inReach(step, set)) return "had a setting beyond its tools";
  const depth = words(length(set.punch_depth_mm, { digits: 2 }));
  return `set at ${words(angle(set.set_angle_deg))}, depth ${depth}`;
}
