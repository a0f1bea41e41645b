// The four stages of a test bend: choose, bend, measure, what it taught.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { poseDrawing } from "../../drawing/pose.js";
import { stripDrawing } from "../../drawing/strip.js";
import { angle, length, lengthUnit, words } from "../../app/shell/units.js";
import { forceFigure } from "../common/force.js";
import { field, pick, submitting } from "../common/field.js";
import { placesChoice } from "./result_form.js";
import { everyTimeCautions, otherFindings, urgentFindings } from "../common/findings_in_order.js";
import { flag, sentence, sentences } from "../common/finding.js";
import { firstHitLine } from "../plan/first_hit.js";
import { measuredFigures } from "./measured_figures.js";
import { setFigure } from "../step/setting.js";
import { wrongAt } from "../common/form_errors.js";

/** @typedef {import("../../app/forms/test_bend_form.js").Stage} Stage */
/** @typedef {import("../../app/forms/test_bend_form.js").State} State */
/** @typedef {State & {bend: Api.OneBend}} Answered the shop has said how the strip is bent */
/**
 * @typedef {{draw: () => void, go: (stage: Stage) => void, choose: () => void, send: () => void,
 *   again: () => void}} Act
 */

/** @type {[Stage, string][]} */
const STAGES = [
  ["choose", "Choose"],
  ["bend", "Bend"],
  ["measure", "Measure"],
  ["taught", "Result"],
];
const STRIP_MM = 300; // long enough to hold well away from the punch
const HANDS_MM = 102; // the least distance of hands from the point of operation that US guidance names, 4 in

/** @param {Stage} stage */
export const stageList = (stage) =>
  html`<ol class="stages" aria-label="Stages">
    ${STAGES.map(([name, word]) => html`<li aria-current=${name === stage ? "step" : "false"}>${word}</li>`)}
  </ol>`;

/** @param {State} state */
const fault = ({ general }) =>
  general ? html`<p class="wrong" role="alert" data-test="wrong">${general}</p>` : nothing;

/**
 * @param {State} state
 * @param {{metals: Api.Metal[], dies: Api.Die[], punches: Api.Punch[]}} shop
 * @param {Act} act
 */
export function chooseStage(state, { metals, dies, punches }, { choose, draw }) {
  const { form, typed, wrong, busy } = state;
  /**
   * @param {keyof typeof form} name
   * @param {string} label
   * @param {Partial<import("../common/field.js").FieldOptions>} [more]
   */
  const box = (name, label, more = {}) =>
    field({
      name,
      label,
      value: form[name],
      wrong: wrongAt(wrong, name),
      change: (value) => Object.assign(form, { [name]: value }),
      unit: lengthUnit(),
      next: true,
      ...more,
    });
  /**
   * @param {"metal"|"die"|"punch"} name
   * @param {string} label
   * @param {[string, string][]} options
   */
  const list = (name, label, options) =>
    pick({
      name,
      label,
      value: form[name],
      options,
      wrong: wrongAt(wrong, name),
      change: (value) => {
        Object.assign(form, { [name]: value });
        draw();
      },
    });
  return html`<form novalidate data-test="choose-form" @submit=${submitting(choose)}>
    <p>One strip, bent and measured, turns the handbook’s figures into those of your metal and your tools.</p>
    ${fault(state)}
    <div class="test-fields">
      ${list(
        "metal",
        "Metal",
        metals.map(({ code, name }) => [code, name]),
      )}
      ${box("thickness_mm", "Thickness, measured", { hint: "With the micrometer, away from the burr." })}
      ${box("bend_length_mm", "Strip’s width, along the bend")}
      ${box("included_angle_deg", "Angle wanted", { unit: "°, 90 is square", keys: "decimal" })}
      ${list("die", "Die", toolOptions(dies, form.die))}
      ${list("punch", "Punch", toolOptions(punches, form.punch))}
      ${field({
        name: "lot",
        label: "Lot or heat",
        value: typed.lot,
        wrong: wrongAt(wrong, "lot"),
        change: (value) => Object.assign(typed, { lot: value }),
        hint: "As on the sheet’s tag, if you know it.",
      })}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${busy}>
        ${busy ? "Working it out…" : "Next: bend it"}
      </button>
    </div>
  </form>`;
}

/**
 * @param {(Api.Die|Api.Punch)[]} tools
 * @param {string} chosen
 * @returns {[string, string][]}
 */
function toolOptions(tools, chosen) {
  const all = /** @type {[string, string][]} */ (tools.map(({ code, name }) => [code, `${code} · ${name}`]));
  const gone = /** @type {[string, string][]} */ (
    chosen && !tools.some(({ code }) => code === chosen) ? [[chosen, `${chosen} (not in the crib)`]] : []
  );
  return [["", "Best of the crib"], ...gone, ...all];
}

/**
 * @param {Answered} state
 * @param {Act} act
 */
export function bendStage({ bend }, { go }) {
  const may = bend.worst !== "stop" && bend.die && bend.punch;
  const hands = words(length(HANDS_MM, { digits: 0 }));
  return html`${urgentFindings(bend.checks)}
    <section class="panel urgent hands" aria-label="Hands" data-test="hands">
      <p>
        ${flag("caution")} <b>A small strip brings hands close.</b> Hold it at its far end, ${hands} or more
        from the punch. Shorter: tongs or a magnet, never fingers. Nobody else near the pedal. Guards on. The
        ends swing up: face clear of them.
      </p>
    </section>
    <div class="columns">
      <div>
        <ol class="do-list">
          <li>
            Cut a strip <b>${words(length(bend.bend_length_mm, { digits: 0 }))}</b> wide and about
            <b>${words(length(STRIP_MM, { digits: 0 }))}</b> long, its grain as in your parts. Deburr it:
            edges cut.
          </li>
          <li>
            Measure its <b>length</b> before you bend it, with a calliper or a good rule, and write it down.
          </li>
          <li>Lay it in the middle of the tools, square to the gauge, and bend it in its middle.</li>
        </ol>
        <div class="tools-line" data-test="tools-line">
          Die <b>${bend.die ?? "none"}</b>, punch <b>${bend.punch ?? "none"}</b>
        </div>
        <div class="set-figures">
          ${setFigure("Angle to set", angle(bend.set_angle_deg), "set-angle")}
          ${setFigure("Depth", length(bend.punch_depth_mm, { digits: 2 }), "punch-depth")}
        </div>
        ${firstHitLine(bend.first_hit)}
        <div class="figures">${forceFigure("Allow for", bend)}</div>
      </div>
      <div class="strip-pictures">
        ${stripDrawing(STRIP_MM, bend.bend_length_mm)}
        ${
          bend.drawing
            ? poseDrawing(bend.drawing, {
                pose: "before",
                close: true,
                opening: bend.v_opening_mm,
                gauge: "",
                angle: bend.set_angle_deg,
                words: "The strip on the die before the bend",
              })
            : nothing
        }
      </div>
    </div>
    ${otherFindings(bend.checks)} ${everyTimeCautions(bend.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${() => go("choose")}>Back</button>
      ${
        may
          ? html`<button type="button" class="button next" data-test="next" @click=${() => go("measure")}>
              It is bent: measure
            </button>`
          : html`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`
      }
    </div>`;
}

/**
 * @param {Answered} state
 * @param {Act} act
 */
export function measureStage(state, { go, send, draw }) {
  const { typed, wrong, bend, busy } = state;
  /**
   * @param {keyof typeof typed} key
   * @param {string} name
   * @param {string} label
   * @param {Partial<import("../common/field.js").FieldOptions>} [more]
   */
  const box = (key, name, label, more = {}) =>
    field({
      name,
      label,
      value: typed[key],
      wrong: wrongAt(wrong, name),
      change: (value) => Object.assign(typed, { [key]: value }),
      unit: lengthUnit(),
      next: true,
      ...more,
    });
  const degrees = /** @type {const} */ ({ keys: "decimal", unit: "°" });
  return html`<form novalidate data-test="measure-form" @submit=${submitting(send)}>
    ${fault(state)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${words(angle(bend.included_angle_deg))}. The angle is
      needed; the lengths and the radius improve the figures.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="result-angles ${typed.places}">
          ${
            typed.places === "one"
              ? box("one", "measured_deg", "Angle measured", degrees)
              : [
                  box("left", "left_deg", "Left", degrees),
                  box("middle", "middle_deg", "Middle", degrees),
                  box("right", "right_deg", "Right", degrees),
                ]
          }
        </div>
        ${placesChoice(typed, draw)}
      </fieldset>
      <fieldset class="panel">
        <legend><span class="badge-word">2</span> Lengths</legend>
        ${box("flat", "flat_length_mm", "Strip’s length before the bend")}
        <div class="fields">
          ${box("leftFlange", "flange_left_mm", "One flange")}
          ${box("rightFlange", "flange_right_mm", "The other")}
        </div>
        <p class="hint">Outside: from the edge to the outer face of the other flange.</p>
      </fieldset>
      <fieldset class="panel">
        <legend><span class="badge-word">3</span> Inside radius</legend>
        ${box("radius", "radius_mm", "Radius inside the bend", {
          hint: "With a radius gauge or a drill’s shank that just fits.",
        })}
      </fieldset>
    </div>
    <details
      class="more-measured"
      ?open=${["set_angle_deg", "punch_depth_mm", "note"].some((name) => wrongAt(wrong, name).length)}>
      <summary>Another setting, depth shown, note</summary>
      <div class="test-fields">
        ${box("set", "set_angle_deg", "Angle that was set", {
          ...degrees,
          placeholder: angle(bend.set_angle_deg).text,
          hint: "Leave it if it was set as shown.",
        })}
        ${box("depth", "punch_depth_mm", "Depth the press showed", {
          hint: "Travel from first touch of the flat sheet, if the press shows it.",
        })}
        ${box("note", "note", "Note", { unit: "", hint: "Grain, coating, anything odd." })}
      </div>
    </details>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${() => go("bend")}>Back</button>
      <button class="button next" data-test="done" ?disabled=${busy}>${busy ? "Sending…" : "Done"}</button>
    </div>
  </form>`;
}

/**
 * @param {State} state
 * @param {Api.Metal[]} metals
 * @param {Act} act
 */
export function changedStage({ answer, form, busy }, metals, { again }) {
  if (!answer) return nothing;
  const metal = metals.find(({ code }) => code === form.metal)?.name ?? form.metal;
  const { teaches, asks, said: why } = answer.test_bend;
  return html`<h2>What it changed <small>${metal}</small></h2>
    <div class=${answer.figures.length ? "unseen" : "panel"} role="status" data-test="taught-words">
      ${answer.said.map((said) => html`<p>${sentence(said)}</p>`)}
    </div>
    ${
      teaches
        ? nothing
        : html`<section class="panel urgent" data-test="teaches-nothing">
            <p>${flag("caution")} <b>Kept, but it does not count.</b> ${sentences(why)}</p>
            ${
              asks
                ? html`<p>
                    <a href="/shop/learned/${encodeURIComponent(form.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`
                : nothing
            }
          </section>`
    }
    ${
      answer.outliers.length
        ? html`<section class="panel urgent" data-test="outliers">
            <h2>${flag("caution", "Odd one out")}</h2>
            ${answer.outliers.map(({ said }) => html`<p>${sentences(said)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(form.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`
        : nothing
    }
    ${measuredFigures(answer.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${
        answer.cards.length
          ? html`<ul class="rows">
              ${answer.cards.map(changedCard)}
            </ul>`
          : html`<p data-test="no-cards">None.</p>`
      }
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${busy} @click=${again}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(form.metal)}" data-test="to-learned"
        >Measured springback</a
      >
    </div>`;
}

/** @param {{code: string, title: string, said: Api.Said[]}} card */
const changedCard = ({ code, title, said }) =>
  html`<li class="row" data-test="changed-card" data-code=${code}>
    <a href="/c/${code}">
      <span class="lead">${title || code}</span> <span class="code">${code}</span>
      <span class="more">${said.map(sentence).join("; ")}</span>
    </a>
  </li>`;
