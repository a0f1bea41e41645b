// The guide: eight pages, each a picture and what to do, in order.

/** @typedef {{key: string, title: string, picture: string, steps: string[], to: [string, string]}} Page */

/** @type {Page[]} */
export const PAGES = [
  {
    key: "bend",
    title: "Check a bend",
    picture: "v-opening",
    steps: [
      "Pick the metal, type thickness and length of the bend. 90 is square.",
      "Read the answer: which die and punch, what to set, the force to allow for.",
      "Read what is not known: each line says what to measure or enter.",
      "Without a press or tools of your own, plain stand-in tools are counted with, and the answer says so.",
    ],
    to: ["/bend", "Check a bend"],
  },
  {
    key: "part",
    title: "The first part",
    picture: "blank",
    steps: [
      "Type the outside lengths of the flats from left to right, and the bends between them.",
      "The blank, the order of the bends and the tools to fetch come as you type.",
      "A stop says what to change. A caution says what to watch.",
      "Save it as a card: it keeps its set-up as planned.",
    ],
    to: ["/part", "New part"],
  },
  {
    key: "label",
    title: "Label and scan",
    picture: "label",
    steps: [
      "Print the card's label and put it on the bin or the drawing.",
      "Scan a label: it opens that card and no other, without network too.",
      "Where a camera cannot read it, type the seven characters under the square.",
    ],
    to: ["/scan", "Scan a label"],
  },
  {
    key: "measure",
    title: "Measure and correct",
    picture: "second-hit",
    steps: [
      "Make the first hit as the step says. It comes out a little too open.",
      "Take the pressure off, measure the angle, type it as the result of the step.",
      "Set what the app answers and press the same bend again.",
      "Keep the new setting when the piece is right.",
    ],
    to: ["/", "Find a card"],
  },
  {
    key: "strip",
    title: "Test strip",
    picture: "springback",
    steps: [
      "Cut a strip of the same sheet, measure its thickness and length.",
      "Bend it as the screen says, measure the angle and the two flanges.",
      "From then on springback and deduction of this metal come from your own measurements.",
    ],
    to: ["/shop/test-bend", "Test bend"],
  },
  {
    key: "screen",
    title: "Press screen",
    picture: "screen",
    steps: [
      "Open this address on a large display by the press and give it a name.",
      "On a phone, open a card and send it to the press screen.",
      "A foot switch that acts as a keyboard steps on.",
    ],
    to: ["/press-screen", "Press screen"],
  },
  {
    key: "crew",
    title: "Crew",
    picture: "devices",
    steps: [
      "Start the shop for its network, then let each phone scan the pairing square once.",
      "An owner's device changes press, tools and cards; an operator's works by the cards.",
      "What is typed without network waits on the device and is sent later.",
    ],
    to: ["/crew", "Crew"],
  },
  {
    key: "backups",
    title: "Backups",
    picture: "copy",
    steps: [
      "The shop makes a backup of itself each night. Look now and then whether there is a good one.",
      "Save a copy on another disk: the one in the same computer is lost with it.",
      "The export is one open file with everything; it can be brought in again.",
    ],
    to: ["/backups", "Backups and export"],
  },
];
