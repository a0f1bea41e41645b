// What a card's screens say when there is no card to show.
import { html } from "/vendor/lit-html/lit-html.js";
import { Problem, Unreachable } from "../../app/sync/api.js";
import { openCard } from "../../app/sync/cards.js";
import { displayCode, readCode } from "../../app/scan/card_code.js";

/**
 * A code that cannot be one: no need to ask anybody.
 * @param {string} code
 */
export function badCode(code) {
  const { fault } = readCode(code);
  return html`<div class="state" data-test="bad-code">
    <h1>${displayCode(code)} is not a card</h1>
    ${fault || "A card code has seven characters, digits and letters without I, L, O and U."} ${wayBack}
  </div>`;
}

/**
 * @param {string} code
 * @param {unknown} error
 */
export function noCard(code, error) {
  if (error instanceof Unreachable) {
    return html`<div class="state" data-test="not-kept">
      <h1>${displayCode(code)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${wayBack}
    </div>`;
  }
  if (error instanceof Problem && error.status === 404) {
    return html`<div class="state" data-test="unknown-code">
      <h1>There is no card ${displayCode(code)}</h1>
      The code is valid, but this shop has no card of that number. Look at the label again. ${wayBack}
    </div>`;
  }
  throw error;
}

/**
 * Show the card of the address, or say why there is none.
 * @param {import("../../app/shell/routes.js").Visit} visit
 * @param {Parameters<typeof openCard>[1]} show
 */
export async function openOrRefuse(visit, show) {
  const { code } = visit.params;
  try {
    await openCard(code, show, visit.signal);
  } catch (error) {
    if (!visit.signal.aborted) refuse(visit, noCard(code, error));
  }
}

/**
 * Show that in the card's place.
 * @param {import("../../app/shell/routes.js").Visit} visit
 * @param {unknown} template
 */
export function refuse(visit, template) {
  visit.title("No such card");
  visit.render(template);
  visit.ready();
}

const wayBack = html`<span class="buttons"><a class="button" href="/">Find a card</a></span>`;
