// What this device keeps: every card of the shop, a short list of them, the crib, and what still
// waits to be sent.
import { openDB } from "/vendor/idb/index.js";

/** @typedef {{code: string, title: string, note: string, metal: string, thickness_mm: number, bends: number, revision: number, updated_at: string, updated_by: string, worst: "ok"|"unknown"|"caution"|"stop", trials: number, archived: boolean}} Summary */

/** @type {Promise<import("/vendor/idb/index.js").IDBPDatabase> | undefined} */
let opened;

export function database() {
  opened ??= openDB("flangebook", 1, {
    upgrade(db) {
      db.createObjectStore("cards", { keyPath: "code" });
      db.createObjectStore("list", { keyPath: "code" }); // a line of each card: finding must stay quick with thousands
      db.createObjectStore("meta"); // cursor, shop
      db.createObjectStore("outbox", { keyPath: "id" });
    },
    blocking: letGo,
    terminated: () => (opened = undefined),
  }).catch((error) => {
    opened = undefined; // the next call tries again
    throw error;
  });
  return opened;
}

/** Another tab holds a newer app: do not stand in its way. */
async function letGo() {
  (await opened)?.close();
  opened = undefined;
}

/** @param {string} code @returns {Promise<any|undefined>} */
export async function keptCard(code) {
  return (await database()).get("cards", code);
}

/** A line of each card kept, newest first. @returns {Promise<Summary[]>} */
export async function keptList() {
  const list = await (await database()).getAll("list");
  return list.sort((a, b) => (a.updated_at < b.updated_at ? 1 : -1));
}

/**
 * Keep a card the server just gave, unless a newer state of it is kept already.
 * @param {any} card @returns {Promise<any>} the card as it is kept now
 */
export async function keepCard(card) {
  const transaction = (await database()).transaction(["cards", "list"], "readwrite");
  const held = await transaction.objectStore("cards").get(card.code);
  const older = held && isOlder(card, held);
  if (!older) put(transaction, card);
  await transaction.done;
  return older ? held : card;
}

/** @param {any} card @param {any} held */
const isOlder = (card, held) =>
  card.revision < held.revision || (card.revision === held.revision && card.trials_total < held.trials_total);

/** @param {any} transaction over cards and list @param {any} card */
function put(transaction, card) {
  transaction.objectStore("cards").put(card);
  transaction.objectStore("list").put(summary(card));
}

/** @param {any} card @returns {Summary} */
function summary(card) {
  const { code, title, note, revision, updated_at, updated_by, worst, archived, part, trials_total } = card;
  const { metal, thickness_mm } = part;
  return { code, title, note, metal, thickness_mm, bends: part.bends.length, revision, updated_at, updated_by, worst, trials: trials_total, archived };
}

/** Drop what is kept of the shop; what waits to be sent stays. */
export async function forgetShop() {
  const names = ["cards", "list", "meta"];
  const transaction = (await database()).transaction(names, "readwrite");
  for (const name of names) transaction.objectStore(name).clear();
  await transaction.done;
}

/** Press, crib and metals as last seen. @returns {Promise<any|undefined>} */
export async function keptShop() {
  return (await database()).get("meta", "shop");
}

/** @returns {Promise<string|undefined>} */
export async function keptCursor() {
  return (await database()).get("meta", "cursor");
}

/**
 * One page of the changes feed, kept whole or not at all.
 * @param {{cursor: string, reset?: boolean, cards: any[], shop: any|null}} page with reset, what is kept is of another shop
 */
export async function keepPage(page) {
  const transaction = (await database()).transaction(["cards", "list", "meta"], "readwrite");
  if (page.reset) {
    transaction.objectStore("cards").clear();
    transaction.objectStore("list").clear();
  }
  for (const card of page.cards) put(transaction, card);
  const meta = transaction.objectStore("meta");
  if (page.shop) meta.put(page.shop, "shop");
  meta.put(page.cursor, "cursor");
  await transaction.done;
}
