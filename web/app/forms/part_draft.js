// The part being typed, kept on this device at every key, so that a reload or an empty battery
// loses nothing. Cleared when the shop has it.
import { readKept, writeKept } from "../shell/kept_json.js";

/** @typedef {import("./part_form.js").PartForm} PartForm */
/**
 * @typedef {{code: string, etag: string, revision: number, revision_id?: string, saving?: {id: string,
 *   wanted: string}}} Base the card as it was when editing began, and the edit that was last sent
 */
/**
 * @typedef {{form: PartForm, base: Base|null, newCode: string, kept_at: string}} Draft newCode: the code a
 *   new card will have, so that saving twice makes one card
 */

/** @param {string} from a card's code, or "" for a new part */
const key = (from) => `flangebook.part.${from || "new"}`;

/**
 * @param {string} from
 * @returns {Draft|null}
 */
export function keptDraft(from) {
  const draft = /** @type {Draft|null} */ (readKept(key(from)));
  return draft && Array.isArray(draft.form?.flats) && Array.isArray(draft.form?.bends) ? draft : null;
}

/**
 * @param {string} from
 * @param {Omit<Draft, "kept_at">} draft
 * @returns {boolean} whether it is kept
 */
export const keepDraft = (from, draft) =>
  writeKept(key(from), { ...draft, kept_at: new Date().toISOString() });

/** @param {string} from */
export const clearDraft = (from) => writeKept(key(from), null);
