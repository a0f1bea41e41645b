// What a step of a box needs beside its numbers: which side is bent, the pieces of tools between
// the finished sides, and how near those come to what is above and below them.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { foldedDrawing, isBox } from "../../drawing/box.js";
import { tidyLength } from "../../drawing/section.js";
import { angle, inSentence, length, words } from "../../app/shell/units.js";

/**
 * @param {Api.Plan} plan
 * @param {Api.Step} step
 */
export function boxStep(plan, step) {
  if (!isBox(plan) || !step.side) return nothing;
  return html`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${foldedDrawing(plan.folded, {
      mark: step.side,
      test: "step-folded",
      tallest: 260,
      pixels: Math.min(innerWidth - 32, 460),
    })}
    <ul>
      <li>Bend line <b data-test="bend-length">${inSentence(length(step.bend_length_mm))}</b> long.</li>
      ${together("Punch", step.segments_mm?.punch)} ${together("Die", step.segments_mm?.die)}
      ${
        step.clear_between_mm === null || step.clear_between_mm === undefined
          ? nothing
          : html`<li data-test="clear-between">
              Clear between the finished sides: <b>${inSentence(length(step.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`
      }
      ${nearest(step.sides_near ?? [])}
    </ul>
  </section>`;
}

/**
 * @param {string} name
 * @param {number[]|undefined} pieces
 */
function together(name, pieces) {
  if (!pieces?.length) return nothing;
  const total = pieces.reduce((sum, mm) => sum + mm, 0);
  const sum = pieces.length > 1 ? `${pieces.map(tidyLength).join(" + ")} = ` : "";
  return html`<li class="pieces">${name}: <b>${sum}${tidyLength(total)} ${length(0).unit}</b></li>`;
}

/** @param {{tool: string, side: string, distance_mm: number, included_angle_deg: number}[]} list */
function nearest(list) {
  if (!list.length) return nothing;
  const [one] = [...list].sort((a, b) => a.distance_mm - b.distance_mm);
  const at = words(angle(one.included_angle_deg));
  const size = inSentence(length(Math.abs(one.distance_mm)));
  return html`<li data-test="sides-near">
    ${
      one.distance_mm < 0
        ? html`<b>The finished ${one.side} side runs ${size} into the ${one.tool}</b>, at ${at}.`
        : html`The finished ${one.side} side stays <b>${size}</b> from the ${one.tool}, nearest at ${at}.`
    }
  </li>`;
}
