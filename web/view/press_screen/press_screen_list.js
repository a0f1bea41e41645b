// The shop's press screens and what stands at each; the owner takes one out.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { pressScreenTitle } from "../../app/press_screen/press_screens.js";
import { displayCode } from "../../app/scan/card_code.js";
import { offer } from "../common/if_allowed.js";

/**
 * @param {Api.Bench[]} benches
 * @param {{fault: string, takeOut: (bench: Api.Bench) => void}} how
 */
export function pressScreenPanel(benches, { fault, takeOut }) {
  return html`<section class="panel" data-test="panel-benches">
    <h2>Press screens <span class="soft">${benches.length}</span></h2>
    ${fault ? html`<p class="wrong" role="alert" data-test="bench-fault">${fault}</p>` : nothing}
    ${
      benches.length
        ? html`<ul class="plain-list bench-list">
            ${benches.map(
              (bench) =>
                html`<li data-test="bench-row" data-name=${bench.name}>
                  <span><b>${pressScreenTitle(bench.name)}</b> ${standsAt(bench)}</span>
                  ${offer(
                    "benches.remove",
                    html`<button
                      type="button"
                      class="button"
                      data-test="take-bench-out"
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
    <p class="hint">To add one, open the shop's address on it, with <a href="/bench">/bench</a> behind it.</p>
  </section>`;
}

/** @param {Api.Bench} bench */
const standsAt = ({ code }) =>
  code ? html`<a href="/c/${code}">${displayCode(code)}</a>` : html`<span class="soft">empty</span>`;
