// A card's history: who changed what, when and why, what was measured; older states can be looked
// at and brought back.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call, messageOf, Problem, Unreachable } from "../../app/sync/api.js";
import { changeCard, fetchCard, openCard } from "../../app/sync/cards.js";
import { displayCode, readCode } from "../../app/scan/card_code.js";
import { notice } from "../../app/shell/notices.js";
import { newId, waitingFor } from "../../app/sync/outbox.js";
import { onSettings, settings } from "../../app/shell/settings.js";
import { sync } from "../../app/sync/sync.js";
import { badCode, noCard, refuse } from "../../view/card/no_card.js";
import { flag } from "../../view/common/finding.js";
import { offer } from "../../view/common/if_allowed.js";
import { proposalList } from "../../view/card/edit_conflicts.js";
import { revisionView } from "../../view/card/revision.js";
import { resultLine } from "../../view/results/result_line.js";
import { moment, whoSent } from "../../view/common/dates.js";

/**
 * @typedef {{revisions: Api.Revision[]|null, proposals: Api.SettledProposal[], silent: boolean,
 *   waiting: import("../../app/sync/stored.js").Waiting[], open: number, snapshot: Api.Snapshot|null, busy:
 *   boolean}}
 *   State
 */

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  const { code } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  /** @type {Api.Card} */
  let card;
  /** @type {State} */
  const state = {
    revisions: null,
    proposals: [],
    silent: false,
    waiting: [],
    open: 0,
    snapshot: null,
    busy: false,
  };
  const draw = () => visit.render(historyScreen(card, state, { look, bringBack }));
  const load = async () => {
    try {
      const ask = (/** @type {string} */ what) =>
        call("GET", `/cards/${code}/${what}`, { signal: visit.signal });
      const [past, proposed] = await Promise.all([ask("revisions?limit=200"), ask("proposals")]);
      state.revisions = /** @type {Api.Revisions} */ (past.body).revisions;
      state.proposals = /** @type {Api.Proposals} */ (proposed.body).proposals;
      state.silent = false;
    } catch (error) {
      if (!(error instanceof Unreachable)) throw error;
      state.silent = true;
    }
  };
  /** @param {number} number */
  const look = async (number) => {
    state.open = state.open === number ? 0 : number;
    state.snapshot = null;
    draw();
    if (!state.open) return;
    try {
      const { body } = await call("GET", `/cards/${code}/revisions/${number}`, { signal: visit.signal });
      if (state.open === number) state.snapshot = /** @type {Api.Snapshot} */ (body);
    } catch (error) {
      state.open = 0;
      notice(messageOf(error));
    }
    draw();
  };
  /** @param {number} number */
  const bringBack = async (number) => {
    state.busy = true;
    draw();
    try {
      card = await restore(card, number);
      notice(`Revision ${number} is back, as revision ${card.revision}.`);
      state.open = 0;
      sync();
      await load();
    } catch (error) {
      notice(
        error instanceof Problem && error.status === 412
          ? "The card was changed meanwhile. Look at the history again."
          : messageOf(error),
      );
    }
    state.busy = false;
    draw();
  };
  onSettings(() => card && draw(), visit.signal);
  try {
    await openCard(
      code,
      async (opened) => {
        card = opened;
        visit.title(`${card.title || displayCode(code)}: history`);
        state.waiting = (await waitingFor(code).catch(() => [])).filter((entry) => entry.kind === "trial");
        draw();
      },
      visit.signal,
    );
    await load();
    draw();
    visit.ready();
  } catch (error) {
    if (!visit.signal.aborted) refuse(visit, noCard(code, error));
  }
}

/**
 * @param {Api.Card} card
 * @param {number} number
 * @returns {Promise<Api.Card>} the card as it is then
 */
async function restore(card, number) {
  const now = await fetchCard(card.code);
  return changeCard(now, {
    restore_revision: number,
    reason: `Revision ${number} brought back`,
    id: newId(),
    ...(settings().name ? { by: settings().name } : {}),
  });
}

/**
 * @param {Api.Card} card
 * @param {State} state
 * @param {{look: (number: number) => void, bringBack: (number: number) => void}} act
 */
function historyScreen(card, state, act) {
  return html`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${card.code}" data-test="to-card">‹ ${displayCode(card.code)}</a></p>
      <h1>History of ${card.title || "this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${revisions(card, state, act)}
      </section>
      ${proposalList(state.proposals, card.code)}
      <section class="panel">
        <h2>Results</h2>
        ${trials(card, state)}
      </section>
    </div>
  </article>`;
}

/**
 * @param {Api.Card} card
 * @param {State} state
 * @param {{look: (number: number) => void, bringBack: (number: number) => void}} act
 */
function revisions(card, state, act) {
  if (state.silent) {
    return html`<p data-test="silent">
      This device has revision ${card.revision}, of
      ${moment(card.updated_at)}${card.updated_by ? ` by ${card.updated_by}` : ""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`;
  }
  if (!state.revisions) return html`<p data-test="loading">Asking the shop…</p>`;
  return html`<ol class="rows revisions" data-test="revisions">
    ${state.revisions.map((one) => revisionLine(one, card, state, act))}
  </ol>`;
}

/**
 * @param {Api.Revision} one
 * @param {Api.Card} card
 * @param {State} state
 * @param {{look: (number: number) => void, bringBack: (number: number) => void}} act
 */
function revisionLine(one, card, state, { look, bringBack }) {
  const newest = one.revision === card.revision;
  const open = state.open === one.revision;
  return html`<li class="row revision" data-test="revision" data-revision=${one.revision}>
    <h3>
      Revision ${one.revision}${newest ? ", as it is now" : ""}
      ${one.worst === "stop" || one.worst === "caution" ? flag(one.worst) : nothing}
    </h3>
    <p class="more">${[moment(one.at), whoSent(one)].filter(Boolean).join(", by ")}</p>
    ${one.reason ? html`<p data-test="reason">${one.reason}</p>` : nothing}
    ${
      one.changes.length
        ? html`<ul class="changes" data-test="changes">
            ${one.changes.map((words) => html`<li>${words}</li>`)}
          </ul>`
        : nothing
    }
    <div class="buttons">
      <button
        class="button"
        aria-expanded=${open ? "true" : "false"}
        data-test="look"
        @click=${() => look(one.revision)}>
        ${open ? "Close" : "Look at it"}
      </button>
      ${
        newest
          ? nothing
          : offer(
              "cards.revise",
              html`<button
                class="button"
                data-test="bring-back"
                ?disabled=${state.busy}
                @click=${() => bringBack(one.revision)}>
                Bring this one back
              </button>`,
            )
      }
    </div>
    ${open ? (state.snapshot ? revisionView(state.snapshot) : html`<p>Fetching it…</p>`) : nothing}
  </li>`;
}

/**
 * @param {Api.Card} card
 * @param {State} state
 */
function trials(card, state) {
  if (!card.trials.length && !state.waiting.length) {
    return html`<p data-test="no-results">Nothing measured yet.</p>`;
  }
  return html`<ol class="rows results" data-test="results">
      ${[...state.waiting].reverse().map((entry) => resultLine(entry.body, { waiting: entry }))}
      ${[...card.trials]
        .reverse()
        .map((trial) => resultLine(trial, { step: card.plan.steps[trial.step - 1] }))}
    </ol>
    ${
      card.trials_total > card.trials.length
        ? html`<p>The newest ${card.trials.length} of ${card.trials_total}.</p>`
        : nothing
    }`;
}
