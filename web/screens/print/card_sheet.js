// A card on one sheet, for people who trust paper. Works from the card kept on this device.
import { html } from "/vendor/lit-html/lit-html.js";
import { readCode } from "../../app/scan/card_code.js";
import { nameOfMetal, seenShop } from "../../app/sync/shop_lists.js";
import { onSettings } from "../../app/shell/settings.js";
import { badCode, openOrRefuse, refuse } from "../../view/card/no_card.js";
import { cardSheet } from "../../view/print/card_sheet.js";
import { paperChoice, printButton, sheet } from "../../view/print/paper.js";

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  const { code } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  /** @type {import("../../app/sync/card_edits.js").CardHere} */
  let card;
  /** @type {Api.Metal[]} */
  let metals = [];
  const look = async () => {
    metals = (await seenShop())?.metals ?? metals;
    if (card) draw();
  };
  function draw() {
    visit.title(`${card.title}, on paper`);
    visit.render(
      html`<p class="crumb screen-only"><a href="/c/${code}">${card.title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${paperChoice(draw)}${printButton("Print the card")}</div>
        ${sheet(cardSheet(card, nameOfMetal(metals, card.part.metal)), { about: "The card as it prints" })}`,
    );
  }
  onSettings(() => card && draw(), visit.signal);
  document.addEventListener("sync", look, { signal: visit.signal });
  await look();
  await openOrRefuse(visit, (opened) => {
    card = opened;
    draw();
    visit.ready();
  });
}
