// What the measured flanges of several parts say of the back gauge's zero. It is proposed, and counts as
// done only when somebody says that it was set at the press.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call } from "../../app/sync/api.js";
import { length, words } from "../../app/shell/units.js";

/**
 * @param {AbortSignal} signal
 * @returns {Promise<Api.GaugeFound|null>} null where the shop does not answer
 */
export const askGauge = (signal) =>
  call("GET", "/press/gauge", { signal }).then(
    ({ body }) => /** @type {Api.GaugeFound} */ (body),
    () => null,
  );

/**
 * @param {Api.GaugeFound|null} found
 * @param {() => void} done the zero was set at the press
 */
export function gaugePanel(found, done) {
  if (!found?.systematic) return nothing;
  const where = found.zero_mm > 0 ? "back" : "forward";
  return html`<section class="panel" data-test="gauge-zero">
    <h2>The gauge’s zero</h2>
    <p>
      <b
        >${found.flanges} measured flanges agree: the gauge stands
        ${words(length(Math.abs(found.zero_mm), { digits: 2 }))} too far ${where}.</b
      >
      Set its zero by as much at the press. Nothing here changes until you say that it is set; flanges
      measured before that no longer count.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="gauge-zero-set" @click=${done}>The zero is set</button>
    </div>
  </section>`;
}
