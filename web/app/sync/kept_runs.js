// Runs as this device keeps them: the entries that the shop sent, and those that wait here. A run is its
// entries, each once, so devices that were offline add up without loss.
import { waitingFor } from "./outbox.js";
import { read, write } from "./storage.js";

/** @typedef {import("./stored.js").Waiting} Waiting */
/** @typedef {import("./storage.js").Within} Within */

/**
 * What happened in the runs of a card: what the shop has in the order it came, then what waits here.
 * @param {string} code
 * @returns {Promise<import("./stored.js").RunBody[]>}
 */
export async function runEntries(code) {
  // What waits is read first: what arrives meanwhile is then read twice, and counted once, by its id.
  const waiting = (await waitingFor(code)).filter(({ kind, refused }) => kind === "run" && !refused);
  const kept = await read("runs", ({ store }) => store.index("code").getAll(code));
  const bodies = waiting.map(({ body }) => /** @type {import("./stored.js").RunBody} */ (body));
  const there = new Set(kept.map(({ id }) => id));
  const inOrder = /** @type {import("./stored.js").RunBody[]} */ (kept.sort((a, b) => a.change - b.change));
  return [...inOrder, ...bodies.filter(({ id }) => !there.has(id))];
}

/** @param {Api.RunEntry} entry as the shop has it */
export async function keepRunEntry(entry) {
  await write("runs", ({ store }) => store.put(entry));
}

/**
 * The shop was put back, or is another one: what it does not name again is sent to it again, whoever
 * counted it.
 * @param {Within} transaction over runs and lost_runs
 */
export async function setRunsAside(transaction) {
  const [runs, lost] = [transaction.objectStore("runs"), transaction.objectStore("lost_runs")];
  for (const entry of await runs.getAll()) lost.put(entry);
  runs.clear();
}

/**
 * A page came: what it names is no longer lost. After the last one, what still is goes out again, where the
 * shop has its card.
 * @param {Within} transaction over cards, outbox and lost_runs
 * @param {{more?: boolean, run_entries?: Api.RunEntry[]}} page
 */
export async function runsFound(transaction, page) {
  const lost = transaction.objectStore("lost_runs");
  for (const { id } of page.run_entries ?? []) lost.delete(id);
  if (page.more) return;
  const [cards, outbox] = [transaction.objectStore("cards"), transaction.objectStore("outbox")];
  const codes = new Set(await cards.getAllKeys());
  const queued = new Set(await outbox.getAllKeys());
  const gone = (await lost.getAll()).filter(({ code }) => codes.has(code));
  gone.forEach((entry, place) => {
    if (!queued.has(entry.id)) outbox.put(entryAgain(entry, place - gone.length));
    lost.delete(entry.id);
  });
}

/**
 * @param {Api.RunEntry} entry as the shop had it
 * @param {number} number
 * @returns {Waiting}
 */
function entryAgain({ code, received_at, change, ...body }, number) {
  const sent = /** @type {import("./stored.js").RunBody} */ (body);
  return { id: body.id, kind: "run", code, body: sent, number, queued_at: received_at, again: true };
}
