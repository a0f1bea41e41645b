// Two changes of one card met: field by field, what the shop has and what was typed, and one button.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { messageOf } from "../../app/sync/api.js";
import { differing, merged } from "../../app/sync/card_fields.js";
import { displayCode, readCode } from "../../app/scan/card_code.js";
import { cardToResolve, changeHere } from "../../app/sync/card_edits.js";
import { notice } from "../../app/shell/notices.js";
import { wasSent } from "../../app/sync/outbox.js";
import { sync } from "../../app/sync/sync.js";
import { badCode, openOrRefuse, refuse } from "../../view/card/no_card.js";
import { savedWords } from "../../view/card/saved_where.js";
import { differences } from "../../view/card/conflict_fields.js";
import { madeAt, moment } from "../../view/common/dates.js";

/** @typedef {"shop"|"yours"} Side */
/**
 * @typedef {{proposal: Api.Proposal|null, rows: import("../../app/sync/card_fields.js").Row[], mine: boolean,
 *   chosen: Record<string, Side>, sending: boolean, fault: string}} State
 */
/** @typedef {State & {proposal: Api.Proposal}} Open something is to be settled */

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  const { code } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  /** @type {import("../../app/sync/card_edits.js").CardHere} */
  let card;
  /** @type {State} */
  const state = { proposal: null, rows: [], mine: false, chosen: {}, sending: false, fault: "" };
  const draw = () => {
    visit.title(`${card.title || displayCode(code)}: to resolve`);
    visit.render(resolveScreen(card, state, act));
  };
  /** @param {import("../../app/sync/card_edits.js").CardHere|undefined} opened */
  const take = async (opened) => {
    if (!opened || state.sending) return;
    const was = [card?.etag, state.proposal?.id].join();
    card = opened;
    [state.proposal] = card.proposals;
    const { changes = {}, before = {} } = state.proposal ?? {};
    state.rows = differing(changes, before, card);
    state.mine = Boolean(state.proposal && (await wasSent(state.proposal.id).catch(() => undefined)));
    if (was !== [card.etag, state.proposal?.id].join()) state.chosen = {}; // chosen between other things
    draw();
    visit.ready();
  };
  const again = async () => take(await cardToResolve(code).catch(() => undefined));
  const keep = async () => {
    Object.assign(state, { sending: true, fault: "" });
    draw();
    try {
      const done = await changeHere(card, merged(state.rows, state.chosen, card), {
        settles: [/** @type {Open} */ (state).proposal.id],
        reason: "Resolved",
      });
      notice(savedWords(done.where));
      state.sending = false;
      await again();
      sync();
    } catch (error) {
      Object.assign(state, { sending: false, fault: messageOf(error) });
      draw();
    }
  };
  const act = {
    keep,
    choose: (/** @type {string} */ name, /** @type {Side} */ side) => {
      state.chosen[name] = side;
      draw();
    },
    all: (/** @type {Side} */ side) => {
      for (const { name } of state.rows) state.chosen[name] = side;
      draw();
    },
  };
  document.addEventListener("sync", again, { signal: visit.signal });
  await openOrRefuse(visit, async (opened) =>
    take((await cardToResolve(code).catch(() => undefined)) ?? opened),
  );
}

/**
 * @typedef {{keep: () => void, choose: (name: string, side: Side) => void, all: (side: Side) => void}} Act
 */

/**
 * @param {Api.Card} card
 * @param {State} state
 * @param {Act} act
 */
function resolveScreen(card, state, act) {
  return html`<article class="resolve" data-test="resolve-screen">
    <header>
      <p><a class="button" href="/c/${card.code}" data-test="to-card">‹ ${displayCode(card.code)}</a></p>
      <h1>${state.proposal ? "Two changes met" : "Nothing to resolve"} <small>${card.title}</small></h1>
    </header>
    ${
      state.proposal
        ? two(card, /** @type {Open} */ (state), act)
        : html`<p data-test="resolved">
            Every change of this card is resolved. Both sides are in its
            <a href="/c/${card.code}/history">history</a>.
          </p>`
    }
  </article>`;
}

/**
 * @param {Api.Card} card
 * @param {Open} state
 * @param {Act} act
 */
function two(card, { proposal, rows, mine, chosen, sending, fault }, act) {
  const open = rows.filter(({ name }) => !chosen[name]).length;
  const whose = mine ? "Yours" : proposal.by ? `By ${proposal.by}` : "The other one";
  return html`<p data-test="why">
      ${mine ? "You changed" : proposal.by ? `${proposal.by} changed` : "Somebody changed"} this card
      (${madeAt(proposal)}) while it was changed in the shop (revision ${card.revision},
      ${moment(card.updated_at)}${card.updated_by ? `, ${card.updated_by}` : ""}). Choose what holds. Both
      stay in the history.
    </p>
    ${card.proposals.length > 1 ? html`<p><b>1 of ${card.proposals.length} to resolve.</b></p>` : nothing}
    ${
      rows.length
        ? html`<div class="buttons">
              <button type="button" class="button" data-test="all-shop" @click=${() => act.all("shop")}>
                All as in the shop
              </button>
              <button type="button" class="button" data-test="all-yours" @click=${() => act.all("yours")}>
                ${mine ? "All of yours" : proposal.by ? `All by ${proposal.by}` : "All of the other one"}
              </button>
            </div>
            ${differences(rows, chosen, whose, act.choose)}`
        : html`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`
    }
    ${fault ? html`<p class="wrong" role="alert" data-test="wrong">${fault}</p>` : nothing}
    <div class="buttons resolve-keep">
      <button
        type="button"
        class="button next wide"
        data-test="keep"
        ?disabled=${sending || open > 0}
        @click=${act.keep}>
        ${sending ? "Saving…" : "Keep this"}
        ${
          open
            ? html`<small>${open === 1 ? "1 still to choose" : `${open} still to choose`}</small>`
            : nothing
        }
      </button>
    </div>`;
}
