// Sketches of what the trade's words mean: a bend in its tools, a bent sheet and its blank, each with the
// measure in question. Of no tool in particular, and not to scale.
import { html, svg } from "/vendor/lit-html/lit-html.js";

/** @typedef {import("./labels.js").Point} Point */

/**
 * @param {Point} from
 * @param {Point} to
 * @param {string} text
 * @param {Point} [at] where the text stands
 */
function measure([x1, y1], [x2, y2], text, at = [(x1 + x2) / 2, (y1 + y2) / 2 - 10]) {
  return svg`<path class="dimension strong" d="M${x1} ${y1}L${x2} ${y2}"/>
    <circle class="dimension-end" cx=${x1} cy=${y1} r="4"/>
    <circle class="dimension-end" cx=${x2} cy=${y2} r="4"/>
    <text x=${at[0]} y=${at[1]} text-anchor="middle" font-size="21">${text}</text>`;
}

const TOOLS = svg`<path class="tool" d="M180 168L150 138V20H210V138Z"/>
  <path class="tool" d="M80 150H130L180 200L230 150H280V245H80Z"/>`;
const SHEET = svg`<path class="sheet-line" d="M88 80L180 178L272 80"/>`;

/** The bend in its tools, before anything is pointed at. */
const inTools = svg`${TOOLS}${SHEET}`;
const bent = svg`<path class="sheet-line" d="M50 200H230Q250 200 250 180V60"/>`;
const flat = svg`<path class="sheet-line" d="M30 130H330"/><path class="fold" d="M180 100V160"/>`;

/** @type {Record<string, [string, unknown]>} what it shows, and how */
const PICTURES = {
  "v-opening": [
    "A die, its V opening marked",
    svg`${inTools}${measure([130, 225], [230, 225], "V opening", [180, 218])}
    <path class="dimension" d="M130 150V232M230 150V232"/>`,
  ],
  "tip-radius": [
    "A punch, its tip marked",
    svg`${TOOLS}${measure([180, 166], [255, 60], "tip radius", [290, 52])}`,
  ],
  "inside-radius": [
    "A bent sheet, the radius inside the bend marked",
    svg`${bent}${measure([238, 186], [150, 110], "inside radius", [135, 98])}`,
  ],
  flange: [
    "A bent sheet, the flange marked",
    svg`${bent}${measure([290, 205], [290, 60], "flange", [325, 48])}`,
  ],
  deduction: [
    "A bent sheet with its two outside lengths, A and B",
    svg`${bent}${measure([45, 235], [258, 235], "A")}${measure([290, 207], [290, 60], "B", [315, 138])}`,
  ],
  blank: [
    "A flat sheet with its bend line",
    svg`${flat}${measure([30, 190], [330, 190], "blank = A + B − deduction")}`,
  ],
  allowance: [
    "A bent sheet, the length of the metal in the bend marked",
    svg`${bent}<path class="dimension strong" d="M222 200Q250 200 250 172"/>
      <text x="165" y="160" font-size="21" text-anchor="middle">bend allowance</text>`,
  ],
  "k-factor": [
    "A bent sheet, the line that keeps its length marked",
    svg`<path class="tool" d="M60 240A180 180 0 0 1 240 60V110A130 130 0 0 0 110 240Z"/>
      <path class="centre strong" d="M88 240A152 152 0 0 1 240 88"/>
      <text x="250" y="72" font-size="21">outside</text><text x="250" y="95" font-size="21">keeps its</text>
      <text x="250" y="114" font-size="21">length</text><text x="125" y="225" font-size="21">inside</text>`,
  ],
  springback: [
    "A sheet under the punch, and more open after it",
    svg`<path class="sheet-line" d="M90 70L180 190L270 70"/>
      <path class="centre strong" d="M66 90L180 190L294 90"/>
      <text x="180" y="235" font-size="21" text-anchor="middle">dashed: after release</text>`,
  ],
  "set-angle": [
    "A bend in its tools, the angle between its flats marked",
    svg`${inTools}<path class="dimension strong" d="M120 114A90 90 0 0 1 240 114"/>
      <text x="305" y="100" font-size="21" text-anchor="middle">set angle</text>`,
  ],
  "punch-depth": [
    "A bend in its tools, the way of the punch below the flat sheet marked",
    svg`${inTools}<path class="centre" d="M40 132H320"/>
      ${measure([320, 132], [320, 168], "depth", [320, 195])}`,
  ],
  gauge: [
    "A flat sheet on the die against the back gauge, X and R marked",
    svg`<path class="tool" d="M80 150H130L160 180L190 150H240V240H80Z"/>
      <path class="sheet-line thin" d="M40 143H285V60"/>
      <path class="tool" d="M292 82H340V104H292Z"/>${measure([160, 40], [292, 40], "X")}
      ${measure([318, 150], [318, 93], "R", [338, 130])}
      <path class="centre" d="M160 20V240M240 150H340"/>`,
  ],
  "second-hit": [
    "The same bend, pressed again and a little deeper",
    svg`${inTools}<path class="dimension strong" d="M180 25V75M170 62L180 78L190 62"/>
      <text x="272" y="40" font-size="21" text-anchor="middle">again, deeper</text>`,
  ],
  rating: [
    "A bend in its tools, the force on the punch marked",
    svg`${inTools}<path class="dimension strong" d="M180 2V60M168 44L180 62L192 44"/>
      <text x="250" y="40" font-size="21" text-anchor="middle">force</text>`,
  ],
  label: [
    "A label with its square and its code",
    svg`<path class="tool" d="M40 40H320V220H40Z"/>
      <path class="square" d="M60 60h40v40h-40zM60 160h40v40h-40zM150 60h40v40h-40z
      M120 120h20v20h-20zM160 150h20v20h-20zM120 180h20v20h-20z"/>
      <text x="190" y="140" font-size="24">ABC-1234</text>
      <text x="190" y="176" font-size="21">Bracket</text>`,
  ],
  screen: [
    "A large display beside the press",
    svg`<path class="tool" d="M50 30H310V180H50ZM160 180H200V215H160ZM110 215H250V230H110Z"/>
      <text x="180" y="110" font-size="52" text-anchor="middle">88.5°</text>
      <text x="180" y="155" font-size="24" text-anchor="middle">X 57.9</text>`,
  ],
  devices: [
    "A phone and a computer of the same shop",
    svg`<path class="tool" d="M40 50H110V190H40ZM170 60H330V170H170ZM150 190H350V205H150Z"/>
      <path class="dimension strong" d="M115 120H165"/>`,
  ],
  copy: [
    "The shop's file and its copy",
    svg`<path class="tool" d="M60 60H140V190H60ZM220 60H300V190H220Z"/>
      <path class="dimension strong" d="M150 125H210M196 115L212 125L196 135"/>`,
  ],
};

/** @param {string} key */
export function wordPicture(key) {
  const [said, drawn] = PICTURES[key];
  return html`<svg class="drawing word-picture" viewBox="0 0 360 260" role="img" aria-label=${said}>
    ${drawn}
  </svg>`;
}
