// Where a label may stand: the free place nearest to what it names. All in drawing pixels.

/** @typedef {[number, number]} Point */
/** @typedef {{x: number, y: number, width: number, height: number}} Box x, y is its middle */
/** @typedef {{box: Box, cost: number, lines?: [Point, Point][]}} Candidate */

/**
 * How wide a text will be, near enough to keep labels apart.
 * @param {string} text
 * @param {number} size
 * @returns {number}
 */
export function textWidth(text, size) {
  return text.length * size * 0.6 + size * 0.3;
}

/** Places labels one after the other, each where it hides least. */
export class Placing {
  /** @param {[Point, Point][]} edges what should not be covered */
  constructor(edges) {
    this.edges = edges;
    /** @type {Box[]} */
    this.taken = [];
  }

  /**
   * @template {Candidate} C
   * @param {C[]} candidates
   * @returns {C}
   */
  choose(candidates) {
    let best = candidates[0];
    let least = Infinity;
    for (const candidate of candidates) {
      const cost = candidate.cost + this.cost(candidate);
      if (cost < least) [best, least] = [candidate, cost];
    }
    this.taken.push(best.box);
    for (const line of best.lines ?? []) this.edges.push(line);
    return best;
  }

  /**
   * @param {Candidate} candidate
   * @returns {number}
   */
  cost({ box, lines = [] }) {
    const covered = this.taken.filter((other) => overlap(box, other)).length;
    const hit = this.edges.filter((edge) => meets(box, edge)).length;
    const crossed = lines.reduce(
      (sum, line) => sum + this.edges.filter((edge) => cross(line, edge)).length,
      0,
    );
    const through = lines.reduce(
      (sum, line) => sum + this.taken.filter((other) => meets(other, line)).length,
      0,
    );
    return covered * 40 + Math.min(hit, 6) * 6 + Math.min(crossed, 6) * 3 + through * 20;
  }
}

/**
 * @param {Box} a
 * @param {Box} b
 * @returns {boolean}
 */
function overlap(a, b) {
  return Math.abs(a.x - b.x) * 2 < a.width + b.width && Math.abs(a.y - b.y) * 2 < a.height + b.height;
}

/**
 * Does a line go through a box? Clipped side by side.
 * @param {Box} box
 * @param {[Point, Point]} line
 * @returns {boolean}
 */
function meets(box, [[x1, y1], [x2, y2]]) {
  let from = 0;
  let to = 1;
  /** @type {[number, number, number][]} */
  const sides = [
    [x1 - box.x, x2 - x1, box.width / 2],
    [y1 - box.y, y2 - y1, box.height / 2],
  ];
  for (const [start, run, half] of sides) {
    if (run === 0) {
      if (Math.abs(start) > half) return false;
      continue;
    }
    const [a, b] = [(-half - start) / run, (half - start) / run];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  return from <= to;
}

/**
 * @param {[Point, Point]} one
 * @param {[Point, Point]} other
 * @returns {boolean}
 */
function cross([a, b], [c, d]) {
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

/**
 * @param {Point} a
 * @param {Point} b
 * @param {Point} p
 * @returns {boolean}
 */
function side(a, b, p) {
  return (b[0] - a[0]) * (p[1] - a[1]) > (b[1] - a[1]) * (p[0] - a[0]);
}
