// Running a card: what happens is written down on this device, shown at once, and sent.
import { currentRun, runsOf } from "./run_count.js";
import { runEntries } from "../sync/kept_runs.js";
import { newId, writeDown } from "../sync/outbox.js";
import { send } from "../sync/sending.js";
import { recount, sync } from "../sync/sync.js";

/** @typedef {import("./run_count.js").Run} Run */
/** @typedef {import("../sync/stored.js").RunBody} RunBody */
/** @typedef {{kind: RunBody["kind"], pieces?: number, step?: number, undoes?: string}} What */

/**
 * What was counted in this window, for a browser that keeps nothing.
 * @type {{code: string, body: RunBody}[]}
 */
const here = [];

/**
 * A card's runs, the newest first; none where nothing can be read.
 * @param {string} code
 * @returns {Promise<Run[]>}
 */
export async function runsHere(code) {
  const kept = await runEntries(code).catch(() => []);
  const there = new Set(kept.map(({ id }) => id));
  const more = here.filter((one) => one.code === code && !there.has(one.body.id));
  return runsOf([...kept, ...more.map(({ body }) => body)]);
}

/**
 * The card's run that goes on, or was paused.
 * @param {string} code
 */
export const runHere = async (code) => currentRun(await runsHere(code));

/**
 * @param {Api.Card} card
 * @param {number} pieces
 */
export const beginRun = (card, pieces) => record(card, newId(), { kind: "begun", pieces });

/**
 * Something happened in a run.
 * @param {Api.Card} card
 * @param {string} run_id
 * @param {What} what
 * @returns {Promise<RunBody>} as it was written down
 */
export async function record(card, run_id, what) {
  /** @type {RunBody} */
  const body = { id: newId(), run_id, revision: card.revision, made_at: new Date().toISOString(), ...what };
  const entry = { id: body.id, kind: /** @type {const} */ ("run"), code: card.code, body };
  try {
    await writeDown(entry);
    recount();
    sync();
  } catch {
    here.push({ code: card.code, body });
    send(entry).catch(() =>
      here.splice(
        here.findIndex((one) => one.body.id === body.id),
        1,
      ),
    );
  }
  document.dispatchEvent(new CustomEvent("run"));
  return body;
}

/**
 * Told when a run of a card may stand otherwise: counted here, or heard of from the shop.
 * @param {() => void} listener
 * @param {AbortSignal} signal
 */
export function onRuns(listener, signal) {
  document.addEventListener("run", listener, { signal });
  document.addEventListener("sync", listener, { signal });
}
