// One bend fills the screen: what it looks like, what to set, how the sheet goes in, what to watch.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { openCard, settingOf } from "../app/cards.js";
import { readCode } from "../app/codes.js";
import { notice } from "../app/notices.js";
import { go, showCurrent } from "../app/router.js";
import { onSettings } from "../app/settings.js";
import { keptCard } from "../app/store.js";
import { angle, length, words } from "../app/units.js";
import { badCode, noCard } from "../app/view/cardstates.js";
import { boxStep } from "../app/view/box_step.js";
import { checkList } from "../app/view/checks.js";
import { lie } from "../app/view/lie.js";
import { firstLook, motionPlayer } from "../app/view/motion_player.js";
import { originWords } from "../app/view/origin.js";
import { setFigure, stepTop } from "../app/view/setting.js";
import { wayWords } from "../app/view/step_moments.js";

/** @typedef {import("../app/view/motion_player.js").Look} Look */

/** @type {import("../app/routes.js").Screen["show"]} */
export async function show(visit) {
  const { code, step: typed } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  const look = firstLook();
  /** @type {any} */
  let card;
  const draw = () => {
    const step = card.plan.steps[Number(typed) - 1];
    if (!step) return visit.render(noStep(card, typed));
    visit.title(`${card.title || code}, step ${step.number}`);
    visit.render(stepScreen(card, step, () => picture(card, step, look, draw, visit.signal)));
  };
  onSettings(() => card && draw(), visit.signal);
  document.addEventListener("sync", () => card && tellNewer(card), { signal: visit.signal });
  addEventListener("keydown", (event) => card && followKey(event, card, Number(typed)), { signal: visit.signal });
  try {
    await openCard(
      code,
      (opened) => {
        card = opened;
        draw();
        visit.ready();
      },
      visit.signal,
    );
  } catch (error) {
    if (!visit.signal.aborted) refuse(visit, noCard(code, error));
  }
}

/** Numbers never change under somebody's hands: a newer revision is told, and shown when asked for. @param {any} card as it is shown */
async function tellNewer(card) {
  const kept = await keptCard(card.code).catch(() => undefined);
  if (kept && kept.revision !== card.revision) {
    notice(`This card is at revision ${kept.revision} now.`, { label: "Show it", act: () => showCurrent() });
  }
}

/** @param {import("../app/routes.js").Visit} visit @param {unknown} template */
function refuse(visit, template) {
  visit.title("No such card");
  visit.render(template);
  visit.ready();
}

/** @param {any} card @param {string} typed */
const noStep = (card, typed) => html`<div class="state" data-test="no-step">
  <strong>There is no step ${typed}</strong>This card has ${card.plan.steps.length}.
  <span class="buttons"><a class="button" href="/c/${card.code}">Open the card</a></span>
</div>`;

/** Arrow keys turn the leaves. @param {KeyboardEvent} event @param {any} card @param {number} number */
function followKey(event, card, number) {
  if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
  if (/^(INPUT|TEXTAREA|SELECT)$/.test(/** @type {Element} */ (event.target).tagName)) return;
  if (event.key === "ArrowRight") go(nextOf(card, number).href);
  if (event.key === "ArrowLeft") go(backOf(card, number).href);
}

/** @param {any} card @param {number} number */
function nextOf(card, number) {
  const last = card.plan.steps.at(-1);
  if (number < card.plan.steps.length) return { href: `/c/${card.code}/step/${number + 1}`, label: "Next", more: `step ${number + 1}` };
  if (last.set_angle_deg === null) return { href: `/c/${card.code}`, label: "Done: the card", more: "" };
  return { href: `/c/${card.code}/trial/${number}`, label: "What came out?", more: "" };
}

/** @param {any} card @param {number} number */
const backOf = (card, number) => ({ href: number > 1 ? `/c/${card.code}/step/${number - 1}` : `/c/${card.code}`, label: "Back" });

/** @param {any} card @param {any} step @param {() => unknown} drawn */
function stepScreen(card, step, drawn) {
  const { stops, watch } = findingsOf(card, step);
  const last = step.number === card.plan.steps.length;
  const next = nextOf(card, step.number);
  return html`<article class="step" data-test="step">
    ${stepTop(card, step)}
    ${stops.length ? html`<div class="step-stop">${checkList(stops)}</div>` : nothing}
    <div class="step-body">
      <div class="step-way">${lie(step, card.part.flats_mm.length)}${wayWords(step)}</div>
      <section class="step-set" aria-label="What to set">${numbers(card, step)}</section>
      <section class="step-picture" aria-label="Drawing">${drawn()}</section>
      <section class="step-watch" aria-label="What to watch">${watch.length ? checkList(watch) : nothing}</section>
      <section class="step-with" aria-label="Tools">
        ${tools(step)} ${boxStep(card.plan, step)}
        ${originWords(step.origin) ? html`<p class="hint origins" data-test="origins">${originWords(step.origin)}</p>` : nothing}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${backOf(card, step.number).href} data-test="back">Back</a>
      ${last || step.set_angle_deg === null ? nothing : html`<a class="button" href="/c/${card.code}/trial/${step.number}" data-test="came-out">What came out?</a>`}
      <a class="button next" href=${next.href} data-test="next">${next.label}${next.more ? html` <small>${next.more}</small>` : nothing}</a>
    </nav>
  </article>`;
}

/** Stops first, on their own; then what to watch at this step; hands always. @param {any} card @param {any} step */
function findingsOf(card, step) {
  const own = step.checks.filter((/** @type {any} */ check) => check.level !== "ok");
  const wholeStops = card.plan.checks.filter((/** @type {any} */ check) => check.level === "stop" && !check.step);
  const hands = card.plan.checks.filter((/** @type {any} */ check) => check.code === "general-hands");
  /** @type {Map<string, any>} */
  const each = new Map([...wholeStops, ...own, ...hands].map((check) => [check.code + check.words, { ...check, step: null }]));
  const all = [...each.values()];
  return {
    stops: all.filter((check) => check.level === "stop"),
    watch: all.filter((check) => check.level !== "stop"),
  };
}

/** @param {any} card @param {any} step @param {Look} look @param {() => void} draw @param {AbortSignal} signal */
function picture(card, step, look, draw, signal) {
  if (!step.drawing) return html`<p class="state" data-test="no-drawing">No tool, so no drawing of this step.</p>`;
  return motionPlayer(step, settingOf(card, step).set_angle_deg, look, draw, signal);
}

/** @param {any} card @param {any} step */
function numbers(card, step) {
  const setting = settingOf(card, step);
  if (setting.set_angle_deg === null && step.gauge_x_mm === null) {
    return html`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`;
  }
  return html`<div class="set-figures">
      ${setFigure("Gauge X", length(step.gauge_x_mm), "gauge-x")}
      ${setFigure("Gauge R", length(step.gauge_r_mm), "gauge-r")}
      ${setFigure("Angle to set", angle(setting.set_angle_deg), "set-angle")}
      ${setFigure("Depth", length(setting.punch_depth_mm, { digits: 2 }), "punch-depth")}
    </div>
    ${setting.fromTrial
      ? html`<p class="from-trial" data-test="from-trial"><b>Angle and depth from a first piece.</b> The plan said ${words(angle(step.set_angle_deg))} and ${words(length(step.punch_depth_mm, { digits: 2 }))}.</p>`
      : nothing}
    ${step.gauge_draw_back_mm ? html`<p class="draw-back" data-test="draw-back"><b>Draw the gauge back ${words(length(step.gauge_draw_back_mm, { digits: 0 }))}</b> before the stroke: the rising flange would hit it.</p>` : nothing}
    ${hits(step)}`;
}

/** A large radius bent in many hits. @param {any} step */
function hits({ hits: many }) {
  if (!many) return nothing;
  return html`<div class="hits" data-test="hits"><b>${many.count} hits</b>, ${words(angle(many.angle_each_deg))} each. Move the gauge ${words(length(many.pitch_mm, { digits: 2 }))} each time:
    ${many.gauge_x_mm.map((/** @type {number} */ x) => length(x).text).join(" · ")}</div>`;
}

/** @param {any} step */
function tools(step) {
  if (!step.die) return nothing;
  return html`<dl class="step-tools" data-test="step-tools">
    <div><dt>Punch</dt><dd><b>${step.punch}</b> ${step.punch_name}</dd></div>
    <div><dt>Die</dt><dd><b>${step.die}</b> ${step.die_name}</dd></div>
    ${step.holder ? html`<div><dt>Holder</dt><dd><b>${step.holder}</b></dd></div>` : nothing}
    <div><dt>Wanted</dt><dd><b>${words(angle(step.included_angle_deg))}</b> ${step.direction}</dd></div>
  </dl>`;
}
