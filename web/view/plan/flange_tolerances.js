// How close each flat is expected to come out, from where the gauge stands in each step.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { MM_PER_INCH, fixed, length, lengthUnit, words } from "../../app/shell/units.js";
import { sentenceOrWords } from "../common/finding.js";

/** @param {{dimensions?: Api.Dimension[]}} plan plans saved before this was worked out say nothing */
export function sizes({ dimensions: list = [] }) {
  const known = list.filter(({ error_mm: error }) => error !== null);
  if (!known.length) return nothing;
  const { basis, basis_said: said } = known[0];
  const counted = sentenceOrWords({ ...said, words: basis });
  return html`<h3>Expected tolerance of each flange</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${known.map(one)}
    </ul>
    ${counted ? html`<p class="hint" data-test="sizes-basis">${counted}</p>` : nothing}`;
}

/**
 * Never in fractions: a 64th of an inch is more than most of these.
 * @param {number} mm
 */
const small = (mm) =>
  lengthUnit() === "in" ? { text: fixed(mm / MM_PER_INCH, 3), unit: "in" } : length(mm, { digits: 2 });

/** @param {Api.Dimension} size */
function one({
  flat,
  flat_name: name = `flat ${flat}`,
  wanted_mm: wanted,
  error_mm: error,
  critical,
  gauged_directly: direct,
  step,
}) {
  return html`<li data-flat=${flat}>
    <b>${name[0].toUpperCase()}${name.slice(1)}</b> ${words(length(wanted))}
    <b>± ${words(small(Number(error)))}</b>, from step
    ${step}${direct ? ", gauged directly" : ""}${
      critical ? html`. <b>Critical${direct ? "" : ": measure it"}</b>` : nothing
    }.
  </li>`;
}
