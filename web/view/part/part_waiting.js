// What stands on a part's screen while there is no plan of it: how to begin, a long search for the
// order with a way out, and a search that was stopped.
import { html, nothing } from "/vendor/lit-html/lit-html.js";

/**
 * @typedef {{seconds: number, deadline_s: number, looked_at: number,
 *   best: Record<string, number>|null}} Progress how far the search is
 */

const TAKES_LONG_S = 0.6;
/**
 * Shorter ones are not worth a flicker.
 * @param {Progress} progress
 */
export const takesLong = ({ seconds }) => seconds >= TAKES_LONG_S;

/**
 * @param {Progress} progress
 * @param {() => void} cancel
 */
function lookingFor({ seconds, deadline_s: deadline, looked_at: looked, best }, cancel) {
  return html`<section class="looking" data-test="looking" aria-label="Looking for the order">
    <h2><span role="status">Looking for the order…</span></h2>
    <progress max=${deadline} value=${Math.min(seconds, deadline)} aria-label="Time used">
      ${Math.round(seconds)} s
    </progress>
    <dl>
      <div>
        <dt>Time, at most about ${Math.round(deadline)} s</dt>
        <dd>
          <b data-test="looking-seconds">${Math.floor(seconds)} s</b
          >${seconds < deadline ? nothing : ", ending"}
        </dd>
      </div>
      <div>
        <dt>Steps looked at</dt>
        <dd><b data-test="looking-at">${looked.toLocaleString("en-GB")}</b></dd>
      </div>
      <div class="best">
        <dt>Best so far</dt>
        <dd data-test="looking-best">${best ? html`<b>${handlingWords(best)}</b>` : "none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${cancel}>Cancel</button>
  </section>`;
}

/** @type {[string, string, string][]} */
const HANDLING = [
  ["turn_overs", "turn-over", "turn-overs"],
  ["turn_ends", "end turn", "end turns"],
  ["tool_changes", "tool change", "tool changes"],
  ["slides", "slide or tilt", "slides or tilts"],
];

/**
 * "2 turn-overs, 1 end turn".
 * @param {Record<string, number>} best
 * @returns {string}
 */
function handlingWords(best) {
  const said = HANDLING.filter(([name]) => best[name]).map(
    ([name, word, words]) => `${best[name]} ${best[name] === 1 ? word : words}`,
  );
  return said.join(", ") || "no turning";
}

/** @typedef {{cancel: () => void, again: () => void, back: () => void}} Ways out of a long search */

/**
 * While the order is looked for, and after Cancel; nothing otherwise.
 * @param {{plan: Api.Plan|null, progress: Progress|null, stopped: boolean}} state
 * @param {Ways} ways
 */
export function waitingPanel({ plan, progress, stopped }, { cancel, again, back }) {
  if (progress) return lookingFor(progress, cancel);
  return stopped ? stoppedLooking({ again, back: plan ? back : null }) : nothing;
}

/**
 * After Cancel: nothing typed is lost, and the plan from before stands below.
 * @param {{again: () => void, back: (() => void)|null}} ways back: to the part that the plan below is of
 */
function stoppedLooking({ again, back }) {
  return html`<section class="looking" data-test="stopped" aria-label="Search cancelled">
    <p role="status">
      <b>Cancelled: no plan for what is typed now.</b>
      ${back ? "Below stands the plan from before your last change." : nothing}
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="look-again" @click=${again}>Look again</button>
      ${
        back
          ? html`<button type="button" class="button" data-test="part-before" @click=${back}>
              Back to the part before
            </button>`
          : nothing
      }
    </div>
  </section>`;
}

const HOW_TO =
  "Type the flats from the left end to the right, and between them how far each bend is open: " +
  "90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps stand " +
  "here as soon as the section is whole.";
const HOW_TO_BOX =
  "Choose what it is like, type the base and the walls, outside measures. Blank with reliefs, bend " +
  "lines, tools, pieces and steps stand here as soon as the box is whole; left and right are bent " +
  "first, then front and back between them.";

/** @param {boolean} box */
export const howTo = (box) =>
  html`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${box ? HOW_TO_BOX : HOW_TO}
  </div>`;
