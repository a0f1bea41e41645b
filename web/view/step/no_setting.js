// A result that no setting mends: what limits, that something else is wrong, what to check in which order.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { limitsOf, TO_CHECK } from "../../app/results/setting_limits.js";
import { angle, words } from "../../app/shell/units.js";
import { flag, sentenceOrWords } from "../common/finding.js";

/**
 * @param {Api.Step} step
 * @param {{waits: boolean, correction: Api.Correction|null}} result waits: the shop has not answered, so this
 *   device says it
 */
export function noSetting(step, { waits, correction }) {
  if (!waits && !correction?.to_check?.length) {
    const said = sentenceOrWords({ ...correction?.said, words: correction?.words });
    return html`<p data-test="no-setting">${said || "No new setting comes from this one."}</p>`;
  }
  const what =
    sentenceOrWords({ ...correction?.said, words: correction?.what }) ||
    `${endsWords(step)} Something else is wrong.`;
  return html`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${flag("stop")} <b>No new setting.</b> ${what}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(correction?.to_check ?? TO_CHECK).map((one) => html`<li>${one}</li>`)}
    </ol>
  </div>`;
}

/** @param {Api.Step} step */
function endsWords(step) {
  const limits = limitsOf(step);
  const table = "That is further off than the card’s table of corrections goes.";
  return limits ? `${table} Tools and press end at ${words(angle(limits.sharpest_deg))} under load.` : table;
}

/**
 * Why a step shows no angle and depth, where it has tools.
 * @param {Api.Step} step
 * @param {boolean} kept the card's own setting is what is beyond
 */
export function whyNotSet(step, kept) {
  if (!step.die) return nothing;
  return html`<p class="why-not-set" data-test="why-not-set">
    ${flag("stop")} <b>No angle and depth.</b>
    ${
      kept
        ? "The setting kept on this card is beyond what its tools and press reach. Plan the card again and " +
          "bend a first piece."
        : "Tools and press do not reach this bend. Read what stops it before anything is bent."
    }
  </p>`;
}
