// What was typed here and is on its way: written down first, then sent, and kept until the shop
// has it. Each entry carries an id made on this device, so sending one twice does no harm.
import { NotKept } from "./database.js";
import { read, write } from "./storage.js";

/** @typedef {import("./stored.js").Waiting} Waiting */

const DAYS_KEPT = 90;
const DAY_MS = 86_400_000;
/**
 * Told to be on the disk before it counts as written down.
 * @type {IDBTransactionOptions}
 */
const STRICT = { durability: "strict" };

/**
 * An id no other device makes. Works over plain http too, where crypto.randomUUID is missing.
 * @returns {string}
 */
export function newId() {
  if (crypto.randomUUID) return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

/**
 * @param {Waiting} a
 * @param {Waiting} b
 */
const inOrder = (a, b) => a.number - b.number;

/**
 * Write an entry down.
 * @param {Omit<Waiting, "number"|"queued_at">} typed
 * @returns {Promise<Waiting>}
 * @throws {NotKept} full, refused, or silent
 */
export async function writeDown(typed) {
  try {
    return await write(["outbox", "meta"], (transaction) => putLast(transaction, typed), STRICT);
  } catch (error) {
    throw new NotKept(error);
  }
}

/**
 * @param {import("./storage.js").Within} transaction over outbox and meta
 * @param {Omit<Waiting, "number"|"queued_at">} typed
 * @returns {Promise<Waiting>}
 */
async function putLast(transaction, typed) {
  const [outbox, meta] = [transaction.objectStore("outbox"), transaction.objectStore("meta")];
  const last = (await outbox.getAll()).sort(inOrder).at(-1)?.number ?? 0;
  const number =
    Math.max((await /** @type {Promise<number|undefined>} */ (meta.get("number"))) ?? 0, last) + 1;
  const entry = { ...typed, number, queued_at: new Date().toISOString() };
  meta.put(number, "number");
  outbox.put(entry);
  return entry;
}

/** For what was sent without waiting. */
export async function nextNumber() {
  return write("meta", async ({ store }) => {
    const number = ((await /** @type {Promise<number|undefined>} */ (store.get("number"))) ?? 0) + 1;
    store.put(number, "number");
    return number;
  });
}

/**
 * Oldest first.
 * @returns {Promise<Waiting[]>}
 */
export async function waiting() {
  return (await read("outbox", ({ store }) => store.getAll())).sort(inOrder);
}

/**
 * What waits for one card, oldest first.
 * @param {string} code
 * @returns {Promise<Waiting[]>}
 */
export async function waitingFor(code) {
  return (await waiting()).filter((entry) => entry.code === code);
}

/**
 * An entry as it stands now.
 * @param {string} id
 * @returns {Promise<Waiting|undefined>}
 */
export async function stillWaiting(id) {
  return read("outbox", ({ store }) => store.get(id));
}

/**
 * @param {string} id
 * @returns {Promise<Waiting|undefined>}
 */
export async function wasSent(id) {
  return read("sent", ({ store }) => store.get(id));
}

/**
 * @param {string} id
 * @param {Partial<Waiting>} change
 */
export async function mark(id, change) {
  await write(
    "outbox",
    async ({ store }) => {
      const entry = await store.get(id);
      if (entry) store.put({ ...entry, ...change });
    },
    STRICT,
  );
}

/**
 * Somebody decided that a refused entry goes out once more.
 * @param {string} id
 */
export const tryAgain = (id) => mark(id, { refused: undefined });

/**
 * Thrown away; an edit made on it is then one made on what it was made on.
 * @param {string} id
 */
export async function forget(id) {
  const entry = await stillWaiting(id);
  await write("outbox", ({ store }) => store.delete(id));
  if (entry?.after) await follow(id, entry.after);
}

/**
 * Edits that were made on one are made on another.
 * @param {string} id
 * @param {string} after
 * @param {(entry: Waiting) => boolean} [which] the others meet what is there
 */
export async function follow(id, after, which = () => true) {
  for (const entry of await waiting()) {
    if (entry.after === id && which(entry)) await mark(entry.id, { after });
  }
}

/**
 * The shop has it. It is kept for a while: a shop that is put back to an earlier day gets it again.
 * @param {Waiting} entry
 * @param {string} at by the shop's clock
 * @param {boolean} [proposed]
 */
export async function arrived(entry, at, proposed = false) {
  const { again, refused, late, missing, parked, ...rest } = entry;
  try {
    await write(["outbox", "sent"], (transaction) => {
      transaction.objectStore("sent").put({ ...rest, proposed, sent_at: entry.sent_at ?? at });
      transaction.objectStore("outbox").delete(entry.id);
    });
  } catch {
    // full: the shop has it, that is what counts
    await write("outbox", ({ store }) => store.delete(entry.id));
  }
}

/**
 * Let go of what arrived long ago, by the shop's clock.
 * @param {string} now
 */
export async function tidy(now) {
  const limit = Date.parse(now) - DAYS_KEPT * DAY_MS;
  await write("sent", async ({ store }) => {
    for (const entry of await store.getAll()) {
      if (Date.parse(entry.sent_at ?? "") < limit) store.delete(entry.id);
    }
  });
}

/**
 * The shop was put back: what it had goes out again, before what waits. Inside the transaction
 * that takes the shop's new beginning, so that neither is there without the other.
 * @param {import("./storage.js").Within} transaction over outbox and sent
 */
export async function sendAllAgain(transaction) {
  const [outbox, sent] = [transaction.objectStore("outbox"), transaction.objectStore("sent")];
  const all = (await sent.getAll()).sort(inOrder);
  const still = await outbox.getAll();
  const known = new Set(still.map((entry) => entry.id));
  all.forEach((entry, place) => {
    const { proposed, ...rest } = entry;
    if (!known.has(entry.id)) {
      outbox.put({ ...rest, parked: proposed, again: true, number: place - all.length });
    }
  });
  sent.clear();
}
