// Saving a part: a new card, or a new revision of one. A lost answer never makes two cards, and a
// card that changed meanwhile is never written over unseen.
import { call, Problem } from "./api.js";
import { fetchCard } from "./cards.js";
import { arrived, newId, nextNumber } from "./outbox.js";
import { partRequest } from "../forms/part_form.js";
import { settings } from "../shell/settings.js";
import { keepCard } from "./local_shop.js";

/** @typedef {import("../forms/part_form.js").PartForm} PartForm */
/** @typedef {import("../forms/part_draft.js").Base} Base */
/**
 * @typedef {{saved: Api.Card} | {stale: Api.Card} | {taken: string}} Outcome saved: the card; stale: the card
 *   as somebody else left it; taken: a code kept already with other content
 */

/** The part is planned once more where the shop changed since: as long as a search may take. */
const PLAN_MS = 60_000;

/** @param {PartForm} form */
const body = (form) => ({
  part: partRequest(form),
  note: form.note,
  ...(settings().name ? { by: settings().name } : {}),
});

/**
 * @param {PartForm} form
 * @param {string} code made on this device
 * @returns {Promise<Outcome>}
 */
export async function saveNewCard(form, code) {
  try {
    const { body: card } = /** @type {{body: Api.Card}} */ (
      await call("POST", "/cards", { body: { ...body(form), code }, timeout: PLAN_MS })
    );
    return { saved: await kept(card) };
  } catch (error) {
    if (error instanceof Problem && error.status === 409) return { taken: code };
    throw ofThePart(error);
  }
}

/**
 * @param {PartForm} form
 * @param {Base} base
 * @returns {Promise<Outcome>}
 */
export async function saveRevision(form, base) {
  const wanted = { ...body(form), reason: form.reason ?? "" };
  const entry = edit(base, wanted);
  try {
    const { after, etag } = entry;
    const { body: card, at } = /** @type {{body: Api.Card, at: string}} */ (
      await call("PUT", `/cards/${base.code}`, {
        body: { ...wanted, id: entry.id, ...(after ? { after } : {}) },
        etag: after ? "*" : etag,
        timeout: PLAN_MS,
      })
    );
    await nextNumber()
      .then((number) => arrived({ ...entry, number }, at))
      .catch(() => undefined); // to be sent again should the shop lose it
    return { saved: await kept(card) };
  } catch (error) {
    if (error instanceof Problem && error.status === 412) return { stale: await fetchCard(base.code) };
    throw ofThePart(error);
  }
}

/**
 * Saving the same again is the same edit: its answer may have been lost.
 * @param {Base} base
 * @param {Record<string, unknown>} wanted
 * @returns {import("./stored.js").Waiting}
 */
function edit(base, wanted) {
  const same = JSON.stringify(wanted);
  if (base.saving?.wanted !== same) base.saving = { id: newId(), wanted: same };
  const { code, etag, revision, revision_id } = base;
  return {
    id: base.saving.id,
    number: 0,
    kind: "edit",
    code,
    body: /** @type {import("./stored.js").Body} */ (wanted),
    queued_at: new Date().toISOString(),
    after: revision_id,
    etag,
    revision,
  };
}

/**
 * A card's part is the whole form here: "part.flats_mm.1" is "flats_mm.1".
 * @param {unknown} error
 */
function ofThePart(error) {
  if (error instanceof Problem) {
    error.errors = Object.fromEntries(
      Object.entries(error.errors).map(([path, words]) => [path.replace(/^part\./, ""), words]),
    );
  }
  return error;
}

/**
 * On this device too, so that it opens at once.
 * @param {Api.Card} card
 */
async function kept(card) {
  return keepCard(card).catch(() => card);
}
