// What is wrong with an outline, drawn: its lines as understood, the edges at fault, the places.
import { html, svg } from "/vendor/lit-html/lit-html.js";
import { boundsOf, openPath, pixelsOf } from "./rings.js";

/** @typedef {import("./rings.js").Ring} Ring */
/**
 * @typedef {{code: string, lines_mm: Ring[], edges: number[], marks_mm: [number, number][],
 *   layers: string[]}} Fault
 */

const WIDE = 360;
const TALL = 300;
const EDGE = 30;

/** @param {Fault} fault */
export function faultDrawing({ code, lines_mm: lines, edges, marks_mm: marks }) {
  const box = boundsOf([...lines, marks]);
  const place = pixelsOf(box, WIDE - 2 * EDGE, TALL - 2 * EDGE);
  const [right, down] = place([box[2], box[1]]);
  const shift = [(WIDE - right) / 2, (TALL - down) / 2];
  /**
   * @param {[number, number]} point
   * @returns {[number, number]} y upwards, as paths are made from
   */
  const at = (point) => {
    const [x, y] = place(point);
    return [x + shift[0], -(y + shift[1])];
  };
  const closed = !["open", "branching"].includes(code);
  const said = `${marks.length} ${marks.length === 1 ? "place" : "places"} marked`;
  return html`<svg
    class="drawing fault"
    viewBox="0 0 ${WIDE} ${TALL}"
    role="img"
    aria-label="The outline as far as it was understood, ${said}"
    data-test="outline-fault">
    ${lines.map(
      (line) => svg`<path class="fault-line" d=${openPath((closed ? [...line, line[0]] : line).map(at))}/>`,
    )}
    ${edges.map((edge) => faultEdge(lines[0], edge, at))} ${marks.map((mark) => faultMark(at(mark)))}
  </svg>`;
}

/**
 * @param {Ring} line
 * @param {number} edge from 1
 * @param {(point: [number, number]) => [number, number]} at
 */
function faultEdge(line, edge, at) {
  const [from, to] = [line[edge - 1], line[edge % line.length]].map(at);
  return svg`<path class="fault-edge" d=${openPath([from, to])}/>
    ${pointNumber(from, edge)}${pointNumber(to, (edge % line.length) + 1)}`;
}

/**
 * @param {[number, number]} point
 * @param {number} number
 */
const pointNumber = ([x, y], number) =>
  svg`<text class="fault-number" x=${x} y=${-y - 9} text-anchor="middle" font-size="19">${number}</text>`;

/** @param {[number, number]} point */
const faultMark = ([x, y]) =>
  svg`<g class="fault-mark" data-test="fault-mark"><circle cx=${x} cy=${-y} r="10"/>
    <path d="M${x - 14} ${-y}h28M${x} ${-y - 14}v28"/></g>`;
