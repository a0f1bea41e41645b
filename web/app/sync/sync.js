// Keeping this device complete: send what waits, then fetch what changed. Believes only answers,
// never navigator.onLine.
import { call, Problem, Unreachable } from "./api.js";
import { waiting } from "./outbox.js";
import { flush } from "./sending.js";
import { StorageSilent } from "./storage.js";
import { keepPage, keptCursor, lostCards, toResolve } from "./local_shop.js";
import { withTabLock } from "./tab_lock.js";

/** Another tab that fetches a page for so long may have no network: this one tries. */
const PAGE_MS = 3000;

/** @typedef {import("./stored.js").Waiting} Waiting */
/**
 * @typedef {{reached: boolean|null, waiting: number, words: string, late: string, refused: number,
 *   settle: string[], lost: number, at: string|null, unkept: boolean}} Standing
 *   late: why the shop could not take one of them; settle: a card's code for each change to settle; unkept:
 *   the shop's changes cannot be written down here
 */

/** @type {Standing} */
let standing = {
  reached: null,
  waiting: 0,
  words: "",
  late: "",
  refused: 0,
  settle: [],
  lost: 0,
  at: null,
  unkept: false,
};
/** @type {Promise<void>|undefined} */
let running;
let askedAgain = false;

/** @returns {Standing} */
export function syncStanding() {
  return standing;
}

/**
 * @param {Partial<Standing>} change
 */
async function announce(change) {
  const entries = await waiting().catch(() => []); // storage blocked: nothing can wait there
  const lost = await lostCards().catch(() => []);
  standing = {
    ...standing,
    ...change,
    waiting: entries.length,
    words: kindsInWords(entries),
    late: entries.find((entry) => entry.late && !entry.refused)?.late ?? "",
    settle: await unresolved(entries).catch(() => []),
    lost: lost.length,
    refused: entries.filter((entry) => entry.refused).length,
  };
  document.documentElement.dataset.reached = String(standing.reached);
  document.documentElement.dataset.resolve = String(standing.settle.length);
  document.documentElement.dataset.waiting = String(standing.waiting);
  document.dispatchEvent(new CustomEvent("sync", { detail: standing }));
}

/**
 * @param {Waiting[]} entries
 * @returns {string} "2 results and 1 note"
 */
export function kindsInWords(entries) {
  const counted = [
    ["trial", "result"],
    ["note", "note"],
    ["edit", "edit"],
    ["run", "count"],
  ].map(([kind, word]) => ({
    word,
    many: entries.filter((entry) => entry.kind === kind).length,
  }));
  const words = counted
    .filter(({ many }) => many)
    .map(({ word, many }) => `${many} ${word}${many === 1 ? "" : "s"}`);
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/**
 * The card of each change to settle, without those that were settled here and wait to be sent.
 * @param {Waiting[]} entries
 */
async function unresolved(entries) {
  const codes = (await toResolve()).flatMap(({ code, settle }) => Array(settle).fill(code));
  for (const entry of entries) {
    for (const _ of entry.body.settles ?? []) {
      if (codes.includes(entry.code)) codes.splice(codes.indexOf(entry.code), 1);
    }
  }
  return codes;
}

/**
 * Another call to the server went through, or did not: the standing line need not wait for the next round.
 * @param {boolean} answered
 * @param {unknown} [error] of a call that failed; a refusal is an answer too
 */
export function reached(answered, error) {
  const now = answered || Boolean(error && !(error instanceof Unreachable));
  if (now !== standing.reached) announce({ reached: now });
}

/** Count again what waits, and tell it. */
export function recount() {
  return announce({});
}

/**
 * Run a round. Asked for while one runs, another follows it: the one under way may have read too early.
 * @returns {Promise<void>}
 */
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

/** First what the shop says: whether it was put back to an earlier day comes before what is sent. */
async function round() {
  try {
    await fetchChanges();
    if ((await flush()).sent > 0) await fetchChanges();
    await announce({ reached: true, at: new Date().toISOString(), unkept: false });
  } catch (error) {
    await announce(
      error instanceof Unreachable
        ? { reached: false }
        : error instanceof Problem
          ? { reached: true }
          : { unkept: true },
    );
    const known = error instanceof Unreachable || (error instanceof Problem && error.status === 401);
    if (!known && !(error instanceof StorageSilent)) console.warn("changes feed:", error);
  }
}

/** Tabs take turns at it, a page each, so that none fetches what another has just kept. */
async function fetchChanges() {
  while (await withTabLock("feed", PAGE_MS, fetchPage));
}

/** @returns {Promise<boolean>} whether there are more */
async function fetchPage() {
  const since = (await keptCursor()) ?? "";
  const { body } = /** @type {{body: Api.Changes}} */ (
    await call("GET", `/changes?since=${encodeURIComponent(since)}`, { timeout: 15000 })
  );
  await keepPage(body);
  return body.more;
}

/** On load, when the network or the page comes back, and every so often. */
export function keepSyncing() {
  sync();
  addEventListener("online", () => sync());
  addEventListener("offline", () => sync());
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && sync());
  setInterval(() => document.visibilityState === "visible" && sync(), 10_000);
}
