// One line for each result: what was measured, what was set, what it led to.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { inReach } from "../../app/results/setting_limits.js";
import { measuredWords } from "../../app/results/measured_bend.js";
import { angle, words } from "../../app/shell/units.js";
import { whereWords } from "../card/saved_where.js";
import { madeAt, whoSent } from "../common/dates.js";

/**
 * @typedef {import("../../app/sync/stored.js").Measured & Partial<Pick<Api.Result,
 *   "correction"|"device"|"received_at">>}
 *   Shown the shop adds to one what came of it
 */

/**
 * @param {Shown} trial
 * @param {{waiting?: import("../../app/sync/stored.js").Waiting, step?: Api.Step}} [how] step: of the card's
 *   plan
 */
export function resultLine(trial, { waiting, step } = {}) {
  return html`<li class="row result" data-test=${waiting ? "waiting-result" : "result"} data-id=${trial.id}>
    <div>
      <span class="lead">${measuredWords(trial)}</span>
      <span class="code">Step ${trial.step}</span>
      <span class="more">
        ${waiting ? html`<b class="waits">${whereWords(waiting)}</b> · ` : nothing}
        ${[madeAt(trial), whoSent(trial), settingWords(trial), ledTo(trial.correction, step)]
          .filter(Boolean)
          .join(" · ")}
        ${trial.note ? html`<span class="result-note">${trial.note}</span>` : nothing}
        ${waiting?.refused ? html`<a href="/settings">Decide</a>` : nothing}
      </span>
    </div>
  </li>`;
}

/** @param {import("../../app/sync/stored.js").Measured} trial */
const settingWords = (trial) => (trial.set_angle_deg ? `set at ${words(angle(trial.set_angle_deg))}` : "");

/**
 * One that an earlier release offered beyond the tools is not shown.
 * @param {Api.Correction|null|undefined} correction
 * @param {Api.Step} [step]
 */
const ledTo = (correction, step) =>
  correction?.set_angle_deg && step && inReach(step, correction)
    ? `new setting ${words(angle(correction.set_angle_deg))}`
    : "";
