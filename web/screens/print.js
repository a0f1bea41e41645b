// A card on one sheet, for people who trust paper. Works from the card kept on this device.
import { html } from "/vendor/lit-html/lit-html.js";
import { openCard } from "../app/cards.js";
import { readCode } from "../app/codes.js";
import { nameOfMetal, seenShop } from "../app/crib.js";
import { onSettings } from "../app/settings.js";
import { badCode, noCard } from "../app/view/cardstates.js";
import { cardSheet } from "../app/view/card_sheet.js";
import { paperChoice, printButton, sheet } from "../app/view/paper.js";

/** @param {import("../app/routes.js").Visit} visit */
export async function show(visit) {
  const { code } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  /** @type {import("../app/edits.js").CardHere} */
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
  try {
    await openCard(
      code,
      (opened) => {
        card = opened;
        draw();
        visit.ready();
      },
      visit.signal,
    );
  } catch (error) {
    if (!visit.signal.aborted) refuse(visit, noCard(code, error));
  }
}

/**
 * @param {import("../app/routes.js").Visit} visit
 * @param {unknown} template
 */
function refuse(visit, template) {
  visit.title("No such card");
  visit.render(template);
  visit.ready();
}
