// What one bend takes. In one look the tools, what to set, the force; then findings; the rest is folded.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { poseDrawing } from "../../drawing/pose.js";
import { placeWords, WRITES } from "../../app/sync/shop_lists.js";
import { angle, fixed, force, forcePerLength, length, words } from "../../app/shell/units.js";
import { forceFigure } from "../common/force.js";
import { dieOptions } from "./die_options.js";
import { figure } from "../common/figure.js";
import { firstHitLine } from "../plan/first_hit.js";
import { cautions, everyTimeCautions, otherFindings, stops } from "../common/findings_in_order.js";
import { fold } from "../common/fold.js";
import { offer } from "../common/if_allowed.js";
import { choice } from "../common/field.js";
import { toolsReason } from "../part/named_tools_fields.js";
import { originOf } from "../common/figure_origin.js";
import { ratingBars, ratingName } from "../common/rating_bar.js";
import { strokePanel } from "./stroke_panel.js";

/** @typedef {import("../../app/shell/units.js").Shown} Shown */
/** @typedef {{punches: Api.Punch[], dies: Api.Die[]}} Crib */
/**
 * @typedef {"force_kn"|"inside_radius_mm"|"springback_deg"|"set_angle_deg"|"punch_depth_mm"|
 *   "bend_allowance_mm"|"bend_deduction_mm"|"k_factor"} Predicted
 */
/** @typedef {(value: number|null|undefined) => Shown} Show */
/**
 * @typedef {{pose: "before"|"after", show: (pose: "before"|"after") => void, use: (die: string) => void,
 *   stroke: import("./stroke_panel.js").Shown}} Hands
 */

/** @param {number|null|undefined} mm */
const mm2 = (mm) => length(mm, { digits: 2 });

/**
 * A predicted value with its band.
 * @param {Api.OneBend} answer
 * @param {Predicted} name
 * @param {string} what
 * @param {Show} show
 * @param {unknown} [note] beneath it; what the handbook says where none is given
 */
function predicted(answer, name, what, show, note = handbookSays(answer, name, show)) {
  const [low, high] = [answer[`${name}_low`], answer[`${name}_high`]];
  const band = typeof low === "number" && typeof high === "number" && low !== high;
  return figure(what, show(answer[name]), {
    band: band ? [show(low), show(high)] : null,
    note,
    origin: originOf(answer.sources?.[name]),
    test: name,
  });
}

/**
 * The other witness, where it says something else.
 * @param {Api.OneBend} answer
 * @param {Predicted} name
 * @param {Show} show
 */
function handbookSays({ handbook, sources, ...answer }, name, show) {
  const said = /** @type {Partial<Record<Predicted, number|null>>|null} */ (handbook)?.[name];
  if (typeof said !== "number" || originOf(sources?.[name]) === "handbook") return nothing;
  const shown = show(said);
  if (shown.text === show(answer[name]).text) return nothing;
  const [low, high] = /** @type {number[]} */ ([answer[`${name}_low`], answer[`${name}_high`]]);
  const outside = said < low || said > high;
  return html`<span class=${outside ? "handbook differs" : "handbook"} data-test="handbook-${name}"
    >handbook says ${words(shown)}</span
  >`;
}

/**
 * @param {Api.OneBend} answer
 * @param {Crib} crib
 * @param {Hands} hands
 */
export function bendAnswer(answer, crib, hands) {
  return html`${stops(answer.checks)}
    <section class="bend-first" aria-label="What to set" data-test="first">
      ${tools(answer, crib)} ${toSet(answer)}
    </section>
    ${cautions(answer.checks)} ${otherFindings(answer.checks)}
    <div class="columns bend-columns">
      <div>${ratings(answer)} ${comesOut(answer)}</div>
      <div>${drawing(answer, hands)} ${strokePanel(hands.stroke)} ${diesOfCrib(answer, hands)}</div>
    </div>
    ${opinions(answer)} ${everyTimeCautions(answer.checks)}`;
}

/**
 * @param {Api.OneBend} answer
 * @param {Crib} crib
 */
function tools(answer, { punches, dies }) {
  const die = dies.find(({ code }) => code === answer.die);
  const punch = punches.find(({ code }) => code === answer.punch);
  if (!answer.die && !answer.punch) {
    return html`<p class="panel" data-test="no-tools">
      Counted with plain stand-in tools: a V of ${words(length(answer.v_opening_mm))} and a punch with a tip
      of ${words(length(answer.punch_radius_mm))}.
      ${
        punches.length && dies.length
          ? nothing
          : offer(
              WRITES.punches,
              html`<a href="/shop/${dies.length ? "punches" : "dies"}/+" data-test="to-first-tools"
                >Enter your own tools</a
              >`,
            )
      }
    </p>`;
  }
  return html`<ul class="tools" data-test="chosen">
      ${[
        { kind: "die", code: answer.die, tool: die },
        { kind: "punch", code: answer.punch, tool: punch },
      ].map(
        ({ kind, code, tool }) =>
          html`<li class="tool-row" data-kind=${kind}>
            <span class="kind">${kind}</span
            ><span class="name" data-test="chosen-${kind}"
              ><b>${code ?? "none"}</b> <span>${tool?.name ?? ""}</span></span
            >
            <span class="where">${tool ? placeWords(tool) : ""}</span>
            ${
              tool && tool.condition !== "good"
                ? html`<span class="more"
                    >condition:
                    ${tool.condition}${tool.condition_note ? `, ${tool.condition_note}` : ""}</span
                  >`
                : nothing
            }
          </li>`,
      )}
    </ul>
    ${toolsReason(answer)}`;
}

/** @param {Api.OneBend} answer */
function toSet(answer) {
  return html`<div class="figures">${answer.first_hit ? firstHit(answer) : setting(answer)}</div>
    <div class="figures three">
      ${forceFigure("Allow for", answer, "force_kn")}
      ${figure("Flange from", length(answer.min_flange_mm), { test: "min_flange_mm" })}
      ${predicted(answer, "bend_deduction_mm", "Deduction", mm2)}
    </div>
    ${weakest(answer)} ${firstHitLine(answer.first_hit)}`;
}

/**
 * The rating that the load comes nearest to; one that is not known is said first.
 * @param {Api.OneBend} answer
 */
function weakest({ ratings: all }) {
  const unknown = all?.find(({ share_percent: share }) => share === null);
  const most = (all ?? []).reduce(
    (/** @type {Api.Rating|null} */ worst, one) =>
      (one.share_percent ?? 0) > (worst?.share_percent ?? 0) ? one : worst,
    null,
  );
  return html`<p class="weakest" data-test="weakest">
    ${unknown ? html`<b>${ratingName(unknown)}: rating unknown.</b>` : nothing}
    ${most ? html`${ratingName(most)}: ${fixed(most.share_percent ?? 0, 0)} % of the rating.` : nothing}
  </p>`;
}

/** @param {Api.OneBend} answer */
const setting = (answer) => html`
  ${predicted(answer, "set_angle_deg", "Set angle", angle)}
  ${predicted(answer, "punch_depth_mm", "Depth", mm2)}
`;

/**
 * The first hit, with the setting that is expected in the end beside it, smaller.
 * @param {Api.OneBend} answer
 */
const firstHit = (answer) => html`
  ${predicted(
    answer,
    "set_angle_deg",
    "First hit: set angle",
    angle,
    `then about ${words(angle(answer.expected_set_angle_deg))}`,
  )}
  ${predicted(
    answer,
    "punch_depth_mm",
    "First hit: depth",
    mm2,
    `then about ${words(mm2(answer.expected_punch_depth_mm))}`,
  )}
`;

/** @param {Api.OneBend} answer */
function ratings(answer) {
  return fold(
    "Force against the ratings",
    html`<div class="figures">
        ${forceFigure("Per length, allow for", answer, "force_kn_per_m")}
        ${figure("Expected", force(answer.force_kn), {
          note: handbookForce(answer),
          origin: originOf(answer.sources?.force_kn),
          test: "force_expected",
        })}
      </div>
      ${
        answer.ratings?.length
          ? html`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
              ${ratingBars(answer.ratings)}`
          : nothing
      }`,
  );
}

/**
 * The least to be expected, and the other witness.
 * @param {Api.OneBend} answer
 */
function handbookForce(answer) {
  const least = answer.force_kn_low;
  const said = handbookSays(answer, "force_kn", force);
  return html`${typeof least === "number" ? `at least ${words(force(least))}` : nothing}${
    said === nothing ? nothing : html` <br />${said}`
  }`;
}

/** @param {Api.OneBend} answer */
function comesOut(answer) {
  return fold(
    "What comes out",
    html`<div class="figures">
      ${predicted(answer, "inside_radius_mm", "Inside radius", mm2)}
      ${predicted(answer, "springback_deg", "Springback", angle)}
      ${predicted(answer, "bend_allowance_mm", "Bend allowance", mm2)}
      ${predicted(answer, "k_factor", "K-factor", plain)}
    </div>`,
  );
}

/**
 * @param {number|null|undefined} value
 * @returns {Shown}
 */
const plain = (value) => ({ text: value === null || value === undefined ? "–" : fixed(value, 2), unit: "" });

/**
 * @param {Api.OneBend} answer
 * @param {Hands} hands
 */
function drawing(answer, { pose, show }) {
  if (!answer.drawing) return nothing;
  const set = words(angle(answer.set_angle_deg));
  const when = pose === "before" ? "before the bend" : `at the bottom of the stroke, ${set}`;
  return fold(
    "Drawn to scale",
    html`<section class="bend-drawing" aria-label="The bend in its tools">
      ${choice({
        name: "pose-shown",
        label: "Shown",
        value: pose,
        options: [
          ["before", "Before"],
          ["after", "Bent"],
        ],
        change: (value) => show(value === "before" ? "before" : "after"),
      })}
      ${poseDrawing(answer.drawing, {
        pose,
        close: true,
        opening: answer.v_opening_mm,
        gauge: "",
        angle: answer.set_angle_deg,
        words: `The sheet in die and punch, ${when}`,
      })}
    </section>`,
    { test: "drawing" },
  );
}

/**
 * @param {Api.OneBend} answer
 * @param {Hands} hands
 */
function diesOfCrib(answer, { use }) {
  if (!answer.options?.length) return nothing;
  return fold(
    `Dies of the crib: ${answer.options.length}`,
    html`<p class="hint">Tap one to use it. Each with the reason for its rank.</p>
      ${dieOptions(answer.options, use)}`,
    { test: "dies" },
  );
}

/** @param {Api.OneBend} answer */
function opinions({ opinions: said, sources }) {
  if (!said) return nothing;
  return fold(
    "Second opinions",
    html`<div class="opinions">
      ${
        said.force?.length
          ? opinionTable("Force by published relations", said.force, [
              ["force_kn", "Force", force],
              ["force_kn_per_m", "Per length", forcePerLength],
            ])
          : nothing
      }
      ${
        said.allowance?.length
          ? opinionTable("Bend allowance by published relations", said.allowance, [
              ["bend_allowance_mm", "Allowance", mm2],
              ["k_factor", "K", plain],
            ])
          : nothing
      }
      ${
        sources
          ? html`<details>
              <summary>Where each figure comes from</summary>
              <dl class="sources">
                ${Object.entries(sources).map(
                  ([name, source]) =>
                    html`<dt>${NAMES[name] ?? name}</dt>
                      <dd>${source}</dd>`,
                )}
              </dl>
            </details>`
          : nothing
      }
    </div>`,
    { open: false },
  );
}

/** @type {Record<string, string>} */
const NAMES = {
  force_kn: "Force",
  inside_radius_mm: "Inside radius",
  springback_deg: "Springback",
  set_angle_deg: "Set angle",
  punch_depth_mm: "Punch depth",
  bend_allowance_mm: "Bend allowance",
  bend_deduction_mm: "Bend deduction",
  k_factor: "K-factor",
  min_flange_mm: "Smallest flange",
};

/**
 * @template {Api.ForceOpinion|Api.AllowanceOpinion} T
 * @param {string} title
 * @param {T[]} rows
 * @param {[keyof T, string, Show][]} columns
 */
function opinionTable(title, rows, columns) {
  return html`<div class="table">
    <table>
      <caption>
        ${title}
      </caption>
      <thead>
        <tr>
          <th scope="col">By</th>
          ${columns.map(([, head]) => html`<th scope="col" class="number">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) =>
            html`<tr>
              <th scope="row">${row.name}<small>${row.source}</small></th>
              ${columns.map(
                ([name, , show]) =>
                  html`<td class="number">${words(show(/** @type {number} */ (row[name])))}</td>`,
              )}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
