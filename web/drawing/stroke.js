// The stroke in two pictures, from the API's numbers: force over punch depth with what press and
// tools bear, and angle over punch depth with the results as points.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { angle, force, forceUnit, length, lengthUnit, MM_PER_INCH, words } from "../app/shell/units.js";
import { axis, line } from "./axes.js";

/**
 * @typedef {import("./axes.js").Axis} Axis
 */

const WIDTH = 400;
const HEIGHT = 320;
const FRAME = { left: 58, right: WIDTH - 14, top: 20, bottom: HEIGHT - 54 };
const FONT = 18;
const NEAR = 3; // a limit higher than so many times the curve is named at the top
const NEAR_LOWEST = 5; // the lowest one is drawn in up to here

/**
 * Force over the stroke.
 * @param {Api.StrokeOfBend} stroke
 */
export function forceOverStroke({ curve, set, peak, limits }) {
  const top = Math.max(...curve.map((point) => point.force_kn_high));
  const known = limits
    .filter((limit) => limit.limit_kn !== null)
    .sort((a, b) => Number(b.limit_kn) - Number(a.limit_kn));
  const lowest = Number(known.at(-1)?.limit_kn);
  const near = known.filter(({ limit_kn: kn }) => Number(kn) <= (kn === lowest ? NEAR_LOWEST : NEAR) * top);
  const across = depthAxis(curve);
  const up = axis(0, Math.max(top, ...near.map((limit) => Number(limit.limit_kn))), {
    from: FRAME.bottom,
    to: FRAME.top + 28,
    size: forceUnit().size,
  });
  const at = (
    /** @type {Api.StrokePoint} */ point,
    /** @type {"force_kn"|"force_kn_low"|"force_kn_high"} */ name,
  ) => /** @type {[number, number]} */ ([across.at(point.punch_depth_mm), up.at(point[name])]);
  const band = [
    ...curve.map((point) => at(point, "force_kn_high")),
    ...curve.map((point) => at(point, "force_kn_low")).reverse(),
  ];
  const said = peak
    ? `Force over punch depth. The peak is expected at ${words(force(peak.force_kn))}, at a depth of ` +
      `${words(mm2(peak.punch_depth_mm))}.`
    : "Force over punch depth, to where tools or press end.";
  return html`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${WIDTH} ${HEIGHT}"
    role="img"
    aria-label=${said}
    data-test="stroke-force">
    ${grid(across, up, forceUnit().unit)}
    <path class="band" d="${line(band)}Z" />
    ${set.punch_depth_mm === null ? nothing : setLine(across.at(set.punch_depth_mm))} ${limitLines(near, up)}
    ${farLimits(known.filter((limit) => !near.includes(limit)))}
    <path class="curve" d=${line(curve.map((point) => at(point, "force_kn")))} data-test="force-curve" />
    ${peak ? peakMark(across.at(peak.punch_depth_mm), up.at(peak.force_kn)) : nothing}
  </svg>`;
}

/**
 * Angle over the stroke, under load and let go.
 * @param {Api.StrokeOfBend} stroke
 */
export function angleOverStroke({ curve, set, trials }) {
  const drawn = trials.filter((trial) => trial.punch_depth_mm !== null);
  const across = depthAxis(
    curve,
    drawn.map((trial) => Number(trial.punch_depth_mm)),
  );
  const all = [...curve.map((point) => point.loaded_angle_deg), ...drawn.map((trial) => trial.measured_deg)];
  const up = axis(Math.min(...all), 180, { from: FRAME.bottom, to: FRAME.top, steps: [5, 10, 15, 30, 45] });
  const over = (/** @type {"loaded_angle_deg"|"released_angle_deg"} */ name) =>
    line(curve.map((point) => [across.at(point.punch_depth_mm), up.at(point[name])]));
  const at =
    set.set_angle_deg === null
      ? null
      : { x: across.at(Number(set.punch_depth_mm)), y: up.at(set.set_angle_deg) };
  const setting = at
    ? `${words(angle(set.set_angle_deg))} under load at a depth of ${words(mm2(Number(set.punch_depth_mm)))}`
    : "Nothing to set";
  const said = `Angle over punch depth. ${setting}. ${drawn.length} results drawn.`;
  return html`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${WIDTH} ${HEIGHT}"
    role="img"
    aria-label=${said}
    data-test="stroke-angle">
    ${grid(across, up, "°")} ${at ? setLine(at.x) : nothing}
    <path class="curve" d=${over("loaded_angle_deg")} />
    <path class="curve let-go" d=${over("released_angle_deg")} />
    ${at ? svg`<circle class="set-point" cx=${at.x} cy=${at.y} r="5"/>` : nothing}
    ${drawn.map((trial) =>
      resultPoint(across.at(Number(trial.punch_depth_mm)), up.at(trial.measured_deg), trial),
    )}
  </svg>`;
}

/** @param {number} mm */
const mm2 = (mm) => length(mm, { digits: 2 });

/**
 * @param {Api.StrokePoint[]} curve
 * @param {number[]} [more]
 */
function depthAxis(curve, more = []) {
  const deepest = Math.max(...curve.map((point) => point.punch_depth_mm), ...more);
  return axis(0, deepest, {
    from: FRAME.left,
    to: FRAME.right,
    size: lengthUnit() === "in" ? MM_PER_INCH : 1,
    most: 6,
  });
}

/**
 * @param {Axis} across
 * @param {Axis} up
 * @param {string} unit
 */
function grid(across, up, unit) {
  const { left, right, top, bottom } = FRAME;
  const degrees = unit === "°";
  const levels = up.marks.map(
    ({ at, text }) => svg`<path class="faint" d="M${left} ${at}H${right}"/>
      <text x=${left - 6} y=${at + 6} text-anchor="end"
        font-size=${FONT}>${text}${degrees ? "°" : ""}</text>`,
  );
  const depths = across.marks.map(
    ({ at, text }) => svg`<path class="faint" d="M${at} ${bottom}v6"/>
      <text x=${Math.min(at, WIDTH - text.length * FONT * 0.3)} y=${bottom + 24} text-anchor="middle"
        font-size=${FONT}>${text}</text>`,
  );
  const called = svg`<text class="quiet" x=${left - 6} y="18" text-anchor="end"
    font-size=${FONT}>${unit}</text>`;
  return svg`
    ${levels}
    ${depths}
    <path class="edge" d="M${left} ${top}V${bottom}H${right}"/>
    <text class="quiet" x=${right} y=${HEIGHT - 8} text-anchor="end"
      font-size=${FONT}>punch depth, ${lengthUnit()}</text>
    ${degrees ? nothing : called}`;
}

/** @param {number} x */
const setLine = (x) => svg`<path class="set-line" d="M${x} ${FRAME.top}V${FRAME.bottom}"/>
  <text class="set-word" x=${x - 5} y=${FRAME.bottom - 6} text-anchor="end" font-size=${FONT}>set</text>`;

/**
 * What press and tools bear; names that would cover one another move apart.
 * @param {Api.StrokeLimit[]} limits highest first
 * @param {Axis} up
 */
function limitLines(limits, up) {
  let last = -Infinity;
  return sameLimits(limits).map(({ limit_kn: kn, names }) => {
    const y = up.at(kn);
    last = Math.max(y - 6, last + FONT + 2);
    return svg`<path class="limit" d="M${FRAME.left} ${y}H${FRAME.right}" data-test="limit-line"
        data-kn=${kn}/>
      <text class="limit-word" x=${FRAME.left + 6} y=${last}
        font-size=${FONT}>${names.join(", ")} ${words(force(kn))}</text>`;
  });
}

/**
 * Those that bear alike, together.
 * @param {Api.StrokeLimit[]} limits
 */
function sameLimits(limits) {
  /** @type {Map<number, string[]>} */
  const by = new Map();
  for (const limit of limits) {
    by.set(Number(limit.limit_kn), [...(by.get(Number(limit.limit_kn)) ?? []), limitName(limit)]);
  }
  return [...by].map(([limit_kn, names]) => ({ limit_kn, names }));
}

/** @param {Api.StrokeLimit[]} limits highest first */
function farLimits(limits) {
  if (!limits.length) return nothing;
  const more = limits.length > 1 ? `, ${limits.length - 1} more` : "";
  return svg`<text class="limit-word" x=${FRAME.right} y="18" text-anchor="end" font-size=${FONT}
      data-test="limit-far">↑ ${limitWords(limits[limits.length - 1])}${more}</text>`;
}

/** @param {Api.StrokeLimit} limit */
export const limitWords = ({ what, name, limit_kn: kn }) =>
  `${limitName({ what, name })} ${words(force(kn))}`;

/** @param {{what: string, name: string}} limit */
export function limitName({ what, name }) {
  if (what === "press per metre") return "Bed and ram";
  return what === "press" || !name
    ? what[0].toUpperCase() + what.slice(1)
    : `${what[0].toUpperCase()}${what.slice(1)} ${name}`;
}

/**
 * @param {number} x
 * @param {number} y
 * @param {Api.StrokeResult} trial
 */
function resultPoint(x, y, { id, outlier }) {
  return outlier
    ? svg`<path class="result-odd" d="M${x - 6} ${y - 6}l12 12M${x + 6} ${y - 6}l-12 12"
        data-test="result-point" data-id=${id} data-odd="true"/>`
    : svg`<circle class="result-point" cx=${x} cy=${y} r="6" data-test="result-point" data-id=${id}/>`;
}

/**
 * @param {number} x
 * @param {number} y
 */
const peakMark = (x, y) => svg`<circle class="peak" cx=${x} cy=${y} r="6" data-test="peak-mark"/>`;
