// A picture of one figure over another: where a value stands between two edges, and round marks.

/** @typedef {{at: (value: number) => number, marks: {at: number, text: string}[]}} Axis */

/**
 * @param {number} low
 * @param {number} high what the axis must hold, as the API gives it
 * @param {{from: number, to: number, size?: number, most?: number, steps?: number[]}} how edges in the
 *   picture; how much one shown unit is; how many marks at most; the steps to choose from
 * @returns {Axis}
 */
export function axis(low, high, { from, to, size = 1, most = 6, steps }) {
  const span = (high - low) / size;
  const step = (steps?.find((one) => span / one <= most) ?? roundStep(span, most)) * size;
  const start = Math.floor(low / step + 1e-9) * step;
  const end = Math.ceil(high / step - 1e-9) * step;
  const at = (/** @type {number} */ value) => tidy(from + ((value - start) / (end - start)) * (to - from));
  const count = Math.round((end - start) / step);
  const digits = Math.max(0, -Math.floor(Math.log10(step / size) + 1e-9));
  const marks = Array.from({ length: count + 1 }, (_, index) => start + index * step).map((value) => ({
    at: at(value),
    text: (value / size)
      .toFixed(digits)
      .replace(/^-0(\.0*)?$/, "0")
      .replace("-", "−"),
  }));
  return { at, marks };
}

/**
 * 1, 2 or 5 times a power of ten, so that no more than so many steps are needed.
 * @param {number} span
 * @param {number} most
 */
function roundStep(span, most) {
  const least = (span > 0 ? span : 1) / most;
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((times) => times * power).find((step) => step >= least * (1 - 1e-9)) ?? 10 * power;
}

/** @param {number} pixels */
const tidy = (pixels) => Math.round(pixels * 100) / 100;

/**
 * A line through points.
 * @param {[number, number][]} points
 * @returns {string}
 */
export function line(points) {
  return points.length ? `M${points.map(([x, y]) => `${x} ${y}`).join("L")}` : "";
}
