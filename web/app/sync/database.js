// This device's own storage: its stores, brought up to date from every earlier form, and what to
// say when it is full or refused.
import { openDB } from "/vendor/idb/index.js";

const FORM = 3;

/** @typedef {import("./stored.js").Kept} Kept */
/** @typedef {import("./stored.js").Waiting} Waiting */
/**
 * @typedef {import("/vendor/idb/index.js").IDBPTransaction<Kept, (keyof Kept)[], "versionchange">} Upgrade
 */

/** @type {Promise<import("/vendor/idb/index.js").IDBPDatabase<Kept>> | undefined} */
let opened;

export function database() {
  opened ??= /** @type {typeof openDB<Kept>} */ (openDB)("flangebook", FORM, {
    upgrade: (db, from, _to, transaction) => bringUpToDate(db, from, transaction),
    blocking: letGo,
    terminated: forgetConnection,
  }).catch((error) => {
    opened = undefined; // the next call tries again
    throw error;
  });
  return opened;
}

/** The next call opens it anew. */
export function forgetConnection() {
  opened = undefined;
}

/** Another tab holds a newer app: do not stand in its way. */
async function letGo() {
  (await opened)?.close();
  opened = undefined;
}

/**
 * @param {import("/vendor/idb/index.js").IDBPDatabase<Kept>} db
 * @param {number} from the form it has
 * @param {Upgrade} transaction over all of it
 */
async function bringUpToDate(db, from, transaction) {
  if (from < 1) {
    db.createObjectStore("cards", { keyPath: "code" });
    // a line of each card: finding must stay quick with thousands
    db.createObjectStore("list", { keyPath: "code" });
    db.createObjectStore("meta"); // cursor, shop
    db.createObjectStore("outbox", { keyPath: "id" });
  }
  if (from < 2) {
    // what the shop said it has, to send again if it loses it
    db.createObjectStore("sent", { keyPath: "id" });
    db.createObjectStore("lost", { keyPath: "code" }); // cards the shop no longer knows
    transaction.objectStore("list").createIndex("settle", "settle"); // how many changes are to be settled
    if (from === 1) await intoKinds(transaction);
  }
  if (from < 3) {
    db.createObjectStore("runs", { keyPath: "id" }).createIndex("code", "code"); // what happened in runs
    db.createObjectStore("lost_runs", { keyPath: "id" }); // and what the shop no longer knows of them
    transaction.objectStore("meta").delete("cursor"); // the app may have passed over runs until now
  }
}

/**
 * The first form knew only results. What waits stays, in its order; the feed is read anew.
 * @param {Upgrade} transaction
 */
async function intoKinds(transaction) {
  const outbox = transaction.objectStore("outbox");
  const kept = /** @type {(Waiting & {trial: import("./stored.js").Measured})[]} */ (await outbox.getAll());
  const old = kept.sort((a, b) => (a.queued_at < b.queued_at ? -1 : 1));
  let number = 0;
  for (const { trial, ...rest } of old) outbox.put({ ...rest, kind: "trial", body: trial, number: ++number });
  transaction.objectStore("meta").put(number, "number");
  transaction.objectStore("meta").delete("cursor"); // cards from before lack their revision's id
}

/** What was typed could not be written down on this device, and why. */
export class NotKept extends Error {
  /** @param {unknown} cause */
  constructor(cause) {
    super(whyNot(cause));
  }
}

/** @param {unknown} cause */
function whyNot(cause) {
  if (cause instanceof DOMException) {
    return cause.name === "QuotaExceededError"
      ? "This device is full: free some room on it."
      : "This browser lets nothing be kept here, as private windows do.";
  }
  return cause instanceof Error ? cause.message : String(cause);
}
