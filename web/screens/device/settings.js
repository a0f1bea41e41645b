// What this device prefers, what waits to be sent, and whether everything is here.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call } from "../../app/sync/api.js";
import { ROLES } from "../../app/shell/pairing.js";
import { displayCode } from "../../app/scan/card_code.js";
import { forget, tryAgain, waiting } from "../../app/sync/outbox.js";
import { ownRole } from "../../app/shell/rights.js";
import { changeSettings, settings } from "../../app/shell/settings.js";
import { keptList, lostCards } from "../../app/sync/local_shop.js";
import { recount, sync, syncStanding } from "../../app/sync/sync.js";
import { flag } from "../../view/common/finding.js";
import { choice, field } from "../../view/common/field.js";
import { keptHowLong } from "../../view/card/storage_duration.js";
import { whereWords } from "../../view/card/saved_where.js";
import { lostList } from "../../view/card/lost_cards.js";
import { measuredWords } from "../../app/results/measured_bend.js";
import { moment } from "../../view/common/dates.js";

/** @typedef {import("../../app/sync/stored.js").Waiting} Waiting */
/** @typedef {{cards: number, total: number|null, entries: Waiting[], lost: Api.Card[]}} Here */

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Settings");
  /** @type {Here} */
  let here = { cards: 0, total: null, entries: [], lost: [] };
  async function look() {
    const [list, entries, lost] = await Promise.all([
      keptList().catch(() => []),
      waiting().catch(() => []),
      lostCards().catch(() => []),
    ]);
    here = { ...here, cards: list.length, entries, lost };
    draw();
  }
  async function ask() {
    const answer = await call("GET", "/cards?limit=1", { signal: visit.signal, timeout: 4000 }).catch(
      () => null,
    );
    here = { ...here, total: /** @type {Api.CardList|undefined} */ (answer?.body)?.total ?? null };
    draw();
  }
  function draw() {
    visit.render(
      html`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${numbers(draw)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${looks(draw)}
          </section>
          ${ownPlace()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${waitingList(here.entries)}
          </section>
          ${lostList(here.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${complete(here)} ${keptHowLong}
          </section>
        </div>`,
    );
  }
  document.addEventListener("sync", look, { signal: visit.signal });
  await look();
  visit.ready();
  await ask();
}

/** Why this device shows less than the owner's. */
function ownPlace() {
  const role = ownRole();
  if (!role || role === "owner") return nothing;
  return html`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${ROLES[role].word}</b>: ${ROLES[role].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`;
}

/** @param {() => void} draw */
function numbers(draw) {
  const { units, inches } = settings();
  /** @param {Parameters<typeof changeSettings>[0]} change */
  const set = (change) => {
    changeSettings(change);
    draw();
  };
  return html`${choice({
    name: "units",
    label: "Units",
    value: units,
    options: [
      ["mm", "mm and kN"],
      ["inch", "inch and tons"],
    ],
    change: (value) => set({ units: value === "inch" ? "inch" : "mm" }),
  })}
  ${
    units === "inch"
      ? choice({
          name: "inches",
          label: "Inches as",
          value: inches,
          options: [
            ["decimal", "decimals"],
            ["fraction", "nearest 1/64"],
          ],
          change: (value) => set({ inches: value === "fraction" ? "fraction" : "decimal" }),
        })
      : nothing
  }
  ${choice({
    name: "paper",
    label: "Paper",
    value: settings().paper,
    options: [
      ["A4", "A4"],
      ["Letter", "Letter"],
    ],
    change: (value) => set({ paper: value === "Letter" ? "Letter" : "A4" }),
  })}
  ${units === "inch" ? html`<p class="hint">Tons are short tons of 2000 lb.</p>` : nothing}`;
}

/** @param {() => void} draw */
function looks(draw) {
  const { theme, name } = settings();
  return html`${choice({
    name: "theme",
    label: "Theme",
    value: theme,
    options: [
      ["system", "As the device"],
      ["day", "Day"],
      ["shop", "Shop, dark"],
    ],
    change: (value) => {
      changeSettings({ theme: value === "shop" || value === "day" ? value : "system" });
      draw();
    },
  })}
  ${field({
    name: "name",
    label: "Your name",
    value: name,
    change: (value) => changeSettings({ name: value }),
    hint: "Written beside what you change, so that the history says who.",
  })}`;
}

/** @param {Waiting[]} entries */
function waitingList(entries) {
  if (!entries.length) {
    return html`<p data-test="nothing-waits">
      Nothing. Every result, note and edit typed here is saved in the shop.
    </p>`;
  }
  return html`<ul class="waiting-list">
      ${entries.map(
        (entry) =>
          html`<li data-test="waits-${entry.id}">
            <p>
              <b>${what(entry)}</b> on <a href="/c/${entry.code}">${displayCode(entry.code)}</a>,
              ${moment(entry.queued_at)} by this device’s clock
              ${entry.body.note ? html`<br /><span class="soft">${entry.body.note}</span>` : nothing}
            </p>
            ${
              entry.refused
                ? html`<p data-test="refused">
                      ${flag("caution", "Refused")} ${entry.missing ? `${whereWords(entry)}.` : ""}
                      ${entry.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${() => again(entry)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${() => throwAway(entry)}>
                        Throw away…
                      </button>
                    </div>`
                : html`<p class="soft">
                    ${whereWords(entry)}. It is sent when the shop's server
                    ${entry.late ? "takes it" : "answers"}.
                  </p>`
            }
          </li>`,
      )}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${() => sync()}>Send now</button>
    </div>`;
}

/**
 * @param {Waiting} entry
 * @returns {string}
 */
function what({ kind, body }) {
  if (kind === "trial") return `${measuredWords(body)}, step ${body.step}`;
  if (kind === "note") return "Note";
  if (kind === "run") return `Run: ${RUN_WORDS[body.kind ?? "piece"]}`;
  const names = Object.keys(body)
    .filter((name) => name in EDITED)
    .map((name) => EDITED[name]);
  return names.length ? `Edit: ${names.join(", ")}` : "Edit: what was resolved";
}

/** @type {Record<NonNullable<Waiting["body"]["kind"]>, string>} */
const RUN_WORDS = {
  begun: "begun",
  setup: "set-up finished",
  piece: "a piece done",
  scrap: "a piece scrapped",
  back: "a count taken back",
  paused: "paused",
  resumed: "went on",
  ended: "ended",
};

/** @type {Record<string, string>} */
const EDITED = { title: "title", note: "note", archived: "in use or archived", settings: "settings" };

/** @param {Waiting} entry */
async function again(entry) {
  await tryAgain(entry.id);
  await sync();
}

/** @param {Waiting} entry */
async function throwAway(entry) {
  if (!confirm(`Throw away ${what(entry)} on ${displayCode(entry.code)}? It cannot be brought back.`)) return;
  await forget(entry.id);
  await recount();
}

/** @param {Here} here */
function complete({ cards, total }) {
  const { reached, at } = syncStanding();
  const whole = total !== null && cards >= total;
  const app = document.documentElement.dataset.offlineReady === "true";
  return html`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${cards}${total === null ? nothing : ` of ${total}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${at ? moment(at) : "not since this page was opened"}</dd>
      </div>
    </dl>
    <p>
      ${
        whole
          ? flag("ok", "Every card is here")
          : total === null
            ? flag("unknown", "Not known: no answer from the shop")
            : flag("caution", "Still fetching")
      }
    </p>
    <p data-test="app-kept">
      ${
        app
          ? flag("ok", "The app opens without network")
          : html`${flag("caution", "The app needs the network")}
            ${
              "serviceWorker" in navigator
                ? "It is still being kept."
                : "This browser keeps apps only over https or on the shop's own computer."
            }`
      }
    </p>
    ${reached === false ? html`<p>${flag("caution", "Not connected now")}</p>` : nothing}
    <button type="button" class="button" data-test="check-now" @click=${() => sync()}>Look again</button>`;
}
