// The strip on top: where you are, where you can go, and whether the shop's server answers.
import { html, nothing, render } from "/vendor/lit-html/lit-html.js";
import { turnedAway } from "./pairing.js";
import { mayOpen } from "./rights.js";
import { whyHeld } from "../sync/sending.js";
import { storageIsSilent } from "../sync/storage.js";
import { syncStanding } from "../sync/sync.js";

const PLACES = [
  ["/", "Cards"],
  ["/bend", "Bend"],
  ["/part", "Part"],
  ["/shop", "Shop"],
  ["/settings", "Settings"],
];

export function drawMasthead() {
  const here = location.pathname;
  /** @param {string} place */
  const current = (place) =>
    place === "/" ? here === "/" || here === "/scan" || /^\/c\//i.test(here) : here.startsWith(place);
  render(
    html`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${mark}<span>Flangebook</span></a>
        ${
          turnedAway() === null
            ? html`<nav aria-label="Main">
                ${PLACES.filter(([place]) => mayOpen(place)).map(
                  ([place, word]) =>
                    html`<a href=${place} aria-current=${current(place) ? "page" : "false"}>${word}</a>`,
                )}
              </nav>`
            : nothing
        }
      </div>
      ${openNetwork()}${silentStorage()}${turnedAway() === null ? standingLine() : nothing}`,
    /** @type {HTMLElement} */ (document.getElementById("masthead")),
  );
}

const mark = html`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`;

/** Without https a browser keeps no apps and shows no camera: say so where it is missed. */
const openNetwork = () =>
  isSecureContext
    ? nothing
    : html`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`;

/** What is shown then is the shop's, and what is typed is nowhere but in this window. */
function silentStorage() {
  if (whyHeld()) {
    return html`<p class="standing" data-test="held">
      ${whyHeld()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      Then it is saved automatically.
    </p>`;
  }
  if (!storageIsSilent()) return nothing;
  return html`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${syncStanding().reached === false ? nothing : "Cards come from the shop."}
  </p>`;
}

function standingLine() {
  const { reached, waiting, words, late, refused, settle: open, lost } = syncStanding();
  const settle = open.filter((code) => mayOpen(`/c/${code}/resolve`));
  const why = late ? ` ${late}.` : "";
  const waits = waiting ? `${words} ${waiting === 1 ? "waits" : "wait"} to be sent.${why}` : "";
  const here = storageIsSilent() ? "" : "Cards on this device still open.";
  const silent = reached === false ? `Not connected to the shop. ${here}` : "";
  if (!silent && !waits && !settle.length && !lost) return nothing;
  return html`<p class="standing" data-test="standing">
    ${silent} ${waits} ${refused ? html`<a href="/settings">${refused} refused: look</a>` : nothing}
    ${
      settle.length
        ? html`<a href="/c/${settle[0]}/resolve" data-test="resolve-count">${settle.length} to resolve</a>`
        : nothing
    }
    ${
      lost
        ? html`<a href="/settings" data-test="lost-count"
            >${lost === 1 ? "1 card is" : `${lost} cards are`} not in the shop any more: look</a
          >`
        : nothing
    }
  </p>`;
}
