// The trade's words, each in a sentence or two with a sketch; a tap on a word opens it where it stands.
import { html, render } from "/vendor/lit-html/lit-html.js";
import { wordPicture } from "../../drawing/word_pictures.js";

/** @type {Record<string, {title: string, text: string}>} its key is that of its picture */
export const WORDS = {
  "v-opening": {
    title: "V opening",
    text:
      "The width of the V in the die, between the sharp corners of its face and flanks. Usual is 8 times " +
      "the thickness: a wider V takes less force and gives a larger inside radius and a longer flange.",
  },
  "tip-radius": {
    title: "Tip radius",
    text: "The rounding of the punch's tip. A tip much sharper than the sheet is thick creases it.",
  },
  "inside-radius": {
    title: "Inside radius",
    text:
      "The radius inside the finished bend. In an air bend the V opening sets it more than the punch's " +
      "tip does.",
  },
  flange: {
    title: "Flange",
    text:
      "What lies on one side of the bend. It has to reach over the V's shoulder through the whole stroke: " +
      "that is the smallest flange. A shorter one slips into the V.",
  },
  deduction: {
    title: "Deduction",
    text:
      "How much shorter the blank is than the outside lengths added up: blank = A + B − deduction. " +
      "It depends on metal, thickness, angle and V.",
  },
  allowance: {
    title: "Bend allowance",
    text: "The length of sheet that goes into the bend itself, between the ends of the two straight flats.",
  },
  blank: {
    title: "Blank",
    text: "The flat sheet before the first bend, cut to length, with its bend lines.",
  },
  "k-factor": {
    title: "K-factor",
    text:
      "Where in the thickness the line lies that keeps its length: 0 is the inside face, 0.5 the middle. " +
      "The bend allowance follows from it.",
  },
  springback: {
    title: "Springback",
    text: "How far a bend opens when the punch leaves it. Harder and thinner sheet springs back more.",
  },
  "set-angle": {
    title: "Set angle",
    text:
      "The angle under load that the press is set to. It is sharper than the finished angle by the " +
      "springback. 90 is square, 180 is flat.",
  },
  "punch-depth": {
    title: "Punch depth",
    text: "How far the punch travels from its first touch of the flat sheet to the bottom of the stroke.",
  },
  gauge: {
    title: "Gauge X and R",
    text:
      "Where the back gauge stands: X is the way from the tools' centre line to the finger's face, R its " +
      "height above the die's top face.",
  },
  "second-hit": {
    title: "First hit, second hit",
    text:
      "A bend can be closed further, never opened. So the first piece is pressed a little too open, " +
      "measured, and pressed again, deeper.",
  },
  rating: {
    title: "Rating and force to allow for",
    text:
      "The rating is what a tool bears over its length, as stamped on it. The force to allow for is the " +
      "high end of what a bend may take; it is compared with each rating. Plate and papers come first.",
  },
};

/**
 * What a label on the screen is called in the list of words.
 * @type {Record<string, string>}
 */
const LABELS = {
  "V opening": "v-opening",
  "V openings": "v-opening",
  "Tip radius": "tip-radius",
  "Inside radius": "inside-radius",
  "Flange from": "flange",
  Deduction: "deduction",
  "Bend allowance": "allowance",
  "K-factor": "k-factor",
  Springback: "springback",
  "Set angle": "set-angle",
  "First hit: set angle": "second-hit",
  Depth: "punch-depth",
  "First hit: depth": "punch-depth",
  "Allow for": "rating",
  Rating: "rating",
};

/**
 * A label as it stands, or as a way to what it means where it is a word of the trade.
 * @param {string} label
 */
export function trade(label) {
  const key = LABELS[label];
  return key
    ? html`<a class="word" href="/words#${key}" data-test="word-${key}" @click=${openWord(key)}>${label}</a>`
    : label;
}

/** @param {string} key */
export const entry = (key) =>
  html`${wordPicture(key)}
    <p>${WORDS[key].text}</p>`;

/**
 * Over the screen that is open, so that nothing typed is lost.
 * @param {string} key
 */
const openWord = (key) => (/** @type {MouseEvent} */ event) => {
  if (event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  const dialog = document.querySelector("dialog.word-entry") ?? document.createElement("dialog");
  dialog.className = "word-entry";
  dialog.setAttribute("aria-label", WORDS[key].title);
  if (!dialog.isConnected) document.body.append(dialog);
  const shown = /** @type {HTMLDialogElement} */ (dialog);
  render(
    html`<h2>${WORDS[key].title}</h2>
      ${entry(key)}
      <div class="buttons">
        <button type="button" class="button next" data-test="close-word" @click=${() => shown.close()}>
          Close
        </button>
      </div>`,
    shown,
  );
  if (!shown.open) shown.showModal();
};
