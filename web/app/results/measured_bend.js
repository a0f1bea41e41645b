// A measured bend, read from what was typed, and what to set next when the shop cannot say.
import { inReach } from "./setting_limits.js";
import { readBetween } from "./saved_table.js";
import { angle, length, words } from "../shell/units.js";

/**
 * @typedef {{one: string, left: string, middle: string, right: string, places: "one"|"three", flange: string,
 *   note: string, set: string, lot: string, radius: string, thickness: string}} Typed
 */
/** @type {Typed} */
export const NOTHING_TYPED = {
  one: "",
  left: "",
  middle: "",
  right: "",
  places: "one",
  flange: "",
  note: "",
  set: "",
  lot: "",
  radius: "",
  thickness: "",
};

/** @typedef {{set_angle_deg: number, punch_depth_mm: number|null, gauge_x_mm?: number|null}} Setting */

/**
 * Degrees as typed at the press: 91.5, 91,5, 91.5°.
 * @param {string} typed
 * @returns {number|null} null when it is no angle
 */
export function readAngle(typed) {
  const text = typed
    .trim()
    .replace(",", ".")
    .replace(/\s*(°|deg)$/, "");
  if (!/^(\d+\.?\d*|\.\d+)$/.test(text)) return null;
  const degrees = Number(text);
  return degrees > 0 && degrees < 180 ? degrees : null;
}

const NO_ANGLE = "Type the angle between the flats in degrees, such as 90.5. Square is 90.";
const NO_ANGLE_SHORT = "Degrees, such as 90.5";

/**
 * What was meant where the point slipped: 9.15 or 915 for 91.5. Typed with its sign, 9.15° is meant.
 * @param {string} text
 * @param {number|null} wanted degrees
 * @returns {string|null} null where it may well be what was measured
 */
export function slippedPoint(text, wanted) {
  const degrees = Number(text.trim().replace(",", "."));
  if (wanted === null || !text.trim() || !Number.isFinite(degrees) || degrees <= 0) return null;
  const off = Math.abs(degrees - wanted);
  const [meant] = [degrees * 10, degrees / 10].filter((moved) => Math.abs(moved - wanted) < off / 3);
  return meant && meant < 180 ? String(Number(meant.toFixed(3))) : null;
}

/**
 * @param {Typed} typed
 * @param {number|null} [wanted] degrees
 * @returns {{angles: Record<string, number>, wrong: Record<string, string[]>,
 *   meant: Record<string, string[]>}} by the API's names; meant: what to offer where something is asked back
 */
export function readMeasured(typed, wanted = null) {
  /** @type {Record<string, number>} */
  const angles = {};
  /** @type {Record<string, string[]>} */
  const wrong = {};
  /** @type {Record<string, string[]>} */
  const meant = {};
  /** @type {[string, string][]} */
  const fields =
    typed.places === "one"
      ? [["measured_deg", typed.one]]
      : [
          ["left_deg", typed.left],
          ["middle_deg", typed.middle],
          ["right_deg", typed.right],
        ];
  for (const [name, text] of fields) {
    if (text.trim() === "") continue;
    const degrees = readAngle(text);
    const slipped = slippedPoint(text, wanted);
    if (slipped) {
      meant[name] = [`${slipped}°`, ...(degrees === null ? [] : [`${text.trim()}°`])];
      wrong[name] = [`${meant[name].join(" or ")}?`];
    } else if (degrees === null) {
      wrong[name] = [typed.places === "one" ? NO_ANGLE : NO_ANGLE_SHORT];
    } else {
      angles[name] = degrees;
    }
  }
  if (!Object.keys(angles).length && !Object.keys(wrong).length) wrong[fields[0][0]] = [NO_ANGLE];
  return { angles, wrong, meant };
}

/**
 * What to set after a measured angle by the card's own table, straight between its rows as the shop reads
 * it: the nearest row alone could over-bend a second hit. The table holds for the planned setting; for
 * another one it is moved along by as much.
 * @param {Api.Step} step
 * @param {Record<string, number>} angles as measured
 * @param {Setting} used what had been set
 * @returns {(Setting & {row: number, ends: boolean}) | null} ends: for the ends, as the middle is open;
 *   null where the table, the tools or the press do not reach
 */
export function fromTable(step, angles, used) {
  const measured = setBy(angles);
  const [setAngle, depth] = ["set_angle_deg", "punch_depth_mm"].map((name) =>
    readBetween(step.corrections ?? [], "measured_deg", measured, name),
  );
  if (setAngle === null || depth === null || used.set_angle_deg === null || tooOpen(step, measured)) {
    return null;
  }
  // A step that has rows has a setting.
  const planned = /** @type {{set_angle_deg: number, punch_depth_mm: number}} */ (step);
  const next = {
    row: measured,
    ends: measured !== middleOf(angles),
    set_angle_deg: setAngle + (used.set_angle_deg - planned.set_angle_deg),
    punch_depth_mm:
      used.punch_depth_mm === null ? null : depth + (used.punch_depth_mm - planned.punch_depth_mm),
  };
  return inReach(step, next) ? next : null;
}

/**
 * Whether a first hit came out further open than it can: the table's rows there are for later hits.
 * @param {Api.Step} step
 * @param {number} measured
 */
function tooOpen({ first_hit: first, included_angle_deg: wanted }, measured) {
  return Boolean(first && measured > Math.max(wanted + LARGE_ERROR_DEG, first.comes_out_deg_high));
}

const LARGE_ERROR_DEG = 5;

/**
 * One angle for several along the bend, as the server takes it: the mean of those given.
 * @param {Record<string, number>} angles
 */
export function middleOf(angles) {
  const all = Object.values(angles);
  return all.reduce((sum, degrees) => sum + degrees, 0) / all.length;
}

/** Less than this between middle and ends is reading. */
const LEAST_CROWN_DEG = 0.3;

/**
 * The angle that the next setting is reckoned from, as the shop has it (crown_answer.deg_to_set_by): the
 * ends', where the middle is more open.
 * @param {Record<string, number>} angles
 */
function setBy(angles) {
  const ends = (angles.left_deg + angles.right_deg) / 2;
  return angles.middle_deg - ends >= LEAST_CROWN_DEG ? ends : middleOf(angles);
}

/**
 * What to set next: the shop's answer, else the card's own table.
 * @param {{correction: Api.Correction|null, table: Setting|null}|null} result
 * @returns {Setting|null}
 */
export function newSetting(result) {
  if (result?.correction?.set_angle_deg) return /** @type {Setting} */ (result.correction);
  return result?.table ?? null;
}

/**
 * @param {import("../sync/stored.js").Measured} trial
 * @returns {string}
 */
export function measuredWords(trial) {
  const angles = [trial.left_deg, trial.middle_deg, trial.right_deg];
  const all = angles.some((deg) => deg !== null && deg !== undefined);
  const came = all
    ? angles.map((deg) => words(angle(deg ?? null))).join(" / ")
    : words(angle(trial.measured_deg));
  return trial.flange_mm ? `${came}, flange ${flange(trial.flange_mm)}` : came;
}

/**
 * A result that still waits holds the flange as it was typed.
 * @param {number|string} kept
 * @returns {string}
 */
const flange = (kept) => (typeof kept === "string" ? kept : words(length(kept, { digits: 2 })));
