// The run of the card on the press screen: which piece, and the piece counted by its own pedal, where this
// display may count.
import { onRuns, record, runHere } from "./runs.js";
import { may } from "../shell/rights.js";
import { sync } from "../sync/sync.js";

/** @typedef {import("./run_count.js").Run} Run */

/** A phone sends its count and its step side by side; the count may come a moment later. */
const SOON_MS = 1500;

/**
 * @param {() => Api.Card|null} card that is on the display
 * @param {AbortSignal} signal
 * @param {() => void} draw
 */
export function pressScreenRun(card, signal, draw) {
  /** @type {Run|null} */
  let run = null;
  let code = "";
  const look = async () => {
    const asked = card()?.code ?? "";
    const newest = asked ? await runHere(asked) : null;
    if (signal.aborted || asked !== (card()?.code ?? "")) return;
    if (asked === code && JSON.stringify(newest) === JSON.stringify(run)) return;
    [code, run] = [asked, newest];
    draw();
  };
  onRuns(look, signal);
  const now = () => (card()?.code === code ? run : null);
  return {
    look,
    now,
    /** Another step is shown: perhaps since a piece was counted on a phone. */
    moved: () => {
      sync();
      setTimeout(() => !signal.aborted && sync(), SOON_MS);
    },
    /**
     * The last step is done, and so is the piece.
     * @returns {boolean} whether it was counted
     */
    count: () => {
      const [counted, on] = [now(), card()];
      if (counted?.state !== "open" || !on || !may("runs.keep")) return false;
      record(on, counted.id, { kind: "piece" });
      return true;
    },
  };
}
