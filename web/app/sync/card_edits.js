// Changing a card: written down on this device first, shown at once, then sent.
import { fieldsOf, realChanges } from "./card_fields.js";
import { newId, waitingFor } from "./outbox.js";
import { send } from "./sending.js";
import { settings } from "../shell/settings.js";
import { keptCard } from "./local_shop.js";

/** @typedef {import("./stored.js").Waiting} Waiting */
/**
 * @typedef {Api.Card & {after: string, here: Waiting[]}} CardHere as this device shows it; after: what the
 *   next edit is made on; here: the edits of it that wait
 */

/** @param {Waiting} entry */
const isEdit = ({ kind }) => kind === "edit" || kind === "note";

/**
 * A card as it will be when what waits here has arrived.
 * @param {Api.Card} card
 * @param {Waiting[]} entries of the card
 * @returns {CardHere}
 */
export function withWaiting(card, entries) {
  const all = entries.filter(isEdit);
  const edits = all.filter((entry) => !entry.parked && !entry.refused);
  const shown = edits.reduce((so, entry) => ({ ...so, ...fieldsOf(entry.body) }), card);
  const settled = new Set(all.flatMap((entry) => entry.body.settles ?? []));
  const proposals = (card.proposals ?? []).filter((one) => !settled.has(one.id));
  return { ...shown, proposals, after: all.at(-1)?.id ?? card.revision_id, here: all };
}

/**
 * The card as this device shows it, with what waits.
 * @param {Api.Card} card as the shop gave it
 */
export async function asShown(card) {
  return withWaiting(card, await waitingFor(card.code).catch(() => []));
}

/**
 * The card as two changes are settled on: as the shop has it, with what was settled here. Edits
 * that wait behind the conflict are not in it: they follow once it is settled.
 * @param {string} code
 * @returns {Promise<CardHere|undefined>}
 */
export async function cardToResolve(code) {
  const card = await keptCard(code);
  return (
    card &&
    withWaiting(
      card,
      (await waitingFor(code)).filter((entry) => entry.body.settles),
    )
  );
}

/**
 * @param {string} code
 * @returns {Promise<CardHere|undefined>}
 */
export async function shownCard(code) {
  const card = await keptCard(code);
  return card && asShown(card);
}

/**
 * @param {CardHere} seen the card as it was on the screen when the change was made
 * @param {import("./card_fields.js").Changes} changes
 * @param {{reason?: string, settles?: string[]}} [why]
 * @returns {Promise<{where: import("./sending.js").Where|"same", card: CardHere}>} where it is now, and the
 *   card with it
 * @throws {import("./api.js").Problem | import("./database.js").NotKept}
 */
export async function changeHere(seen, changes, { reason = "", settles = [] } = {}) {
  const real = realChanges(changes, seen);
  const names = /** @type {(keyof typeof real)[]} */ (Object.keys(real));
  if (!names.length && !settles.length) return { where: "same", card: seen };
  const { name } = settings();
  const outcome = await send({
    id: newId(),
    kind: names.every((one) => one === "note") && !settles.length ? "note" : "edit",
    code: seen.code,
    body: {
      ...real,
      ...(settles.length ? { settles } : {}),
      ...(reason ? { reason } : {}),
      ...(name ? { by: name } : {}),
    },
    before: fieldsOf(seen, names),
    after: seen.after,
    etag: seen.etag,
    revision: seen.revision,
  });
  const kept = await shownCard(seen.code).catch(() => undefined);
  // A device that keeps nothing goes on from the shop's answer.
  const answer = /** @type {Api.Card|null} */ (outcome.answer);
  return { where: outcome.where, card: kept ?? (answer ? withWaiting(answer, []) : { ...seen, ...real }) };
}
