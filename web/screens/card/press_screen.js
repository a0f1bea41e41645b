// The press screen, /bench: the large display at the machine follows the card and step that a phone
// or its own foot switch chose. (The check of one bend is plan/bend.js.)
import { Problem } from "../../app/sync/api.js";
import { stayAwake } from "../../app/press_screen/stay_awake.js";
import {
  pressScreenHere,
  pressScreenList,
  keepPressScreenHere,
  addPressScreen,
} from "../../app/press_screen/press_screens.js";
import { pressScreenLink } from "../../app/press_screen/press_screen_link.js";
import { openCard } from "../../app/sync/cards.js";
import { displayCode } from "../../app/scan/card_code.js";
import { listenToPedal } from "../../app/press_screen/foot_switch.js";
import { onSettings } from "../../app/shell/settings.js";
import { keptCard } from "../../app/sync/local_shop.js";
import {
  pressScreenChooser,
  pressScreenIdle,
  pressScreenLines,
  pressScreenNoCard,
  pressScreenNoStep,
} from "../../view/press_screen/press_screen_states.js";
import { pressScreenDone, pressScreenStep } from "../../view/press_screen/press_screen_step.js";
import { firstLook } from "../../view/step/motion_player.js";
import { loading } from "../../view/common/screen_states.js";
import { picture } from "../../view/step/step_parts.js";
import { pressScreenRun } from "../../app/run/press_screen_run.js";

/** @typedef {import("../../app/shell/routes.js").Visit} Visit */
/** @typedef {import("../../app/press_screen/press_screen_link.js").Place} Place */

const ASK_MS = 3000;

/** @param {Visit} visit */
export function show(visit) {
  stayAwake(visit.signal);
  const here = pressScreenHere();
  if (here) follow(visit, here);
  else choose(visit, "");
}

/**
 * Ask which press screen this display stands at; the list is asked for until somebody answers.
 * @param {Visit} visit
 * @param {string} here the bench it is now
 */
function choose(visit, here) {
  visit.title("Press screen");
  const done = new AbortController();
  /** @type {import("../../view/press_screen/press_screen_states.js").Choosing} */
  const state = { names: null, silent: false, typed: "", wrong: "", here };
  /** @type {number|undefined} */
  let timer;
  visit.signal.addEventListener("abort", () => done.abort(), { signal: done.signal });
  done.signal.addEventListener("abort", () => clearTimeout(timer));
  const draw = () => !done.signal.aborted && visit.render(pressScreenChooser(state, acts));
  /** @param {string} name */
  const take = (name) => {
    done.abort();
    const same = pressScreenHere();
    follow(visit, same?.name === name ? same : { name, code: null, step: 0, etag: null });
  };
  const make = async () => {
    const name = state.typed.trim();
    if (state.names?.includes(name)) return take(name);
    try {
      take((await addPressScreen(name || " ")).name);
    } catch (error) {
      state.wrong =
        error instanceof Problem
          ? (error.errors.name?.[0] ?? error.message)
          : String(/** @type {Error} */ (error).message);
      draw();
    }
  };
  const acts = { take, make, type: (/** @type {string} */ typed) => Object.assign(state, { typed }) };
  const ask = async () => {
    try {
      Object.assign(state, {
        names: (await pressScreenList(done.signal)).map(({ name }) => name),
        silent: false,
      });
    } catch {
      state.silent = true;
    }
    if (done.signal.aborted) return;
    draw();
    visit.ready();
    timer = setTimeout(ask, ASK_MS);
  };
  draw();
  ask();
}

/**
 * @param {Visit} visit
 * @param {import("../../app/press_screen/press_screens.js").Seen & {unsent?: boolean}} seen the bench as it
 *   was seen last
 */
function follow(visit, seen) {
  const { name } = seen;
  const leaving = new AbortController();
  const { signal } = leaving;
  visit.signal.addEventListener("abort", () => leaving.abort(), { signal });
  let opening = new AbortController();
  /** @type {Place} */
  let place = { code: seen.code, step: seen.step };
  /** @type {import("../../app/sync/card_edits.js").CardHere|null} */
  let card = null;
  /** @type {unknown} */
  let fault = null;
  let newer = 0;
  let look = firstLook();

  const run = pressScreenRun(
    () => card,
    signal,
    () => draw(),
  );
  const link = pressScreenLink(
    name,
    seen.etag,
    {
      // what was stepped here is what lies in the press; if it was moved elsewhere since, that stands
      keepMs: Infinity,
      heard: (bench, etag) => {
        seen = { ...seen, etag };
        stand({ code: bench.code, step: bench.step }, false);
      },
      sent: (_, etag, more) => keep({ etag, unsent: more }),
      changed: (standing) => (standing.gone ? leave("") : draw()),
    },
    signal,
  );

  /** @param {Partial<typeof seen>} change */
  function keep(change) {
    seen = { ...seen, ...place, ...change };
    keepPressScreenHere(seen);
  }

  /** @param {string} here */
  function leave(here) {
    leaving.abort();
    if (!here) keepPressScreenHere(null);
    choose(visit, here);
  }

  /**
   * Show a place of the press screen.
   * @param {Place} to
   * @param {boolean} unsent it was chosen here
   */
  function stand(to, unsent) {
    const moved = to.code !== place.code || to.step !== place.step;
    if (to.code !== place.code) card = null;
    if (moved) look = firstLook();
    if (moved && (to.step === 1 || run.now())) run.moved();
    place = to;
    keep({ unsent });
    if (unsent) link.move(to);
    if (moved || (!card && to.code)) open();
    else draw();
  }

  async function open() {
    opening.abort();
    opening = new AbortController();
    const mine = opening.signal;
    newer = 0;
    fault = null;
    draw();
    if (!place.code) return;
    try {
      await openCard(
        place.code,
        (opened) => {
          if (mine.aborted) return;
          card = opened;
          newer = 0;
          draw();
          run.look();
        },
        mine,
      );
    } catch (error) {
      if (mine.aborted || signal.aborted) return;
      fault = error;
      draw();
    }
  }

  const acts = {
    next: () => {
      if (!card) return;
      const steps = card.plan.steps.length;
      if (place.step >= steps && run.count()) return stand({ code: card.code, step: 1 }, true);
      // In a run whoever counts the piece goes on from here.
      if (place.step > steps && run.now()?.state === "open") return;
      stand({ code: card.code, step: place.step > steps ? 1 : place.step + 1 }, true);
    },
    back: () => card && place.step > 1 && stand({ code: card.code, step: place.step - 1 }, true),
    clear: () => stand({ code: null, step: 0 }, true),
    choose: () => leave(name),
    newer: () => open(),
  };

  function draw() {
    if (signal.aborted) return;
    const lines = pressScreenLines(link.standing(), Boolean(card), newer, acts.newer);
    visit.title(card ? `${card.title || card.code}, ${name}` : name);
    visit.render(what({ name, lines, acts }));
    if (card || fault || !place.code) visit.ready();
  }

  /** @param {import("../../view/press_screen/press_screen_step.js").Frame} frame */
  function what(frame) {
    if (!place.code) return pressScreenIdle(frame);
    if (!card) {
      return fault
        ? pressScreenNoCard(place.code, fault, frame)
        : loading(`Opening ${displayCode(place.code)}…`);
    }
    const steps = card.plan.steps;
    const step = steps[place.step - 1];
    const drawn = step && picture(card, step, look, draw, opening.signal);
    if (step) return pressScreenStep(card, step, frame, drawn, run.now());
    return place.step === steps.length + 1
      ? pressScreenDone(card, frame, run.now())
      : pressScreenNoStep(card, place.step, frame);
  }

  listenToPedal(acts, signal);
  onSettings(draw, signal);
  document.addEventListener(
    "sync",
    async (event) => {
      if (!card) return fault && /** @type {CustomEvent} */ (event).detail.reached ? open() : undefined;
      const kept = await keptCard(card.code).catch(() => undefined);
      if (!kept || kept.code !== card?.code || kept.revision === card.revision || newer === kept.revision) {
        return;
      }
      newer = kept.revision;
      draw();
    },
    { signal },
  );
  signal.addEventListener("abort", () => opening.abort());
  keep({});
  if (seen.unsent) link.move(place);
  open();
}
