// The press screen with a card on it: one step, read from two metres, or the card done.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { pressScreenTitle } from "../../app/press_screen/press_screens.js";
import { boxStep } from "../step/box_step.js";
import { checkList, signOf } from "../common/finding.js";
import { orientation } from "../plan/orientation.js";
import { toolsList } from "../plan/plan_parts.js";
import { stepHead } from "../step/setting.js";
import { wayWords } from "../step/step_moments.js";
import { findingsOf, numbers } from "../step/step_parts.js";
import { may } from "../../app/shell/rights.js";
import { runPiece } from "../run/run_bar.js";
import { nextPieceLabel } from "../run/run_panel.js";

/** So many findings stand on the screen in large letters. */
const MOST_LARGE = 3;

/** @typedef {import("../../app/run/run_count.js").Run} Run */
/**
 * @typedef {{next: () => void, back: () => void, choose: () => void, clear: () => void,
 *   newer: () => void}} Acts
 */
/** @typedef {{name: string, lines: unknown, acts: Acts}} Frame lines: what is to be told above the step */

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {Frame} frame
 * @param {unknown} drawn
 * @param {Run|null} [run]
 */
export function pressScreenStep(card, step, { name, lines, acts }, drawn, run = null) {
  const { stops, watch: all } = findingsOf(card, step);
  // Nobody scrolls here: where there is much to watch, what is no warning stays on the phone.
  const warnings = all.filter((check) => signOf(check) !== "note");
  const many = all.length > MOST_LARGE;
  const watch = many ? warnings : all;
  const last = step.number === card.plan.steps.length;
  return html`<article
    class="step press-screen-step"
    data-test="press-screen-step"
    data-code=${card.code}
    data-step=${step.number}
    data-revision=${card.revision}>
    <header class="step-top">
      ${pressScreenName(name, acts)}
      <p class="press-screen-card" data-test="press-screen-card">${card.title || card.display_code}</p>
      ${run ? runPiece(run) : nothing} ${stepHead(card, step)}
    </header>
    ${lines} ${stops.length ? html`<div class="step-stop">${checkList(stops)}</div>` : nothing}
    <div class="step-body">
      <div class="step-way">${orientation(step, card.part.flats_mm.length)}${wayWords(step)}</div>
      <section class="step-set" aria-label="What to set">${numbers(card, step)}</section>
      <section class="step-picture" aria-label="Drawing">${drawn}</section>
      <section class="step-watch ${many ? "many" : ""}" aria-label="What to watch">
        ${watch.length ? checkList(watch) : nothing}${boxStep(card.plan, step)}
      </section>
      <section class="step-with" aria-label="Tools">${toolsList(toolsOf(card, step), 0)}</section>
    </div>
    ${turnButtons({ back: step.number > 1, ...nextWords(step.number, last, run) }, acts)}
  </article>`;
}

/**
 * @param {number} number of the step
 * @param {boolean} last
 * @param {Run|null} run
 * @param {boolean} [done] all steps are
 */
function nextWords(number, last, run, done = false) {
  if (!last) return { label: "Next", more: `step ${number + 1}` };
  if (run?.state === "open" && may("runs.keep")) return nextPieceLabel(run);
  return done ? { label: "Next piece", more: "step 1" } : { label: "Done", more: "" };
}

/**
 * What of the card's tools this step needs, with where it lies.
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
const toolsOf = (card, step) =>
  card.plan.tools.filter((tool) => tool.steps.includes(step.number)).map((tool) => ({ ...tool, steps: [] }));

/**
 * @param {Api.Card} card
 * @param {Frame} frame
 * @param {Run|null} [run]
 */
export function pressScreenDone(card, { name, lines, acts }, run = null) {
  const steps = card.plan.steps.length;
  const elsewhere = run?.state === "open" && !may("runs.keep");
  return html`<article
    class="step press-screen-step"
    data-test="press-screen-done"
    data-code=${card.code}
    data-step=${steps + 1}>
    <header class="step-top">
      ${pressScreenName(name, acts)}
      <p class="press-screen-card" data-test="press-screen-card">${card.title || card.display_code}</p>
      ${run ? runPiece(run) : nothing}
    </header>
    ${lines}
    <div class="press-screen-says">
      <h1>Done</h1>
      ${elsewhere ? html`<p data-test="count-on-phone"><b>Count the piece on the phone.</b></p>` : nothing}
      <p>
        ${steps === 1 ? "The one step is bent." : `All ${steps} steps are bent.`} Measure it, and type the
        result on the phone.
      </p>
      <button type="button" class="button" data-test="clear-press-screen" @click=${acts.clear}>
        Take this card off
      </button>
    </div>
    ${turnButtons({ back: true, ...(elsewhere ? {} : nextWords(steps, true, run, true)) }, acts)}
  </article>`;
}

/**
 * @param {{back: boolean, label?: string, more?: string}} how label: none where nothing comes next here
 * @param {Acts} acts
 */
function turnButtons({ back, label, more }, acts) {
  return html`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!back} @click=${acts.back}>Back</button>
    ${
      label
        ? html`<button type="button" class="button next" data-test="next" @click=${acts.next}>
            ${label}${more ? html` <small>${more}</small>` : nothing}
          </button>`
        : nothing
    }
  </nav>`;
}

/**
 * The display's own place; touching it asks for another.
 * @param {string} name
 * @param {Acts} acts
 */
export const pressScreenName = (name, acts) =>
  html`<button
    type="button"
    class="button press-screen-name"
    data-test="press-screen-name"
    aria-label="${pressScreenTitle(name)}, this display. Choose another"
    @click=${acts.choose}>
    ${pressScreenTitle(name)}
  </button>`;
