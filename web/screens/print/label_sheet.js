// Labels on a sheet: which cards, which size, which paper, which places are used already.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call, messageOf } from "../../app/sync/api.js";
import { onSettings, settings } from "../../app/shell/settings.js";
import { keptList } from "../../app/sync/local_shop.js";
import { choice, field } from "../../view/common/field.js";
import { offer } from "../../view/common/if_allowed.js";
import { paperChoice, printButton } from "../../view/print/paper.js";
import { empty, loading } from "../../view/common/screen_states.js";

const SIZES = /** @type {[string, string][]} */ ([
  ["50x25", "50 × 25 mm"],
  ["100x50", "100 × 50 mm"],
]);

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Labels on a sheet");
  visit.render(loading("Fetching the cards…"));
  const cards = (await allCards(visit.signal)).filter((card) => !card.archived);
  if (!cards.length) {
    visit.render(
      empty(
        "No cards yet",
        offer("cards.create", html`Save a part as a card first. <a href="/part">New part</a>`),
      ),
    );
    return visit.ready();
  }
  const picked = new Set(
    (visit.query.get("codes") ?? "").split(",").filter((code) => cards.some((card) => card.code === code)),
  );
  let size = "50x25";
  let units = settings().units;
  let skip = "0";
  let find = "";
  /** @type {{key: string, pages: number[], wrong: string}} */
  let sheets = { key: "", pages: [], wrong: "" };

  const query = (/** @type {number} */ page) =>
    new URLSearchParams({
      codes: [...picked].join(","),
      size,
      paper: settings().paper,
      units,
      skip: skip.trim() || "0",
      page: String(page),
    });
  const address = (/** @type {"svg"|"png"} */ kind, /** @type {number} */ page) =>
    `/api/v1/labels/sheet.${kind}?${query(page)}`;

  /** The server says how many sheets there are. */
  async function count() {
    const key = String(query(1));
    if (!picked.size) {
      sheets = { key, pages: [], wrong: "" };
    } else {
      try {
        const { body } = /** @type {{body: Api.SheetCount}} */ (
          await call("GET", `/labels/sheet.json?${query(1)}`, { signal: visit.signal })
        );
        sheets = { key, pages: Array.from({ length: body.pages }, (_, index) => index + 1), wrong: "" };
      } catch (error) {
        sheets = { key, pages: [], wrong: messageOf(error) };
      }
    }
    if (key === String(query(1))) draw();
  }
  /** @param {() => void} make */
  const change = (make) => {
    make();
    draw();
    count();
  };
  /** @param {string} code */
  const toggle = (code) => change(() => (picked.has(code) ? picked.delete(code) : picked.add(code)));

  function draw() {
    const shown = cards.filter((card) =>
      `${card.code} ${card.title}`.toLowerCase().includes(find.trim().toLowerCase()),
    );
    visit.render(
      html`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${picked.size} of ${cards.length}</span>
              </h2>
              ${
                cards.length > 8
                  ? field({
                      name: "find",
                      label: "Find",
                      value: find,
                      change: (value) => {
                        find = value;
                        draw();
                      },
                    })
                  : nothing
              }
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${() => change(() => shown.forEach((card) => picked.add(card.code)))}>
                  All shown
                </button>
                <button
                  type="button"
                  class="button"
                  data-test="none"
                  @click=${() => change(() => picked.clear())}>
                  None
                </button>
              </div>
              <ul class="ticks">
                ${shown.map(
                  (card) =>
                    html`<li>
                      <label>
                        <input
                          type="checkbox"
                          data-test="pick-${card.code}"
                          .checked=${picked.has(card.code)}
                          @change=${() => toggle(card.code)} />
                        <span>${card.title}</span> <span class="soft">${card.code}</span></label
                      >
                    </li>`,
                )}
              </ul>
            </section>
            <section class="panel">
              <h2>How</h2>
              ${choice({
                name: "size",
                label: "Label size",
                value: size,
                options: SIZES,
                change: (value) => change(() => (size = value)),
              })}
              ${paperChoice(() => change(() => undefined))}
              ${choice({
                name: "units",
                label: "Printed in",
                value: units,
                options: [
                  ["mm", "mm"],
                  ["inch", "inch"],
                ],
                change: (value) => change(() => (units = value === "inch" ? "inch" : "mm")),
              })}
              ${field({
                name: "skip",
                label: "Places used already",
                value: skip,
                keys: "numeric",
                hint: "Counted along the rows from the top left.",
                change: (value) => change(() => (skip = value)),
              })}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${
              sheets.pages.length
                ? html`<div class="buttons screen-only">
                      ${printButton(
                        sheets.pages.length === 1 ? "Print the sheet" : `Print ${sheets.pages.length} sheets`,
                      )}
                    </div>
                    ${sheets.pages.map((page) => sheetView(page, sheets.pages.length, address))}`
                : html`<p class="state screen-only" data-test="no-sheet">
                    ${sheets.wrong || "Pick cards, and the sheet appears here."}
                  </p>`
            }
          </section>
        </div>`,
    );
  }
  onSettings(draw, visit.signal);
  draw();
  await count();
  visit.ready();
}

/**
 * @param {number} page
 * @param {number} of
 * @param {(kind: "svg"|"png", page: number) => string} address
 */
function sheetView(page, of, address) {
  const file = `labels-${page}`;
  return html`<figure class="label-sheet ${settings().paper.toLowerCase()}">
    <img src=${address("svg", page)} alt="Sheet ${page} of ${of} with labels" data-test="sheet-${page}" />
    <figcaption class="screen-only">
      <span>Sheet ${page} of ${of}, ${settings().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${file}.svg" href=${address("svg", page)} data-test="sheet-svg-${page}"
          >SVG</a
        >
        <a class="button" download="${file}.png" href=${address("png", page)} data-test="sheet-png-${page}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`;
}

/**
 * All cards, from the server page by page, or as kept on this device.
 * @param {AbortSignal} signal
 * @returns {Promise<{code: string, title: string, archived: boolean}[]>}
 */
async function allCards(signal) {
  try {
    const cards = [];
    for (;;) {
      const { body } = /** @type {{body: Api.CardList}} */ (
        await call("GET", `/cards?limit=100&offset=${cards.length}`, { signal })
      );
      cards.push(...body.cards);
      if (cards.length >= body.total || !body.cards.length) return cards;
    }
  } catch (error) {
    const kept = await keptList().catch(() => []);
    if (signal.aborted || !kept.length) throw error;
    return kept;
  }
}
