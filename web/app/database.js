// This device's own storage: its stores, brought up to date from every earlier form, and what to
// say when it is full or refused.
import { openDB } from "/vendor/idb/index.js";

const FORM = 2;

/** @type {Promise<import("/vendor/idb/index.js").IDBPDatabase> | undefined} */
let opened;

export function database() {
  opened ??= openDB("flangebook", FORM, {
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
 * @param {any} db
 * @param {number} from the form it has
 * @param {any} transaction over all of it
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
}

/**
 * The first form knew only trials. What waits stays, in its order; the feed is read anew.
 * @param {any} transaction
 */
async function intoKinds(transaction) {
  const outbox = transaction.objectStore("outbox");
  const old = (await outbox.getAll()).sort((/** @type {any} */ a, /** @type {any} */ b) =>
    a.queued_at < b.queued_at ? -1 : 1,
  );
  let number = 0;
  for (const { trial, ...rest } of old) outbox.put({ ...rest, kind: "trial", body: trial, number: ++number });
  transaction.objectStore("meta").put(number, "number");
  transaction.objectStore("meta").delete("cursor"); // cards from before lack their revision's id
}

/** What was typed could not be written down on this device. */
export class NotKept extends Error {
  /**
   * @param {unknown} cause
   * @param {boolean} [mayCome] storage did not answer, and may yet
   */
  constructor(cause, mayCome = false) {
    super(
      `${whyNot(cause)} What you typed is still on this screen and nowhere else: leave it open, or ` +
        "write it on paper.",
    );
    this.mayCome = mayCome;
  }
}

/** @param {unknown} cause */
function whyNot(cause) {
  const name = cause instanceof DOMException ? cause.name : "";
  if (name === "QuotaExceededError") {
    return "Not saved: this device is full. Free some room on it, then save again.";
  }
  return (
    "Not saved: this browser lets nothing be kept here, and the shop does not answer. Private " +
    "windows do that."
  );
}
