// The V's of a block as they stand in the boxes: one line a V, readable where lines are compared.

/**
 * @typedef {{v: string, angle: string, radius: string, face: string, centre: string, code: string,
 *   rating: string}} OpeningRow
 */

/** @type {(keyof OpeningRow)[]} */
const CELLS = ["v", "angle", "radius", "face", "centre", "code", "rating"];
const FRESH = { v: "", angle: "", radius: "", face: "top", centre: "", code: "", rating: "" };

/** @type {[string, string][]} */
export const FACES = [
  ["top", "top"],
  ["back", "back"],
  ["bottom", "bottom"],
  ["front", "front"],
];

/**
 * @param {string|undefined} text
 * @returns {OpeningRow[]} at least one
 */
export function rowsOf(text = "") {
  const lines = text.split("\n").filter((line) => line.trim());
  const rows = lines.map((line) => {
    const cells = line.split(";").map((cell) => cell.trim());
    return /** @type {OpeningRow} */ (Object.fromEntries(CELLS.map((name, i) => [name, cells[i] ?? ""])));
  });
  return rows.length ? rows : [{ ...FRESH }];
}

/** @param {OpeningRow[]} rows */
export const textOf = (rows) =>
  rows.map((row) => CELLS.map((name) => row[name].replaceAll(";", ",")).join("; ")).join("\n");

/**
 * @param {string|undefined} text
 * @param {number} index
 * @param {Partial<OpeningRow>} change
 */
export const withChange = (text, index, change) =>
  textOf(rowsOf(text).map((row, i) => (i === index ? { ...row, ...change } : row)));

/**
 * A further V like the last, to be measured.
 * @param {string|undefined} text
 */
export function withOneMore(text) {
  const rows = rowsOf(text);
  const { angle, face } = rows[rows.length - 1];
  return textOf([...rows, { ...FRESH, angle, face }]);
}

/**
 * @param {string|undefined} text
 * @param {number} index
 */
export const without = (text, index) => textOf(rowsOf(text).filter((_, i) => i !== index));

/**
 * Which box of a V a field of the API stands in.
 * @type {Record<string, keyof OpeningRow>}
 */
export const BOX_OF = {
  v_opening_mm: "v",
  angle_deg: "angle",
  shoulder_radius_mm: "radius",
  face: "face",
  centre_mm: "centre",
  code: "code",
  rating_kn_per_m: "rating",
};
