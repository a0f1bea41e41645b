// A tool from what is engraved on it: a shape picked by its picture, two or three sizes, and usual
// proportions for the rest, which the server fills in and which stay named as assumed.
import { lengthUnit } from "../shell/units.js";
import { rowsOf, textOf } from "./v_openings.js";

/** @typedef {import("./tool_fields.js").Draft} Draft */
/** @typedef {import("../sync/shop_lists.js").Fields} Fields */
/** @typedef {"punches"|"dies"|"holders"} Kind */
/**
 * @typedef {object} Shape
 * @property {string} key
 * @property {string} title
 * @property {string} shape as the API calls it
 * @property {import("../../drawing/rings.js").Ring} ring its picture, of no tool in particular
 * @property {string[]} boxes what is typed, by field name; "openings" stands for V's and angles in a row
 */

/**
 * @param {string} text x and y of each, from the tip or from the top of the V
 * @returns {import("../../drawing/rings.js").Ring}
 */
const points = (text) =>
  text.split(" ").map((point) => /** @type {[number, number]} */ (point.split(",").map(Number)));

const PUNCH = ["angle_deg", "tip_radius_mm", "rating_kn_per_m", "height_mm", "segments_mm"];
const DIE = ["v_opening_mm", "angle_deg", "rating_kn_per_m", "height_mm", "segments_mm"];
const BLOCK = ["openings", "rating_kn_per_m", "height_mm", "segments_mm"];

/** @type {Partial<Record<Kind, Shape[]>>} */
export const SHAPES = {
  punches: [
    {
      key: "straight",
      title: "Straight",
      shape: "straight",
      ring: points("0,0 11,12 11,60 -11,60 -11,12"),
      boxes: PUNCH,
    },
    {
      key: "acute",
      title: "Acute",
      shape: "straight",
      ring: points("0,0 10,36 10,60 -10,60 -10,36"),
      boxes: PUNCH,
    },
    {
      key: "gooseneck",
      title: "Gooseneck",
      shape: "gooseneck",
      ring: points("0,0 7,8 26,26 26,38 13,50 13,60 -13,60 -13,50 12,34 12,26 -7,8"),
      boxes: PUNCH,
    },
    {
      key: "radius",
      title: "Radius",
      shape: "straight",
      ring: points("-12,8 -9,3 -5,0.7 0,0 5,0.7 9,3 12,8 12,60 -12,60"),
      boxes: PUNCH,
    },
  ],
  dies: [
    {
      key: "single",
      title: "Single V",
      shape: "single_v",
      ring: points("-22,-45 22,-45 22,0 11,0 0,-11 -11,0 -22,0"),
      boxes: DIE,
    },
    {
      key: "block",
      title: "Block of V’s",
      shape: "multi_v",
      ring: points(
        "-30,-60 -8,-60 0,-52 8,-60 30,-60 30,-35 25,-30 30,-25 30,0 12,0 " +
          "0,-12 -12,0 -30,0 -30,-20 -20,-30 -30,-40",
      ),
      boxes: BLOCK,
    },
    {
      key: "angles",
      title: "Several angles",
      shape: "multi_v",
      ring: points(
        "-30,-60 -5,-60 0,-40 5,-60 30,-60 30,-36 24,-30 30,-24 30,0 16,0 0,-8 " +
          "-16,0 -30,0 -30,-24 -14,-30 -30,-36",
      ),
      boxes: BLOCK,
    },
  ],
};

/** @type {Record<string, string[]>} */
const ASSUMABLE = {
  straight: ["height_mm", "body_width_mm"],
  gooseneck: ["height_mm", "body_width_mm", "neck_relief_mm"],
  single_v: ["shoulder_radius_mm", "height_mm", "width_mm"],
  multi_v: ["shoulder_radius_mm", "height_mm", "width_mm"],
};

/**
 * What is assumed stands in no box, so that nobody takes it for measured.
 * @param {Kind} kind
 * @param {Fields} tool
 * @param {Draft} draft
 * @returns {Draft}
 */
export function draftOfAssumed(kind, tool, draft) {
  const assumed = kind === "holders" ? [] : /** @type {string[]} */ (tool.assumed ?? []);
  return { ...draft, ...Object.fromEntries(assumed.map((name) => [name, ""])) };
}

/**
 * The record with the names of what is left to usual proportions: any size of a tool picked by its picture,
 * and what was assumed before and is still empty.
 * @param {Kind} kind
 * @param {Fields} record
 * @param {{draft: Draft, kept: Fields, shape: Shape|undefined}} from
 * @returns {Fields}
 */
export function withAssumed(kind, record, { draft, kept, shape }) {
  if (kind === "holders") return record;
  const before = /** @type {string[]} */ (kept.assumed ?? []);
  const assumed = (ASSUMABLE[draft.shape] ?? []).filter(
    (name) => !draft[name]?.trim() && (shape || before.includes(name)),
  );
  if (!shape) return { ...record, assumed };
  return { ...record, assumed, name: record.name || nameOf(shape, draft) };
}

/**
 * @param {Shape} shape
 * @param {Draft} draft
 */
function nameOf({ title, boxes }, draft) {
  const unit = lengthUnit();
  if (boxes === PUNCH) return `${title} ${draft.angle_deg}°, R ${draft.tip_radius_mm} ${unit}`;
  if (boxes === DIE) return `V ${draft.v_opening_mm} ${unit}, ${draft.angle_deg}°`;
  return `${title}: ${vsOf(draft.openings).join(", ")} ${unit}`;
}

/** @param {string|undefined} openings */
export const vsOf = (openings) => rowsOf(openings).map(({ v }) => v);

/**
 * The V's of a block from two boxes: openings in a row, and one angle for all or one for each.
 * @param {string} vs
 * @param {string} angles
 */
export function openingsFrom(vs, angles) {
  const all = inARow(angles);
  return textOf(
    inARow(vs).map((v, index) => ({
      ...rowsOf("")[0],
      v,
      angle: all.length === 1 ? all[0] : (all[index] ?? ""),
    })),
  );
}

/** @param {string} typed */
const inARow = (typed) =>
  typed
    .split(/[,;]/)
    .map((one) => one.trim())
    .filter(Boolean);
