// The parts of one step, for the phone's step and the press screen: what to set, with which tools,
// what to watch, what it looks like.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { settingOf } from "../../app/sync/cards.js";
import { angle, length, words } from "../../app/shell/units.js";
import { forceWords } from "../common/force.js";
import { sentence, signOf } from "../common/finding.js";
import { drawnAngle, firstHitLine } from "../plan/first_hit.js";
import { motionPlayer } from "./motion_player.js";
import { toolsReason } from "../part/named_tools_fields.js";
import { whyNotSet } from "./no_setting.js";
import { setFigure } from "./setting.js";
import { stationOf } from "../plan/stations.js";

/** @typedef {import("./motion_player.js").Look} Look */

/**
 * Stops first, on their own; then what to watch at this step; hands always.
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
export function findingsOf(card, step) {
  const own = step.checks.filter((check) => signOf(check) !== "ok");
  const wholeStops = card.plan.checks.filter((check) => check.level === "stop" && !check.step);
  const hands = card.plan.checks.filter((check) => check.code === "general-hands");
  /** @type {Map<string, import("../common/finding.js").Check>} */
  const each = new Map(
    [...wholeStops, ...own, ...hands].map((check) => [
      check.code + sentence(check),
      { ...check, sign: signOf(check), step: null },
    ]),
  );
  const all = [...each.values()];
  return {
    stops: all.filter((check) => check.level === "stop"),
    watch: all.filter((check) => check.level !== "stop"),
  };
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {Look} look
 * @param {() => void} draw
 * @param {AbortSignal} signal
 */
export function picture(card, step, look, draw, signal) {
  if (!step.drawing) {
    return html`<p class="state" data-test="no-drawing">
      ${step.die ? "No setting" : "No tool"}, so no drawing of this step.
    </p>`;
  }
  const setting = settingOf(card, step);
  const shown = { ...step, gauge_x_mm: setting.gauge_x_mm };
  return motionPlayer(
    /** @type {import("./step_moments.js").Moving} */ (shown),
    drawnAngle(step, setting),
    look,
    draw,
    signal,
  );
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
export function numbers(card, step) {
  const setting = settingOf(card, step);
  if (setting.set_angle_deg === null && step.gauge_x_mm === null) {
    return html`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`;
  }
  return html`<div class="set-figures">
      ${setFigure("Gauge X", length(setting.gauge_x_mm), "gauge-x")}
      ${setFigure("Gauge R", length(step.gauge_r_mm), "gauge-r")}
      ${setFigure("Angle to set", angle(setting.set_angle_deg), "set-angle")}
      ${setFigure("Depth", length(setting.punch_depth_mm, { digits: 2 }), "punch-depth")}
    </div>
    ${firstHitLine(setting.firstHit, step.drawing ? "The drawing shows the finished bend." : "")}
    ${setting.set_angle_deg === null ? whyNotSet(step, setting.fromTrial) : nothing} ${pressForce(step)}
    ${
      setting.fromTrial && setting.set_angle_deg !== null
        ? html`<p class="from-result" data-test="from-result">
            <b>Angle and depth from a first piece.</b> The plan said ${words(angle(step.set_angle_deg))} and
            ${words(length(step.punch_depth_mm, { digits: 2 }))}.
          </p>`
        : nothing
    }
    ${
      step.gauge_draw_back_mm
        ? html`<p class="retract" data-test="retract">
            <b>Retract the gauge ${words(length(step.gauge_draw_back_mm, { digits: 0 }))}</b>
            before the stroke: the rising flange would run into it.
          </p>`
        : nothing
    }
    ${hits(step)}`;
}

/**
 * What to set the press's force by.
 * @param {Api.Step} step
 */
function pressForce(step) {
  const said = forceWords(step);
  return said === nothing
    ? nothing
    : html`<p class="press-force" data-test="press-force">Allow for ${said}</p>`;
}

/**
 * A large radius bent in many hits.
 * @param {Api.Step} step
 */
function hits({ hits: many }) {
  if (!many) return nothing;
  return html`<div class="hits" data-test="hits">
    <b>${many.count} bumps</b>, ${words(angle(many.angle_each_deg))} each. Move the gauge
    ${words(length(many.pitch_mm, { digits: 2 }))} each time:
    ${many.gauge_x_mm.map((/** @type {number} */ x) => length(x).text).join(" · ")}
  </div>`;
}
/**
 * @param {Api.Plan} plan
 * @param {Api.Step} step
 */
export function tools(plan, step) {
  if (!step.die) return nothing;
  const station = stationOf(plan, step);
  return html`<dl class="step-tools" data-test="step-tools">
      <div>
        <dt>Punch</dt>
        <dd>
          <b>${step.punch}</b>
          ${step.punch_name}${
            step.punch_turned ? html` <b class="punch-turned" data-test="tool-turned">reversed</b>` : nothing
          }
        </dd>
      </div>
      <div>
        <dt>Die</dt>
        <dd><b>${step.die}</b> ${step.die_name}</dd>
      </div>
      ${
        step.holder
          ? html`<div>
              <dt>Holder</dt>
              <dd><b>${step.holder}</b></dd>
            </div>`
          : nothing
      }
      ${
        station
          ? html`<div class="stands">
              <dt>Stands</dt>
              <dd data-test="step-station"><b>${station}</b></dd>
            </div>`
          : nothing
      }
      <div>
        <dt>Wanted</dt>
        <dd><b>${words(angle(step.included_angle_deg))}</b> ${step.direction}</dd>
      </div>
    </dl>
    ${toolsReason(step)}`;
}
