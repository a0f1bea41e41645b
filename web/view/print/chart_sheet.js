// The wall chart's table: thickness down, dies across; force, smallest flange and radius in each cell.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { tidyLength } from "../../drawing/section.js";
import { force, forcePerLength, length, lengthUnit, words } from "../../app/shell/units.js";
import { allowFor, expected } from "../common/force.js";
import { flag } from "../common/finding.js";
import { day } from "../common/dates.js";

/** @param {Api.Chart} chart */
export function chartSheet(chart) {
  return html`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${chart.metal.name}</h2>
      <p>
        ${chart.press?.name ?? "No press entered"}${
          chart.press ? html`, ${words(force(chart.press.force_kn))}` : nothing
        }.
        Checked against ratings at a bend length of ${words(length(chart.bend_length_mm, { digits: 0 }))}.
      </p>
      <p class="printed">Printed ${day(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${lengthUnit()}</span></th>
          ${chart.dies.map(
            (die) =>
              html`<th scope="col" data-test="die-${die.code}">
                V ${tidyLength(die.v_opening_mm)}<span class="sub">${die.code}</span>
                <span class="sub"
                  >${
                    die.rating_kn_per_m === null ? "rating ?" : words(forcePerLength(die.rating_kn_per_m))
                  }</span
                >
              </th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${chart.rows.map(
          (row) =>
            html`<tr>
              <th scope="row">${tidyLength(row.thickness_mm)}<span class="sub">${row.gauge ?? ""}</span></th>
              ${row.cells.map(cell)}
            </tr>`,
        )}
      </tbody>
    </table>
    ${legend()}
    <ul class="chart-words">
      ${chart.words.map((/** @type {string} */ said) => html`<li>${said}</li>`)}
    </ul>
  </article>`;
}

/** @param {Api.ChartCell} found */
function cell(found) {
  if (!found.usable) {
    return html`<td class="unusable" data-level="none" data-die=${found.die} title=${found.why}>
      <span aria-hidden="true">–</span><span class="unseen">${found.why}</span>
    </td>`;
  }
  return html`<td
    class="cell ${found.level}"
    data-level=${found.level}
    data-die=${found.die}
    title=${found.why}>
    <span class="first"
      ><span class="force">${allowFor(found, "force_kn_per_m").text}</span>${
        found.level === "stop"
          ? nothing
          : html`<span class="expected">${expected(found, "force_kn_per_m").text}</span>`
      }${found.level === "ok" ? nothing : flag(found.level, mark(found))}</span
    >
    ${
      found.level === "stop"
        ? nothing
        : html`<span class="rest"
            >${length(found.min_flange_mm).text} · R ${length(found.inside_radius_mm).text}</span
          >`
    }
  </td>`;
}

/**
 * The word in the shape: what is over, by how much.
 * @param {Api.ChartCell} found
 */
function mark({ level, limit, share_percent: share }) {
  if (level === "unknown") return "rating?";
  return (
    `${limit ?? ""}${share === null ? "" : ` ${Math.round(share)} %`}`.trim() ||
    (level === "stop" ? "over" : "near")
  );
}

function legend() {
  const unit = forcePerLength(0).unit;
  return html`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${unit}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${length(0).unit}.
    </li>
    <li>${flag("stop", "die 120 %")} over a rating: do not bend this</li>
    <li>${flag("caution", "die 85 %")} over 80 % of a rating</li>
    <li>${flag("unknown", "rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`;
}
