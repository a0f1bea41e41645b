// A box as it is typed: base, sides, corners; plain changes from one form to the next, and to and
// from what the API takes.
import { bendFromPart, bendRequest, newBend } from "./bend_row.js";
import { lengthToType, typedLength } from "../shell/units.js";

/** @typedef {"left"|"right"|"front"|"back"} SideName */
/** @typedef {import("./bend_row.js").BendRow} Fold */
/** @typedef {{flats: string[], bends: Fold[]}} Chain from the base outwards: as many flats as bends */
/**
 * @typedef {object} BoxForm everything as typed
 * @property {string} length from left to right
 * @property {string} width from front to back
 * @property {SideName[]} there the sides that stand
 * @property {boolean} alike all of them the same, as the first
 * @property {Record<SideName, Chain>} sides
 * @property {"round"|"square"|"none"} relief
 * @property {string} reliefSize empty: by rule
 * @property {"closed"|"open"} corner
 * @property {string} gap empty: by rule
 * @property {"left-right"|"front-back"} firstPair the sides that are bent first
 */

/** @type {[SideName, SideName][]} sides that face one another, as they are numbered */
const PAIRS = [
  ["left", "right"],
  ["front", "back"],
];
export const SIDES = PAIRS.flat();
export const MOST_SIDE_BENDS = 6;

/** @typedef {"tray"|"lips-in"|"lips-out"|"channel"} Kind */

/**
 * The usual kinds to start from.
 * @param {Kind} kind
 * @returns {BoxForm}
 */
export function emptyBox(kind = "tray") {
  /** @returns {Chain} */
  const chain = () => {
    if (kind === "lips-in") return { flats: ["", ""], bends: [newBend(), newBend()] };
    if (kind === "lips-out") {
      return { flats: ["", ""], bends: [newBend(), { ...newBend(), direction: "down" }] };
    }
    return { flats: [""], bends: [newBend()] };
  };
  return {
    length: "",
    width: "",
    there: kind === "channel" ? ["left", "right"] : [...SIDES],
    alike: true,
    sides: { left: chain(), right: chain(), front: chain(), back: chain() },
    relief: "round",
    reliefSize: "",
    corner: "closed",
    gap: "",
    firstPair: "left-right",
  };
}

/**
 * Another kind, keeping what was typed of the base and the walls.
 * @param {BoxForm} form
 * @param {Kind} kind
 * @returns {BoxForm}
 */
export function ofKind(form, kind) {
  const fresh = emptyBox(kind);
  for (const side of SIDES) {
    const typed = form.sides[form.alike ? (form.there[0] ?? "left") : side].flats;
    fresh.sides[side].flats = fresh.sides[side].flats.map((empty, i) => typed[i] ?? empty);
  }
  return { ...form, there: fresh.there, sides: fresh.sides };
}

/**
 * Which of the usual kinds it is, if one.
 * @param {BoxForm} form
 * @returns {Kind|""}
 */
export function kindOf({ there, sides, alike }) {
  const chains = (alike ? there.slice(0, 1) : there).map((side) => sides[side]);
  const plain = (/** @type {Chain} */ { bends }) =>
    bends.length === 1 && bends[0].kind === "bend" && bends[0].direction === "up";
  const lip =
    (/** @type {string} */ way) =>
    (/** @type {Chain} */ { bends }) =>
      bends.length === 2 &&
      bends[1].kind === "bend" &&
      bends[0].direction === "up" &&
      bends[1].direction === way;
  if (there.length === 2 && there.includes("left") && there.includes("right") && chains.every(plain)) {
    return "channel";
  }
  if (there.length !== 4) return "";
  if (chains.every(plain)) return "tray";
  if (chains.every(lip("up"))) return "lips-in";
  return chains.every(lip("down")) ? "lips-out" : "";
}

/**
 * @param {Api.GivenBox} box as the plan gives it back
 * @returns {BoxForm}
 */
export function boxFromPart(box) {
  const there = SIDES.filter((side) => box.sides[side]);
  const chains = there.map((side) => JSON.stringify(box.sides[side]));
  const blank = emptyBox().sides;
  for (const side of SIDES) {
    const from = /** @type {Api.GivenSide} */ (box.sides[side] ?? box.sides[there[0]]);
    blank[side] = {
      flats: from.flats_mm.map(lengthToType),
      bends: from.bends.map(bendFromPart),
    };
  }
  return {
    length: lengthToType(box.length_mm),
    width: lengthToType(box.width_mm),
    there,
    alike: chains.every((one) => one === chains[0]),
    sides: blank,
    relief: box.relief,
    reliefSize: lengthToType(box.relief_mm),
    corner: box.corner,
    gap: lengthToType(box.gap_mm),
    firstPair: box.first_pair ?? "left-right",
  };
}

/**
 * Whether sides of both pairs stand, so that one pair is bent before the other.
 * @param {BoxForm} form
 */
export const hasBothPairs = ({ there }) => PAIRS.every((pair) => pair.some((side) => there.includes(side)));

/**
 * What stands on a side: its own flats, or those of the side that stands for all.
 * @param {BoxForm} form
 * @param {SideName} side
 * @returns {Chain}
 */
const chainOf = (form, side) => form.sides[form.alike ? form.there[0] : side];

/**
 * What the bends are called, by number: over left and right, then over front and back.
 * @param {BoxForm} form
 * @returns {string[]}
 */
export const bendNames = (form) => numbered(form, () => []);

/**
 * What the flats are called, by number; the base has one for either way.
 * @param {BoxForm} form
 * @returns {string[]}
 */
export const flatNames = (form) => numbered(form, (one, other) => [`base, ${one} to ${other}`]);

/**
 * @param {BoxForm} form
 * @param {(one: SideName, other: SideName) => string[]} between
 */
function numbered(form, between) {
  const chain = (/** @type {SideName} */ side) =>
    form.there.includes(side) ? chainOf(form, side).flats.map((_, i) => `${side} ${flatWord(i)}`) : [];
  return PAIRS.filter((pair) => pair.some((side) => form.there.includes(side))).flatMap(([one, other]) => [
    ...chain(one).reverse(),
    ...between(one, other),
    ...chain(other),
  ]);
}

/**
 * The sides as they are shown: one for all where they are alike.
 * @param {BoxForm} form
 * @returns {SideName[]}
 */
export const shownSides = ({ there, alike }) => (alike ? there.slice(0, 1) : there);

/**
 * What POST /plan takes for "box".
 * @param {BoxForm} form
 * @param {"mm"|"in"} unit
 */
export function boxRequest(form, unit) {
  const long = (/** @type {string} */ text) => typedLength(text, unit);
  const sides = form.there.map((side) => {
    const chain = chainOf(form, side);
    return [
      side,
      { flats_mm: chain.flats.map(long), bends: chain.bends.map((bend) => bendRequest(bend, unit)) },
    ];
  });
  return {
    length_mm: long(form.length),
    width_mm: long(form.width),
    sides: Object.fromEntries(sides),
    relief: form.relief,
    corner: form.corner,
    ...(form.firstPair === "front-back" ? { first_pair: form.firstPair } : {}),
    ...(form.reliefSize.trim() && form.relief !== "none" ? { relief_mm: long(form.reliefSize) } : {}),
    ...(form.gap.trim() && form.corner === "closed" ? { gap_mm: long(form.gap) } : {}),
  };
}

/**
 * Every box of the form: its name, how it is called, what is in it.
 * @param {BoxForm} form
 * @returns {[string, string, string][]}
 */
export function boxBoxes(form) {
  return [
    ["box.length_mm", "length of the base", form.length],
    ["box.width_mm", "width of the base", form.width],
    ...shownSides(form).flatMap((side) => chainBoxes(form, side)),
  ];
}

/**
 * @param {BoxForm} form
 * @param {SideName} side
 * @returns {[string, string, string][]}
 */
function chainBoxes({ sides, alike }, side) {
  const whose = alike ? "" : `${side} `;
  return sides[side].flats.flatMap((flat, i) => {
    const { kind, angle, gap } = sides[side].bends[i];
    const own = `${whose}${flatWord(i)}`;
    return /** @type {[string, string, string][]} */ ([
      [flatField(side, i), own, flat],
      ...(kind === "bend" ? [[angleField(side, i), `angle of the ${own}`, angle]] : []),
      ...(kind === "open_hem" ? [[`${foldField(side, i)}.hem_gap_mm`, `gap of the ${own}`, gap]] : []),
    ]);
  });
}

/**
 * @param {SideName} side
 * @param {number} i
 */
export const flatField = (side, i) => `box.sides.${side}.flats_mm.${i}`;
/**
 * @param {SideName} side
 * @param {number} i
 */
export const foldField = (side, i) => `box.sides.${side}.bends.${i}`;
/**
 * @param {SideName} side
 * @param {number} i
 */
export const angleField = (side, i) => `${foldField(side, i)}.included_angle_deg`;
/**
 * @param {number} i
 * @returns {string}
 */
export const flatWord = (i) => (i === 0 ? "wall" : i === 1 ? "lip" : `flat ${i + 1}`);

/**
 * Said of one side, shown at the side that stands for all.
 * @param {BoxForm} form
 * @param {Record<string, string[]>} errors
 * @returns {Record<string, string[]>}
 */
export function errorsShown(form, errors) {
  if (!form.alike) return errors;
  const shown = form.there[0];
  return Object.fromEntries(
    Object.entries(errors).map(([path, words]) => [
      path.replace(/^box\.sides\.(left|right|front|back)\./, `box.sides.${shown}.`),
      words,
    ]),
  );
}

/**
 * "box.sides.left.flats_mm.0" as a person says it.
 * @param {string} name
 * @returns {string}
 */
export function boxCalled(name) {
  const [, what, side, list, index, leaf] = name.split(".");
  if (what !== "sides") {
    return (
      {
        length_mm: "Length of the base",
        width_mm: "Width of the base",
        relief_mm: "Size of the relief",
        gap_mm: "Gap at the corner",
        relief: "Relief",
        corner: "Corner",
        first_pair: "Bent first",
      }[what] ?? "Box"
    );
  }
  if (!list) return side ? `${side} side` : "Sides";
  const figure = { inside_radius_mm: "radius", hem_gap_mm: "gap" }[leaf] ?? "angle";
  return `${side} ${flatWord(Number(index ?? 0))}${list === "bends" ? `, ${figure}` : ""}`;
}

/**
 * @param {BoxForm} form
 * @param {SideName} side
 * @param {Chain} chain
 * @returns {BoxForm}
 */
const withChain = (form, side, chain) => ({ ...form, sides: { ...form.sides, [side]: chain } });

/**
 * @param {BoxForm} form
 * @param {SideName} side
 * @param {number} i
 * @param {string} value
 * @returns {BoxForm}
 */
export function withFlat(form, side, i, value) {
  const chain = form.sides[side];
  return withChain(form, side, { ...chain, flats: chain.flats.with(i, value) });
}

/**
 * @param {BoxForm} form
 * @param {SideName} side
 * @param {number} i
 * @param {Partial<Fold>} change
 * @returns {BoxForm}
 */
export function withFold(form, side, i, change) {
  const chain = form.sides[side];
  return withChain(form, side, { ...chain, bends: chain.bends.with(i, { ...chain.bends[i], ...change }) });
}

/**
 * A flat more at the far end.
 * @param {BoxForm} form
 * @param {SideName} side
 * @returns {BoxForm}
 */
export function flatAdded(form, side) {
  const { flats, bends } = form.sides[side];
  // only the outermost can be a hem
  const within = bends.map((bend) => ({ ...bend, kind: /** @type {const} */ ("bend") }));
  return withChain(form, side, { flats: [...flats, ""], bends: [...within, newBend()] });
}

/**
 * The outermost flat goes.
 * @param {BoxForm} form
 * @param {SideName} side
 * @returns {BoxForm}
 */
export function flatRemoved(form, side) {
  const { flats, bends } = form.sides[side];
  return withChain(form, side, { flats: flats.slice(0, -1), bends: bends.slice(0, -1) });
}

/**
 * A side comes or goes; one always stays.
 * @param {BoxForm} form
 * @param {SideName} side
 * @returns {BoxForm}
 */
export function sideToggled(form, side) {
  const there = SIDES.filter((one) => (one === side) !== form.there.includes(one));
  if (!there.length) return form;
  // The side that stands for all may be the one that goes.
  const model = form.sides[form.there[0]];
  return { ...form, there, sides: form.alike ? { ...form.sides, [there[0]]: model } : form.sides };
}

/**
 * All alike, or each for itself from what they were.
 * @param {BoxForm} form
 * @param {boolean} alike
 * @returns {BoxForm}
 */
export function alikeSet(form, alike) {
  const model = form.sides[form.there[0]];
  return {
    ...form,
    alike,
    sides: alike ? form.sides : { left: model, right: model, front: model, back: model },
  };
}
