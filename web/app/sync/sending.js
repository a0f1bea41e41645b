// The way out of the outbox: what was typed first goes first. Edits of one card go one after the
// other; one that met another edit goes to the shop as a proposal, and holds back only the later
// edits of that card until it is settled. tests/durability/devices.py follows the same rules.
import { call, Problem, Unreachable } from "./api.js";
import { differing, sameAsBefore } from "./card_fields.js";
import { arrived, follow, forget, mark, stillWaiting, tidy, waiting, wasSent, writeDown } from "./outbox.js";
import { keepRunEntry } from "./kept_runs.js";
import { keepCard, keptCard } from "./local_shop.js";
import { StorageSilent } from "./storage.js";
import { withTabLock } from "./tab_lock.js";

const ASK_AGAIN_MS = 3000;
/** Sending one thing from two tabs does no harm, so a tab that does not come to an end is not waited for. */
const TURN_MS = 15_000;

/** @typedef {import("./stored.js").Waiting} Waiting */
/** @typedef {import("./database.js").NotKept} NotKept */
/** @typedef {import("./api.js").Answer} Answer */
/**
 * @typedef {Api.Card|Api.ResultAnswer|Api.RunAnswer} Taken what the shop says of an edit, a result, a run
 */
/** @typedef {"shop"|"here"|"settle"} Where in the shop; waiting here; met another edit */
/**
 * @typedef {{where: Where, answer: Taken|null, late?: string}} Outcome late: why the shop
 *   could not take it now
 */

/**
 * Write it down, then send it now or leave it waiting. What the shop refuses is not kept: the
 * person is still here to put it right. Where nothing can be written down, only the shop counts; where
 * neither answers, it is held in this window until one does.
 * @param {Omit<Waiting, "number"|"queued_at">} typed
 * @returns {Promise<Outcome>}
 * @throws {Problem}
 */
export async function send(typed) {
  underWay.add(typed.id);
  try {
    return await sendNow(typed);
  } finally {
    underWay.delete(typed.id);
  }
}

/**
 * What a person is waiting for on this page: a round that runs meanwhile does not send it too.
 * @type {Set<string>}
 */
const underWay = new Set();

/**
 * @param {Omit<Waiting, "number"|"queued_at">} typed
 * @returns {Promise<Outcome>}
 */
async function sendNow(typed) {
  /** @type {Waiting} */
  let entry;
  try {
    entry = await writeDown(typed);
  } catch (unkept) {
    const outcome = await straight(typed);
    if (outcome) return outcome;
    await heldForAWhile(/** @type {NotKept} */ (unkept));
    return sendNow(typed);
  }
  try {
    return (await step(entry, 4000)) ?? { where: "here", answer: null };
  } catch (error) {
    const silent = error instanceof Unreachable || error instanceof StorageSilent;
    if (!silent && isRefusal(error)) {
      await forget(entry.id);
      throw error;
    }
    return { where: "here", answer: null, late: silent ? "" : await markLate(entry, error) };
  }
}

/**
 * Why something that was typed is in this window only, for each such thing.
 * @type {Set<NotKept>}
 */
const held = new Set();

/** Why something that was typed is in this window only, while the shop does not answer either; else empty. */
export const whyHeld = () => [...held].at(-1)?.message ?? "";

/**
 * Until storage answers again, or it is time to try both again.
 * @param {NotKept} why
 */
async function heldForAWhile(why) {
  held.add(why);
  document.dispatchEvent(new CustomEvent("held"));
  await new Promise((go) => {
    setTimeout(go, ASK_AGAIN_MS);
    document.addEventListener("storage", go, { once: true });
  });
  held.delete(why);
  document.dispatchEvent(new CustomEvent("held"));
}

/**
 * To the shop, past this device's storage.
 * @param {Omit<Waiting, "number"|"queued_at">} typed
 * @returns {Promise<Outcome|null>} null: no answer
 */
async function straight(typed) {
  try {
    const { body } = await post({ ...typed, number: 0, queued_at: "" }, 8000);
    return { where: "shop", answer: /** @type {Taken} */ (body) };
  } catch (error) {
    if (error instanceof Unreachable || !isRefusal(error)) return null;
    throw error;
  }
}

/**
 * Send what waits, one after the other; stop at the first silence. What the shop refuses stays,
 * with its reason, until somebody decides.
 * @returns {Promise<{sent: number, left: number}>}
 */
export async function flush() {
  return withTabLock("outbox", TURN_MS, flushAlone);
}

async function flushAlone() {
  let sent = 0;
  for (const { id } of await waiting()) {
    if (underWay.has(id)) continue;
    const entry = await stillWaiting(id); // as the ones before it left it
    if (!entry || !(await due(entry))) continue;
    try {
      if (await step(entry, 8000)) sent += 1;
    } catch (error) {
      if (error instanceof Unreachable) break;
      if (isRefusal(error)) await mark(entry.id, { refused: error.message, missing: error.status === 404 });
      else await markLate(entry, error);
    }
  }
  return { sent, left: (await waiting()).length };
}

/**
 * What was refused waits for somebody to decide; what belongs to a card that a restored shop lacked, for that
 * card.
 * @param {Waiting} entry
 */
const due = async ({ refused, again, missing, code }) =>
  !refused || Boolean(again && missing && (await keptCard(code)));

/**
 * One entry, as far as it gets.
 * @param {Waiting} entry
 * @param {number} timeout
 * @returns {Promise<Outcome|null>} null: held back
 */
async function step(entry, timeout) {
  if (!(await ready(entry))) return null;
  const now = (await stillWaiting(entry.id)) ?? entry;
  try {
    const answer = await (now.parked ? propose(now, timeout) : post(now, timeout));
    await accepted(now, answer);
    return { where: now.parked ? "settle" : "shop", answer: /** @type {Taken} */ (answer.body) };
  } catch (error) {
    if (!(error instanceof Problem && error.status === 412) || now.parked) throw error;
    return met(now, timeout);
  }
}

/**
 * Whether what an edit was made on is out of its way. One that follows a proposal waits until
 * that is settled; it goes on from there if its fields still are what was on the screen.
 * @param {Waiting} entry
 */
async function ready({ id, code, after, before, parked }) {
  if (!after || parked) return true;
  if (await stillWaiting(after)) return false;
  if (!(await wasSent(after))?.proposed) return true;
  const card = await keptCard(code);
  if (!card || card.proposals?.some((one) => one.id === after)) return false;
  await mark(id, sameAsBefore({ before }, card) ? { after: card.revision_id } : { parked: true });
  return true;
}

/**
 * The card was changed meanwhile. The same wish needs no settling; another one is parked and proposed.
 * @param {Waiting} entry
 * @param {number} timeout
 * @returns {Promise<Outcome>}
 */
async function met(entry, timeout) {
  if (entry.body.part) throw new Problem(PART_MET); // only after a restore: it was in the shop before
  const { body: card, at } = /** @type {{body: Api.Card, at: string}} */ (
    await call("GET", `/cards/${entry.code}`, { timeout })
  );
  await keepCard(card);
  // What it settled is still open: it was chosen between other things, and is asked again.
  const open = (entry.body.settles ?? []).some((/** @type {string} */ id) =>
    card.proposals.some((one) => one.id === id),
  );
  if (open || !differing(entry.body, entry.before ?? {}, card).length) {
    await arrived(entry, at);
    await follow(entry.id, card.revision_id, (later) => sameAsBefore(later, card));
    return { where: open ? "settle" : "shop", answer: card };
  }
  const parked = { ...entry, parked: true };
  await mark(entry.id, { parked: true });
  const answer = await propose(parked, timeout);
  await accepted(parked, answer);
  return { where: "settle", answer: /** @type {Taken} */ (answer.body) };
}

/**
 * @param {Waiting} entry
 * @param {Answer} answer
 */
async function accepted(entry, { body, at }) {
  if (entry.kind === "run") {
    await keepRunEntry(/** @type {Api.RunAnswer} */ (body).entry).catch(() => undefined);
  } else if (entry.kind !== "trial") {
    const card = /** @type {Api.Card} */ (body);
    await keepCard(card).catch(() => undefined); // no room for it: the feed brings it once there is
    // Nothing was changed by it, so it made no revision: what was made on it is made on what is there.
    if (!entry.parked && entry.after && card.revision_id === entry.after) await follow(entry.id, entry.after);
  }
  await arrived(entry, at, Boolean(entry.parked));
  await tidy(at);
}

/**
 * @param {Waiting} entry
 * @param {number} timeout
 * @returns {Promise<Answer>}
 */
function post({ kind, code, id, body, after, etag, missing }, timeout) {
  if (kind === "trial") {
    return call("POST", `/cards/${code}/results`, {
      body: missing ? { ...body, again: true } : body,
      timeout,
    });
  }
  if (kind === "run") return call("POST", `/cards/${code}/runs`, { body, timeout });
  return call("PUT", `/cards/${code}`, {
    body: { ...body, id, ...(after ? { after } : {}) },
    etag: after ? "*" : etag,
    timeout,
  });
}

/**
 * @param {Waiting} entry
 * @param {number} timeout
 */
function propose({ id, code, body, before, revision, queued_at }, timeout) {
  const { reason, by, settles, ...changes } = body;
  const more = { ...(reason ? { reason } : {}), ...(by ? { by } : {}) };
  return call("POST", `/cards/${code}/proposals`, {
    body: { id, changes, before, revision, made_at: queued_at, ...more },
    timeout,
  });
}

const PART_MET = {
  title: "Changed meanwhile",
  status: 412,
  detail:
    "The part was changed here, the shop was restored from an earlier backup, and the card was changed " +
    "again since. Open the card and make the change anew.",
};

/**
 * Note why the shop can't take an entry now, for whoever looks.
 * @param {Waiting} entry
 * @param {unknown} error no refusal
 * @returns {Promise<string>} empty where it may be sent again at once
 */
async function markLate({ id }, error) {
  if (!(error instanceof Problem) || error.status < 500) return "";
  const late = error.status === 507 ? "The disk of the shop’s server is full: make room on it" : error.title;
  await mark(id, { late }).catch(() => undefined);
  return late;
}

/**
 * The shop read it and said no; a fault of its own, or "later", is no refusal.
 * @param {unknown} error
 * @returns {error is Problem}
 */
function isRefusal(error) {
  if (!(error instanceof Problem)) throw error;
  return error.status < 500 && ![401, 408, 429].includes(error.status);
}
