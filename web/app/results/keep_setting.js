// Making a setting that worked the card's own: written down here, then a new revision in the shop.
import { messageOf } from "../sync/api.js";
import { changeHere } from "../sync/card_edits.js";
import { gaugeAfter } from "./next_gauge.js";
import { measuredWords, newSetting } from "./measured_bend.js";
import { sync } from "../sync/sync.js";

/**
 * @typedef {{trial: import("../sync/stored.js").Measured & {id: string}, correction: Api.Correction|null,
 *   table: ReturnType<typeof import("./measured_bend.js").fromTable>, waits: boolean, late: string, gauge?:
 *   import("./next_gauge.js").GaugeNext|null,
 *   kept: "no"|"asking"|"kept", where?: string, words: string, question: string}} Result
 * late: why the shop could not take it now;
 * question: about a result that does not count, empty for any other
 */

/**
 * @param {import("../sync/card_edits.js").CardHere} card as it was when the bend was made
 * @param {Api.Step} step
 * @param {Result} result told here how it went
 * @param {() => void} draw
 */
export async function keepSetting(card, step, result, draw) {
  const setting = newSetting(result);
  if (!setting || result.kept === "asking") return;
  Object.assign(result, { kept: "asking", words: "" });
  draw();
  try {
    // Made on the card as it was when the bend was made: if the shop has another by now, the two meet.
    const done = await changeHere(
      card,
      {
        settings: [
          ...card.settings.filter((one) => one.step !== step.number),
          keptAs(step, setting, result.trial, gaugeKept(card, step, result)),
        ],
      },
      { reason: `Step ${step.number} set from a piece measured at ${measuredWords(result.trial)}` },
    );
    Object.assign(card, done.card);
    Object.assign(result, { kept: "kept", where: done.where, words: keptWords(done) });
    sync();
  } catch (error) {
    Object.assign(result, { kept: "no", words: messageOf(error) });
  }
  draw();
}

/** @param {Awaited<ReturnType<typeof changeHere>>} done */
function keptWords({ where, card }) {
  if (where === "shop") return `Revision ${card.revision} of the card has it. Steps show it from now on.`;
  if (where === "settle") {
    return "The card was changed meanwhile. Both are kept: decide on the card which holds.";
  }
  return "Steps show it on this device from now on; it is sent to the shop automatically.";
}

/**
 * @param {Api.Step} step
 * @param {import("./measured_bend.js").Setting} setting
 * @param {Result["trial"]} trial
 * @param {number|null} gauge where the gauge stands from now on, null where the plan says it
 */
const keptAs = (step, setting, trial, gauge) => ({
  step: step.number,
  set_angle_deg: setting.set_angle_deg,
  punch_depth_mm: setting.punch_depth_mm,
  ...(gauge === null ? {} : { gauge_x_mm: gauge }),
  trial_id: trial.id,
  reason: `Piece measured at ${measuredWords(trial)}`,
});

/**
 * What the flange led to, else what the card had of its own.
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {Result} result
 * @returns {number|null}
 */
const gaugeKept = (card, step, result) =>
  gaugeAfter(result)?.gauge_x_mm ?? card.settings.find((one) => one.step === step.number)?.gauge_x_mm ?? null;
