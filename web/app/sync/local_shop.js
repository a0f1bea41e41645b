// The shop as this device keeps it: every card, a short list of them, and the crib.
import { sendAllAgain } from "./outbox.js";
import { runsFound, setRunsAside } from "./kept_runs.js";
import { read, write } from "./storage.js";

/** A page of the feed is much to write: a slow device may take longer than for a card. */
const A_PAGE_MS = 20_000;

/** @typedef {import("./stored.js").Summary} Summary */

/**
 * @param {string} code
 * @returns {Promise<Api.Card|undefined>}
 */
export async function keptCard(code) {
  return read("cards", ({ store }) => store.get(code));
}

/**
 * A line of each card kept, newest first.
 * @returns {Promise<Summary[]>}
 */
export async function keptList() {
  /** @type {Summary[]} */
  const list = await read("list", ({ store }) => store.getAll());
  return list.sort((a, b) => (a.updated_at < b.updated_at ? 1 : -1));
}

/**
 * Keep a card the server just gave, unless a newer state of it is kept already.
 * @param {Api.Card} card
 * @returns {Promise<Api.Card>} the card as it is kept now
 */
export async function keepCard(card) {
  return write(["cards", "list"], async (transaction) => {
    const held = await transaction.objectStore("cards").get(card.code);
    if (held && isOlder(card, held)) return held;
    put(transaction, card);
    return card;
  });
}

/**
 * @param {Api.Card} card
 * @param {Api.Card} held
 */
const isOlder = (card, held) =>
  card.revision < held.revision ||
  (card.revision === held.revision &&
    (card.trials_total < held.trials_total || card.proposals_total < held.proposals_total));

/**
 * @param {import("./storage.js").Within} transaction over cards and list
 * @param {Api.Card} card
 */
function put(transaction, card) {
  transaction.objectStore("cards").put(card);
  transaction.objectStore("list").put(summary(card));
}

/**
 * @param {Api.Card} card
 * @returns {Summary}
 */
function summary(card) {
  const {
    code,
    title,
    note,
    revision,
    updated_at,
    updated_by,
    worst,
    archived,
    part,
    trials_total,
    proposals,
  } = card;
  const { metal, thickness_mm } = part;
  const settle = proposals?.length ?? 0;
  return {
    code,
    title,
    note,
    metal,
    thickness_mm,
    bends: part.bends.length,
    revision,
    updated_at,
    updated_by,
    worst,
    trials: trials_total,
    archived,
    settle,
  };
}

/**
 * Cards with changes to settle, and how many each.
 * @returns {Promise<Summary[]>}
 */
export async function toResolve() {
  return read("list", ({ store }) => store.index("settle").getAll(IDBKeyRange.lowerBound(1)));
}

/** Drop what is kept of the shop; what waits to be sent stays. */
export async function forgetShop() {
  /** @type {import("./storage.js").Name[]} */
  const names = ["cards", "list", "meta", "sent", "lost", "runs", "lost_runs"];
  await write(names, (transaction) => {
    for (const name of names) transaction.objectStore(name).clear();
  });
}

/**
 * Press, crib and metals as last seen.
 * @returns {Promise<Api.Shop|undefined>}
 */
export async function keptShop() {
  return read("meta", ({ store }) => /** @type {Promise<Api.Shop|undefined>} */ (store.get("shop")));
}

/** @returns {Promise<string|undefined>} */
export async function keptCursor() {
  return read("meta", ({ store }) => /** @type {Promise<string|undefined>} */ (store.get("cursor")));
}

/**
 * One page of the changes feed, kept whole or not at all. With reset the shop was put back, or is
 * another one: what waits stays, what the shop had goes out again, and cards it does not name are
 * set aside until somebody decides. Else the outbox is left alone: what is typed does not wait for a page.
 * @param {Omit<Api.Changes, "reset"|"more"> & {reset?: boolean, more?: boolean}} page
 */
export async function keepPage(page) {
  /** @type {import("./storage.js").Name[]} */
  const more = page.reset || (await anyLost()) ? ["outbox", "sent", "lost", "lost_runs"] : [];
  await write(
    ["cards", "list", "meta", "runs", ...more],
    async (transaction) => {
      if (page.reset) {
        await setAside(transaction);
        await setRunsAside(transaction);
        await sendAllAgain(transaction);
      }
      const aside = new Set(more.length ? await transaction.objectStore("lost").getAllKeys() : []);
      for (const card of page.cards) {
        // A page may have been on its way while the card was changed here.
        const held = page.reset ? undefined : await transaction.objectStore("cards").get(card.code);
        if (!held || !isOlder(card, held)) put(transaction, card);
        if (aside.has(card.code)) await found(transaction, card);
      }
      for (const entry of page.run_entries ?? []) transaction.objectStore("runs").put(entry);
      if (more.length) await runsFound(transaction, page);
      const meta = transaction.objectStore("meta");
      if (page.shop) meta.put(page.shop, "shop");
      meta.put(page.cursor, "cursor");
      meta.put(Boolean(page.more), "more");
    },
    { patience: A_PAGE_MS },
  );
}

/** Whether cards, or entries of runs, are set aside. */
const anyLost = () =>
  read(
    ["lost", "lost_runs"],
    async (transaction) =>
      (await transaction.objectStore("lost").count()) + (await transaction.objectStore("lost_runs").count()) >
      0,
  );

/** @param {import("./storage.js").Within} transaction */
async function setAside(transaction) {
  const [cards, lost] = [transaction.objectStore("cards"), transaction.objectStore("lost")];
  for (const card of await cards.getAll()) lost.put(card);
  cards.clear();
  transaction.objectStore("list").clear();
}

/**
 * A card set aside is there after all; results of it that the shop lost go out again, whoever typed them.
 * @param {import("./storage.js").Within} transaction
 * @param {Api.Card} card as the shop has it
 */
async function found(transaction, card) {
  const aside = /** @type {Api.Card} */ (await transaction.objectStore("lost").get(card.code));
  transaction.objectStore("lost").delete(card.code);
  const there = new Set(card.trials.map((trial) => trial.id));
  const queued = new Set(await transaction.objectStore("outbox").getAllKeys());
  const gone = aside.trials.filter((one) => !there.has(one.id) && !queued.has(one.id));
  gone.forEach((trial, place) =>
    transaction.objectStore("outbox").put(resultAgain(card.code, trial, place - gone.length)),
  );
}

/**
 * A result as the shop gave it, to be sent once more.
 * @param {string} code
 * @param {Api.Result} trial
 * @param {number} number
 * @returns {import("./stored.js").Waiting}
 */
function resultAgain(code, { number: _, received_at, correction, device, ...body }, number) {
  return { id: body.id, kind: "trial", code, body, number, queued_at: received_at, again: true };
}

/**
 * The results of a card that was made again; its revisions are not there any more.
 * @param {Api.Card} card as it was kept
 */
export async function bringResultsBack(card) {
  await write("outbox", ({ store }) => {
    card.trials.forEach((trial, place) => {
      store.put({ ...resultAgain(card.code, trial, place - card.trials.length), missing: true });
    });
  });
}

/**
 * Cards this device has and the shop does not, once everything was fetched.
 * @returns {Promise<Api.Card[]>}
 */
export async function lostCards() {
  return read(["meta", "lost"], async (transaction) =>
    (await transaction.objectStore("meta").get("more")) ? [] : transaction.objectStore("lost").getAll(),
  );
}

/** @param {string} code */
export async function forgetLost(code) {
  await write("lost", ({ store }) => store.delete(code));
}
