// How a run stands, by its entries. The shop's own count (server: use_cases/run_summary.py) goes by the same
// rules; here it is needed without the shop, too.

/** @typedef {import("../sync/stored.js").RunBody} RunBody */
/**
 * @typedef {{id: string, revision: number, pieces: number|null, state: "open"|"paused"|"ended", done: number,
 *   scrapped: number, settingUp: boolean, last: RunBody|null}} Run
 *   pieces: how many are wanted, null while that has not come; settingUp: nothing was made and nobody said
 *   that the set-up is finished; last: what was counted last, to be taken back
 */

/**
 * The runs of a card, the newest first.
 * @param {RunBody[]} entries in the order they came
 * @returns {Run[]}
 */
export function runsOf(entries) {
  /** @type {Map<string, RunBody[]>} */
  const each = new Map();
  for (const entry of entries) each.set(entry.run_id, [...(each.get(entry.run_id) ?? []), entry]);
  return [...each.values()].map(runOf).reverse();
}

/**
 * @param {RunBody[]} entries of one run
 * @returns {Run}
 */
function runOf(entries) {
  const undone = new Set(entries.map(({ undoes }) => undoes));
  const standing = entries.filter(({ id, kind }) => kind !== "back" && !undone.has(id));
  const count = (/** @type {string} */ kind) => standing.filter((entry) => entry.kind === kind).length;
  const begun = standing.find(({ kind }) => kind === "begun");
  const counted = standing.filter(({ kind }) => kind === "piece" || kind === "scrap");
  return {
    id: entries[0].run_id,
    revision: (begun ?? entries[0]).revision,
    pieces: begun?.pieces ?? null,
    state: stateOf(standing),
    done: count("piece"),
    scrapped: count("scrap"),
    settingUp: !counted.length && !count("setup"),
    last: counted.at(-1) ?? null,
  };
}

/**
 * @param {RunBody[]} standing
 * @returns {Run["state"]}
 */
function stateOf(standing) {
  const said = standing.filter(({ kind }) => ["paused", "resumed", "ended"].includes(kind));
  if (said.some(({ kind }) => kind === "ended")) return "ended";
  return said.at(-1)?.kind === "paused" ? "paused" : "open";
}

/**
 * The run that goes on, or was paused.
 * @param {Run[]} runs
 */
export const currentRun = (runs) => runs.find(({ state }) => state !== "ended") ?? null;

/**
 * Which piece is in the press.
 * @param {Run} run
 * @param {number} [more] later than that one
 * @returns {string} "Piece 3 of 20"
 */
export const pieceWords = ({ done, pieces }, more = 0) =>
  `Piece ${done + 1 + more}${pieces === null ? "" : ` of ${pieces}`}`;

/**
 * Whether the piece in the press is the last one that is wanted, or beyond it.
 * @param {Run} run
 */
export const isLastPiece = ({ done, pieces }) => pieces !== null && done + 1 >= pieces;
