// A part as it is typed: plain changes from one form to the next, and to and from what the API takes.
import { bendFromPart, bendRequest, newBend } from "./bend_row.js";
import { bendNames, boxBoxes, boxFromPart, boxRequest, emptyBox } from "./box_form.js";
import { typedNumber } from "./entry_form.js";
import { toolsFromPart, toolsRequest } from "./named_tools.js";
import { lengthToType, lengthUnit, typedLength } from "../shell/units.js";
import {
  unnumbered,
  orderLimitsFromPart,
  orderLimitsRequest,
  orderLimitsShifted,
} from "./order_limits_form.js";

/** @typedef {import("./bend_row.js").Kind} Kind */
/** @typedef {import("./bend_row.js").BendRow} BendRow */
/** @typedef {{flat: string, position: string, diameter: string}} HoleRow */
/**
 * @typedef {object} PartForm everything as typed; bare lengths are in `unit`
 * @property {"mm"|"in"} unit
 * @property {string} title
 * @property {string} note
 * @property {string} [reason] why a card is changed
 * @property {string} metal
 * @property {string} thickness
 * @property {string} length
 * @property {string[]} flats
 * @property {BendRow[]} bends
 * @property {"din6935"|"mould_line"|"inside"} dimension
 * @property {""|"with"|"across"} grain
 * @property {HoleRow[]} holes
 * @property {number[]|null} order null lets the planner choose
 * @property {import("./order_limits_form.js").OrderLimitsForm} [wishes] of the order; left out: none
 * @property {import("./named_tools.js").NamedTools} [tools] for the whole part; left out: none
 * @property {import("./box_form.js").BoxForm|null} [box] a box or tray in place of the section
 */
/**
 * @typedef {(form: PartForm, how?: {focus?: string, undo?: string}) => void} Change focus: the field to go
 *   to; undo: what to call the way back
 */

export const MOST_BENDS = 40;

/**
 * @param {string} metal
 * @returns {PartForm}
 */
export function emptyPart(metal) {
  return {
    unit: lengthUnit(),
    title: "",
    note: "",
    metal,
    thickness: "",
    length: "",
    flats: ["", ""],
    bends: [newBend()],
    dimension: "din6935",
    grain: "",
    holes: [],
    order: null,
    box: null,
  };
}

/**
 * A box in place of the section, or the section again; what was typed of the other stays.
 * @param {PartForm & {aside?: PartForm["box"]}} form
 * @param {boolean} box
 * @returns {PartForm}
 */
export function asBox({ aside, ...form }, box) {
  const kept = numberedAnew({ ...form, box: box ? (form.box ?? aside ?? emptyBox()) : null });
  return box ? kept : { ...kept, ...(form.box ? { aside: form.box } : {}) };
}

/**
 * Order and wishes by number fall away where the numbers mean other bends and flats.
 * @param {PartForm} form
 * @returns {PartForm}
 */
const numberedAnew = (form) => ({
  ...form,
  order: null,
  ...(form.wishes ? { wishes: unnumbered(form.wishes) } : {}),
});

/**
 * @param {PartForm} form
 * @param {PartForm["box"]} box
 * @returns {PartForm}
 */
export function withBox(form, box) {
  const same =
    form.box &&
    box &&
    String(bendNames(form.box)) === String(bendNames(box)) &&
    form.box.firstPair === box.firstPair;
  return same ? { ...form, box } : numberedAnew({ ...form, box });
}

/**
 * A card's part in boxes, in this device's unit.
 * @param {Api.Part} part
 * @param {string} note
 * @returns {PartForm}
 */
export function formFromPart(part, note) {
  if (part.box) {
    return {
      ...emptyPart(part.metal),
      title: part.title ?? "",
      note,
      thickness: lengthToType(part.thickness_mm),
      dimension: part.dimension ?? "din6935",
      order: part.order ?? null,
      wishes: orderLimitsFromPart(part.wishes),
      tools: toolsFromPart(part.tools),
      box: boxFromPart(part.box),
    };
  }
  return {
    unit: lengthUnit(),
    title: part.title ?? "",
    note,
    metal: part.metal,
    thickness: lengthToType(part.thickness_mm),
    length: lengthToType(part.bend_length_mm),
    flats: part.flats_mm.map(lengthToType),
    bends: part.bends.map(bendFromPart),
    dimension: part.dimension ?? "din6935",
    grain: part.grain ?? "",
    order: part.order ?? null,
    wishes: orderLimitsFromPart(part.wishes),
    tools: toolsFromPart(part.tools),
    holes: (part.holes ?? []).map((hole) => ({
      flat: String(hole.flat),
      position: lengthToType(hole.position_mm),
      diameter: lengthToType(hole.diameter_mm),
    })),
  };
}

/**
 * What POST /plan takes.
 * @param {PartForm} form
 * @returns {Record<string, unknown>}
 */
export function partRequest(form) {
  const long = (/** @type {string} */ text) => typedLength(text, form.unit);
  if (form.box) {
    return {
      title: form.title.trim(),
      metal: form.metal,
      thickness_mm: long(form.thickness),
      dimension: form.dimension,
      box: boxRequest(form.box, form.unit),
      ...(form.order ? { order: form.order } : {}),
      ...orderLimitsRequest(form.wishes, form.unit),
      ...toolsRequest(form.tools),
    };
  }
  return {
    title: form.title.trim(),
    metal: form.metal,
    thickness_mm: long(form.thickness),
    bend_length_mm: long(form.length),
    flats_mm: form.flats.map(long),
    bends: form.bends.map((bend) => bendRequest(bend, form.unit)),
    dimension: form.dimension,
    ...(form.grain ? { grain: form.grain } : {}),
    ...(form.order ? { order: form.order } : {}),
    ...orderLimitsRequest(form.wishes, form.unit),
    ...toolsRequest(form.tools),
    ...(form.holes.length
      ? {
          holes: form.holes.map((hole) => ({
            flat: typedNumber(hole.flat),
            position_mm: long(hole.position),
            diameter_mm: long(hole.diameter),
          })),
        }
      : {}),
  };
}

/**
 * The same for forms that have the same plan.
 * @param {PartForm} form
 * @returns {string}
 */
export const planKey = (form) => JSON.stringify({ ...partRequest(form), title: "" });

/**
 * What is still to be typed, named as on the screen, with its field.
 * @param {PartForm} form
 * @returns {[string, string][]}
 */
export function gaps(form) {
  /** @type {[string, string, string][]} */
  const sheet = [
    ["metal", "metal", form.metal],
    ["thickness_mm", "thickness", form.thickness],
  ];
  /** @type {[string, string, string][]} */
  const all = form.box
    ? [...sheet, ...boxBoxes(form.box)]
    : [
        ...sheet,
        ["bend_length_mm", "length", form.length],
        ...form.flats.map(
          (flat, i) => /** @type {[string, string, string]} */ ([`flats_mm.${i}`, `flat ${i + 1}`, flat]),
        ),
        ...form.bends.flatMap((bend, i) => bendGaps(bend, i)),
        ...form.holes.flatMap(
          (hole, i) =>
            /** @type {[string, string, string][]} */ ([
              [`holes.${i}.flat`, `hole ${i + 1}: flat`, hole.flat],
              [`holes.${i}.position_mm`, `hole ${i + 1}: place`, hole.position],
              [`holes.${i}.diameter_mm`, `hole ${i + 1}: size`, hole.diameter],
            ]),
        ),
      ];
  return all.filter(([, , value]) => value.trim() === "").map(([name, words]) => [name, words]);
}

/**
 * @param {BendRow} bend
 * @param {number} i
 * @returns {[string, string, string][]}
 */
function bendGaps({ kind, angle, gap }, i) {
  if (kind === "bend") return [[`bends.${i}.included_angle_deg`, `angle of bend ${i + 1}`, angle]];
  return kind === "open_hem" ? [[`bends.${i}.hem_gap_mm`, `gap of hem ${i + 1}`, gap]] : [];
}

/**
 * @param {PartForm} form
 * @param {number} index
 * @param {string} value
 * @returns {PartForm}
 */
export function withFlat(form, index, value) {
  return { ...form, flats: form.flats.with(index, value) };
}

/**
 * @param {PartForm} form
 * @param {number} index
 * @param {Partial<BendRow>} change
 * @returns {PartForm}
 */
export function withBend(form, index, change) {
  return { ...form, bends: form.bends.with(index, { ...form.bends[index], ...change }) };
}

/**
 * A bend more, with an empty flat beyond it.
 * @param {PartForm} form
 * @param {"left"|"right"} end
 * @returns {PartForm}
 */
export function bendAdded(form, end) {
  const last = form.bends.at(end === "left" ? 0 : -1);
  const bend = { ...newBend(), direction: last?.direction ?? "up" };
  const plain =
    end === "left"
      ? form.bends
      : form.bends.map((row, i) =>
          i > 0 && i === form.bends.length - 1 ? { ...row, kind: /** @type {Kind} */ ("bend") } : row,
        );
  if (end === "right") return { ...form, bends: [...plain, bend], flats: [...form.flats, ""], order: null };
  const holes = form.holes.map((hole) => ({ ...hole, flat: shifted(hole.flat, 1, 1) }));
  return {
    ...form,
    bends: [bend, ...plain],
    flats: ["", ...form.flats],
    order: null,
    holes,
    ...orderLimitsShifted(form.wishes, 0),
  };
}

/**
 * A bend less; the flat after it goes too.
 * @param {PartForm} form
 * @param {number} index
 * @returns {PartForm}
 */
export function bendRemoved(form, index) {
  const gone = index + 2; // the flat's number
  const holes = form.holes
    .filter((hole) => hole.flat.trim() !== String(gone))
    .map((hole) => ({ ...hole, flat: shifted(hole.flat, gone, -1) }));
  return {
    ...form,
    bends: form.bends.toSpliced(index, 1),
    flats: form.flats.toSpliced(index + 1, 1),
    order: null,
    holes,
    ...orderLimitsShifted(form.wishes, index + 1),
  };
}

/**
 * Flat numbers move with the flats.
 * @param {string} flat
 * @param {number} from
 * @param {number} by
 * @returns {string}
 */
function shifted(flat, from, by) {
  const number = Number(flat);
  return Number.isInteger(number) && number >= from ? String(number + by) : flat;
}

/**
 * "3, 1 2" as bend numbers; null for an empty box or what is not a list of numbers.
 * @param {string} typed
 * @returns {number[]|null}
 */
export function typedOrder(typed) {
  const pieces = typed
    .split(/[^\d]+/)
    .filter(Boolean)
    .map(Number);
  return pieces.length ? pieces : null;
}

/**
 * Only the bend at either end can be a hem.
 * @param {PartForm} form
 * @param {number} index
 * @returns {boolean}
 */
export function mayBeHem(form, index) {
  return index === 0 || index === form.bends.length - 1;
}
