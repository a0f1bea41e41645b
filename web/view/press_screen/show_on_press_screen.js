// The phone's choice "Show on press screen", there once the shop has a press screen.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { pressScreenList, pressScreenWords, lastPressScreen } from "../../app/press_screen/press_screens.js";
import {
  cardOnPressScreen,
  putOnPressScreen,
  showAgain,
  takeOffPressScreen,
} from "../../app/press_screen/shown_card.js";
import { pick } from "../common/field.js";

/** @type {string[]} */
let names = [];
let picked = "";

/**
 * Ask which press screens there are; silent without the shop: then there is nothing to choose.
 * @param {AbortSignal} signal
 * @param {() => void} draw
 */
export async function askForPressScreens(signal, draw) {
  try {
    names = (await pressScreenList(signal)).map(({ name }) => name);
    if (!signal.aborted) draw();
  } catch {
    // The last list stands.
  }
}

/**
 * @param {string} code of the card
 * @param {number} step on this phone
 * @param {{draw: () => void, start?: () => void}} acts start: after a bench was chosen
 */
export function showOnPressScreen(code, step, { draw, start }) {
  const at = cardOnPressScreen();
  if (at?.code === code) return shownThere(at, step);
  if (!names.length) return nothing;
  const name = [picked, lastPressScreen()].find((one) => names.includes(one)) ?? names[0];
  return html`<section
    class="show-on-press-screen"
    aria-label="Press screen"
    data-test="show-on-press-screen">
    ${
      names.length > 1
        ? pick({
            name: "press-screen",
            label: "Press screen",
            value: name,
            options: names.map((one) => [one, one]),
            change: (one) => {
              picked = one;
              draw();
            },
          })
        : nothing
    }
    <button
      type="button"
      class="button"
      data-test="put-on-press-screen"
      @click=${() => {
        putOnPressScreen(name, code, step);
        draw();
        start?.();
      }}>
      Show on ${pressScreenWords(name)}
    </button>
  </section>`;
}

/**
 * @param {import("../../app/press_screen/shown_card.js").CardOnPressScreen} at
 * @param {number} step
 */
function shownThere(at, step) {
  const where = pressScreenWords(at.name);
  return html`<section
    class="show-on-press-screen on"
    aria-label="Press screen"
    data-test="on-press-screen"
    data-press-screen-step=${at.step}>
    <p role="status">${saysWhere(at, where)}</p>
    ${
      at.late
        ? html`<button type="button" class="button" data-test="show-again" @click=${() => showAgain(step)}>
            Show step ${step} there
          </button>`
        : nothing
    }
    <button type="button" class="button" data-test="off-press-screen" @click=${takeOffPressScreen}>
      Stop
    </button>
  </section>`;
}

/**
 * @param {import("../../app/press_screen/shown_card.js").CardOnPressScreen} at
 * @param {string} where
 */
function saysWhere({ answers, late, refused }, where) {
  if (answers === false) return html`<b>The shop does not answer:</b> ${where} does not follow.`;
  if (refused) return html`<b>The shop did not take that step:</b> ${refused}`;
  if (late) return html`<b>Not shown there:</b> ${where} may stand at another step.`;
  return html`<b>On ${where}.</b>`;
}
