// The answer to a result: what to set next, where that comes from, and keeping it.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { crown, gaugeNext, thicknessWords } from "./gauge_and_crown.js";
import { measuredWords, newSetting } from "../../app/results/measured_bend.js";
import { MM_PER_INCH, angle, fixed, length, lengthUnit, words } from "../../app/shell/units.js";
import { flag, sentenceOrWords } from "../common/finding.js";
import { noSetting } from "../step/no_setting.js";
import { offer } from "../common/if_allowed.js";
import { setFigure } from "../step/setting.js";

/** @typedef {import("../../app/results/keep_setting.js").Result} Result */

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {Result} result
 * @param {{again: () => void, keep: () => void}} act
 */
export function nextSettingPanel(card, step, result, { again, keep }) {
  const setting = newSetting(result);
  return html`<div
    class="result-answer"
    data-test="result-answer"
    data-waits=${result.waits ? "true" : "false"}>
    <div class="result-main">
      <h2>${measuredWords(result.trial)} <small>wanted ${words(angle(step.included_angle_deg))}</small></h2>
      ${
        result.waits
          ? html`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${result.late || "the shop does not answer"}.
              It is sent automatically.
            </p>`
          : html`<p data-test="sent">Saved in the shop, on the card.</p>`
      }
      ${setting ? newNumbers(setting) : noSetting(step, result)}
      ${setting ? html`<p class="basis" data-test="basis">${basis(result)}</p>` : nothing}
      ${result.question ? asked(card, result.question) : nothing} ${gaugeNext(result)}
      ${tilt(result.correction)} ${crown(result.correction)}
      ${
        setting
          ? offer(
              "cards.revise",
              keeping(result, keep),
              html`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`,
            )
          : nothing
      }
    </div>
    <nav class="step-nav" aria-label="Result">
      <button class="button" data-test="again" @click=${again}>Measure again</button>
      <a class="button" href="/c/${card.code}/step/${step.number}" data-test="back">Step ${step.number}</a>
      ${
        setting && result.kept !== "kept"
          ? offer("cards.revise", goOn(card, step, "button", ", not kept"), goOn(card, step))
          : goOn(card, step)
      }
    </nav>
  </div>`;
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {string} [look] quiet while the new setting is neither kept nor left
 * @param {string} [but]
 */
function goOn({ code, plan }, { number }, look = "button next", but = "") {
  const last = number === plan.steps.length;
  return html`<a class=${look} href=${last ? `/c/${code}` : `/c/${code}/step/${number + 1}`} data-test="next"
    >${last ? `Done${but}: the card` : `Next${but}: step ${number + 1}`}</a
  >`;
}

/**
 * @param {Api.Card} card
 * @param {string} question
 */
const asked = (card, question) =>
  html`<section class="panel urgent" data-test="question">
    <p>${flag("unknown", "Does not count")} ${question}</p>
    <p><a href="/shop/learned/${encodeURIComponent(card.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`;

/** @param {import("../../app/results/measured_bend.js").Setting} setting */
const newNumbers = (setting) =>
  html`<div class="set-figures" data-test="new-setting">
    ${setFigure("Angle now", angle(setting.set_angle_deg), "new-angle")}
    ${
      setting.punch_depth_mm === null
        ? nothing
        : setFigure("Depth now", length(setting.punch_depth_mm, { digits: 2 }), "new-depth")
    }
  </div>`;

const MIDDLE_FIRST =
  "The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it first.";

/** @param {Result} result */
function basis({ correction, table }) {
  // What to set stands above, huge, in this device's units.
  if (correction) {
    const said = sentenceOrWords({ ...correction.said, words: correction.what });
    return `${said}${endsFirst(correction)}${thicknessWords(correction)}`;
  }
  return (
    `Worked out on this device, from the card’s own table at ${words(angle(table?.row ?? null))}. ` +
    `The shop works it out again when the result arrives.${table?.ends ? ` ${MIDDLE_FIRST}` : ""}`
  );
}

/** @param {Api.Correction} correction */
const endsFirst = ({ crown: found }) =>
  found?.setting_for === "ends" ? " This is for the ends; first correct the open middle, see below." : "";

/** @param {Api.Correction|null} correction */
function tilt(correction) {
  const slope = correction?.tilt_mm_per_m;
  if (slope === null || slope === undefined) return nothing;
  return html`<p data-test="tilt">
    Left and right differ: about ${slopeWords(Math.abs(slope))},
    ${slope > 0 ? "the right end deeper" : "the left end deeper"}.
  </p>`;
}

const MM_IN_TEN_FEET = 3048;

/** @param {number} slope how much one end is deeper [mm/m] */
const slopeWords = (slope) =>
  lengthUnit() === "in"
    ? `${fixed((slope * MM_IN_TEN_FEET) / 1000 / MM_PER_INCH, 3)} in over ten feet`
    : `${fixed(slope, 2)} mm in each metre`;

/**
 * @param {Result} result
 * @param {() => void} keep
 */
function keeping(result, keep) {
  if (result.kept === "kept") {
    return html`<p class="kept" data-test="kept" role="status">
      <b>${result.where === "here" ? "Saved here, not yet in the shop." : "Kept."}</b> ${result.words}
    </p>`;
  }
  return html`<div class="buttons">
      <button class="button next wide" data-test="keep" ?disabled=${result.kept === "asking"} @click=${keep}>
        ${result.kept === "asking" ? "Keeping…" : "Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${result.words}</p>`;
}
