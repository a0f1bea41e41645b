// The finished section, to scale: outline, the flats' dimensions, angles and bend numbers.
import { html, svg } from "/vendor/lit-html/lit-html.js";
import { settings } from "../app/shell/settings.js";
import { angle, inSentence, length, words } from "../app/shell/units.js";
import { Placing, textWidth } from "./labels.js";
import { boundsOf, pixelsOf } from "./rings.js";

/** @typedef {import("./labels.js").Point} Point */
/** @typedef {{included_angle_deg: number, direction: string, kind?: string, hem_gap_mm?: number}} Bend */
/** @typedef {{flats_mm: number[], bends: Bend[]}} Part */
/**
 * @typedef {{outline: Point[], bend_points: Point[], centre_line: Point[], dimensions?: [Point,
 *   Point][]}} Section
 */
/** @typedef {{x: number, y: number, width: number, height: number}} Box */

const PLACES = [0, 90, 180, 270, 45, 135, 225, 315].map((deg) => (deg * Math.PI) / 180);

/**
 * Lengths without idle zeros: 60, 12.5.
 * @param {number} mm
 * @returns {string}
 */
export function tidyLength(mm) {
  const { text } = length(mm, { digits: 2 });
  return settings().inches === "fraction" ? text : text.replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "");
}

/**
 * @param {{section: Section, part: Part}} plan
 * @param {{pixels?: number, tallest?: number, test?: string, mark?: number}} [how] pixels: about how wide
 *   it will be shown, so that the labels come out readable; mark: a bend to stress
 */
export function sectionDrawing(
  { section, part },
  { pixels = shownWidth(), tallest = pixels * 0.75, test = "section", mark = 0 } = {},
) {
  const size = 18;
  const room = 2.6 * size;
  const map = pixelsOf(boundsOf([section.outline]), pixels - 2 * room, tallest - 2 * room);
  const outline = section.outline.map(map);
  const placing = new Placing(outline.map((point, i) => [point, outline[(i + 1) % outline.length]]));
  const flats = ends(section).map((pair, i) =>
    dimension(/** @type {[Point, Point]} */ (pair.map(map)), tidyLength(part.flats_mm[i]), placing, size),
  );
  const bends = section.bend_points.map((point, i) =>
    bendLabel(map(point), i + 1, part.bends[i], placing, size),
  );
  const [left, top, right, bottom] = around([
    ...outline,
    ...bends.flatMap((b) => corners(b.box)),
    ...flats.flatMap((f) => [...corners(f.box), ...f.lines.flat()]),
  ]);
  const [width, height] = [right - left + 12, bottom - top + 12];
  return html`<svg
    class="drawing section"
    data-test=${test}
    role="img"
    aria-label=${describe(part)}
    width=${width}
    height=${height}
    viewBox="${left - 6} ${top - 6} ${width} ${height}">
    <path class="sheet" d="M${outline.map((p) => p.join(" ")).join("L")}Z" />
    ${flats.map(
      ({ lines, box, text }) => svg`${lines.map(([a, b]) => svg`<path class="dimension" d="M${a}L${b}"/>`)}
      ${ticks(lines[0])}${label(box, text, size)}`,
    )}
    ${bends.map(
      ({
        box,
        text,
        number,
        badge,
      }) => svg`<circle class="badge ${number === mark ? "marked" : ""}" cx=${badge[0]} cy=${badge[1]}
          r=${size * 0.68}/>
      <text class="badge-number" x=${badge[0]} y=${badge[1]} font-size=${size * 0.95} text-anchor="middle"
        dominant-baseline="central">${number}</text>
      <text x=${badge[0] + size * 0.95} y=${box.y} font-size=${size}
        dominant-baseline="central">${text}</text>`,
    )}
  </svg>`;
}

/**
 * About how wide a drawing is shown on this screen.
 * @returns {number}
 */
export function shownWidth() {
  return Math.min(Math.max(innerWidth - 32, 300), 720);
}

/**
 * The section in words, for who cannot see the drawing.
 * @param {Part} part
 * @returns {string}
 */
function describe(part) {
  const pieces = part.flats_mm.map((mm, i) => {
    const bend = part.bends[i];
    const then = bend ? `, bend ${i + 1}: ${bendWords(bend)} ${bend.direction}` : "";
    return `flat ${i + 1}: ${words(length(mm))}${then}`;
  });
  return `Section. ${pieces.join("; ")}.`;
}

/**
 * @param {Bend} bend
 * @returns {string}
 */
function bendWords(bend) {
  if (bend.kind === "closed_hem") return "hem";
  if (bend.kind === "open_hem") return "open hem";
  return inSentence(angle(bend.included_angle_deg));
}

/**
 * From where to where each flat is measured.
 * @param {Section} section
 * @returns {[Point, Point][]}
 */
function ends({ dimensions, bend_points: bends, centre_line: line }) {
  if (dimensions) return dimensions;
  const stops = [line[0], ...bends, line[line.length - 1]];
  return stops.slice(1).map((stop, i) => [stops[i], stop]);
}

/**
 * @param {Point} at
 * @param {number} number
 * @param {Bend} bend
 * @param {Placing} placing
 * @param {number} size
 */
function bendLabel(at, number, bend, placing, size) {
  const text = bendWords(bend);
  const width = textWidth(text, size) + 1.6 * size;
  const candidates = [1.4, 1.9, 2.6].flatMap((far) =>
    PLACES.map((turn) => {
      const x = at[0] + Math.cos(turn) * (far * size + width / 2 - size * 0.6);
      const y = at[1] + Math.sin(turn) * far * size;
      return { box: { x, y, width, height: size * 1.5 }, cost: far * 2 };
    }),
  );
  const { box } = placing.choose(candidates);
  /** @type {Point} */
  const badge = [box.x - width / 2 + size * 0.75, box.y];
  return { box, text, number, badge };
}

/**
 * A dimension on the side of its flat where it hides least.
 * @param {[Point, Point]} pair
 * @param {string} text
 * @param {Placing} placing
 * @param {number} size
 */
function dimension([a, b], text, placing, size) {
  const run = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const across = [-(b[1] - a[1]) / run, (b[0] - a[0]) / run];
  const [width, height] = [textWidth(text, size), size * 1.3];
  /**
   * @param {Point} p
   * @param {number} by
   * @returns {Point}
   */
  const moved = (p, by) => [p[0] + across[0] * by, p[1] + across[1] * by];
  const candidates = [1.8, 3.2, 4.8].flatMap((far) =>
    [far, -far].flatMap((out) =>
      [0.5, 0.3, 0.7].map((along) => {
        const [from, to] = [moved(a, out * size), moved(b, out * size)];
        const box = {
          x: from[0] + (to[0] - from[0]) * along,
          y: from[1] + (to[1] - from[1]) * along,
          width,
          height,
        };
        const lift =
          run < width * 1.4 && Math.abs(across[1]) > 0.5 ? Math.sign(out * across[1]) * size * 0.9 : 0;
        /** @type {[Point, Point][]} */
        const lines = [
          [from, to],
          [moved(a, Math.sign(out) * size * 0.5), moved(from, Math.sign(out) * 4)],
          [moved(b, Math.sign(out) * size * 0.5), moved(to, Math.sign(out) * 4)],
        ];
        return { box: { ...box, y: box.y + lift }, cost: Math.abs(out) + (along === 0.5 ? 0 : 0.5), lines };
      }),
    ),
  );
  const chosen = placing.choose(candidates);
  return { box: chosen.box, lines: chosen.lines, text };
}

/**
 * Scribed strokes where a dimension line ends.
 * @param {[Point, Point]} line
 */
function ticks(line) {
  return line.map(([x, y]) => svg`<path class="dimension tick" d="M${x - 4} ${y + 4}L${x + 4} ${y - 4}"/>`);
}

/**
 * @param {Box} box
 * @param {string} text
 * @param {number} size
 */
function label({ x, y, width, height }, text, size) {
  return svg`<rect class="ground" x=${x - width / 2} y=${y - height / 2} width=${width} height=${height}/>
    <text x=${x} y=${y} font-size=${size} text-anchor="middle" dominant-baseline="central">${text}</text>`;
}

/**
 * @param {Box} box
 * @returns {Point[]}
 */
function corners({ x, y, width, height }) {
  return [
    [x - width / 2, y - height / 2],
    [x + width / 2, y + height / 2],
  ];
}

/**
 * @param {Point[]} points
 * @returns {[number, number, number, number]}
 */
function around(points) {
  return boundsOf([points]);
}
