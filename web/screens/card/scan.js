// Scan a label: the camera's picture with a frame, and below it the code typed by hand. It needs no
// network: the reader and the cards are on the device.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { hasLamp, NoCamera, openCamera, switchLamp } from "../../app/scan/camera.js";
import { whereIs } from "../../app/sync/cards.js";
import { displayCode } from "../../app/scan/card_code.js";
import { NoDecoder, openDecoder } from "../../app/scan/decoder.js";
import { look, meant } from "../../app/scan/scan_loop.js";
import { go } from "../../app/shell/router.js";
import { keptList } from "../../app/sync/local_shop.js";
import { codeForm, nothingTyped } from "../../view/card/card_code_form.js";
import { scanFault } from "../../view/card/scan_faults.js";
import { failed } from "../../view/common/screen_states.js";

/** @typedef {{title: string, words: string, kind: "wait"|"look"|"wrong"|"found"}} Says */
/**
 * @typedef {{fault: import("../../view/card/scan_faults.js").ScanFault|null, stream: MediaStream|null,
 *   lamp: boolean|null, says: Says}} State lamp: on, off, or there is none
 */

/** @type {Says} */
const STARTING = { kind: "wait", title: "Starting the camera…", words: "If the browser asks, allow it." };
/** @type {Says} */
const LOOKING = { kind: "look", title: "Hold the label’s square in the frame", words: "It opens by itself." };
/** @type {Says} */
const SEVERAL = { kind: "wrong", title: "More than one label", words: "Hold only one in the frame." };
const FORGET_MS = 2500; // out of sight for so long, a square is read afresh

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  visit.title("Scan a label");
  /** @type {State} */
  const state = { fault: null, stream: null, lamp: null, says: STARTING };
  const typed = nothingTyped();
  const list = await keptList().catch(() => []);
  let running = new AbortController();

  const draw = () =>
    visit.render(
      scanScreen(state, { again: start, lamp: switchOver }, () =>
        codeForm(typed, list, draw, "Seven characters, capitals or not."),
      ),
    );
  /** @param {Partial<State>} change */
  const become = (change) => {
    Object.assign(state, change);
    draw();
  };
  const stop = () => {
    running.abort();
    Object.assign(state, { stream: null, lamp: null });
  };
  /** @param {unknown} error */
  const fail = (error) => {
    stop();
    if (error instanceof NoCamera) become({ fault: error.fault });
    else if (error instanceof NoDecoder) become({ fault: "no-decoder" });
    else visit.render(failed(error));
    visit.ready();
  };
  async function start() {
    stop();
    const { signal } = (running = new AbortController());
    become({ fault: null, says: STARTING });
    try {
      const [stream, decoder] = await Promise.all([
        openCamera(signal, () => fail(new NoCamera("busy"))),
        openDecoder(),
      ]);
      if (signal.aborted) return;
      become({ stream, lamp: hasLamp(stream) ? false : null, says: LOOKING });
      const video = /** @type {HTMLVideoElement} */ (document.querySelector(".scan-view video"));
      const frame = /** @type {Element} */ (document.querySelector(".scan-frame"));
      video.play().catch(() => {}); // saving power, a phone may not start it by itself
      visit.ready();
      const seen = reader((says) => become({ says }), signal);
      await look(video, decoder, (marks) => seen(meant(marks, video, frame)), signal);
    } catch (error) {
      if (!signal.aborted) fail(error);
    }
  }
  async function switchOver() {
    if (!state.stream) return;
    const on = !state.lamp;
    await switchLamp(state.stream, on).then(
      () => become({ lamp: on }),
      () => become({ lamp: null }),
    );
  }

  visit.signal.addEventListener("abort", stop);
  document.addEventListener("visibilitychange", () => (document.hidden ? stop() : start()), {
    signal: visit.signal,
  });
  start();
}

/**
 * Acts on what was read: opens the card, or says why not. The same square is told once.
 * @param {(says: Says) => void} say
 * @param {AbortSignal} signal
 */
function reader(say, signal) {
  let last = "";
  let lastAt = 0;
  /** @param {import("../../app/scan/scanned_text.js").Scanned | "several" | null} found */
  return async function seen(found) {
    const now = performance.now();
    if (!found) {
      if (now - lastAt > FORGET_MS) last = "";
      return;
    }
    const what = found === "several" ? found : found.code + found.words;
    lastAt = now;
    if (what === last) return;
    last = what;
    if (found === "several") say(SEVERAL);
    else if (found.kind === "card") await openIfThere(found.code, say, signal);
    else say(whyNot(found));
    lastAt = performance.now();
  };
}

/**
 * @param {import("../../app/scan/scanned_text.js").Scanned} found
 * @returns {Says}
 */
function whyNot({ kind, words }) {
  return {
    kind: "wrong",
    title: kind === "slip" ? "Not a valid code" : "Not a card’s label",
    words: `${words} Still looking.`,
  };
}

/**
 * @param {string} code
 * @param {(says: Says) => void} say
 * @param {AbortSignal} signal
 */
async function openIfThere(code, say, signal) {
  const shown = displayCode(code);
  say({ kind: "found", title: shown, words: "Opening it…" });
  // Felt through a glove. Browsers refuse it, as an error, before the first tap.
  if (navigator.userActivation?.hasBeenActive) navigator.vibrate?.(60);
  const where = await whereIs(code, signal).catch((error) => String(error.message));
  if (signal.aborted) return;
  if (where === "device" || where === "shop") {
    go(`/c/${code}`, { replace: true }); // back leads home, not to the label still in view
  } else if (where === "nowhere") {
    say({
      kind: "wrong",
      title: `${shown} is not this shop’s`,
      words: "The code is valid, but this shop has no such card: it is another shop’s label. Still looking.",
    });
  } else if (where === "silent") {
    say({
      kind: "wrong",
      title: `${shown} is not on this device`,
      words:
        "The shop’s server does not answer, so nobody can tell if it is a new card or another shop’s " +
        "label. Still looking.",
    });
  } else {
    say({ kind: "wrong", title: `${shown} could not be opened`, words: where });
  }
}

/**
 * @param {State} state
 * @param {{again: () => void, lamp: () => void}} acts
 * @param {() => unknown} form
 */
function scanScreen({ fault, stream, lamp, says }, acts, form) {
  return html`<div class="scan" data-test="scan-screen" data-says=${fault ?? says.kind}>
    <h1>Scan a label</h1>
    ${
      fault
        ? scanFault(fault, acts.again)
        : html`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${stream} aria-label="What the camera sees"></video>
            ${frame}
          </div>`
    }
    <div class="scan-beside">
      <p class="scan-says" data-kind=${fault ? "fault" : says.kind} role="status" data-test="says">
        ${fault ? nothing : html`<b>${says.title}</b> <span>${says.words}</span>`}
      </p>
      ${
        lamp === null
          ? nothing
          : html`<button
              class="button wide"
              type="button"
              data-test="lamp"
              aria-pressed=${lamp}
              @click=${acts.lamp}>
              Light ${lamp ? "is on" : "is off"}
            </button>`
      }
      ${form()}
    </div>
  </div>`;
}

/** Four scribed lines that run past the corners, as a scriber leaves them. */
const frame = html`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`;
