// From the API's rings of points to SVG paths; y turned over, nothing else changed.

/** @typedef {[number, number][]} Ring */

/**
 * @param {Ring} ring
 * @returns {string} a closed path
 */
export function closedPath(ring) {
  return ring.length ? `M${ring.map(([x, y]) => `${x} ${-y}`).join("L")}Z` : "";
}

/**
 * @param {Ring} line
 * @returns {string} an open path
 */
export function openPath(line) {
  return line.length ? `M${line.map(([x, y]) => `${x} ${-y}`).join("L")}` : "";
}

/**
 * The box around rings: [x min, y min, x max, y max].
 * @param {Ring[]} rings
 * @returns {[number, number, number, number]}
 */
export function boundsOf(rings) {
  const xs = rings.flat().map(([x]) => x);
  const ys = rings.flat().map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/**
 * A viewBox for bounds with a margin.
 * @param {[number, number, number, number]} bounds
 * @param {number} margin
 * @returns {string}
 */
export function viewBox([left, bottom, right, top], margin) {
  return `${left - margin} ${-top - margin} ${right - left + 2 * margin} ${top - bottom + 2 * margin}`;
}

/**
 * From millimetres to drawing pixels, y turned over, so that what is drawn fits a frame.
 * @param {[number, number, number, number]} bounds
 * @param {number} wide
 * @param {number} tall
 * @returns {(point: [number, number]) => [number, number]}
 */
export function pixelsOf([left, bottom, right, top], wide, tall) {
  const scale = Math.min(wide / Math.max(right - left, 1e-6), tall / Math.max(top - bottom, 1e-6));
  return ([x, y]) => [(x - left) * scale, (top - y) * scale];
}
