// Trials typed without network: kept here until the shop has them. Each carries an id made on
// this device, so sending one twice does no harm.
import { call, Problem } from "./api.js";
import { database } from "./store.js";

/** @typedef {{id: string, code: string, trial: any, queued_at: string, refused?: string}} Waiting */

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

/** @param {string} id */
export async function forget(id) {
  await (await database()).delete("outbox", id);
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
      await call("POST", `/cards/${entry.code}/trials`, { body: entry.trial });
      await forget(entry.id);
      sent += 1;
    } catch (error) {
      if (!(error instanceof Problem) || error.status >= 500) break;
      await (await database()).put("outbox", { ...entry, refused: error.message });
    }
  }
  return { sent, left: (await waiting()).length };
}
