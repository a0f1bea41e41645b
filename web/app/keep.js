// Making a proven setting the card's own: a new revision, on the card as it stands in the shop.
import { Problem, Unreachable } from "./api.js";
import { changeCard, fetchCard } from "./cards.js";
import { measured } from "./view/trials.js";
import { newSetting } from "./measure.js";
import { newId } from "./outbox.js";
import { settings } from "./settings.js";
import { sync } from "./sync.js";

/**
 * @param {any} card as it was when the bend was made @param {any} step
 * @param {import("../screens/trial.js").Result} result told here how it went @param {() => void} draw
 */
export async function keepSetting(card, step, result, draw) {
  const setting = newSetting(result);
  if (!setting || result.kept === "asking") return;
  Object.assign(result, { kept: "asking", words: "" });
  draw();
  try {
    const now = await fetchCard(card.code);
    if (now.revision !== card.revision) throw new Problem(changedMeanwhile(now));
    const revised = await changeCard(now, {
      settings: [...now.settings.filter((/** @type {any} */ one) => one.step !== step.number), keptAs(step, setting, result.trial)],
      reason: `Step ${step.number} set from a piece that came out at ${measured(result.trial)}`,
      id: newId(),
      ...(settings().name ? { by: settings().name } : {}),
    });
    Object.assign(card, revised);
    Object.assign(result, { kept: "kept", words: `Revision ${revised.revision} of the card has it. Steps show it from now on.` });
    sync();
  } catch (error) {
    Object.assign(result, { kept: "no", words: inWords(error) });
  }
  draw();
}

/** @param {any} step @param {import("./measure.js").Setting} setting @param {any} trial */
const keptAs = (step, setting, trial) => ({
  step: step.number,
  set_angle_deg: setting.set_angle_deg,
  punch_depth_mm: setting.punch_depth_mm,
  trial_id: trial.id,
  reason: `Piece came out at ${measured(trial)}`,
});

/** @param {any} now */
const changedMeanwhile = (now) => ({
  title: "Changed meanwhile",
  status: 412,
  detail: `The card was changed meanwhile and is at revision ${now.revision}. Open it, look, and measure again.`,
});

/** @param {unknown} error */
function inWords(error) {
  if (error instanceof Unreachable) return "The shop does not answer, so nothing was kept. The card is as it was; try again.";
  if (error instanceof Problem && error.status === 412) return error.message.includes("meanwhile") ? error.message : "The card was changed in between. Open it, look, and measure again.";
  return error instanceof Error ? error.message : String(error);
}
