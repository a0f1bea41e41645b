// Keeping this device complete: send what waits, then fetch what changed. Believes only answers,
// never navigator.onLine.
import { call, Problem, Unreachable } from "./api.js";
import { flush, waiting } from "./outbox.js";
import { keepPage, keptCursor } from "./store.js";

/** @typedef {{reached: boolean|null, waiting: number, refused: number, at: string|null}} Standing */

/** @type {Standing} */
let standing = { reached: null, waiting: 0, refused: 0, at: null };
/** @type {Promise<void>|undefined} */
let running;
let askedAgain = false;

/** @returns {Standing} */
export function syncStanding() {
  return standing;
}

/** @param {Partial<Standing>} change @param {boolean} [newData] whether cards or the crib changed here */
async function announce(change, newData = false) {
  const entries = await waiting().catch(() => []); // storage blocked: nothing can wait there
  standing = {
    ...standing,
    ...change,
    waiting: entries.length,
    refused: entries.filter((entry) => entry.refused).length,
  };
  document.documentElement.dataset.reached = String(standing.reached);
  document.documentElement.dataset.waiting = String(standing.waiting);
  document.dispatchEvent(new CustomEvent("sync", { detail: { ...standing, newData } }));
}

/**
 * Another call to the server went through, or did not: the standing line need not wait for the next round.
 * @param {boolean} answered @param {unknown} [error] of a call that failed; a refusal is an answer too
 */
export function reached(answered, error) {
  const now = answered || Boolean(error && !(error instanceof Unreachable));
  if (now !== standing.reached) announce({ reached: now });
}

/** Count again what waits, and tell it. */
export function recount() {
  return announce({});
}

/** Run a round. Asked for while one runs, another follows it: the one under way may have read too early. @returns {Promise<void>} */
export function sync() {
  if (running) {
    askedAgain = true;
    return running;
  }
  running = rounds().finally(() => (running = undefined));
  return running;
}

async function rounds() {
  do {
    askedAgain = false;
    await round();
  } while (askedAgain);
}

async function round() {
  let newData = false;
  try {
    const { sent } = await flush();
    newData = sent > 0;
    for (;;) {
      const since = (await keptCursor()) ?? "";
      const { body } = await call("GET", `/changes?since=${encodeURIComponent(since)}`, { timeout: 15000 });
      newData ||= body.cards.length > 0 || Boolean(body.shop);
      await keepPage(body);
      if (!body.more) break;
    }
    await announce({ reached: true, at: new Date().toISOString() }, newData);
  } catch (error) {
    await announce(error instanceof Unreachable ? { reached: false } : error instanceof Problem ? { reached: true } : {}, newData);
    const known = error instanceof Unreachable || (error instanceof Problem && error.status === 401);
    if (!known) console.warn("changes feed:", error);
  }
}

/** On load, when the network or the page comes back, and every so often. */
export function keepSyncing() {
  sync();
  addEventListener("online", () => sync());
  addEventListener("offline", () => sync());
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && sync());
  setInterval(() => document.visibilityState === "visible" && sync(), 10_000);
}
