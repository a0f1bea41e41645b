// Between what stands in the boxes and what the API takes. Text that is not a plain number goes as
// typed: the server reads units and says what it does not understand.
import { FIGURES, NUMBERS } from "./metal_fields.js";
import { rowsOf, textOf } from "./v_openings.js";
import { GROUPS } from "./tool_fields.js";
import {
  forceToType,
  forceUnit,
  lengthToType,
  pointed,
  ratingUnit,
  typedForce,
  typedLength,
} from "../shell/units.js";

/** @typedef {import("./tool_fields.js").Draft} Draft */
/** @typedef {import("./tool_fields.js").FieldSpec} FieldSpec */
/** @typedef {"punches"|"dies"|"holders"|"press"} Drawn kinds that have an outline */

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;

/**
 * A number, the text as typed, or null when the box is empty.
 * @param {string|undefined} text
 * @returns {number|string|null}
 */
export function typedNumber(text = "") {
  const clean = pointed(text);
  if (clean === "") return null;
  return PLAIN.test(clean) ? Number(clean) : clean;
}

/**
 * Null where nothing was typed.
 * @param {(text: string) => string} read
 * @returns {(text: string|undefined) => string|null}
 */
const orNull =
  (read) =>
  (text = "") =>
    text.trim() === "" ? null : read(text);

const typedLengthOrNull = orNull((text) => typedLength(text));
const typedForceOrNull = orNull((text) => typedForce(text, forceUnit()));
const typedRatingOrNull = orNull((text) => typedForce(text, ratingUnit()));

/** @param {string|undefined} text */
const lines = (text = "") =>
  text
    .split(/[\n;]/)
    .map((line) => line.trim())
    .filter(Boolean);

/**
 * @type {Record<import("./tool_fields.js").FieldType,
 *   {show: (value: any) => string, take: (text: string|undefined) => unknown}>}
 * any: what a field holds is said by its type, which is only known when it runs
 */
const TYPES = {
  text: { show: (value) => value ?? "", take: (text = "") => text.trim() },
  note: { show: (value) => value ?? "", take: (text = "") => text.trim() },
  pick: { show: (value) => value ?? "", take: (text) => text || null },
  yes: { show: (value) => (value ? "yes" : "no"), take: (text) => text === "yes" },
  length: { show: lengthToType, take: typedLengthOrNull },
  number: {
    show: (value) => (value === null || value === undefined ? "" : String(value)),
    take: typedNumber,
  },
  force: { show: (value) => forceToType(value, forceUnit()), take: typedForceOrNull },
  rating: { show: (value) => forceToType(value, ratingUnit()), take: typedRatingOrNull },
  speed: {
    show: lengthToType, // of mm/s as of mm
    take: orNull((text) => typedLength(text).replace(/ (mm|in)$/, " $1/s")),
  },
  lengths: {
    show: (value) => (value ?? []).map(lengthToType).join(", "),
    take: (text = "") =>
      text
        .split(/[,;\n]/)
        .filter((piece) => piece.trim())
        .map((piece) => typedLength(piece)),
  },
  points: {
    show: (value) =>
      (value ?? [])
        .map((/** @type {number[]} */ [x, y]) => `${lengthToType(x)}, ${lengthToType(y)}`)
        .join("\n"),
    take: (text) =>
      lines(text).map((line) =>
        line.split(line.includes(",") ? "," : /\s+/).map((piece) => typedLength(piece)),
      ),
  },
  openings: {
    show: (value) => textOf((value ?? []).map(openingToType)),
    take: (text) => rowsOf(text).map(openingToSend),
  },
  figure: { show: String, take: String },
};

/**
 * @param {Api.GivenOpening} opening
 * @returns {import("./v_openings.js").OpeningRow}
 */
function openingToType(opening) {
  const { show } = TYPES.number;
  return {
    v: lengthToType(opening.v_opening_mm),
    angle: show(opening.angle_deg),
    radius: lengthToType(opening.shoulder_radius_mm),
    face: opening.face,
    centre: lengthToType(opening.centre_mm),
    code: opening.code ?? "",
    rating: TYPES.rating.show(opening.rating_kn_per_m),
  };
}

/**
 * What is needed and empty is left out, so that the server says so.
 * @param {import("./v_openings.js").OpeningRow} row
 */
function openingToSend({ v, angle, radius, face, centre, code, rating }) {
  const sizes = {
    v_opening_mm: typedLengthOrNull(v),
    angle_deg: typedNumber(angle),
    shoulder_radius_mm: typedLengthOrNull(radius),
    centre_mm: typedLengthOrNull(centre),
  };
  const given = Object.fromEntries(Object.entries(sizes).filter(([, value]) => value !== null));
  return { ...given, face: face || "top", code: code || null, rating_kn_per_m: typedRatingOrNull(rating) };
}

/**
 * Points for a box, a line each.
 * @param {[number, number][]} points
 */
export const pointsToType = (points) => TYPES.points.show(points);

/**
 * @param {Drawn} kind
 * @returns {FieldSpec[]}
 */
export const specsOf = (kind) => GROUPS[kind].flatMap((group) => group.fields);

/**
 * @param {Drawn} kind
 * @param {import("../sync/shop_lists.js").Fields} tool
 * @returns {Draft}
 */
export function toDraft(kind, tool) {
  return Object.fromEntries(specsOf(kind).map(({ name, type }) => [name, TYPES[type].show(tool[name])]));
}

/**
 * A box that was not touched sends what was kept, not its rounded text; an empty one that cannot
 * be empty is left out, so that the server says it is needed.
 * @param {Drawn} kind
 * @param {Draft} draft
 * @param {import("../sync/shop_lists.js").Fields} [kept]
 * @returns {Record<string, unknown>}
 */
export function fromDraft(kind, draft, kept = {}) {
  /** @param {FieldSpec} spec */
  const valueOf = ({ name, type }) =>
    name in kept && TYPES[type].show(kept[name]) === draft[name] ? kept[name] : TYPES[type].take(draft[name]);
  const shown = specsOf(kind).filter(({ when }) => !when || when(draft));
  const taken = shown.map((spec) => ({ spec, value: valueOf(spec) }));
  return Object.fromEntries(
    taken
      .filter(({ spec, value }) => value !== null || mayBeEmpty(spec))
      .map(({ spec, value }) => [spec.name, value]),
  );
}

/** @param {FieldSpec} spec */
const mayBeEmpty = ({ type, blank }) => type === "rating" || blank !== undefined;

const FIGURE_PARTS = ["low", "nominal", "high", "source", "standing"];

/**
 * @param {import("../sync/shop_lists.js").Fields} metal
 * @returns {Draft}
 */
export function metalToDraft(metal) {
  /** @type {Draft} */
  const draft = {};
  for (const name of ["name", "note", "gauge_family"]) draft[name] = TYPES.text.show(metal[name]);
  for (const { name } of NUMBERS) draft[name] = TYPES.number.show(metal[name]);
  for (const { name } of FIGURES) {
    const figure = /** @type {import("../sync/shop_lists.js").Fields|null|undefined} */ (metal[name]);
    for (const part of FIGURE_PARTS) draft[`${name}.${part}`] = TYPES.number.show(figure?.[part]);
    draft[`${name}.standing`] ||= "typical";
  }
  return draft;
}

/**
 * An optional figure with nothing typed is unknown.
 * @param {Draft} draft
 * @returns {Record<string, unknown>}
 */
export function metalFromDraft(draft) {
  /** @type {Record<string, unknown>} */
  const metal = {
    name: draft.name.trim(),
    note: draft.note.trim(),
    gauge_family: draft.gauge_family || null,
  };
  for (const { name, needed } of NUMBERS) {
    if (draft[name]?.trim() || !needed) metal[name] = typedNumber(draft[name]);
  }
  for (const { name, needed } of FIGURES) {
    const typed = ["low", "nominal", "high", "source"].some((part) => draft[`${name}.${part}`]?.trim());
    metal[name] = typed || needed ? figureFrom(draft, name) : null;
  }
  return metal;
}

/**
 * @param {Draft} draft
 * @param {string} name
 */
function figureFrom(draft, name) {
  const numbers = ["low", "nominal", "high"].map((part) => [part, typedNumber(draft[`${name}.${part}`])]);
  return {
    ...Object.fromEntries(numbers.filter(([, value]) => value !== null)),
    source: (draft[`${name}.source`] ?? "").trim(),
    standing: draft[`${name}.standing`],
  };
}

/**
 * What the server said, by box: "punches.3.segments_mm.2" belongs to "segments_mm".
 * @param {Record<string, string[]>} errors
 * @param {string[]} names of the boxes
 * @returns {{byName: Record<string, string[]>, others: string[]}} others fit no box
 */
export function sortErrors(errors, names) {
  /** @type {Record<string, string[]>} */
  const byName = {};
  /** @type {string[]} */
  const others = [];
  for (const [path, words] of Object.entries(errors)) {
    const inPath = `.${path}.`;
    const matching = inPath.includes(".openings.") ? names.filter((name) => name === "openings") : names;
    const box = matching
      .filter((name) => inPath.includes(`.${name}.`))
      .sort((a, b) => b.length - a.length)[0];
    const piece = /\.(\d+)$/.exec(path)?.[1];
    if (box === "openings") {
      (byName[path.slice(path.indexOf(box))] ??= []).push(...words);
    } else if (box) {
      (byName[box] ??= []).push(
        ...(piece && inPath.endsWith(`.${box}.${piece}.`)
          ? words.map((said) => `Number ${Number(piece) + 1}: ${said}`)
          : words),
      );
    } else {
      others.push(...words.map((said) => `${path}: ${said}`));
    }
  }
  return { byName, others };
}
