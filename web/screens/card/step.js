// One bend fills the screen: what it looks like, what to set, how the sheet goes in, what to watch.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { openCard } from "../../app/sync/cards.js";
import { readCode } from "../../app/scan/card_code.js";
import { notice } from "../../app/shell/notices.js";
import {
  cardOnPressScreen,
  onPressScreenMoves,
  resumeOnPressScreen,
  stepShown,
} from "../../app/press_screen/shown_card.js";
import { go, showCurrent } from "../../app/shell/router.js";
import { may, mayOpen } from "../../app/shell/rights.js";
import { onSettings } from "../../app/shell/settings.js";
import { shownCard } from "../../app/sync/card_edits.js";
import { badCode, noCard, refuse } from "../../view/card/no_card.js";
import { boxStep } from "../../view/step/box_step.js";
import { checkList } from "../../view/common/finding.js";
import { orientation } from "../../view/plan/orientation.js";
import { way } from "../../view/common/if_allowed.js";
import { firstLook } from "../../view/step/motion_player.js";
import { originWords } from "../../view/common/figure_origin.js";
import { askForPressScreens, showOnPressScreen } from "../../view/press_screen/show_on_press_screen.js";
import { stepTop } from "../../view/step/setting.js";
import { wayWords } from "../../view/step/step_moments.js";
import { findingsOf, numbers, picture, tools } from "../../view/step/step_parts.js";
import { record } from "../../app/run/runs.js";
import { pieceDone, pieceScrapped, stepRun } from "../../app/run/step_run.js";
import { runBar, runPiece } from "../../view/run/run_bar.js";
import { nextPieceLabel } from "../../view/run/run_panel.js";

/** @typedef {import("../../app/run/run_count.js").Run} Run */
/** @typedef {ReturnType<typeof stepRun>} StepRun */

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  const { code, step: typed } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  const look = firstLook();
  /** @type {import("../../app/sync/card_edits.js").CardHere} */
  let card;
  const run = stepRun(code, visit.signal, () => card && draw());
  const draw = () => {
    const step = card.plan.steps[Number(typed) - 1];
    if (!step) return visit.render(noStep(card, typed));
    visit.title(`${card.title || code}, step ${step.number}`);
    visit.render(
      stepScreen(
        card,
        step,
        () => picture(card, step, look, draw, visit.signal),
        showOnPressScreen(card.code, step.number, { draw }),
        run,
      ),
    );
  };
  onSettings(() => card && draw(), visit.signal);
  onPressScreenMoves(() => card && followPressScreen(card, Number(typed), draw), visit.signal);
  document.addEventListener("sync", () => card && tellNewer(card), { signal: visit.signal });
  addEventListener("keydown", (event) => card && followKey(event, card, Number(typed), run), {
    signal: visit.signal,
  });
  resumeOnPressScreen();
  try {
    await openCard(
      code,
      async (opened) => {
        if (!card) await run.look();
        if (!card && opened.plan.steps[Number(typed) - 1]) stepShown(code, Number(typed));
        card = opened;
        draw();
        visit.ready();
      },
      visit.signal,
    );
  } catch (error) {
    if (!visit.signal.aborted) refuse(visit, noCard(code, error));
    return;
  }
  askForPressScreens(visit.signal, () => card && draw());
}

/**
 * The bench's own foot switch went on: so does this phone.
 * @param {Api.Card} card
 * @param {number} number on this screen
 * @param {() => void} draw
 */
function followPressScreen(card, number, draw) {
  const at = cardOnPressScreen();
  const there = at?.code === card.code && at?.step !== number && card.plan.steps[(at?.step ?? 0) - 1];
  if (there) go(`/c/${card.code}/step/${there.number}`, { replace: true });
  else draw();
}

/**
 * Numbers never change under somebody's hands: a newer revision is told, and shown when asked for.
 * @param {Api.Card} card as it is shown
 */
async function tellNewer(card) {
  const kept = await shownCard(card.code).catch(() => undefined);
  if (kept && kept.revision !== card.revision) {
    notice(`This card is at revision ${kept.revision} now.`, { label: "Show it", act: () => showCurrent() });
  }
}

/**
 * @param {Api.Card} card
 * @param {string} typed
 */
const noStep = (card, typed) =>
  html`<div class="state" data-test="no-step">
    <strong>There is no step ${typed}</strong>This card has ${card.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${card.code}">Open the card</a></span>
  </div>`;

/**
 * Arrow keys turn the leaves.
 * @param {KeyboardEvent} event
 * @param {Api.Card} card
 * @param {number} number
 * @param {StepRun} run
 */
function followKey(event, card, number, run) {
  if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
  if (/^(INPUT|TEXTAREA|SELECT)$/.test(/** @type {Element} */ (event.target).tagName)) return;
  const counted = number === card.plan.steps.length && run.counted();
  if (event.key === "ArrowRight" && counted) pieceDone(card, counted);
  else if (event.key === "ArrowRight") go(nextOf(card, number).href);
  if (event.key === "ArrowLeft") go(backOf(card, number).href);
}

/**
 * @param {Api.Card} card
 * @param {number} number
 */
function nextOf(card, number) {
  const last = /** @type {Api.Step} */ (card.plan.steps.at(-1));
  if (number < card.plan.steps.length) {
    return { href: `/c/${card.code}/step/${number + 1}`, label: "Next", more: `step ${number + 1}` };
  }
  if (last.set_angle_deg === null || !mayOpen(`/c/${card.code}/result/${number}`)) {
    return { href: `/c/${card.code}`, label: "Done: the card", more: "" };
  }
  return { href: `/c/${card.code}/result/${number}`, label: "Type the result", more: "" };
}

/**
 * @param {Api.Card} card
 * @param {number} number
 */
const backOf = (card, number) => ({
  href: number > 1 ? `/c/${card.code}/step/${number - 1}` : `/c/${card.code}`,
  label: "Back",
});

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {() => unknown} drawn
 * @param {unknown} bench
 * @param {StepRun} run
 */
function stepScreen(card, step, drawn, bench, run) {
  const { stops, watch } = findingsOf(card, step);
  const last = step.number === card.plan.steps.length;
  const counted = last ? run.counted() : null;
  return html`<article class="step" data-test="step">
    ${stepTop(card, step)} ${runOf(card, step, run.now())}
    ${stops.length ? html`<div class="step-stop">${checkList(stops)}</div>` : nothing}
    <div class="step-body">
      <div class="step-way">${orientation(step, card.part.flats_mm.length)}${wayWords(step)}</div>
      <section class="step-set" aria-label="What to set">${numbers(card, step)}</section>
      <section class="step-picture" aria-label="Drawing">${drawn()}</section>
      <div class="step-press-screen">${bench}</div>
      <section class="step-watch" aria-label="What to watch">
        ${watch.length ? checkList(watch) : nothing}
      </section>
      <section class="step-with" aria-label="Tools">
        ${tools(card.plan, step)} ${boxStep(card.plan, step)}
        ${
          originWords(step.origin)
            ? html`<p class="hint origins" data-test="origins">${originWords(step.origin)}</p>`
            : nothing
        }
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${backOf(card, step.number).href} data-test="back">Back</a>
      ${
        (last && !counted) || step.set_angle_deg === null
          ? nothing
          : way(
              `/c/${card.code}/result/${step.number}`,
              html`<a class="button" href="/c/${card.code}/result/${step.number}" data-test="came-out"
                >Type the result</a
              >`,
            )
      }
      ${counted ? nextPiece(card, counted) : nextLeaf(nextOf(card, step.number))}
    </nav>
  </article>`;
}

/** @param {{href: string, label: string, more: string}} next */
const nextLeaf = ({ href, label, more }) =>
  html`<a class="button next" href=${href} data-test="next"
    >${label}${more ? html` <small>${more}</small>` : nothing}</a
  >`;

/**
 * @param {Api.Card} card
 * @param {Run} run
 */
function nextPiece(card, run) {
  const { label, more } = nextPieceLabel(run);
  return html`<button
    type="button"
    class="button next"
    data-test="next-piece"
    @click=${() => pieceDone(card, run)}>
    ${label}${more ? html` <small>${more}</small>` : nothing}
  </button>`;
}

/**
 * The run above the step, for whoever may count; else which piece it is.
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {Run|null} run
 */
function runOf(card, step, run) {
  if (!run) return nothing;
  if (!may("runs.keep")) return html`<div class="run-bar">${runPiece(run)}</div>`;
  return runBar(run, {
    scrap: () => pieceScrapped(card, run, step.number),
    pause: () => record(card, run.id, { kind: "paused" }),
    resume: () => record(card, run.id, { kind: "resumed" }),
    ready: () => record(card, run.id, { kind: "setup" }),
  });
}
