// The card as a sheet of paper: the head, the blank, what to fetch, the steps, what to watch.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { boxSize, isBox } from "../../drawing/box.js";
import { finishedDrawing, flatDrawing } from "../../drawing/part.js";
import { tidyLength } from "../../drawing/section.js";
import { smallPoses } from "../plan/small_poses.js";
import { settingOf } from "../../app/sync/cards.js";
import { angle, byName, inSentence, length, lengthUnit, mass, words } from "../../app/shell/units.js";
import { forceWords } from "../common/force.js";
import { flag, remedyOf, signOf, WORST_FIRST } from "../common/finding.js";
import { comesOutShort } from "../plan/first_hit.js";
import { gaugedWords, moveSign } from "../plan/orientation.js";
import { place, reliefWords, segments, turnedWords } from "../plan/plan_parts.js";
import { stationOf } from "../plan/stations.js";
import { wayWords } from "../step/step_moments.js";
import { day } from "../common/dates.js";
import { heads } from "../common/table_heads.js";

/** @typedef {import("../common/finding.js").Check & {steps?: number[]}} Check */
/** @typedef {import("../step/step_moments.js").Drawn} Drawn */
/** @typedef {import("../common/finding.js").Sign} Sign */
/**
 * @typedef {{letter: string, level: Sign, checks: Check[], steps: number[]}} Remark one sentence,
 *   with the steps it is said of
 */

/**
 * @param {Api.Card} card
 * @param {string} metal its name
 */
export function cardSheet(card, metal) {
  const { plan } = card;
  const remarks = collect(plan.checks);
  return html`<article
    class="card-sheet ${plan.steps.length < 4 ? "few" : plan.steps.length > 5 ? "many" : ""}"
    data-test="card-sheet">
    ${head(card, metal)}
    <figure class="strip ${isBox(plan) ? "of-box" : ""}">
      <figcaption>
        Blank ${size(plan.blank.length_mm)} × ${size(plan.blank.width_mm)},
        ${words(mass(plan.blank.mass_kg))}.
        ${isBox(plan) ? linesWords(plan) : "Bend lines from the left end."}
      </figcaption>
      ${flatDrawing(
        plan.blank,
        isBox(plan)
          ? { pixels: 520, tallest: 250, test: "sheet-blank" }
          : { pixels: 960, tallest: 40, test: "sheet-blank" },
      )}
    </figure>
    ${fetchTable(plan)} ${stepTable(card, remarks)} ${remarkList(remarks)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`;
}

/**
 * @param {number} mm
 * @returns {string}
 */
const size = (mm) => words({ text: tidyLength(mm), unit: lengthUnit() });

/**
 * Where a box's bend lines lie.
 * @param {import("../../drawing/box.js").BoxPlan} plan
 * @returns {string}
 */
function linesWords({ blank }) {
  const at = (/** @type {Api.BoxLine} */ { bend }) => {
    const line = blank.bend_lines.find((one) => one.bend === bend);
    return `${bend} ${tidyLength(/** @type {Api.BendLine} */ (line).at_mm)}`;
  };
  const of = (/** @type {string[]} */ sides) =>
    blank.lines
      .filter((line) => sides.includes(line.side))
      .map(at)
      .join(", ");
  const [across, along] = [of(["left", "right"]), of(["front", "back"])];
  return [
    across && `Bends from the left end: ${across}.`,
    along && `From the front end: ${along}.`,
    reliefWords(blank),
    "Inside up.",
  ]
    .filter(Boolean)
    .join(" ");
}

/**
 * @param {Api.Card} card
 * @param {string} metal
 */
function head(card, metal) {
  const { part, plan } = card;
  return html`<header>
    <div>
      <h2>${card.title}</h2>
      <p class="big-code" data-test="sheet-code">${card.display_code}</p>
      <p>
        <b
          >${metal},
          ${size(part.thickness_mm)}${plan.thickness_gauge ? html` (${plan.thickness_gauge})` : nothing}</b
        >, ${isBox(plan) ? `box ${boxSize(plan.folded)}` : html`bend length ${size(part.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${card.revision}, ${day(card.updated_at)}${card.updated_by ? `, ${card.updated_by}` : ""}.
      </p>
      ${card.note ? html`<p class="note">${card.note}</p>` : nothing}
    </div>
    ${
      plan.section
        ? finishedDrawing({ ...plan, part }, { pixels: 440, tallest: 280, test: "sheet-section" })
        : nothing
    }
    <img
      class="qr"
      src="/api/v1/cards/${card.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${(/** @type {Event} */ event) =>
        /** @type {HTMLElement} */ (event.target).setAttribute("hidden", "")} />
  </header>`;
}

/** @param {Api.Plan} plan */
function fetchTable(plan) {
  /** @param {Api.Tool} tool */
  const turned = (tool) => {
    const said = turnedWords(tool, plan.steps);
    return said ? html`, <b data-test="sheet-turned">${said}</b>` : nothing;
  };
  if (!plan.tools.length) return html`<p><b>No tool in the crib does this.</b></p>`;
  return html`<table class="fetch">
    ${heads("Fetch", "Name", "From", "Pieces", "Steps")}
    <tbody>
      ${plan.tools.map(
        (tool) =>
          html`<tr>
            <th scope="row">${tool.kind} ${tool.code}</th>
            <td>${tool.name}${turned(tool)}</td>
            <td>${place(tool)}</td>
            <td>${segments(tool) || "–"}</td>
            <td>${tool.steps.length === plan.steps.length ? "all" : tool.steps.join(", ")}</td>
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/**
 * @param {Api.Card} card
 * @param {Remark[]} remarks
 */
function stepTable(card, remarks) {
  const flats = card.part.flats_mm.length;
  return html`<table class="paper-steps">
    ${heads("Step", "In the tools", "Gauge", "Set", "Sheet", "Watch", "Result")}
    <tbody>
      ${card.plan.steps.map((step) =>
        stepRow(
          card,
          step,
          remarks.filter(({ steps }) => steps.includes(step.number)),
          flats,
        ),
      )}
    </tbody>
  </table>`;
}

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {Remark[]} remarks
 * @param {number} flats
 */
function stepRow(card, step, remarks, flats) {
  const setting = settingOf(card, step);
  return html`<tr data-test="sheet-step-${step.number}">
    <th scope="row">
      <span class="number">${step.number}</span> bend ${step.bend} ${step.side ?? ""}
      ${step.direction}${
        step.operation && step.operation !== "bend" ? html`<br />${step.operation}` : nothing
      }
    </th>
    <td class="picture">
      ${where(card.plan, step)}${
        step.drawing ? smallPoses(/** @type {Drawn} */ (step)) : "no drawing"
      }${ownPieces(step, card.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${length(setting.gauge_x_mm).text}</b><br />R
      <b>${length(step.gauge_r_mm).text}</b>${hits(step)}
    </td>
    <td class="figures-cell">
      ${setWords(step, setting)}<br />
      <span class="small"
        >${paperForce(step)}${fromPiece(setting) ? html`<br />from a first piece` : nothing}</span
      >
    </td>
    <td class="move">
      ${moveSign(step)}
      <span class="small"
        >${step.inside_face === "up" ? "Top" : "Bottom"} face
        up${step.gauged_end ? `, ${gaugedWords(step, flats)} to the gauge` : ""}.</span
      >${wayWords(step, { short: true })}
    </td>
    <td>${byLevel(remarks)}</td>
    <td class="pen">
      <span
        >${step.included_angle_deg ? inSentence(angle(step.included_angle_deg)) : "flat"}
        wanted${
          setting.firstHit
            ? html`<br /><span data-test="sheet-first-hit">first ${comesOutShort(setting.firstHit)}</span>`
            : nothing
        }</span
      >
    </td>
  </tr>`;
}

/**
 * What to set the press by, and what is expected.
 * @param {Api.Step} step
 */
function paperForce(step) {
  const said = forceWords(step);
  return said === nothing ? nothing : html`<span data-test="sheet-force">allow for ${said}</span>`;
}

/**
 * At which of several stations.
 * @param {Api.Plan} plan
 * @param {Api.Step} step
 */
function where(plan, step) {
  const station = stationOf(plan, step);
  return station
    ? html`<div class="pieces" data-test="sheet-station">
        ${station}: ${step.punch}${step.punch_turned ? " reversed" : ""} over ${step.die}
      </div>`
    : nothing;
}

/**
 * The pieces of a box's step, where it does not take all that is fetched.
 * @param {Api.Step} step
 * @param {Api.Tool[]} tools
 */
function ownPieces({ segments_mm: own, punch, die }, tools) {
  if (!own) return nothing;
  /** @type {["punch"|"die", string|null][]} */
  const used = [
    ["punch", punch],
    ["die", die],
  ];
  return used.map(([kind, code]) => {
    const fetched = tools.find((tool) => tool.kind === kind && tool.code === code)?.segments_mm ?? [];
    const pieces = own[kind] ?? [];
    if (!pieces.length || pieces.length === fetched.length) return nothing;
    return html`<div class="pieces" data-test="own-pieces">
      ${kind} ${pieces.map(tidyLength).join(" + ")} only
    </div>`;
  });
}

/** @param {Api.Step} step */
function hits({ hits: many }) {
  return many
    ? html`<br /><span class="small"
          >${many.count} bumps, ${length(many.pitch_mm, { digits: 2 }).text} apart</span
        >`
    : nothing;
}

const PRINTED = WORST_FIRST.filter((level) => level !== "ok");

/**
 * The marks of a step: each level once, with the letters of what it says below.
 * @param {Remark[]} remarks
 */
function byLevel(remarks) {
  return PRINTED.filter((level) => level !== "note") // it names its steps below
    .map((level) => ({
      level,
      letters: remarks.filter((remark) => remark.level === level).map(({ letter }) => letter),
    }))
    .filter(({ letters }) => letters.length)
    .map(({ level, letters }) => html`<div class="mark">${flag(level)} <b>${letters.join(" ")}</b></div>`);
}

/**
 * Every sentence once, worst first, with a letter and the steps it is said of.
 * @param {Check[]} checks
 * @returns {Remark[]}
 */
function collect(checks) {
  /** @type {Map<string, Remark>} */
  const found = new Map();
  for (const level of PRINTED) {
    for (const check of checks.filter((one) => signOf(one) === level)) {
      const key = `${level} ${check.template} ${remedyOf(check)}`;
      const remark = found.get(key) ?? {
        letter: letterOf(found.size),
        level,
        checks: [],
        steps: [],
      };
      remark.checks.push(check);
      remark.steps.push(...(check.steps ?? (check.step ? [check.step] : [])));
      found.set(key, remark);
    }
  }
  return [...found.values()];
}

/**
 * a, b, … z, a2, b2, …
 * @param {number} index
 * @returns {string}
 */
const letterOf = (index) =>
  String.fromCharCode(97 + (index % 26)) + (index < 26 ? "" : String(Math.floor(index / 26) + 1));

/** @param {Remark[]} remarks */
function remarkList(remarks) {
  return html`<div class="remarks" data-test="sheet-remarks">
    ${PRINTED.map((level) => {
      const own = remarks.filter((remark) => remark.level === level);
      if (!own.length) return nothing;
      return html`<section data-level=${level}>
        <h3>${flag(level)}</h3>
        <ul>
          ${own.map(
            ({ letter, checks, steps }) =>
              html`<li>
                <b>${letter}</b>
                ${steps.length ? html`<b>Step ${steps.join(", ")}.</b> ` : nothing}${together(checks)}
              </li>`,
          )}
        </ul>
      </section>`;
    })}
  </div>`;
}

/**
 * The sentence of findings that differ only in their numbers: the numbers side by side.
 * @param {Check[]} checks
 */
function together(checks) {
  return `${checks[0].template} ${remedyOf(checks[0])}`
    .replace(/\{(\w+)\}/g, (_, name) =>
      [...new Set(checks.map(({ numbers }) => inSentence(byName(name, numbers[name]))))].join(" / "),
    )
    .trim();
}

/**
 * Angle and depth to set.
 * @param {Api.Step} step
 * @param {{set_angle_deg: number|null, punch_depth_mm: number|null, firstHit: unknown}} setting
 */
function setWords(step, { set_angle_deg: set, punch_depth_mm: depth, firstHit }) {
  if (set === null && step.die) return html`<b>no setting</b>`;
  const first = firstHit ? html` <span class="small" data-test="sheet-first">first hit</span>` : nothing;
  return html`<b>${words(angle(set))}</b>${first}<br />depth <b>${length(depth, { digits: 2 }).text}</b>`;
}

/** @param {{set_angle_deg: number|null, fromTrial: boolean}} setting */
const fromPiece = (setting) => setting.fromTrial && setting.set_angle_deg !== null;
