// One step to watch: before, the closest approach, after, and a slider through all of it.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { handRoom, momentAt, shownAt } from "../../drawing/motion.js";
import { poseDrawing } from "../../drawing/pose.js";
import { length, words } from "../../app/shell/units.js";
import { stepName } from "../plan/plan_parts.js";
import { momentsOf, momentWords, nearWords } from "./step_moments.js";

/** @typedef {import("./step_moments.js").Moving} Moving */
/** @typedef {"before"|"during"|"after"|"between"} At */
/**
 * @typedef {{at: At, share: number, close: boolean, playing: boolean}} Look at: which picture; share: of the
 *   motion, for what lies between them
 */

const WHOLE_MS = 7000;

/** @returns {Look} */
export const firstLook = () => ({ at: "before", share: 0, close: false, playing: false });

/**
 * @param {Moving} step one that has no motion is not asked for what lies between
 * @param {number|null} set the angle to set
 * @param {Look} look
 * @param {() => void} draw
 * @param {AbortSignal} signal stops the playing
 */
export function motionPlayer(step, set, look, draw, signal) {
  const moments = momentsOf(step);
  const { at } = look;
  const share = !moments || at === "between" ? look.share : moments[at];
  const moment = at === "between" ? momentAt(step.motion, share) : null;
  const during = moments && at === "during" ? moments.shown : null;
  const gauge = words(length(step.gauge_x_mm));
  /**
   * @param {string} label
   * @param {Partial<Look>} change
   * @param {boolean} on
   * @param {string} test
   */
  const toggle = (label, change, on, test) =>
    html`<button
      type="button"
      class="button"
      aria-pressed=${on ? "true" : "false"}
      data-test=${test}
      @click=${() => {
        Object.assign(look, change, { playing: false });
        draw();
      }}>
      ${label}
    </button>`;
  return html`${poseDrawing(step.drawing, {
      pose: at === "between" ? "during" : at,
      close: look.close,
      opening: step.v_opening_mm,
      gauge,
      angle: set,
      moment: during ?? (moment && shownAt(step.drawing, step.motion, moment)),
      near: moments?.near ?? null,
      mark: at === "during",
      room: moment && handRoom(step.motion, moment),
      words: `${stepName(step)}, ${described(step, at)}. Gauge at ${gauge}.`,
    })}
    ${
      moments
        ? html`<p class="moment ${moments.hit ? "hit" : ""}" data-test="moment">
            ${caption(step, at, moment)}
          </p>`
        : nothing
    }
    <div class="toggles">
      ${toggle("Before", { at: "before" }, at === "before", "before")}
      ${moments ? toggle(moments.name, { at: "during" }, at === "during", "during") : nothing}
      ${toggle("After", { at: "after" }, at === "after", "after")}
      ${toggle(look.close ? "Whole" : "Zoom", { close: !look.close }, look.close, "closer")}
    </div>
    ${moments ? slider(step, share, look, draw, signal) : nothing}`;
}

/**
 * @param {Api.Step} step
 * @param {string} at
 * @returns {string}
 */
function described(step, at) {
  if (at === "before") return "the sheet on the die before the bend";
  if (at === "after") return "at the bottom of the stroke";
  return at === "during" ? nearWords(step) : "on its way";
}

/**
 * @param {Moving} step
 * @param {string} at
 * @param {Api.Frame|null} moment
 * @returns {string}
 */
function caption(step, at, moment) {
  if (moment) return momentWords(step, moment);
  return nearWords(step);
}

/**
 * @param {Moving} step
 * @param {number} share
 * @param {Look} look
 * @param {() => void} draw
 * @param {AbortSignal} signal
 */
function slider(step, share, look, draw, signal) {
  const play = () => {
    look.playing = !look.playing;
    if (look.playing) run(share >= 1 ? 0 : share, look, draw, signal);
    draw();
  };
  return html`<div class="motion">
    <button
      type="button"
      class="button play"
      data-test="play"
      aria-label=${look.playing ? "Stop" : "Play the bend"}
      @click=${play}>
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path fill="currentColor" d=${look.playing ? "M5 4h5v16H5zM14 4h5v16h-5z" : "M6 3l15 9-15 9z"} />
      </svg>
    </button>
    <input
      type="range"
      min="0"
      max="1"
      step="any"
      .value=${String(share)}
      aria-label="The bend from first to last"
      aria-valuetext=${momentWords(step, momentAt(step.motion, share))}
      data-test="motion"
      @input=${(/** @type {Event} */ event) => {
        Object.assign(look, {
          playing: false,
          at: "between",
          share: Number(/** @type {HTMLInputElement} */ (event.target).value),
        });
        draw();
      }} />
  </div>`;
}

/**
 * @param {number} from
 * @param {Look} look
 * @param {() => void} draw
 * @param {AbortSignal} signal
 */
function run(from, look, draw, signal) {
  const started = performance.now();
  /** @param {number} now */
  const tick = (now) => {
    if (!look.playing || signal.aborted) return;
    look.share = Math.min(1, from + Math.max(0, now - started) / WHOLE_MS);
    look.playing = look.share < 1;
    draw();
    if (look.playing) requestAnimationFrame(tick);
  };
  Object.assign(look, { at: "between", share: from });
  requestAnimationFrame(tick);
}
