// The order of the bends: whether it is proven, what wishes cost, what else would do; and where
// there is none, what is in the way and what would help. Cards saved before orders were searched
// for say none of it, and nothing is shown.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { flag, sentence, sentenceOrWords } from "../common/finding.js";
import { fold } from "../common/fold.js";
import { offer } from "../common/if_allowed.js";
import { sizes } from "./flange_tolerances.js";
import { stationList } from "./stations.js";

/** @typedef {{sequence: number[], words: string}} Other */
/**
 * @typedef {{use: (sequence: number[]) => unknown, free: () => unknown}} Ways the buttons: this order, and
 *   none of one's own
 */

/**
 * Whether a plan says more of its order than a sentence.
 * @param {Api.Plan} plan
 */
export const saysOrder = ({ order }) => Array.isArray(order?.wishes) && Array.isArray(order?.alternatives);

/**
 * @param {Api.Plan} plan
 * @param {Ways} ways
 */
export function orderPanel(plan, ways) {
  if (!saysOrder(plan)) return nothing;
  const { order } = plan;
  const [level, word] = standing(plan);
  const pinned = Boolean(plan.part?.order?.length);
  const free = pinned ? ways.free() : nothing;
  const bends = order.sequence.length;
  return html`<div class="order-panel" data-test="order-panel" data-level=${level}>
    <p class="order-standing">
      ${flag(level, word)} <span class="order-words" data-test="order-words">${order.words}</span>
    </p>
    ${
      bends > 1
        ? html`<p class="order-run">
            ${level === "stop" ? "Nearest" : pinned ? "Yours" : "Order"}: ${run(order.sequence)}
          </p>`
        : nothing
    }
    ${blocked(order.blocked ?? [])} ${remedies(order.remedies ?? [])} ${costs(order.wishes)}
    ${free === nothing ? nothing : html`<div class="buttons">${free}</div>`}
    ${others(order.alternatives, ways)}
    ${fold("Where the tools stand, and flange tolerances", html`${stationList(plan)} ${sizes(plan)}`, {
      test: "stations-fold",
    })}
  </div>`;
}

/**
 * @param {Api.Plan} plan
 * @returns {["ok"|"unknown"|"caution"|"stop", string]}
 */
function standing({ order, checks }) {
  const found = (/** @type {string} */ code) => checks.some((check) => check.code === code);
  if (order.proven) return ["ok", "Clear on paper"];
  if (found("clearance-assumed") && !found("no-order")) return ["unknown", "Sizes assumed"];
  if (found("no-order")) return ["stop", "No order"];
  if (checks.some(({ level, code }) => level === "stop" && code.startsWith("box-"))) {
    return ["stop", "In the way"];
  }
  if (found("order-not-found")) return ["caution", "None found"];
  return found("clearance-not-checked") ? ["caution", "Not checked"] : ["caution", "Not fully checked"];
}

/**
 * Bend numbers as on the drawing, first to last.
 * @param {number[]} sequence
 */
function run(sequence) {
  return html`<span class="run" role="img" aria-label="bends ${sequence.join(", ")}"
    >${sequence.map((bend) => html`<span class="badge-mark" aria-hidden="true">${bend}</span>`)}</span
  >`;
}

/** @param {{bend: number, words: string}[]} list */
function blocked(list) {
  if (!list.length) return nothing;
  return html`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${list.map(({ bend, words: why }) => html`<li><b>Bend ${bend}</b> ${why}</li>`)}
    </ul>`;
}

/** @param {Api.Remedy[]} list */
function remedies(list) {
  if (!list.length) return nothing;
  return html`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${list.map((one) => html`<li>${sentence(one)}</li>`)}
    </ul>`;
}

/** @param {Api.OrderLimitCost[]} list */
function costs(list) {
  if (!list.length) return nothing;
  return html`<h3>What each limit costs</h3>
    <ul class="order-list" data-test="limit-costs">
      ${list.map((cost) => html`<li data-limit=${cost.wish}>${sentenceOrWords(cost)}</li>`)}
    </ul>`;
}

/**
 * @param {Other[]} list
 * @param {Ways} ways
 */
function others(list, { use }) {
  if (!list.length) return nothing;
  return fold(
    "Other orders that can be made",
    html`<ul class="order-others" data-test="other-orders">
      ${list.map(
        ({ sequence, words: compared }) =>
          html`<li>${run(sequence)} <span class="compared">${compared}</span> ${use(sequence)}</li>`,
      )}
    </ul>`,
    { test: "others-fold" },
  );
}

/**
 * The buttons on the form, where the plan follows at once.
 * @param {(order: number[]|null) => void} pin
 * @returns {Ways}
 */
export const pressTo = (pin) => ({
  use: (sequence) =>
    html`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${sequence.join(", ")}"
      @click=${() => pin(sequence)}>
      Use this order
    </button>`,
  free: () =>
    html`<button type="button" class="button use-order" data-test="let-it-choose" @click=${() => pin(null)}>
      Let it choose
    </button>`,
});

/**
 * On a card: to its form, where the plan is seen before it is saved.
 * @param {string} code
 * @returns {Ways}
 */
export const linkTo = (code) => ({
  use: (sequence) =>
    offer(
      "cards.revise",
      html`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${sequence.join(", ")}"
        href="/part?from=${code}&order=${sequence.join("-")}"
        >Use this order</a
      >`,
    ),
  free: () =>
    offer(
      "cards.revise",
      html`<a class="button use-order" data-test="let-it-choose" href="/part?from=${code}&order=free"
        >Let it choose</a
      >`,
    ),
});
