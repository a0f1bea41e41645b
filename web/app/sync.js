// Keeping this device complete: send what waits, then fetch what changed. Believes only answers,
// never navigator.onLine.
import { call, Unreachable } from "./api.js";
import { flush, waiting } from "./outbox.js";
import { keepPage, keptCursor } from "./store.js";

/** @typedef {{reached: boolean|null, waiting: number, refused: number, at: string|null}} Standing */

/** @type {Standing} */
let standing = { reached: null, waiting: 0, refused: 0, at: null };
/** @type {Promise<void>|undefined} */
let running;

/** @returns {Standing} */
export function syncStanding() {
  return standing;
}

/** @param {Partial<Standing>} change @param {boolean} [newData] */
async function announce(change, newData = false) {
  const entries = await waiting();
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

/** Run one round; calls while one runs share it. @returns {Promise<void>} */
export function sync() {
  running ??= round().finally(() => (running = undefined));
  return running;
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
    await announce({ reached: !(error instanceof Unreachable) }, newData);
    if (!(error instanceof Unreachable)) console.warn("changes feed:", error);
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
