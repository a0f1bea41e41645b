// The runs of a card: the one that goes on, the form that begins one, and what earlier ones took.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { isLastPiece, pieceWords } from "../../app/run/run_count.js";
import { pressScreenTitle } from "../../app/press_screen/press_screens.js";
import { may } from "../../app/shell/rights.js";
import { field } from "../common/field.js";
import { moment } from "../common/dates.js";
import { fold } from "../common/fold.js";

/** @typedef {import("../../app/run/run_count.js").Run} Run */
/**
 * @typedef {{runs: Run[], typed: string, wrong: string[], taken: Api.Run[]|null, screens:
 *   Api.PressScreen[], asking: boolean}} RunState taken: what the shop says they took, null while it does not
 *   answer; screens: press screens with this card on them; asking: how many pieces a new run is to have
 * @typedef {{ask: () => void, type: (typed: string) => void, begin: () => void, pause: (run: Run) => void,
 *   resume: (run: Run) => void, back: (run: Run) => void, end: (run: Run) => void}} RunActs
 */

const SHOWN = 5;

/**
 * @param {Api.Card} card
 * @param {RunState} state
 * @param {boolean} stopped the part has a stop
 * @param {RunActs} acts
 */
export function runPanel(card, state, stopped, acts) {
  const going = state.runs.filter((run) => run.state !== "ended");
  const asking = state.asking && mayBegin(card, state, stopped);
  if (!asking && !state.runs.length && !state.taken?.length) return nothing;
  return html`<section class="panel card-run" data-test="run-panel">
    <h2>Run</h2>
    ${going.map((run) => goingRun(card, run, acts))}
    ${going.length ? whereItStands(card, state.screens) : nothing}
    ${asking ? beginForm(state, acts) : nothing}
    ${state.runs.length > going.length || state.taken?.length ? takenList(card, state) : nothing}
  </section>`;
}

/**
 * Whether this device may begin a run of the card: not while one goes on, nor of a part with a stop.
 * @param {Api.Card} card
 * @param {RunState} state
 * @param {boolean} stopped
 */
const mayBegin = ({ plan }, { runs }, stopped) =>
  may("runs.keep") && !stopped && plan.steps.length > 0 && runs.every((run) => run.state === "ended");

/**
 * What asks for a new run, among what can be done with the card.
 * @param {Api.Card} card
 * @param {RunState} state
 * @param {boolean} stopped
 * @param {RunActs} acts
 */
export const runButton = (card, state, stopped, { ask }) =>
  mayBegin(card, state, stopped)
    ? html`<button
        type="button"
        class="button"
        data-test="run-open"
        aria-expanded=${state.asking ? "true" : "false"}
        @click=${ask}>
        Run
      </button>`
    : nothing;

/**
 * @param {RunState} state
 * @param {RunActs} acts
 */
function beginForm({ typed, wrong }, { type, begin }) {
  const submit = (/** @type {Event} */ event) => {
    event.preventDefault();
    begin();
  };
  return html`<form class="run-begin" data-test="run-begin" novalidate @submit=${submit}>
    ${field({ name: "run_pieces", label: "Pieces", value: typed, change: type, wrong, keys: "numeric" })}
    <button class="button" data-test="begin-run">Begin a run</button>
  </form>`;
}

/**
 * @param {Api.Card} card
 * @param {Run} run
 * @param {RunActs} acts
 */
function goingRun(card, run, { pause, resume, back, end }) {
  const all = run.pieces !== null && run.done >= run.pieces;
  return html`<div class="run-going" data-test="run-going" data-state=${run.state}>
    <p class="run-piece">
      <b data-test="run-stands">${all ? "All pieces done" : pieceWords(run)}</b>
      ${run.state === "paused" ? html`<span>paused</span>` : nothing}
    </p>
    <p data-test="run-counts">
      ${run.done} done, ${run.scrapped}
      scrapped.${
        run.revision === card.revision
          ? nothing
          : html` <b>Begun with revision ${run.revision}; this is revision ${card.revision}.</b>`
      }
    </p>
    ${
      may("runs.keep")
        ? html`<div class="buttons">
            ${
              run.state === "paused"
                ? button("run-resume", "Go on with the run", () => resume(run))
                : button("run-pause", "Pause", () => pause(run))
            }
            ${run.last ? button("run-back", "Back one", () => back(run)) : nothing}
            ${button("run-end", "End the run", () => end(run), all)}
          </div>`
        : nothing
    }
  </div>`;
}

/**
 * Which display is at which step.
 * @param {Api.Card} card
 * @param {Api.PressScreen[]} screens
 */
function whereItStands({ plan }, screens) {
  if (!screens.length) return nothing;
  const said = screens.map(({ name, step }) =>
    step > plan.steps.length
      ? `${pressScreenTitle(name)}: all steps done`
      : `${pressScreenTitle(name)}: step ${step}`,
  );
  return html`<p data-test="run-where">${said.join(". ")}.</p>`;
}

/**
 * @param {string} test
 * @param {string} words
 * @param {() => void} act
 * @param {boolean} [main]
 */
const button = (test, words, act, main = false) =>
  html`<button type="button" class="button ${main ? "next" : ""}" data-test=${test} @click=${act}>
    ${words}
  </button>`;

/**
 * What the runs took, by the shop.
 * @param {Api.Card} card
 * @param {RunState} state
 */
function takenList({ code }, { taken }) {
  if (!taken) {
    return html`<p class="hint" data-test="no-times">
      What the runs took is worked out in the shop, which does not answer.
    </p>`;
  }
  const list = html`<ul class="rows" data-test="runs">
      ${taken.slice(0, SHOWN).map(
        (run) =>
          html`<li class="row run-row" data-test="run" data-id=${run.id}>
            <span class="lead">${countWords(run)}</span>
            <span class="more">${moment(run.begun_at)} · ${timeWords(run)}</span>
          </li>`,
      )}
    </ul>
    <a class="button" href="/api/v1/cards/${code}/runs.csv" download data-test="runs-csv"
      >All runs as a table (CSV)</a
    >`;
  return fold("What the runs took", list, { test: "runs-fold" });
}

/** @param {Api.Run} run */
function countWords({ pieces, done, scrapped, scrap, state }) {
  const where = scrap.map(({ step, pieces: many }) => `${many} at step ${step}`).join(", ");
  return [
    `${done}${pieces === null ? "" : ` of ${pieces}`} done`,
    scrapped ? `${scrapped} scrapped (${where})` : "none scrapped",
    state === "ended" ? "" : state === "paused" ? "paused" : "goes on",
  ]
    .filter(Boolean)
    .join(", ");
}

/** @param {Api.Run} run */
function timeWords({ setup_s, setup_until, seconds_per_piece }) {
  const setup =
    setup_s === null
      ? "set-up goes on"
      : `set-up${setup_until === "said" ? "" : " and first piece"} ${durationWords(setup_s)}`;
  return seconds_per_piece === null ? setup : `${setup}, ${durationWords(seconds_per_piece)} a piece`;
}

/**
 * @param {number} seconds
 * @returns {string} "48 s", "1 min 05 s", "2 h 10 min"
 */
export function durationWords(seconds) {
  const whole = Math.round(seconds);
  if (whole < 60) return `${whole} s`;
  const minutes = Math.floor(whole / 60);
  const rest = whole % 60 ? ` ${String(whole % 60).padStart(2, "0")} s` : "";
  if (minutes < 60) return `${minutes} min${rest}`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")} min`;
}

/**
 * What the main button of the last step does.
 * @param {Run} run
 */
export const nextPieceLabel = (run) =>
  isLastPiece(run)
    ? { label: "Piece done", more: run.pieces === null ? "" : `${run.done + 1} of ${run.pieces}` }
    : { label: "Next piece", more: pieceWords(run, 1).toLowerCase() };
