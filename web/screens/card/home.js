// Find a card: type its code, or look for it among the cards on this device.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { live } from "/vendor/lit-html/directives/live.js";
import { displayCode } from "../../app/scan/card_code.js";
import { nameOfMetal, seenShop, WRITES } from "../../app/sync/shop_lists.js";
import { waiting } from "../../app/sync/outbox.js";
import { cardLines } from "../../app/sync/cards.js";
import { kindsInWords, sync, syncStanding } from "../../app/sync/sync.js";
import { lengthUnit } from "../../app/shell/units.js";
import { tidyLength } from "../../drawing/section.js";
import { firstSteps, guessUnits } from "../../app/shell/first_start.js";
import { may } from "../../app/shell/rights.js";
import { firstStepsPanel } from "../../view/card/first_steps.js";
import { fold } from "../../view/common/fold.js";
import { offer, way } from "../../view/common/if_allowed.js";
import { cardList } from "../../view/card/card_list.js";
import { codeForm, nothingTyped } from "../../view/card/card_code_form.js";

const A_SCREENFUL = 40;

/** A scribed frame with a label in it. */
const framed = html`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`;

const toGuide = html`<p><a href="/guide" data-test="to-guide">Guide</a></p>`;
const toBend = html`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`;

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  visit.title("Find a card");
  const state = { typed: nothingTyped(), search: "", shown: A_SCREENFUL };
  let kept = await everythingKept();
  let started = false; // before the first round with the shop, an empty list says nothing yet

  const draw = () => {
    const steps = may(WRITES.press) ? firstSteps(kept.shop) : [];
    if (steps.length) guessUnits();
    visit.render(
      steps.length && kept.list.length === 0
        ? html`<div class="home">
            <h1>A new shop</h1>
            ${firstStepsPanel(steps, draw)} ${toGuide}
          </div>`
        : html`<div class="home">
            <h1>Find a card</h1>
            <div class="home-scan">
              <a class="button next wide" href="/scan" data-test="scan">${framed} Scan a label</a>
            </div>
            <div class="home-ways">
              ${codeForm(state.typed, kept.list, draw, "Seven characters, capitals or not.")}
              <nav class="home-new" aria-label="Start something">
                ${way("/bend", toBend)}
                ${way(
                  "/part",
                  html`<a class="button" href="/part" data-test="new-part"
                    >${offer("cards.create", "New part", "Plan a part")}</a
                  >`,
                )}
              </nav>
            </div>
            ${listing(state, kept, started, draw)} ${toGuide}
          </div>`,
    );
  };
  draw();

  const refresh = async () => {
    started ||= syncStanding().reached !== null;
    kept = await everythingKept();
    draw();
    if (started || kept.list.length) visit.ready();
  };
  document.addEventListener("sync", refresh, { signal: visit.signal });
  if (kept.list.length) visit.ready();
  await sync().then(refresh);
}

/** @typedef {Awaited<ReturnType<typeof everythingKept>>} Kept */

async function everythingKept() {
  const [{ list, where }, shop, queue] = await Promise.all([
    cardLines(),
    seenShop(),
    waiting().catch(() => []),
  ]);
  /** @type {Map<string, string>} */
  const waits = new Map();
  for (const { code } of queue) waits.set(code, kindsInWords(queue.filter((entry) => entry.code === code)));
  const metalName = (/** @type {string} */ code) => nameOfMetal(shop?.metals, code);
  return { list, where, waiting: waits, metalName, shop };
}

/**
 * @typedef {{typed: import("../../view/card/card_code_form.js").Typed, search: string, shown: number}} State
 */

/**
 * @param {State} state
 * @param {Kept} kept
 * @param {boolean} started
 * @param {() => void} draw
 */
function listing(state, kept, started, draw) {
  if (kept.list.length === 0) {
    return started
      ? nothingHere()
      : html`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
  }
  const found = search(kept, state.search);
  return html`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal, thickness or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${live(state.search)}
        @input=${(/** @type {{target: HTMLInputElement}} */ event) => {
          state.search = event.target.value;
          state.shown = A_SCREENFUL;
          draw();
        }} />
    </div>
    <p class="count" role="status" data-test="count">${countWords(found.length, kept, state.search)}</p>
    ${cardList(found.slice(0, state.shown), kept)}
    ${
      found.length > state.shown
        ? html`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${() => {
                state.shown += A_SCREENFUL;
                draw();
              }}>
              Show more
            </button>
          </div>`
        : nothing
    }
    ${state.search.trim() ? nothing : archived(kept)}
  </section>`;
}

/** @param {Kept} kept */
function archived(kept) {
  const away = kept.list.filter((card) => card.archived);
  return away.length
    ? fold(`Archived: ${away.length}`, cardList(away, kept), { test: "archived", open: false })
    : nothing;
}

/**
 * @param {Kept} kept
 * @param {string} typed every word must be there
 */
function search({ list, metalName }, typed) {
  const wanted = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return list.filter((card) => !card.archived);
  return list.filter((card) => {
    const { code, title, note, metal, thickness_mm: mm } = card;
    const sheet = `${metal} ${metalName(metal)} ${tidyLength(mm)} ${lengthUnit()}`;
    const all = `${code} ${displayCode(code)} ${title} ${note} ${sheet}`.toLowerCase();
    return wanted.every((word) => all.includes(word));
  });
}

/**
 * @param {number} found
 * @param {Kept} kept
 * @param {string} typed
 */
function countWords(found, { list, where }, typed) {
  const place = where === "device" ? "on this device" : "of the shop";
  if (typed.trim() === "") return found === 1 ? `1 card ${place}` : `${found} cards ${place}`;
  return found === 0 ? `None of the ${list.length} cards matches.` : `${found} of ${list.length} cards`;
}

function nothingHere() {
  return syncStanding().reached === false
    ? html`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`
    : html`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${offer(
          "cards.create",
          "Describe a part, and keep its plan as the first card.",
          "Once the owner has made one, it comes here.",
        )}
      </div>`;
}
