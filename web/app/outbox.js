// Trials typed at the press: written down here first, then sent, and kept until the shop has them.
// Each carries an id made on this device, so sending one twice does no harm.
import { call, Problem, Unreachable } from "./api.js";
import { database } from "./store.js";

/** @typedef {{id: string, code: string, trial: any, queued_at: string, refused?: string}} Waiting */

/** An id no other device makes. Works over plain http too, where crypto.randomUUID is missing. @returns {string} */
export function newId() {
  if (crypto.randomUUID) return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

/** @param {string} code @param {any} trial with its own id */
export async function queueTrial(code, trial) {
  /** @type {Waiting} */
  const entry = { id: trial.id, code, trial, queued_at: new Date().toISOString() };
  await (await database()).put("outbox", entry);
}

/** Oldest first. @returns {Promise<Waiting[]>} */
export async function waiting() {
  const entries = await (await database()).getAll("outbox");
  return entries.sort((a, b) => (a.queued_at < b.queued_at ? -1 : 1));
}

/** What waits for one card, oldest first. @param {string} code @returns {Promise<Waiting[]>} */
export async function waitingFor(code) {
  return (await waiting()).filter((entry) => entry.code === code);
}

/** @param {string} id */
export async function forget(id) {
  await (await database()).delete("outbox", id);
}

/** Somebody decided that a refused trial goes out once more. @param {string} id */
export async function tryAgain(id) {
  const transaction = (await database()).transaction("outbox", "readwrite");
  const entry = await transaction.store.get(id);
  if (entry) transaction.store.put({ ...entry, refused: undefined });
  await transaction.done;
}

/**
 * Send a trial now, or leave it waiting. It is written down before it is sent, so neither a dead
 * server nor a closed page loses it. What the server refuses is not kept: the person is still
 * here to put it right.
 * @param {string} code @param {any} trial @returns {Promise<any|null>} the server's answer, null when it waits
 * @throws {Problem} refused
 */
export async function sendTrial(code, trial) {
  await queueTrial(code, trial);
  try {
    const { body } = await post({ code, trial }, 4000);
    await forget(trial.id);
    return body;
  } catch (error) {
    if (error instanceof Unreachable || !isRefusal(error)) return null;
    await forget(trial.id);
    throw error;
  }
}

/**
 * Send what waits, one after the other; stop at the first silence. A trial the server refuses
 * stays, with its reason, until somebody decides.
 * @returns {Promise<{sent: number, left: number}>}
 */
export async function flush() {
  return navigator.locks ? navigator.locks.request("flangebook.outbox", flushAlone) : flushAlone();
}

async function flushAlone() {
  let sent = 0;
  for (const entry of await waiting()) {
    if (entry.refused) continue;
    try {
      await post(entry, 8000);
      await forget(entry.id);
      sent += 1;
    } catch (error) {
      if (error instanceof Unreachable) break;
      if (isRefusal(error)) await markRefused(entry.id, error.message);
    }
  }
  return { sent, left: (await waiting()).length };
}

/** @param {{code: string, trial: any}} entry @param {number} timeout */
const post = ({ code, trial }, timeout) => call("POST", `/cards/${code}/trials`, { body: trial, timeout });

/** The server read it and said no; a fault of the server's own, or "later", is no refusal. @param {unknown} error @returns {error is Problem} */
function isRefusal(error) {
  if (!(error instanceof Problem)) throw error;
  return error.status < 500 && error.status !== 408 && error.status !== 429;
}

/** @param {string} id @param {string} reason */
async function markRefused(id, reason) {
  const transaction = (await database()).transaction("outbox", "readwrite");
  const entry = await transaction.store.get(id);
  if (entry) transaction.store.put({ ...entry, refused: reason });
  await transaction.done;
}
