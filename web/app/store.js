// What this device keeps: every card of the shop, the crib, and what still waits to be sent.
import { openDB } from "/vendor/idb/index.js";

/** @type {Promise<import("/vendor/idb/index.js").IDBPDatabase> | undefined} */
let opened;

export function database() {
  opened ??= openDB("flangebook", 1, {
    upgrade(db) {
      db.createObjectStore("cards", { keyPath: "code" });
      db.createObjectStore("meta"); // cursor, shop
      db.createObjectStore("outbox", { keyPath: "id" });
    },
  });
  return opened;
}

/** @param {string} code @returns {Promise<any|undefined>} */
export async function keptCard(code) {
  return (await database()).get("cards", code);
}

/** All cards kept, newest first. @returns {Promise<any[]>} */
export async function keptCards() {
  const cards = await (await database()).getAll("cards");
  return cards.sort((a, b) => (a.updated_at < b.updated_at ? 1 : -1));
}

/** @param {any} card */
export async function keepCard(card) {
  await (await database()).put("cards", card);
}

/** Press, crib and metals as last seen. @returns {Promise<any|undefined>} */
export async function keptShop() {
  return (await database()).get("meta", "shop");
}

/** @returns {Promise<string|undefined>} */
export async function keptCursor() {
  return (await database()).get("meta", "cursor");
}

/** One page of the changes feed, kept whole or not at all. @param {{cursor: string, cards: any[], shop: any|null}} page */
export async function keepPage(page) {
  const transaction = (await database()).transaction(["cards", "meta"], "readwrite");
  const cards = transaction.objectStore("cards");
  const meta = transaction.objectStore("meta");
  for (const card of page.cards) cards.put(card);
  if (page.shop) meta.put(page.shop, "shop");
  meta.put(page.cursor, "cursor");
  await transaction.done;
}
