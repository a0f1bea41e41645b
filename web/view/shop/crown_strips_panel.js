// Three short strips along the bed: what they say of how far the press gives way in its middle.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call, messageOf, Problem } from "../../app/sync/api.js";
import { readAngle } from "../../app/results/measured_bend.js";
import { angle, length, lengthToType, lengthUnit, typedLength, words } from "../../app/shell/units.js";
import { field, pick, submitting } from "../common/field.js";

/**
 * @typedef {{typed: Record<string, string>, wrong: Record<string, string[]>, general: string, busy: boolean,
 *   found: Api.StripTest|null}} Strips
 */

/** @returns {Strips} */
export const freshStrips = () => ({ typed: {}, wrong: {}, general: "", busy: false, found: null });

/** @type {[string, string][]} */
const ANGLES = [
  ["left_deg", "Left"],
  ["middle_deg", "Middle"],
  ["right_deg", "Right"],
];
/** @type {[string, string, string][]} */
const LENGTHS = [
  ["thickness_mm", "Thickness of the strips", ""],
  ["strip_length_mm", "Length of the bend", "All three alike, at most a quarter of the bed."],
  ["end_mm", "Outer strips from the bed’s end", "To the middle of the strip, left and right alike."],
];

/**
 * @param {Strips} strips
 * @param {{metals: [string, string][], dies: [string, string][], punches: [string, string][]}} shop
 * @param {{draw: () => void, take: (typed: string) => void}} act take: put the figure into the press's box
 */
export function stripPanel(strips, { metals, dies, punches }, { draw, take }) {
  const { typed, wrong, found } = strips;
  const change = (/** @type {string} */ name) => (/** @type {string} */ value) => {
    typed[name] = value;
    delete wrong[name];
  };
  const of = (/** @type {string} */ name, /** @type {string} */ label) => ({
    name,
    label,
    value: typed[name] ?? "",
    wrong: wrong[name],
    change: change(name),
  });
  const choose = (
    /** @type {string} */ name,
    /** @type {string} */ label,
    /** @type {[string, string][]} */ list,
  ) => html`<div class="broad">${pick({ ...of(name, label), options: [["", "Choose"], ...list] })}</div>`;
  return html`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one is, the more bed and ram give way.
    </p>
    <form novalidate @submit=${submitting(() => ask(strips, draw))}>
      <div class="fields">
        ${choose("metal", "Metal", metals)} ${choose("die", "Die", dies)} ${choose("punch", "Punch", punches)}
        ${LENGTHS.map(([name, label, hint]) =>
          field({ ...of(name, label), unit: lengthUnit(), keys: "decimal", hint }),
        )}
        ${ANGLES.map(([name, label]) => field({ ...of(name, label), unit: "°", keys: "decimal" }))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${strips.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${strips.busy}>Work it out</button>
      </div>
    </form>
    ${found ? answer(found, take) : nothing}
  </details>`;
}

/**
 * @param {Api.StripTest} found
 * @param {(typed: string) => void} take
 */
function answer(found, take) {
  const mm = (/** @type {number} */ value) => words(length(value, { digits: 2 }));
  return html`<div data-test="strips-found" role="status">
    <p>
      <b>About ${mm(found.deflection_mm)}</b> in the middle at full force over the whole bed, between
      ${mm(found.deflection_mm_low)} and ${mm(found.deflection_mm_high)}: the middle strip is
      ${words(angle(found.middle_open_deg))} more open.
    </p>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="strips-take"
        @click=${() => take(lengthToType(found.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`;
}

/**
 * @param {Strips} strips
 * @param {() => void} draw
 */
async function ask(strips, draw) {
  if (strips.busy) return;
  Object.assign(strips, { busy: true, wrong: {}, general: "", found: null });
  draw();
  try {
    const { body } = await call("POST", "/press/strip-test", { body: bodyOf(strips.typed) });
    strips.found = /** @type {Api.StripTest} */ (body);
  } catch (error) {
    strips.wrong = error instanceof Problem ? error.errors : {};
    strips.general = messageOf(error);
  }
  strips.busy = false;
  draw();
}

/** @param {Record<string, string>} typed */
function bodyOf(typed) {
  /** @type {Record<string, unknown>} */
  const body = { metal: typed.metal, die: typed.die, punch: typed.punch };
  for (const [name] of LENGTHS) body[name] = typedLength(typed[name] ?? "");
  for (const [name] of ANGLES) body[name] = readAngle(typed[name] ?? "");
  return body;
}
