// The run on the step's screen: which piece lies in the press, and what else can happen to it.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { pieceWords } from "../../app/run/run_count.js";

/** @typedef {import("../../app/run/run_count.js").Run} Run */
/** @typedef {{scrap: () => void, pause: () => void, resume: () => void, ready: () => void}} Acts */

/**
 * @param {Run} run
 * @param {Acts} acts
 */
export function runBar(run, { scrap, pause, resume, ready }) {
  const paused = run.state === "paused";
  return html`<section class="run-bar" aria-label="Run" data-test="run-bar" data-done=${run.done}>
    ${runPiece(run)}
    ${
      paused
        ? html`<button type="button" class="button next" data-test="run-resume" @click=${resume}>
            Go on with the run
          </button>`
        : html`<button type="button" class="button" data-test="run-scrap" @click=${scrap}>Scrap</button>
            <button type="button" class="button" data-test="run-pause" @click=${pause}>Pause</button>`
    }
    ${
      run.settingUp && !paused
        ? html`<button type="button" class="button run-ready" data-test="run-ready" @click=${ready}>
            Set-up finished
          </button>`
        : nothing
    }
  </section>`;
}

/**
 * @param {Run} run
 */
export const runPiece = (run) =>
  html`<p class="run-piece" data-test="run-piece">
    <b>${pieceWords(run)}</b>
    ${run.state === "paused" ? html`<span data-test="run-paused">paused</span>` : nothing}
    ${run.scrapped ? html`<span data-test="run-scrapped">${run.scrapped} scrapped</span>` : nothing}
  </p>`;
