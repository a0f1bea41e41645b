// The card's label in both sizes: look, save, print at true size.
import { html } from "/vendor/lit-html/lit-html.js";
import { readCode } from "../../app/scan/card_code.js";
import { settings } from "../../app/shell/settings.js";
import { badCode, openOrRefuse, refuse } from "../../view/card/no_card.js";
import { choice } from "../../view/common/field.js";
import { way } from "../../view/common/if_allowed.js";

/** @typedef {"50x25"|"100x50"} Size */
/** @type {{size: Size, words: string, print: string}[]} */
const SIZES = [
  { size: "50x25", words: "50 × 25 mm, for a bin", print: "small" },
  { size: "100x50", words: "100 × 50 mm, for a shelf or a door", print: "large" },
];

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  const { code } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  let units = settings().units;
  let printing = SIZES[0];
  /** @type {import("../../app/sync/card_edits.js").CardHere} */
  let card;

  /** @param {typeof SIZES[number]} size */
  async function print(size) {
    printing = size;
    draw();
    await /** @type {HTMLImageElement} */ (document.querySelector(".label-print"))
      .decode()
      .catch(() => undefined);
    window.print();
  }
  function draw() {
    visit.title(`Label of ${card.title}`);
    visit.render(
      html`<p class="crumb screen-only"><a href="/c/${code}">${card.title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${choice({
            name: "units",
            label: "Printed in",
            value: units,
            options: [
              ["mm", "mm"],
              ["inch", "inch"],
            ],
            change: (value) => {
              units = value === "inch" ? "inch" : "mm";
              draw();
            },
          })}
        </div>
        <div class="labels-both screen-only">
          ${SIZES.map((size) => one(card, size, units, () => print(size)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${way(
            "/labels",
            html`For office paper, lay them out <a href="/labels?codes=${code}">on a sheet</a>.`,
          )}
        </p>
        <img
          class="label-print ${printing.print}"
          src=${address(code, printing.size, units, "svg")}
          alt=""
          hidden />`,
    );
  }
  await openOrRefuse(visit, (opened) => {
    card = opened;
    draw();
    visit.ready();
  });
}

/**
 * @param {string} code
 * @param {string} size
 * @param {string} units
 * @param {"svg"|"png"} kind
 */
const address = (code, size, units, kind) =>
  `/api/v1/cards/${code}/label.${kind}?size=${size}&units=${units}`;

/**
 * @param {Api.Card} card
 * @param {typeof SIZES[number]} which
 * @param {string} units
 * @param {() => void} print
 */
function one(card, { size, words, print: name }, units, print) {
  const file = `label-${card.code}-${size}`;
  return html`<section class="panel label-panel" data-test="label-${size}">
    <h2>${words}</h2>
    <div class="label-ground">
      <img
        class="label-view ${name}"
        src=${address(card.code, size, units, "svg")}
        data-test="label-image-${size}"
        alt="Label of card ${card.display_code}: ${card.title}"
        @error=${(/** @type {Event} */ event) =>
          /** @type {HTMLElement} */ (event.target).closest(".label-panel")?.classList.add("missing")} />
    </div>
    <p class="label-missing">
      The label is drawn by the shop's server, which does not answer. The code in clear:
      <b>${card.display_code}</b>
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="print-${size}" @click=${print}>Print</button>
      <a
        class="button"
        download="${file}.svg"
        href=${address(card.code, size, units, "svg")}
        data-test="svg-${size}"
        >SVG</a
      >
      <a
        class="button"
        download="${file}.png"
        href=${address(card.code, size, units, "png")}
        data-test="png-${size}"
        >PNG</a
      >
    </div>
  </section>`;
}
