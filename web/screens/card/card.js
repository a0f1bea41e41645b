// One card: what it is, what may go wrong, what to fetch, and the way to its first bend.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call, messageOf, Problem } from "../../app/sync/api.js";
import { changeCard, openCard, settingOf } from "../../app/sync/cards.js";
import { displayCode, readCode } from "../../app/scan/card_code.js";
import { nameOfMetal, seenShop } from "../../app/sync/shop_lists.js";
import { asShown, changeHere, shownCard } from "../../app/sync/card_edits.js";
import { newId, waitingFor } from "../../app/sync/outbox.js";
import { onPressScreenMoves, resumeOnPressScreen } from "../../app/press_screen/shown_card.js";
import { go } from "../../app/shell/router.js";
import { notice } from "../../app/shell/notices.js";
import { onSettings, settings } from "../../app/shell/settings.js";
import { sync } from "../../app/sync/sync.js";
import { angle, length, lengthUnit, words } from "../../app/shell/units.js";
import { badCode, noCard, refuse } from "../../view/card/no_card.js";
import { checkList, findingLines } from "../../view/common/finding.js";
import { everyTimeCautions } from "../../view/common/findings_in_order.js";
import { fold } from "../../view/common/fold.js";
import { freshness } from "../../view/card/freshness.js";
import { changesAside } from "../../view/card/saved_where.js";
import { moveSign } from "../../view/plan/orientation.js";
import { offer, way } from "../../view/common/if_allowed.js";
import { linkTo, orderPanel, saysOrder } from "../../view/plan/order_panel.js";
import { blankFigures, stepName, toolsList } from "../../view/plan/plan_parts.js";
import { askForPressScreens, showOnPressScreen } from "../../view/press_screen/show_on_press_screen.js";
import { smallPoses } from "../../view/plan/small_poses.js";
import { wayWords } from "../../view/step/step_moments.js";
import { resultLine } from "../../view/results/result_line.js";
import { boxSize, isBox } from "../../drawing/box.js";
import { finishedDrawing, flatDrawing } from "../../drawing/part.js";
import { tidyLength } from "../../drawing/section.js";
import { cardRun } from "../../app/run/card_run.js";
import { pieceWords } from "../../app/run/run_count.js";
import { runButton, runPanel } from "../../view/run/run_panel.js";

/** @typedef {import("../../app/sync/card_edits.js").CardHere} CardHere */
/** @typedef {import("../../view/step/step_moments.js").Drawn} Drawn */
/**
 * @typedef {{waiting: import("../../app/sync/stored.js").Waiting[], fresh: Api.Freshness|null, metal:
 *   string, busy:
 *   boolean, fault: string}} Around what the shop and this device know about the card
 */

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  const { code } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  /** @type {CardHere} */
  let card;
  /** @type {Around} */
  const around = { waiting: [], fresh: null, metal: "", busy: false, fault: "" };
  const run = cardRun(
    code,
    () => card,
    visit.signal,
    () => card && draw(),
  );
  const draw = () => {
    visit.title(card.title || displayCode(code));
    visit.render(cardScreen(card, around, { take: takeFresh, archive, draw }, run));
  };
  const archive = async () => {
    try {
      ({ card } = await changeHere(card, { archived: !card.archived }));
      notice(card.archived ? "Archived. It stands under Archived, below the cards." : "In use again.");
      sync();
    } catch (error) {
      notice(messageOf(error));
    }
    draw();
  };
  const takeFresh = async () => {
    Object.assign(around, { busy: true, fault: "" });
    draw();
    try {
      const by = settings().name ? { by: settings().name } : {};
      card = await asShown(
        await changeCard(card, {
          replan: true,
          reason: "Planned afresh with today’s tools",
          id: newId(),
          ...by,
        }),
      );
      around.fresh = null;
      sync();
    } catch (error) {
      around.fault =
        error instanceof Problem && error.status === 412
          ? "The card was changed meanwhile. Open it again first."
          : messageOf(error);
    }
    around.busy = false;
    draw();
  };
  /** @param {CardHere} opened */
  const showCard = async (opened) => {
    card = opened;
    around.waiting = (await waitingFor(code).catch(() => [])).filter((entry) => entry.kind === "trial");
    around.metal = nameOfMetal((await seenShop())?.metals, card.part.metal);
    await run.look();
    draw();
    visit.ready();
  };
  onSettings(() => card && draw(), visit.signal);
  onPressScreenMoves(() => card && draw(), visit.signal);
  document.addEventListener(
    "sync",
    async () => card && showCard((await shownCard(code).catch(() => undefined)) ?? card),
    { signal: visit.signal },
  );
  try {
    await openCard(code, showCard, visit.signal);
  } catch (error) {
    if (!visit.signal.aborted) refuse(visit, noCard(code, error));
    return;
  }
  resumeOnPressScreen();
  askForPressScreens(visit.signal, draw);
  // Whether the plan would come out otherwise today is the shop's to say; offline nothing is said.
  around.fresh = await call("GET", `/cards/${code}/fresh`, { signal: visit.signal }).then(
    ({ body }) => /** @type {Api.Freshness} */ (body),
    () => null,
  );
  draw();
}

/**
 * @param {CardHere} card
 * @param {Around} around
 * @param {{take: () => void, archive: () => void, draw: () => void}} act
 * @param {ReturnType<typeof cardRun>} run
 */
function cardScreen(card, around, { take, archive, draw }, run) {
  const { plan } = card;
  const findings = plan.checks.filter((check) => check.level !== "ok");
  const stops = findings.filter((check) => check.level === "stop");
  const others = findings.filter((check) => check.level !== "stop" && !check.code.startsWith("general-"));
  return html`<article class="card" data-test="card" data-revision=${card.revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${displayCode(card.code)}</p>
        <h1 data-test="card-title">${card.title || "Untitled"}</h1>
        <p class="card-what" data-test="card-what">${whatItIs(card, around.metal)}</p>
        ${card.note ? html`<p class="card-note" data-test="card-note">${card.note}</p>` : nothing}
        ${
          card.archived
            ? html`<p class="card-note"><b>Archived.</b> This card is not in use any more.</p>`
            : nothing
        }
      </header>
      ${changesAside(card)}
      ${
        stops.length
          ? html`<section class="card-stops" aria-label="Stop">${checkList(stops)}</section>`
          : nothing
      }
      ${freshness(around.fresh, { ...around, take, settings: card.settings.length })}
      ${start(card, stops.length > 0, run.now())}
      ${
        plan.steps.length
          ? showOnPressScreen(card.code, 1, { draw, start: () => go(`/c/${card.code}/step/1`) })
          : nothing
      }
      <section class="panel card-picture" aria-label="What it becomes">
        ${finishedDrawing(plan, { tallest: innerHeight * 0.26 })}
      </section>
      ${links(card, archive, runButton(card, run.state, stops.length > 0, run.acts))}
    </div>
    <div class="card-body">
      ${runPanel(card, run.state, stops.length > 0, run.acts)}
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${toolsList(plan.tools, plan.steps.length, plan.steps)}${blankFigures(plan.blank)}${
          isBox(plan) ? flatDrawing(plan.blank, { tallest: 420 }) : nothing
        }
      </section>
      ${trials(card, around.waiting)}
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${saysOrder(plan) ? nothing : orderWords(plan.order)}${stepList(card)}
        ${
          saysOrder(plan)
            ? fold("Order", orderPanel(plan, linkTo(card.code)), { test: "order-fold" })
            : nothing
        }
      </section>
      ${
        others.length
          ? html`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${findingLines(others)}
            </section>`
          : nothing
      }
      ${everyTimeCautions(plan.checks)}
    </div>
  </article>`;
}

/**
 * @param {Api.Card} card
 * @param {boolean} stopped
 * @param {import("../../app/run/run_count.js").Run|null} run
 */
function start({ code, plan }, stopped, run) {
  if (!plan.steps.length) return nothing;
  return html`<div class="card-start">
    <a class="button next wide" href="/c/${code}/step/1" data-test="start">
      ${stopped ? "See step 1" : run ? "Go on" : "Start"}
      <small
        >${
          run
            ? pieceWords(run).toLowerCase()
            : plan.steps.length === 1
              ? "1 step"
              : `${plan.steps.length} steps`
        }</small
      >
    </a>
  </div>`;
}

/**
 * @param {Api.Card} card
 * @param {string} metal
 */
function whatItIs({ part, plan }, metal) {
  const gauge = plan.thickness_gauge ? ` (${plan.thickness_gauge})` : "";
  const bends = part.bends.length === 1 ? "1 bend" : `${part.bends.length} bends`;
  const size = isBox(plan)
    ? `box ${boxSize(plan.folded)}`
    : `${tidyLength(part.bend_length_mm)} ${lengthUnit()} long`;
  return `${metal}, ${tidyLength(part.thickness_mm)} ${lengthUnit()}${gauge}, ${size}, ${bends}`;
}

/** @param {Api.Order} order */
const orderWords = (order) =>
  order?.words ? html`<p class="order" data-test="order">${order.words}</p>` : nothing;

/**
 * Where the gauge stands: as a measured flange moved it, else as planned.
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
function gaugeAt(card, step) {
  const { gauge_x_mm: x } = settingOf(card, step);
  return x === null ? "no gauge" : `gauge X ${words(length(x))}`;
}

/** @param {Api.Card} card */
function stepList(card) {
  return html`<ol class="rows" data-test="step-list">
    ${card.plan.steps.map(
      (step) =>
        html`<li class="row">
          <a href="/c/${card.code}/step/${step.number}">
            <span class="lead">${step.number}. ${stepName(step)} ${step.direction}</span>
            <span class="code">${words(angle(step.included_angle_deg))}</span>
            <span class="more">
              ${gaugeAt(card, step)}
              ${
                step.turn_over || step.turn_end || step.turn_quarter
                  ? html`<span class="turn" data-test="turn">${moveSign(step)}</span>`
                  : nothing
              }
            </span>
            ${wayWords(step, { short: true })}
            ${step.drawing ? smallPoses(/** @type {Drawn} */ (step)) : nothing}
          </a>
        </li>`,
    )}
  </ol>`;
}

/**
 * The newest results, and before them those that still wait.
 * @param {Api.Card} card
 * @param {import("../../app/sync/stored.js").Waiting[]} waiting
 */
function trials(card, waiting) {
  const newest = [...card.trials].reverse().slice(0, 3);
  if (!newest.length && !waiting.length) {
    return html`<section class="card-results">
      <p class="soft" data-test="no-results">
        Nothing measured yet.${offer("results.keep", " After a bend, type the result.")}
      </p>
    </section>`;
  }
  return html`<section class="panel card-results">
    <h2>Results</h2>
    <ul class="rows results" data-test="results">
      ${[...waiting].reverse().map((entry) => resultLine(entry.body, { waiting: entry }))}
      ${newest.map((trial) => resultLine(trial, { step: card.plan.steps[trial.step - 1] }))}
    </ul>
  </section>`;
}

/**
 * @param {Api.Card} card
 * @param {() => void} archive
 * @param {unknown} run the button that asks for one
 */
function links({ code, archived }, archive, run) {
  return html`<nav class="card-links" aria-label="This card">
    ${run}
    ${way(`/c/${code}/note`, html`<a class="button" href="/c/${code}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${code}/history" data-test="history">History</a>
    <a class="button" href="/c/${code}/label" data-test="label">Label</a>
    <a class="button" href="/c/${code}/print" data-test="print">Print</a>
    ${offer("cards.revise", html`<a class="button" href="/part?from=${code}" data-test="edit">Edit</a>`)}
    ${offer("cards.create", html`<a class="button" href="/part?copy=${code}" data-test="copy">Copy</a>`)}
    ${offer(
      "cards.revise",
      html`<button type="button" class="button" data-test="archive" @click=${archive}>
        ${archived ? "Use again" : "Archive"}
      </button>`,
    )}
  </nav>`;
}
