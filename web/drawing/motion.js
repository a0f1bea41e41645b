// A step as it moves, from the API's frames: between two of them place and turn run evenly.

import { closedPath } from "./rings.js";

/** @typedef {[number, number]} Point */
/** @typedef {[number, number, number]} Placed x, y and degrees turned */
/**
 * @typedef {{sheet: string, tools: string[], down: number, gauge: string, back: number}} Shown paths of what
 *   moves; how far down the tools and how far back the gauge are [mm]
 */

/**
 * The moment at a share of the motion.
 * @param {Api.Motion} motion
 * @param {number} share
 * @returns {Api.Frame}
 */
export function momentAt({ frames }, share) {
  const after = frames.findIndex((frame) => frame.share >= share);
  if (after < 0) return frames[frames.length - 1];
  if (after === 0) return frames[0];
  const [a, b] = [frames[after - 1], frames[after]];
  return between(a, b, (share - a.share) / (b.share - a.share));
}

/**
 * @param {Api.Frame} a
 * @param {Api.Frame} b
 * @param {number} part
 * @returns {Api.Frame}
 */
function between(a, b, part) {
  const mix = (/** @type {number} */ from, /** @type {number} */ to) => from + (to - from) * part;
  /**
   * @param {Placed} from
   * @param {Placed} to
   * @returns {Placed}
   */
  const placed = (from, to) => [mix(from[0], to[0]), mix(from[1], to[1]), mix(from[2], to[2])];
  return {
    share: mix(a.share, b.share),
    phase: b.phase,
    included_angle_deg: mix(a.included_angle_deg, b.included_angle_deg),
    punch_y_mm: mix(a.punch_y_mm, b.punch_y_mm),
    left: placed(a.left, b.left),
    right: placed(a.right, b.right),
    inside_radius_mm: mix(a.inside_radius_mm, b.inside_radius_mm),
    half_arc_mm: mix(a.half_arc_mm, b.half_arc_mm),
    gauge_x_mm: a.gauge_x_mm === null || b.gauge_x_mm === null ? null : mix(a.gauge_x_mm, b.gauge_x_mm),
  };
}

/**
 * When the punch first touches, and when it is at the bottom.
 * @param {Api.Motion} motion
 * @returns {{before: number, after: number}}
 */
export function turningPoints({ frames }) {
  const touch = frames.find((frame) => frame.punch_y_mm <= 0) ?? frames[0];
  const lowest = Math.min(...frames.map((frame) => frame.punch_y_mm));
  const bent = [...frames].reverse().find((frame) => frame.phase === "bend") ?? frames[frames.length - 1];
  return { before: touch.share, after: lowest < 0 ? bent.share : frames[frames.length - 1].share };
}

/**
 * The moment of a closest approach, the punch exactly where it was found.
 * @param {Api.Motion} motion
 * @param {Api.Near} near
 * @returns {Api.Frame}
 */
export function momentOf(motion, near) {
  const punch = -near.punch_travel_mm;
  const bending = near.phase === "bend";
  /** @param {Api.Frame} frame */
  const measure = (frame) =>
    bending ? frame.included_angle_deg : near.phase === "approach" ? frame.punch_y_mm : -frame.punch_y_mm;
  const wanted = bending ? near.included_angle_deg : near.phase === "approach" ? punch : -punch;
  const own = stretch(motion.frames, near.phase);
  const found = along(own, measure, wanted);
  return { ...found, punch_y_mm: punch };
}

/**
 * The frames of a phase with the one it starts from.
 * @param {Api.Frame[]} frames
 * @param {string} phase
 * @returns {Api.Frame[]}
 */
function stretch(frames, phase) {
  const wanted = phase === "withdrawal" ? ["release", "withdrawal"] : [phase];
  const first = frames.findIndex((frame) => wanted.includes(frame.phase));
  const own = frames.filter((frame, index) => wanted.includes(frame.phase) || index === first - 1);
  return own.length ? own : frames;
}

/**
 * Where a measure that falls from frame to frame comes down to a value.
 * @param {Api.Frame[]} frames
 * @param {(frame: Api.Frame) => number} measure
 * @param {number} value
 * @returns {Api.Frame}
 */
function along(frames, measure, value) {
  for (let i = 1; i < frames.length; i += 1) {
    const [high, low] = [measure(frames[i - 1]), measure(frames[i])];
    if (value <= high && value >= low && high > low) {
      return between(frames[i - 1], frames[i], (high - value) / (high - low));
    }
  }
  if (value > measure(frames[0])) return frames[0];
  const [before, last] = frames.slice(-2);
  // Clearance is looked at a little beyond the angle to set: the same turn goes on.
  return last.phase === "bend"
    ? between(before, last, (measure(before) - value) / (measure(before) - measure(last)))
    : last;
}

/**
 * The sheet's outline at a moment: wing, arc, wing, arc.
 * @param {Api.Motion} motion
 * @param {Api.Frame} moment
 * @returns {string}
 */
function sheetPath(
  { thickness_mm: t, left, right },
  { left: toLeft, right: toRight, half_arc_mm: arc, inside_radius_mm: r },
) {
  const [startBelow, startAbove] = placedAll(
    [
      [-arc, -t / 2],
      [-arc, t / 2],
    ],
    toLeft,
  );
  const [endBelow, endAbove] = placedAll(
    [
      [arc, -t / 2],
      [arc, t / 2],
    ],
    toRight,
  );
  const to = (/** @type {Point} */ [x, y]) => `${x} ${-y}`;
  const line = (/** @type {Point[]} */ points) => points.map((point) => `L${to(point)}`).join("");
  return (
    `M${to(startBelow)}A${r + t} ${r + t} 0 0 0 ${to(endBelow)}${line(placedAll(right, toRight))}` +
    `L${to(endAbove)}A${r} ${r} 0 0 1 ${to(startAbove)}${line(placedAll(left, toLeft))}Z`
  );
}

/**
 * @typedef {{bounds: number[], share: number}} HandRoom left, bottom, right, top [mm]; how far the picture
 *   has opened to them, 0 to 1
 */

/**
 * What the picture has to show while the part is moved by hand: all its places, but for the last
 * where it is drawn out to the front. It opens as the punch rises, and closes as it comes down.
 * @param {Api.Motion} motion
 * @param {Api.Frame} moment
 * @returns {HandRoom|null}
 */
export function handRoom(motion, { phase, punch_y_mm: up }) {
  const putting = phase === "putting in" || phase === "approach";
  const own = motion.frames.filter((frame) => frame.phase === (putting ? "putting in" : "taking out"));
  if (!own.length || phase === "bend" || phase === "release") return null;
  const top = own[0].punch_y_mm;
  const seen = own.length > 1 ? own.slice(putting ? 1 : 0, putting ? undefined : -1) : own;
  const points = seen.flatMap(({ left, right }) => [
    ...placedAll(motion.left, left),
    ...placedAll(motion.right, right),
  ]);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const bounds = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys, top)];
  return { bounds, share: Math.max(0, Math.min(1, top > 0 ? up / top : 1)) };
}

/**
 * @param {Point[]} points
 * @param {Placed} placed
 * @returns {Point[]}
 */
function placedAll(points, [x, y, turned]) {
  const [cos, sin] = [Math.cos((turned * Math.PI) / 180), Math.sin((turned * Math.PI) / 180)];
  return points.map(([px, py]) => [x + cos * px - sin * py, y + sin * px + cos * py]);
}

/**
 * What a drawing shows of a moment: the paths of what moves.
 * @param {Api.Drawing} drawing
 * @param {Api.Motion} motion
 * @param {Api.Frame} moment
 * @returns {Shown}
 */
export function shownAt(drawing, motion, moment) {
  const down = -moment.punch_y_mm;
  const first = motion.frames[0].gauge_x_mm;
  const back = moment.gauge_x_mm === null || first === null ? 0 : moment.gauge_x_mm - first;
  return {
    sheet: sheetPath(motion, moment),
    tools: [drawing.before.ram, drawing.before.holder, drawing.before.punch].map(closedPath).filter(Boolean),
    down,
    gauge: closedPath(drawing.before.gauge),
    back,
  };
}
