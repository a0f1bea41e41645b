// What came out: the measured bend is written down, and the answer is what to set next.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { messageOf, Problem } from "../../app/sync/api.js";
import { settingOf } from "../../app/sync/cards.js";
import { clearTyping, keepTyping, keptTyping } from "../../app/forms/kept_typing.js";
import { readCode } from "../../app/scan/card_code.js";
import { seenShop } from "../../app/sync/shop_lists.js";
import { fromFlange, gaugeAfter } from "../../app/results/next_gauge.js";
import {
  fromTable,
  middleOf,
  newSetting,
  NOTHING_TYPED,
  readAngle,
  readMeasured,
} from "../../app/results/measured_bend.js";
import { newId } from "../../app/sync/outbox.js";
import { askBeforeLeaving } from "../../app/shell/router.js";
import { send } from "../../app/sync/sending.js";
import { settings } from "../../app/shell/settings.js";
import { recount, sync } from "../../app/sync/sync.js";
import { typedLength, typedMm } from "../../app/shell/units.js";
import { badCode, openOrRefuse, refuse } from "../../view/card/no_card.js";
import { restoredLine } from "../../view/common/restored.js";
import { sentence } from "../../view/common/finding.js";
import { focusFirstWrong } from "../../view/common/field.js";
import { stepTop } from "../../view/step/setting.js";
import { resultForm } from "../../view/results/result_form.js";
import { nextSettingPanel } from "../../view/results/next_setting.js";
import { finishedDrawing } from "../../drawing/part.js";
import { keepSetting } from "../../app/results/keep_setting.js";

/** @typedef {import("../../app/results/measured_bend.js").Typed} Typed */
/** @typedef {import("../../app/results/measured_bend.js").Setting} Setting */
/** @typedef {import("../../app/sync/card_edits.js").CardHere} CardHere */
/** @typedef {import("../../app/sync/stored.js").Measured} Measured */
/**
 * @typedef {Setting | {set_angle_deg: null, punch_depth_mm: string|null, gauge_x_mm?: number|null}} Used
 * a depth goes as typed
 */
/** @typedef {import("../../app/results/keep_setting.js").Result} Result */
/**
 * @typedef {{typed: Typed, used: Setting|null, wrong: Record<string, string[]>,
 *   meant: Record<string, string[]>, general: string,
 *   sending: boolean, result: Result|null, byDepth: boolean, before: "back"|"other step"|""}} State
 * byDepth: the press is set by a depth or a stop, not by an angle; before: what was typed before is in the
 *   boxes again, or was about the step as it no longer is
 */

/** @type {(string|null|undefined)[]} */
const BY_DEPTH = ["depth", "stop"];

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  const { code, step: typed } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  /** @type {State} */
  const state = {
    typed: { ...NOTHING_TYPED },
    used: null,
    wrong: {},
    meant: {},
    general: "",
    sending: false,
    result: null,
    byDepth: false,
    before: "",
  };
  let restored = false;
  /** @type {CardHere} */
  let card;
  // A device that is new to the shop hears of its press only when the first round is through.
  const followPress = async () => {
    const byDepth = BY_DEPTH.includes((await seenShop())?.press?.set_by);
    if (byDepth === state.byDepth || state.typed.set || state.sending || state.result) return;
    state.byDepth = byDepth;
    if (card && !visit.signal.aborted) draw();
  };
  document.addEventListener("sync", followPress, { signal: visit.signal });
  await followPress();
  const draw = () => {
    const step = card.plan.steps[Number(typed) - 1];
    if (!step) {
      return refuse(
        visit,
        html`<p class="state" data-test="no-step">
          There is no step ${typed}. <a href="/c/${code}">Open the card</a>
        </p>`,
      );
    }
    if (!restored) restore(card, step, state);
    restored = true;
    visit.title(`${card.title || code}: result`);
    visit.render(resultScreen(card, step, state, draw));
  };
  askBeforeLeaving(() =>
    !state.result && state.typed.one + state.typed.left + state.typed.note
      ? "Leave without saving what you measured?"
      : null,
  );
  await openOrRefuse(visit, (opened) => {
    // the answer on the screen belongs to the card it was asked for
    if (state.sending || state.result) return;
    card = opened;
    draw();
    visit.ready();
  });
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
const addressOf = (card, step) => `/c/${card.code}/result/${step.number}`;

/**
 * What a measured angle is about: the bend and how it was set.
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
const about = (card, step) => JSON.stringify([step.bend, step.included_angle_deg, settingOf(card, step)]);

/**
 * What was typed before, unless the step is another one now.
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {State} state
 */
function restore(card, step, state) {
  const before = keptTyping(addressOf(card, step));
  if (!before) return;
  if (before.about !== about(card, step)) {
    clearTyping(addressOf(card, step));
    state.before = "other step";
    return;
  }
  const { typed, used, byDepth } = before;
  Object.assign(state, { typed: { ...NOTHING_TYPED, ...typed }, used, byDepth, before: "back" });
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {State} state
 */
function keepTyped(card, step, { typed, used, byDepth }) {
  keepTyping(addressOf(card, step), { typed, used, byDepth, about: about(card, step) });
}

/** @type {Record<string, (address: string) => unknown>} */
const WORDS = {
  back: restoredLine,
  "other step": () =>
    html`<p class="restored" data-test="other-step">
      The step has changed since you typed a result for it: that is not in the boxes any more.
    </p>`,
};

/**
 * @param {CardHere} card
 * @param {Api.Step} step
 * @param {State} state
 * @param {() => void} draw
 */
function resultScreen(card, step, state, draw) {
  const save = () => saveResult(card, step, state, draw);
  const again = () => {
    const next = nextOf(state);
    Object.assign(state, {
      typed: {
        ...NOTHING_TYPED,
        places: state.typed.places,
        lot: state.typed.lot,
        thickness: state.typed.thickness,
      },
      used: next ?? state.used,
      result: null,
      before: "",
    });
    draw();
  };
  const keep = () => keepSetting(card, step, /** @type {Result} */ (state.result), draw);
  return html`<article class="step result-screen" data-test="result-screen">
    ${stepTop(card, step)}
    ${state.before && !state.result ? WORDS[state.before](addressOf(card, step)) : nothing}
    <div class="result-body">
      ${
        state.result
          ? nextSettingPanel(card, step, state.result, { again, keep })
          : resultForm(card, step, state, { save, draw, keep: () => keepTyped(card, step, state) })
      }
      <aside class="result-aside" aria-label="Which bend">
        ${finishedDrawing(card.plan, { mark: step.bend })}
      </aside>
    </div>
  </article>`;
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {State} state
 * @param {() => void} draw
 */
async function saveResult(card, step, state, draw) {
  if (state.sending) return;
  const { angles, wrong, meant } = readMeasured(state.typed, step.included_angle_deg);
  const used = usedSetting(card, step, state);
  if (!used) wrong.set_angle_deg = ["Type the angle that was set in degrees, such as 88.5."];
  Object.assign(state, { wrong, meant, general: "" });
  if (Object.keys(wrong).length || !used) {
    draw();
    return focusFirstWrong(wrong);
  }
  const trial = resultOf(card, step, angles, used, state.typed);
  state.sending = true;
  draw();
  try {
    const { late, ...sent } = await send({ id: trial.id, kind: "trial", code: card.code, body: trial });
    clearTyping(addressOf(card, step));
    const answer = /** @type {Api.ResultAnswer|null} */ (sent.answer);
    const correction = answer?.correction ?? null;
    state.result = {
      trial,
      correction,
      table: answer || used.set_angle_deg === null ? null : fromTable(step, angles, used),
      gauge: answer ? null : gaugeHere(step, angles, used, trial.flange_mm),
      waits: !answer,
      late: late ?? "",
      question: answer?.question_said ? sentence(answer.question_said) : "",
      kept: "no",
      words: "",
    };
    if (answer) sync();
  } catch (error) {
    state.wrong = error instanceof Problem ? error.errors : {};
    state.general = messageOf(error);
  }
  state.sending = false;
  await recount();
  draw();
  focusFirstWrong(state.wrong);
}

/**
 * What the next piece is set to.
 * @param {State} state
 * @returns {Setting|null}
 */
function nextOf({ result, used }) {
  const next = newSetting(result);
  const gauge = result && (gaugeAfter(result)?.gauge_x_mm ?? result.trial.gauge_x_mm ?? null);
  return next ? { ...next, gauge_x_mm: gauge ?? used?.gauge_x_mm } : null;
}

/**
 * Where the gauge goes, as far as this device can tell.
 * @param {Api.Step} step
 * @param {Record<string, number>} angles
 * @param {Used} used
 * @param {string|number|null|undefined} flange as typed, with its unit
 */
function gaugeHere(step, angles, used, flange) {
  const mm = typedMm(/** @type {string|undefined} */ (flange));
  if (mm === null || typeof used.gauge_x_mm !== "number") return null;
  return fromFlange(step, middleOf(angles), mm, used.gauge_x_mm);
}

/**
 * What had been set for this piece: as typed, else what the last piece led to, else as the step shows it.
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {State} state
 * @returns {Used | null} null when no angle was typed
 */
function usedSetting(card, step, state) {
  const { set_angle_deg, punch_depth_mm, gauge_x_mm } = state.used ?? settingOf(card, step);
  const asShown = /** @type {Used} */ ({ set_angle_deg, punch_depth_mm, gauge_x_mm });
  if (state.typed.set.trim() === "") return asShown;
  // The shop finds the angle that goes with the depth.
  if (state.byDepth) return { set_angle_deg: null, punch_depth_mm: typedLength(state.typed.set), gauge_x_mm };
  const typed = readAngle(state.typed.set);
  return typed === null ? null : { set_angle_deg: typed, punch_depth_mm: null, gauge_x_mm };
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {Record<string, number>} angles
 * @param {Used} used
 * @param {Typed} typed
 */
function resultOf(card, step, angles, used, typed) {
  /** @type {Measured & {id: string}} */
  const trial = {
    id: newId(),
    revision: card.revision,
    step: step.number,
    bend: step.bend,
    ...angles,
    made_at: new Date().toISOString(),
  };
  if (used.set_angle_deg !== null) trial.set_angle_deg = used.set_angle_deg;
  if (used.punch_depth_mm !== null) trial.punch_depth_mm = used.punch_depth_mm;
  if (typeof used.gauge_x_mm === "number") trial.gauge_x_mm = used.gauge_x_mm;
  if (typed.flange.trim()) trial.flange_mm = typedLength(typed.flange);
  if (typed.radius.trim()) trial.radius_mm = typedLength(typed.radius);
  if (typed.thickness.trim()) trial.thickness_mm = typedLength(typed.thickness);
  if (typed.lot.trim()) trial.lot = typed.lot.trim();
  if (typed.note.trim()) trial.note = typed.note.trim();
  if (settings().name) trial.by = settings().name;
  return trial;
}
