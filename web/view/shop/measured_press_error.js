// What results say of the press, apart from the metals: its error with its band, and what to bend next.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { length, words } from "../../app/shell/units.js";
import { sentence } from "../common/finding.js";
import { way } from "../common/if_allowed.js";

const SET_BY = { angle: "set by angle", depth: "set by depth", stop: "set by a stop" };

/** @param {Api.LearnedPress|null} press */
export function pressLearned(press) {
  if (!press) return nothing;
  const { set_by, offset_mm, results, strip } = press;
  return html`<section class="press-learned" data-test="press-learned" data-apart=${String(press.apart)}>
    <h2>
      The press <small>${set_by ? SET_BY[set_by] : html`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${offset_mm ? offset(offset_mm, results) : nothing}
    ${
      offset_mm
        ? way(
            "/shop/press",
            html`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`,
          )
        : nothing
    }
    ${press.said.map((said) => html`<p>${sentence(said)}</p>`)}
    ${
      strip
        ? way(
            "/shop/test-bend",
            html`<p>
              <a class="button" data-test="to-strip" href=${stripAddress(strip)}>Bend this strip</a>
            </p>`,
          )
        : nothing
    }
  </section>`;
}

/**
 * @param {Api.Band} band
 * @param {number} results
 */
function offset({ low, nominal, high }, results) {
  const size = (/** @type {number} */ value) => length(Math.abs(value), { digits: 2 });
  const sided = (/** @type {number} */ value) =>
    `${words(size(value))} ${value < 0 ? "deeper" : "less deep"}`;
  const even = Number(size(nominal).text) === 0; // as far as it is shown
  return html`<p data-test="press-offset">
    The punch goes
    <b class="large">${even ? "as deep" : sided(nominal)}</b> ${even ? "as" : "than"} the press shows
    <span class="soft"
      >(${sided(low)} to ${sided(high)}; ${results === 1 ? "1 result" : `${results} results`}, all
      metals)</span
    >.
  </p>`;
}

/** @param {{metal: string, thickness_mm: number, die: string}} strip */
const stripAddress = ({ metal, thickness_mm, die }) =>
  `/shop/test-bend?${new URLSearchParams({ metal, thickness: `${thickness_mm} mm`, die })}`;
