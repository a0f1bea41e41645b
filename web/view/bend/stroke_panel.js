// The stroke of a bend: force and angle over the punch's depth, and in words what the pictures show.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { angleOverStroke, forceOverStroke, limitName, limitWords } from "../../drawing/stroke.js";
import { Problem } from "../../app/sync/api.js";
import { angle, fixed, force, length, words } from "../../app/shell/units.js";
import { allowFor } from "../common/force.js";

/** @typedef {Api.StrokeOfBend & {work_j?: number|null}} Stroke */
/** @typedef {{stroke: Stroke|null, error: unknown, open: boolean, toggled: (open: boolean) => void}} Shown */

/** @param {number|null|undefined} mm */
const mm2 = (mm) => words(length(mm, { digits: 2 }));

/**
 * Folded until asked for, so that a phone fetches it only then.
 * @param {Shown} shown
 */
export function strokePanel({ stroke, error, open, toggled }) {
  return html`<details
    class="stroke"
    data-test="stroke"
    ?open=${open}
    @toggle=${(/** @type {{target: HTMLDetailsElement}} */ event) => toggled(event.target.open)}>
    <summary>The stroke in pictures</summary>
    ${open ? inside(stroke, error) : nothing}
  </details>`;
}

/**
 * @param {Stroke|null} stroke
 * @param {unknown} error
 */
function inside(stroke, error) {
  if (error) {
    return html`<p class="hint" data-test="stroke-missing">
      ${error instanceof Problem ? error.message : "The stroke could not be fetched."}
    </p>`;
  }
  if (!stroke) return html`<p class="hint">Working it out…</p>`;
  if (!stroke.curve.length) {
    return html`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`;
  }
  return html`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${forceOverStroke(stroke)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${peakWords(stroke)}</p>
        ${limits(stroke)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${angleOverStroke(stroke)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${lineKey("curve")} under load</li>
          <li>${lineKey("curve let-go")} released</li>
          ${stroke.trials.length ? html`<li>${pointKey} trials, released</li>` : nothing}
        </ul>
        <p data-test="stroke-set">${setWords(stroke)}</p>
        ${undrawn(stroke)}
      </div>
    </figure>
  </div>`;
}

/** @param {Stroke} stroke */
function peakWords({ peak, work_j: work }) {
  if (!peak) return "The curve ends where tools or press end.";
  const most = html`<b>Allow for ${words(allowFor(peak))}.</b> The peak is expected at
    ${words(force(peak.force_kn))}, ${mm2(peak.punch_depth_mm)} deep, ${words(angle(peak.loaded_angle_deg))}
    under load.`;
  return work ? html`${most} Work in the stroke ${fixed(work, 0)} J.` : most;
}

/** @param {Stroke} stroke */
function limits({ limits: all }) {
  const known = all.filter((limit) => limit.limit_kn !== null);
  const unknown = all.filter((limit) => limit.limit_kn === null);
  return html`${
    known.length
      ? html`<p class="hint" data-test="stroke-limits">
          Limits: ${known.map(limitWords).join(", ")}. The shaded band is what the force may be.
        </p>`
      : nothing
  }
  ${
    unknown.length
      ? html`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${unknown.map(limitName).join(", ")}. Read it off the plate.
        </p>`
      : nothing
  }`;
}

/** @param {Stroke} stroke */
function setWords({ set }) {
  if (set.set_angle_deg === null) {
    return "Tools and press end before the bend is sharp enough: there is nothing to set.";
  }
  return `Set ${words(angle(set.set_angle_deg))} under load at a depth of ${mm2(set.punch_depth_mm)}.`;
}

/**
 * Results that have no place in the picture.
 * @param {Stroke} stroke
 */
function undrawn({ trials }) {
  const count = trials.filter((trial) => trial.punch_depth_mm === null).length;
  return count
    ? html`<p class="hint">
        ${count === 1 ? "One result has" : `${count} results have`} no depth written down and can't be drawn.
      </p>`
    : nothing;
}

/** @param {string} kind */
const lineKey = (kind) =>
  html`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${kind} d="M2 8H38" />
  </svg>`;
const pointKey = html`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="result-point" cx="20" cy="8" r="6" />
</svg>`;
