// What is set at the press: the step's head line and the huge numbers.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { stepName } from "../plan/plan_parts.js";

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
export function stepTop(card, step) {
  return html`<header class="step-top">
    <a class="step-card" href="/c/${card.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${card.title || card.display_code}</span></a
    >
    ${stepHead(card, step)}
  </header>`;
}

/**
 * Which step of how many, and what it bends.
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
export const stepHead = (card, step) =>
  html`<h1>
    <span data-test="step-number">Step ${step.number} of ${card.plan.steps.length}</span>
    <small
      >${stepName(step)}
      ${step.direction}${
        step.punch_turned
          ? html`, <b class="punch-turned" data-test="punch-turned">punch reversed</b>`
          : nothing
      }</small
    >
  </h1>`;

/**
 * A number to set, huge, on its dimension line.
 * @param {string} what
 * @param {import("../../app/shell/units.js").Shown} shown
 * @param {string} test
 */
export function setFigure(what, shown, test) {
  return html`<div class="set-figure" data-test=${test}>
    <span class="what"
      >${what}${
        shown.unit && shown.unit !== "°" ? html` <span class="unit">${shown.unit}</span>` : nothing
      }</span
    >
    <span class="value" data-test="${test}-value">${shown.text}${shown.unit === "°" ? "°" : nothing}</span>
  </div>`;
}
