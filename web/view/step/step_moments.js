// What a step's pictures show: before, the closest approach, after; and the words that go with them.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { momentAt, momentOf, shownAt, turningPoints } from "../../drawing/motion.js";
import { angle, inSentence, length, words } from "../../app/shell/units.js";

/** @typedef {import("../../drawing/motion.js").Shown} Shown */
/** @typedef {Api.Step & {drawing: Api.Drawing}} Drawn a step that has its pictures */
/** @typedef {Drawn & {motion: Api.Motion}} Moving */
/**
 * @typedef {{before: number, during: number, after: number, moment: Api.Frame, shown: Shown,
 *   near: Api.Near|null, hit: boolean, name: string}} Moments shares of the motion; what is in between, drawn
 */

const FAR_MM = 100; // further away than this nothing is worth a mark

/**
 * What is run into worst, or what comes closest, unless it is far away.
 * @param {Api.Step} step
 * @returns {Api.Near|null}
 */
export function nearOf({ clearance }) {
  const near = clearance?.hits?.[0] ?? clearance?.nearest ?? null;
  return near && near.distance_mm <= FAR_MM ? near : null;
}

/**
 * @param {Api.Step} step
 * @returns {Moments|null} null for a step that does not say how it moves
 */
export function momentsOf(step) {
  const { drawing, motion } = step;
  if (!drawing || !motion?.frames?.length) return null;
  const near = nearOf(step);
  const { before, after } = turningPoints(motion);
  const moment = near ? momentOf(motion, near) : momentAt(motion, (before + after) / 2);
  const hit = Boolean(step.clearance?.hits?.length);
  return {
    before,
    during: moment.share,
    after,
    moment,
    shown: shownAt(drawing, motion, moment),
    near,
    hit,
    name: hit ? (near && near.distance_mm > 0 ? "Too near" : "Collision") : near ? "Closest" : "Half way",
  };
}

/**
 * What the step's clearance came to, in one sentence.
 * @param {Api.Step} step
 * @returns {string}
 */
export function nearWords(step) {
  const { clearance } = step;
  if (!clearance) return "Clearance was not checked at this step.";
  const near = nearOf(step);
  if (!near) return `Nothing comes within ${inSentence(length(FAR_MM, { digits: 0 }))} of the part.`;
  const size = inSentence(length(Math.abs(near.distance_mm)));
  const wanted =
    typeof clearance.needed_mm === "number" ? `, ${inSentence(length(clearance.needed_mm))} wanted` : "";
  const flat = near.flat_name
    ? `${near.flat_name[0].toUpperCase()}${near.flat_name.slice(1)}`
    : near.flat
      ? `Flat ${near.flat}`
      : "The part";
  if (near.distance_mm <= 0) return `${flat} runs ${size} into the ${thing(near.tool)}, ${when(near)}.`;
  return (
    `Closest: ${flat.toLowerCase()} is ${size} from the ${thing(near.tool)}, ` +
    `${when(near)}${clearance.hits?.length ? wanted : ""}.`
  );
}

/**
 * @param {string} tool
 * @returns {string}
 */
const thing = (tool) => ({ gauge: "gauge finger", sheet: "part itself" })[tool] ?? tool;

/**
 * @param {Api.Near} near
 * @returns {string}
 */
function when({ phase, included_angle_deg: included, punch_travel_mm: travel }) {
  const above = words(length(Math.max(0, -travel), { digits: 0 }));
  if (phase === "approach") return `as the punch comes down, ${above} above the sheet`;
  if (phase === "withdrawal") {
    return travel < 0 ? `as the punch rises, ${above} above where it touched` : "as the punch starts to rise";
  }
  return `at ${words(angle(included))}`;
}

/**
 * What a moment is, for the line under the slider.
 * @param {Moving} step
 * @param {Api.Frame} moment
 * @returns {string}
 */
export function momentWords({ motion }, moment) {
  const included = words(angle(moment.included_angle_deg));
  if (moment.phase === "bend") {
    return motion.frames[0].phase === "bend" ? `Hem closing, ${included}` : `Bending, ${included}`;
  }
  if (moment.phase === "release") return `Releasing, ${included}`;
  if (moment.phase === "taking out") return `Taking it out${tilted(motion, moment)}`;
  if (moment.phase === "putting in") return `Putting it in${tilted(motion, moment)}`;
  const above = words(length(Math.max(0, moment.punch_y_mm), { digits: 0 }));
  if (moment.phase === "withdrawal") return `Punch rising, ${above} up`;
  return moment.punch_y_mm > 0 ? `Punch coming down, ${above} up` : "First touch, sheet flat";
}

/**
 * How far a part in the hands is tilted from where it lies at the bend.
 * @param {Api.Motion} motion
 * @param {Api.Frame} moment
 * @returns {string}
 */
function tilted({ frames }, { phase, right }) {
  const lies =
    phase === "putting in"
      ? frames.find((frame) => frame.phase === "approach")
      : [...frames].reverse().find((frame) => frame.phase === "withdrawal");
  const tilt = Math.round(Math.abs(right[2] - (lies ?? frames[0]).right[2]));
  return tilt ? `, tilted by ${tilt}°` : ", no tilt";
}

/** @typedef {{kind: "slide"|"swing"|"unknown"|"trapped", what: string, how: string}} Way */

const HANDS = "Punch still, at its top. Fingers never between.";

/**
 * The way in and out, where it is not straight.
 * @param {Api.Step} step
 * @returns {Way|null}
 */
function wayOf({ clearance }) {
  const { way_in: into, way_out: out, rides_up: ridesUp, clear } = clearance ?? {};
  if (out === "trapped") {
    return {
      kind: "trapped",
      what: "Trapped",
      how: "After this bend it can be neither lifted away nor slid off the tools.",
    };
  }
  if (clear === false) return null;
  if (into === "unknown" || out === "unknown") {
    return {
      kind: "unknown",
      what: `No way ${out === "unknown" ? "out" : "in"} found`,
      how: "Try it with a scrap piece, the press off, before you bend.",
    };
  }
  const [slid, swung] = [sides(into, out, "slide"), sides(into, out, "swing")];
  const hung = ridesUp ? "It rides up with it. " : "";
  if (slid && swung) {
    return {
      kind: "slide",
      what: `Slide it ${slid}, tilt it ${swung}`,
      how: `Slide along the tools. ${hung}${HANDS}`,
    };
  }
  if (slid) {
    return {
      kind: "slide",
      what: `Slide it ${slid}`,
      how: `Along the tools: no way past the punch was found.`,
    };
  }
  if (swung) {
    return {
      kind: "swing",
      what: hung ? `Unhook it from the punch${into === "swing" ? ", tilt it in" : ""}` : `Tilt it ${swung}`,
      how: `${hung}${HANDS}`,
    };
  }
  return null;
}

/**
 * Which ways are of one kind, in words.
 * @param {string|undefined} into
 * @param {string|undefined} out
 * @param {string} kind
 * @returns {string}
 */
const sides = (into, out, kind) =>
  [into === kind && "in", out === kind && "out"].filter(Boolean).join(" and ");

/**
 * That way with its sign.
 * @param {Api.Step} step
 * @param {{short?: boolean}} [how]
 */
export function wayWords(step, { short = false } = {}) {
  const way = wayOf(step);
  if (!way) return nothing;
  if (short) {
    return html`<span class="turn" data-test="way" data-way=${way.kind}
      >${waySign(way.kind)}<b>${way.what}.</b></span
    >`;
  }
  return html`<div class="lie way ${way.kind}" data-test="way" data-way=${way.kind}>
    ${waySign(way.kind)}
    <p><b>${way.what}.</b> ${way.how}</p>
  </div>`;
}

/** @param {Way["kind"]} kind */
const waySign = (kind) => (kind === "swing" ? tiltSign : slideSign(kind !== "slide"));

/** The punch from its end, and the part tilted off it to the front. */
const tiltSign = html`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`;

/**
 * The sheet between the tools, seen from the operator, and the arrow along them.
 * @param {boolean} trapped
 */
const slideSign = (trapped) =>
  html`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${trapped ? "M46 22L60 36M60 22L46 36" : "M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`;
