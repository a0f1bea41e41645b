// The run of the card whose step is on the screen: counted by its main button, with a way back.
import { isLastPiece } from "./run_count.js";
import { onRuns, record, runHere } from "./runs.js";
import { may } from "../shell/rights.js";
import { notice } from "../shell/notices.js";
import { go } from "../shell/router.js";

/** @typedef {import("./run_count.js").Run} Run */

/** A second tap so soon after the first is the same piece. */
const SAME_TAP_MS = 700;
let countedAt = -Infinity;

/** Whether something may be counted now. */
function mayCountNow() {
  if (performance.now() - countedAt < SAME_TAP_MS) return false;
  countedAt = performance.now();
  return true;
}

/**
 * @param {string} code
 * @param {AbortSignal} signal
 * @param {() => void} draw
 */
export function stepRun(code, signal, draw) {
  /** @type {Run|null} */
  let run = null;
  const look = async () => {
    const newest = await runHere(code);
    if (signal.aborted || JSON.stringify(newest) === JSON.stringify(run)) return;
    run = newest;
    draw();
  };
  onRuns(look, signal);
  return {
    look,
    /** The run, or null while there is none. */
    now: () => run,
    /** The run, where the main button counts its pieces. */
    counted: () => (run?.state === "open" && may("runs.keep") ? run : null),
  };
}

/**
 * The piece is done: the next one begins at the first step.
 * @param {Api.Card} card
 * @param {Run} run
 */
export async function pieceDone(card, run) {
  if (!mayCountNow()) return;
  const { id } = await record(card, run.id, { kind: "piece" });
  go(isLastPiece(run) ? `/c/${card.code}` : `/c/${card.code}/step/1`);
  offerUndo(card, run, id, `Piece ${run.done + 1} counted.`, card.plan.steps.length);
}

/**
 * The piece is spoilt: another one begins at the first step.
 * @param {Api.Card} card
 * @param {Run} run
 * @param {number} step where it was spoilt
 */
export async function pieceScrapped(card, run, step) {
  if (!mayCountNow()) return;
  const { id } = await record(card, run.id, { kind: "scrap", step });
  go(`/c/${card.code}/step/1`);
  offerUndo(card, run, id, `One piece scrapped at step ${step}.`, step);
}

/**
 * @param {Api.Card} card
 * @param {Run} run
 * @param {string} undoes
 * @param {string} words
 * @param {number} step where it goes on then
 */
function offerUndo(card, run, undoes, words, step) {
  const act = async () => {
    await record(card, run.id, { kind: "back", undoes });
    go(`/c/${card.code}/step/${step}`);
  };
  notice(words, { label: "Undo", act, goes: true });
}
