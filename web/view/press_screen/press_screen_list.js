// The shop's press screens and what stands at each; the owner takes one out.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { pressScreenTitle } from "../../app/press_screen/press_screens.js";
import { displayCode } from "../../app/scan/card_code.js";
import { offer } from "../common/if_allowed.js";

/**
 * @param {Api.PressScreen[]} benches
 * @param {{fault: string, takeOut: (bench: Api.PressScreen) => void}} how
 */
export function pressScreenPanel(benches, { fault, takeOut }) {
  return html`<section class="panel" data-test="panel-press-screens">
    <h2>Press screens <span class="soft">${benches.length}</span></h2>
    ${fault ? html`<p class="wrong" role="alert" data-test="press-screen-fault">${fault}</p>` : nothing}
    ${
      benches.length
        ? html`<ul class="plain-list press-screen-list">
            ${benches.map(
              (bench) =>
                html`<li data-test="press-screen-row" data-name=${bench.name}>
                  <span><b>${pressScreenTitle(bench.name)}</b> ${standsAt(bench)}</span>
                  ${offer(
                    "press_screens.remove",
                    html`<button
                      type="button"
                      class="button"
                      data-test="remove-press-screen"
                      aria-label="Take it out… ${pressScreenTitle(bench.name)}"
                      @click=${() => takeOut(bench)}>
                      Take it out…
                    </button>`,
                  )}
                </li>`,
            )}
          </ul>`
        : html`<p>None yet.</p>`
    }
    <p class="hint">
      To add one, open the shop's address on it with <a href="/press-screen">/press-screen</a> at the end.
    </p>
  </section>`;
}

/** @param {Api.PressScreen} bench */
const standsAt = ({ code }) =>
  code ? html`<a href="/c/${code}">${displayCode(code)}</a>` : html`<span class="soft">empty</span>`;
