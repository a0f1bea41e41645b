// Cards that this device has and the shop does not: it was put back to an earlier day, or is another
// shop. Somebody decides.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { messageOf } from "../../app/sync/api.js";
import { displayCode } from "../../app/scan/card_code.js";
import { notice } from "../../app/shell/notices.js";
import { recreateLostCard } from "../../app/sync/recreate_lost_card.js";
import { forgetLost } from "../../app/sync/local_shop.js";
import { recount, sync } from "../../app/sync/sync.js";
import { offer } from "../common/if_allowed.js";

/** @param {Api.Card[]} cards */
export function lostList(cards) {
  if (!cards.length) return nothing;
  return html`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was restored from an earlier backup and does not know these cards. This device still has
      them.${offer(
        "cards.create",
        nothing,
        html` <span data-test="owners"
          >The owner can restore them from here, once this is an owner's device.</span
        >`,
      )}
    </p>
    <ul class="waiting-list">
      ${cards.map(
        (card) =>
          html`<li data-test="lost-${card.code}">
            <p><b>${card.title}</b> ${displayCode(card.code)}</p>
            <div class="buttons">
              ${offer(
                "cards.create",
                html`<button type="button" class="button" data-test="put-back" @click=${() => act(card)}>
                  Restore it
                </button>`,
              )}
              <button type="button" class="button" data-test="let-go" @click=${() => letGo(card)}>
                Throw away…
              </button>
            </div>
          </li>`,
      )}
    </ul>
  </section>`;
}

/** @param {Api.Card} card */
async function act(card) {
  try {
    await recreateLostCard(card);
    await sync();
  } catch (error) {
    notice(messageOf(error));
  }
}

/** @param {Api.Card} card */
async function letGo(card) {
  if (
    !confirm(
      `Throw away the card ${displayCode(card.code)}, ${card.title}? This device may have the only copy.`,
    )
  ) {
    return;
  }
  await forgetLost(card.code);
  await recount();
}
