// A card that the shop lost, made again from this device's copy: its part is planned afresh, its
// settings and results are sent after it.
import { call } from "./api.js";
import { fieldsOf, realChanges } from "./card_fields.js";
import { changeHere, withWaiting } from "./card_edits.js";
import { bringResultsBack, forgetLost, keepCard } from "./local_shop.js";

/**
 * @param {Api.Card} card as it was kept
 * @throws {import("./api.js").Problem | import("./api.js").Unreachable}
 */
export async function recreateLostCard(card) {
  const { code, part, title, note, created_by } = card;
  const body = { code, part: { ...part, title }, note, by: created_by };
  const { body: made } = /** @type {{body: Api.Card}} */ (
    await call("POST", "/cards", { body, timeout: 20000 })
  );
  const seen = withWaiting(await keepCard(made), []);
  await changeHere(seen, realChanges(fieldsOf(card, ["archived", "settings"]), seen), {
    reason: "Restored from a device",
  });
  await bringResultsBack(card);
  await forgetLost(code);
}
