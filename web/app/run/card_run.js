// The runs of the card on the screen: begun, paused, ended here, and what the shop says they took.
import { call } from "../sync/api.js";
import { beginRun, onRuns, record, runsHere } from "./runs.js";
import { pressScreenList } from "../press_screen/press_screens.js";
import { go } from "../shell/router.js";

/** @typedef {import("./run_count.js").Run} Run */

const MOST_PIECES = 100_000;

/**
 * @param {string} code
 * @param {() => Api.Card} card as it is on the screen
 * @param {AbortSignal} signal
 * @param {() => void} draw
 */
export function cardRun(code, card, signal, draw) {
  /** @type {import("../../view/run/run_panel.js").RunState} */
  const state = { runs: [], typed: "", wrong: [], taken: null, screens: [], asking: false };
  let seen = "[]";
  const look = async () => {
    const runs = await runsHere(code);
    const now = JSON.stringify(runs);
    if (signal.aborted || (now === seen && isTold(runs, state.taken ?? []))) return;
    if (now !== seen) {
      state.typed ||= String(runs[0]?.pieces ?? "");
      state.runs = runs;
      seen = now;
      draw();
    }
    ask();
  };
  const ask = async () => {
    state.taken = await call("GET", `/cards/${code}/runs`, { signal, timeout: 4000 }).then(
      ({ body }) => /** @type {Api.Runs} */ (body).runs,
      () => null,
    );
    const screens = await pressScreenList(signal).catch(() => []);
    state.screens = screens.filter((one) => one.code === code);
    if (!signal.aborted) draw();
  };
  onRuns(look, signal);
  /** @param {import("./runs.js").What["kind"]} kind */
  const say = (kind) => (/** @type {Run} */ run) => record(card(), run.id, { kind });
  return {
    state,
    look,
    /** The run that goes on, or was paused. */
    now: () => state.runs.find((run) => run.state !== "ended") ?? null,
    acts: {
      ask: () => {
        state.asking = !state.asking;
        draw();
        if (state.asking) document.getElementById("run_pieces")?.focus();
      },
      type: (/** @type {string} */ typed) => (state.typed = typed),
      begin: async () => {
        const pieces = wholePieces(state.typed);
        state.wrong = pieces ? [] : ["How many pieces? Type a whole number, such as 20."];
        if (!pieces || !state.asking) return draw();
        state.asking = false; // a second tap begins no second run
        await beginRun(card(), pieces);
        go(`/c/${code}/step/1`);
      },
      pause: say("paused"),
      resume: say("resumed"),
      end: say("ended"),
      back: (/** @type {Run} */ run) => record(card(), run.id, { kind: "back", undoes: run.last?.id }),
    },
  };
}

/**
 * Whether the shop's account of the runs has what this device has; what waits here is not in it yet.
 * @param {Run[]} runs
 * @param {Api.Run[]} taken
 */
const isTold = (runs, taken) =>
  runs.every(({ id, ...run }) =>
    taken.some(
      (one) =>
        one.id === id && one.done === run.done && one.scrapped === run.scrapped && one.state === run.state,
    ),
  );

/**
 * @param {string} typed
 * @returns {number} 0 for what is no number of pieces
 */
function wholePieces(typed) {
  const number = /^\d{1,6}$/.test(typed.trim()) ? Number(typed) : 0;
  return number <= MOST_PIECES ? number : 0;
}
