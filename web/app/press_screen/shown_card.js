// A phone that shows its card on a press screen: each step it opens goes there, and where the press
// screen's own foot switch went, the phone follows. Lives from screen to screen, until stopped.
import { pressScreenLink } from "./press_screen_link.js";
import { keepLastPressScreen } from "./press_screens.js";

/**
 * @typedef {{name: string, code: string, step: number, answers: boolean|null, late: boolean,
 *   refused: string}} CardOnPressScreen step: where the bench stands as far as is known; late: a step of
 *   ours never got
 *   there
 */

const KEY = "flangebook.on-bench";
const KEEP_MS = 5000; // an older step would jump there long after it was meant

/** @type {{at: CardOnPressScreen, link: import("./press_screen_link.js").Link, end: AbortController}|null} */
let on = null;

/** @returns {CardOnPressScreen|null} */
export const cardOnPressScreen = () => (on ? { ...on.at } : null);

/**
 * Show a step on a press screen, whatever was there.
 * @param {string} name
 * @param {string} code
 * @param {number} step
 */
export function putOnPressScreen(name, code, step) {
  connect(name, code, step);
  keepLastPressScreen(name);
  on?.link.move({ code, step }, { whatever: true });
}

export function takeOffPressScreen() {
  on?.end.abort();
  on = null;
  remember();
  tell();
}

/**
 * A step of a card is on this phone's screen: the press screen shows it too.
 * @param {string} code
 * @param {number} step
 */
export function stepShown(code, step) {
  if (!on || on.at.code !== code || on.at.step === step) return;
  on.at.step = step;
  remember();
  on.link.move({ code, step });
  tell();
}

/**
 * Send again what did not get there.
 * @param {number} step
 */
export function showAgain(step) {
  if (!on) return;
  on.at.step = step;
  on.link.move({ code: on.at.code, step }, { whatever: true });
}

/**
 * @param {(at: CardOnPressScreen|null) => void} listener
 * @param {AbortSignal} signal
 */
export function onPressScreenMoves(listener, signal) {
  document.addEventListener("bench", () => listener(cardOnPressScreen()), { signal });
}

/**
 * @param {string} name
 * @param {string} code
 * @param {number} step
 * @param {string|null} [etag]
 */
function connect(name, code, step, etag = null) {
  on?.end.abort();
  const end = new AbortController();
  /** @type {CardOnPressScreen} */
  const at = { name, code, step, answers: null, late: false, refused: "" };
  const link = pressScreenLink(
    name,
    etag,
    {
      keepMs: KEEP_MS,
      heard: (bench) => {
        if (bench.code !== at.code) return takeOffPressScreen(); // somebody has put another card there
        at.step = bench.step;
        remember();
        tell();
      },
      changed: ({ gone, answers, late, refused }) => {
        if (gone) return takeOffPressScreen();
        Object.assign(at, { answers, late, refused });
        tell();
      },
    },
    end.signal,
  );
  on = { at, link, end };
  remember();
  tell();
}

const tell = () => document.dispatchEvent(new CustomEvent("bench"));

function remember() {
  try {
    if (on) {
      sessionStorage.setItem(KEY, JSON.stringify({ name: on.at.name, code: on.at.code, step: on.at.step }));
    } else {
      sessionStorage.removeItem(KEY);
    }
  } catch {
    // Not kept: a reload ends it.
  }
}

/** A page loaded afresh in the middle of a card goes on where it was. */
export function resumeOnPressScreen() {
  if (on) return;
  try {
    const { name, code, step } = JSON.parse(sessionStorage.getItem(KEY) ?? "{}");
    if (name && code) connect(name, code, step);
  } catch {
    // Blocked or damaged: chosen again.
  }
}
