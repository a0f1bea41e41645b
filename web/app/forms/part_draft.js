// The part being typed, kept on this device at every key, so that a reload or an empty battery
// loses nothing. Cleared when the shop has it.

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
  try {
    const draft = JSON.parse(localStorage.getItem(key(from)) ?? "null");
    return draft && Array.isArray(draft.form?.flats) && Array.isArray(draft.form?.bends) ? draft : null;
  } catch {
    return null; // storage blocked or damaged
  }
}

/**
 * @param {string} from
 * @param {Omit<Draft, "kept_at">} draft
 * @returns {boolean} whether it is kept
 */
export function keepDraft(from, draft) {
  try {
    localStorage.setItem(key(from), JSON.stringify({ ...draft, kept_at: new Date().toISOString() }));
    return true;
  } catch {
    return false;
  }
}

/** @param {string} from */
export function clearDraft(from) {
  try {
    localStorage.removeItem(key(from));
  } catch {
    // Nothing was kept either.
  }
}
