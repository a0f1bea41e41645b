// Reading and writing this device's storage. Storage may not answer: a browser can leave a lock behind,
// or be busy with a long write. Nobody waits for it longer than a second, and nothing this page asks for
// stays behind when the page is left.
import { database, forgetConnection } from "./database.js";
import { withTabLock } from "./tab_lock.js";

/** @typedef {import("./stored.js").Kept} Kept */
/** @typedef {keyof Kept} Name */
/**
 * @typedef {import("/vendor/idb/index.js").IDBPTransaction<Kept, Name[], "readonly"|"readwrite">} Transaction
 */
/**
 * @template {Name} N
 * @typedef {import("/vendor/idb/index.js").IDBPObjectStore<Kept, Name[], N, "readwrite">} Store
 */
/** @typedef {{objectStore: <N extends Name>(name: N) => Store<N>}} Within a transaction */
/**
 * @template {Name} N
 * @typedef {Within & {store: Store<N>}} Stores store: the first
 */

const PATIENCE_MS = 1000;
/** Once it did not answer, each further question need not wait as long to hear that. */
const SHORT_PATIENCE_MS = 100;

/** The device's storage did not answer in time. What was asked may still come. */
export class StorageSilent extends Error {
  constructor() {
    super("This device's storage does not answer.");
  }
}

/**
 * What is under way. A page that is left with a transaction open holds its stores against the next page
 * for as long as the browser keeps the old one, which WebKit does.
 * @type {Set<Transaction>}
 */
const open = new Set();
let silent = false;
/** The page was left in the middle of something. */
let interrupted = false;

/** Whether storage did not answer the last time. */
export const storageIsSilent = () => silent;

/**
 * @template T
 * @template {Name} N
 * @param {N|N[]} names of stores
 * @param {(transaction: Stores<N>) => Promise<T>} work awaits nothing but the transaction
 * @returns {Promise<T>}
 * @throws {StorageSilent}
 */
export function read(names, work) {
  return inTime(PATIENCE_MS, (stillWanted) => transact(names, "readonly", {}, work, stillWanted));
}

/**
 * Write, whole or not at all. One writer at a time over all tabs: a write that waits its turn is not yet in
 * the browser's own line, where reads that come after it would wait behind it. What must not be lost with the
 * power says so ("strict"); all else the shop has, too.
 * @template T
 * @template {Name} N
 * @param {N|N[]} names of stores
 * @param {(transaction: Stores<N>) => Promise<T>|T} work awaits nothing but the transaction
 * @param {IDBTransactionOptions & {patience?: number}} [how]
 * @returns {Promise<T>}
 * @throws {StorageSilent} then nothing of it is written later either
 */
export function write(names, work, { patience = PATIENCE_MS, durability = "relaxed" } = {}) {
  return inTime(patience, (stillWanted) =>
    withTabLock("writer", patience / 2, () =>
      transact(names, "readwrite", { durability }, work, stillWanted),
    ),
  );
}

/**
 * @template T
 * @template {Name} N
 * @param {N|N[]} names
 * @param {"readonly"|"readwrite"} mode
 * @param {IDBTransactionOptions} options
 * @param {(transaction: Stores<N>) => Promise<T>|T} work
 * @param {{now: boolean, transaction?: Transaction}} wanted
 * @returns {Promise<T>}
 */
async function transact(names, mode, options, work, wanted) {
  const transaction = await begin(names, mode, options);
  if (!wanted.now && mode === "readwrite") {
    transaction.abort();
    await transaction.done;
  }
  wanted.transaction = transaction;
  open.add(transaction);
  transaction.done.catch(() => undefined).finally(() => open.delete(transaction));
  try {
    const result = await work(storesOf(transaction));
    if (mode === "readwrite") {
      transaction.commit(); // from here on it needs this page no more
      await transaction.done;
    }
    return result;
  } catch (error) {
    abort(transaction);
    throw transaction.error ?? error;
  }
}

/**
 * The stores of a transaction. How it ends says all: a request of it that nobody waits for fails with it,
 * and is no fault of its own.
 * @param {Transaction} transaction
 */
const storesOf = (transaction) => ({
  store: quiet(transaction.objectStore(transaction.objectStoreNames[0])),
  objectStore: (/** @type {Name} */ name) => quiet(transaction.objectStore(name)),
});

/** @param {any} store any: whatever is asked of it by name is handed on */
const quiet = (store) =>
  new Proxy(store, {
    get: (_, name) =>
      typeof store[name] === "function"
        ? (/** @type {unknown[]} */ ...asked) => {
            const answer = store[name](...asked);
            answer?.catch?.(() => undefined);
            return answer;
          }
        : store[name],
  });

/**
 * @param {Name|Name[]} names
 * @param {"readonly"|"readwrite"} mode
 * @param {IDBTransactionOptions} options
 * @returns {Promise<Transaction>}
 */
async function begin(names, mode, options) {
  try {
    return (await database()).transaction(/** @type {Name[]} */ (names), mode, options);
  } catch (error) {
    // The browser closed the connection by itself, as phones do with pages in the background.
    if (!(error instanceof DOMException && error.name === "InvalidStateError")) throw error;
    forgetConnection();
    return (await database()).transaction(/** @type {Name[]} */ (names), mode, options);
  }
}

/** @param {Transaction} transaction */
function abort(transaction) {
  try {
    transaction.abort();
  } catch {
    // Over already, or all of it is written and the browser only has to close it.
  }
}

/**
 * @template T
 * @param {number} patience
 * @param {(wanted: {now: boolean, transaction?: Transaction}) => Promise<T>} ask
 * @returns {Promise<T>}
 */
async function inTime(patience, ask) {
  /** @type {{now: boolean, transaction?: Transaction}} */
  const wanted = { now: true };
  const answer = ask(wanted);
  answer.then(
    () => tell(false),
    () => undefined,
  );
  /** @type {number|undefined} */
  let timer;
  const tooLate = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new StorageSilent()), silent ? SHORT_PATIENCE_MS : patience);
  });
  try {
    return await /** @type {Promise<T>} */ (Promise.race([answer, tooLate]));
  } catch (error) {
    if (error instanceof StorageSilent) giveUp(wanted);
    throw error;
  } finally {
    clearTimeout(timer);
  }
}

/** @param {{now: boolean, transaction?: Transaction}} wanted */
function giveUp(wanted) {
  wanted.now = false;
  if (wanted.transaction?.mode === "readwrite") abort(wanted.transaction);
  tell(true);
}

/** @param {boolean} now whether it is silent */
function tell(now) {
  if (now === silent) return;
  silent = now;
  document.documentElement.dataset.storage = silent ? "silent" : "answers";
  document.dispatchEvent(new CustomEvent("storage", { detail: { silent } }));
}

addEventListener("pagehide", () => {
  interrupted ||= open.size > 0;
  for (const transaction of open) abort(transaction);
});

addEventListener("pageshow", (event) => {
  if (event.persisted && interrupted) {
    document.dispatchEvent(new CustomEvent("storage", { detail: { silent } }));
  }
  interrupted = false;
});
