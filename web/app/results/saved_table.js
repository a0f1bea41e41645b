// Tables that are saved with a step, read between their rows as the shop reads them
// (planning/saved_table.py): the nearest row alone could over-bend a second hit.

const SAME = 0.002; // saved tables are rounded to a thousandth: so far beyond an end is the end

/**
 * @param {Record<string, number>[]} table
 * @param {string} by the column that is known
 * @param {number} x its value
 * @param {string} name the column that is wanted
 * @returns {number|null} null beyond the ends
 */
export function readBetween(table, by, x, name) {
  const rows = [...table].sort((one, other) => one[by] - other[by]);
  if (rows.length < 2 || x < rows[0][by] - SAME || x > rows[rows.length - 1][by] + SAME) return null;
  const above = rows.findIndex((row) => row[by] > x);
  const after = above < 0 ? rows.length - 1 : Math.max(above, 1);
  const [low, high] = [rows[after - 1], rows[after]];
  return low[name] + ((x - low[by]) / (high[by] - low[by])) * (high[name] - low[name]);
}
