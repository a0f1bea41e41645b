// The press screen without a step: which press screen it is, nothing on it yet, no such card or step.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { Problem } from "../../app/sync/api.js";
import { mayGoDark } from "../../app/press_screen/stay_awake.js";
import { pressScreenTitle, pressScreenWords } from "../../app/press_screen/press_screens.js";
import { displayCode } from "../../app/scan/card_code.js";
import { pressScreenName } from "./press_screen_step.js";
import { field, submitting } from "../common/field.js";

/** @typedef {import("./press_screen_step.js").Frame} Frame */
/**
 * @typedef {{names: string[]|null, silent: boolean, typed: string, wrong: string, here: string}} Choosing
 *   names: null while nobody has answered; here: the bench it is now
 */

/**
 * @param {Choosing} state
 * @param {{take: (name: string) => void, type: (name: string) => void, make: () => void}} acts
 */
export function pressScreenChooser({ names, silent, typed, wrong, here }, acts) {
  return html`<div class="press-screen-choose" data-test="press-screen-choose">
    <h1>Which press screen is this display?</h1>
    ${
      silent
        ? html`<p class="press-screen-line" data-test="silent">
            The shop does not answer. It is asked again automatically.
          </p>`
        : nothing
    }
    ${
      names?.length
        ? html`<div class="buttons">
            ${names.map(
              (name) =>
                html`<button
                  type="button"
                  class="button next"
                  data-test="take-press-screen"
                  @click=${() => acts.take(name)}>
                  ${pressScreenTitle(name)}
                </button>`,
            )}
          </div>`
        : nothing
    }
    ${
      names
        ? html`<form class="press-screen-new" novalidate @submit=${submitting(acts.make)}>
            ${field({
              name: "press-screen",
              label: names.length ? "Or a new one" : "Give it a name",
              value: typed,
              wrong: wrong ? [wrong] : [],
              change: acts.type,
              hint: "Like 1, or Big press. It is kept on this display.",
            })}
            <button class="button" data-test="make-press-screen">Add it</button>
          </form>`
        : nothing
    }
    ${
      here
        ? html`<button type="button" class="button" data-test="stay" @click=${() => acts.take(here)}>
            Stay at ${pressScreenWords(here)}
          </button>`
        : nothing
    }
    ${mayGoDark()}
  </div>`;
}

/** @param {Frame} frame */
export const pressScreenIdle = (frame) =>
  says(
    frame,
    "press-screen-idle",
    pressScreenTitle(frame.name),
    html`<p>Open a card on a phone and choose this press screen.</p>
      ${mayGoDark()}`,
  );

/**
 * The card is not here yet, or there is none.
 * @param {string} code
 * @param {unknown} error
 * @param {Frame} frame
 */
export const pressScreenNoCard = (code, error, frame) =>
  says(
    frame,
    "press-screen-no-card",
    displayCode(code),
    error instanceof Problem
      ? html`<p>${error.message}</p>`
      : html`<p>
          This card was never on this display, and the shop does not answer. It comes when the shop is back.
        </p>`,
  );

/**
 * The card was changed and has fewer steps now.
 * @param {Api.Card} card
 * @param {number} step
 * @param {Frame} frame
 */
export const pressScreenNoStep = (card, step, frame) =>
  says(
    frame,
    "press-screen-no-step",
    `There is no step ${step}`,
    html`<p>
      ${card.title || card.display_code} has ${card.plan.steps.length} now. Choose the step on the phone.
    </p>`,
  );

/**
 * @param {Frame} frame
 * @param {string} test
 * @param {string} title
 * @param {unknown} more
 */
const says = ({ name, lines, acts }, test, title, more) =>
  html`<article class="step press-screen-step" data-test=${test}>
    <header class="step-top">${pressScreenName(name, acts)}</header>
    ${lines}
    <div class="press-screen-says">
      <h1>${title}</h1>
      ${more}
    </div>
  </article>`;

/**
 * What is wrong with the way to the shop.
 * @param {import("../../app/press_screen/press_screen_link.js").Standing} standing
 * @param {boolean} stepping a card is on the display
 * @param {number} newer a newer revision of it, or 0
 * @param {() => void} show it
 */
export function pressScreenLines({ answers, refused }, stepping, newer, show) {
  return html`${
    answers === false
      ? html`<p class="press-screen-line" role="status" data-test="alone">
          ${
            stepping
              ? html`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`
              : html`<b>The shop does not answer.</b> It is asked again automatically.`
          }
        </p>`
      : nothing
  }
  ${
    refused
      ? html`<p class="press-screen-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${refused}
        </p>`
      : nothing
  }
  ${
    newer
      ? html`<p class="press-screen-line" role="status" data-test="newer">
          This card is at revision ${newer} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${show}>Show it now</button>
        </p>`
      : nothing
  }`;
}
