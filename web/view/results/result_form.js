// The form for what came out of the press: big boxes, few words.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { settingOf } from "../../app/sync/cards.js";
import { angle, length, lengthUnit, words } from "../../app/shell/units.js";
import { choice, field, submitting } from "../common/field.js";

/** @typedef {import("../../app/results/measured_bend.js").Typed} Typed */

const AS_SHOWN = "Leave it if it was set as shown.";

/**
 * Whether the angle is measured at one place or at three along the bend.
 * @param {Typed} typed
 * @param {() => void} draw
 */
export const placesChoice = (typed, draw) =>
  choice({
    name: "places",
    label: "Measured at",
    value: typed.places,
    options: [
      ["one", "One place"],
      ["three", "Left, middle, right"],
    ],
    change: (value) => {
      Object.assign(typed, { places: value });
      draw();
    },
  });

/**
 * @param {Api.Card} card
 * @param {Api.Step} step
 * @param {{typed: Typed, used: import("../../app/results/measured_bend.js").Setting|null, wrong:
 *   Record<string, string[]>, meant: Record<string, string[]>,
 *   general: string, sending: boolean, byDepth: boolean}} state
 * @param {{save: () => void, draw: () => void, keep: () => void}} act keep: what is typed, on this device
 */
export function resultForm(card, step, state, { save, draw, keep }) {
  const { typed, wrong } = state;
  /**
   * @param {keyof Typed} key
   * @param {string} name
   * @param {string} label
   * @param {Partial<import("../common/field.js").FieldOptions>} [more]
   */
  const box = (key, name, label, more = {}) =>
    field({
      name,
      label,
      value: typed[key],
      wrong: wrong[name],
      meant: state.meant[name],
      change: (value) => {
        Object.assign(typed, { [key]: value });
        keep();
        if (!state.meant[name]) return;
        for (const about of [wrong, state.meant]) delete about[name];
        draw();
      },
      ...more,
    });
  const set = state.used ?? settingOf(card, step);
  return html`<form class="result-form" novalidate data-test="result-form" @submit=${submitting(save)}>
    <div class="result-main">
      <h2>Result <small>Wanted ${words(angle(step.included_angle_deg))}</small></h2>
      ${state.general ? html`<p class="wrong" role="alert" data-test="wrong">${state.general}</p>` : nothing}
      <div class="result-angles ${typed.places}">
        ${
          typed.places === "one"
            ? box("one", "measured_deg", "Angle measured", { keys: "decimal", unit: "°" })
            : [
                box("left", "left_deg", "Left", { keys: "decimal", unit: "°" }),
                box("middle", "middle_deg", "Middle", { keys: "decimal", unit: "°" }),
                box("right", "right_deg", "Right", { keys: "decimal", unit: "°" }),
              ]
        }
      </div>
      ${placesChoice(typed, () => {
        keep();
        draw();
      })}
      <div class="result-more">
        ${
          state.byDepth
            ? box("set", "punch_depth_mm", "Depth that was set", {
                unit: lengthUnit(),
                placeholder:
                  set.punch_depth_mm === null ? "" : length(set.punch_depth_mm, { digits: 2 }).text,
                hint: AS_SHOWN,
              })
            : box("set", "set_angle_deg", "Angle that was set", {
                keys: "decimal",
                unit: "°",
                placeholder: set.set_angle_deg === null ? "" : angle(set.set_angle_deg).text,
                hint: AS_SHOWN,
              })
        }
        ${box("flange", "flange_mm", "Flange measured", { unit: lengthUnit(), hint: "If you measured it." })}
        ${box("note", "note", "Note", { hint: "Grain, anything odd." })}
      </div>
      <details
        class="more-measured"
        data-test="more-measured"
        ?open=${["lot", "thickness_mm", "radius_mm"].some((name) => wrong[name]?.length)}>
        <summary>More measured</summary>
        <div class="result-more">
          ${box("thickness", "thickness_mm", "Thickness measured", { unit: lengthUnit() })}
          ${box("radius", "radius_mm", "Inside radius", { unit: lengthUnit() })}
          ${box("lot", "lot", "Lot or heat", { hint: "As on the sheet’s tag." })}
        </div>
      </details>
    </div>
    <div class="step-nav" role="group" aria-label="Result">
      <a class="button" href="/c/${card.code}/step/${step.number}" data-test="back">Back</a>
      <button class="button next" data-test="save" ?disabled=${state.sending}>
        ${state.sending ? "Sending…" : "Save"}
      </button>
    </div>
  </form>`;
}
