// A card that somebody else saved meanwhile: theirs and mine side by side, nothing lost either way.
import { html } from "/vendor/lit-html/lit-html.js";
import { finishedDrawing } from "../../drawing/part.js";
import { boxBoxes } from "../../app/forms/box_form.js";
import { formFromPart } from "../../app/forms/part_form.js";
import { toolsWords } from "../../app/forms/named_tools.js";
import { orderLimitsWords } from "../../app/forms/order_limits_form.js";
import { flag } from "../common/finding.js";
import { differenceTable, differencesBetween } from "../common/save_conflict.js";

/** @typedef {import("../../app/forms/part_form.js").PartForm} PartForm */

/**
 * @param {Api.Card} theirs the card as it is now
 * @param {PartForm} mine
 * @param {{saveMine: () => void, takeTheirs: () => void, saveAsNew: () => void}} act
 */
export function partConflict(theirs, mine, { saveMine, takeTheirs, saveAsNew }) {
  const their = formFromPart(theirs.part, theirs.note);
  const boxes = [...new Set([...boxesOf(mine), ...boxesOf(their)].map((box) => box.label))].map((label) => ({
    name: label,
    label,
  }));
  const differences = differencesBetween(asText(mine), asText(their), boxes);
  return html`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
    <h2>${flag("caution")} Somebody else saved this card meanwhile</h2>
    <p>
      ${theirs.updated_by ? `${theirs.updated_by} saved` : "Somebody saved"} revision ${theirs.revision}. What
      you typed is still in the boxes, and both can be kept.
    </p>
    <div class="columns">
      ${
        differences.length
          ? differenceTable(differences)
          : html`<p>
              The part is the same. Something else of the card changed: its results, its settings or whether
              it is archived.
            </p>`
      }
      <figure class="theirs">
        <figcaption>As saved now</figcaption>
        ${finishedDrawing(theirs.plan, { pixels: 330, tallest: 260, test: "theirs-section" })}
      </figure>
    </div>
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${saveMine}>
        Save mine as the next revision
      </button>
      <button type="button" class="button" data-test="take-theirs" @click=${takeTheirs}>
        Take what is saved
      </button>
      <button type="button" class="button" data-test="save-as-new" @click=${saveAsNew}>
        Save mine as a new card
      </button>
    </div>
    <p class="hint">Saved revisions stay in the card's history whatever you choose.</p>
  </section>`;
}

/**
 * @param {PartForm} form
 * @returns {{label: string, value: string}[]}
 */
function boxesOf(form) {
  return [
    { label: "Title", value: form.title },
    { label: "Note", value: form.note },
    { label: "Metal", value: form.metal },
    { label: "Thickness", value: form.thickness },
    { label: "Length", value: form.length },
    { label: "Measured", value: form.dimension },
    { label: "Grain", value: form.grain },
    { label: "Order", value: form.order?.join(", ") ?? "" },
    { label: "Limits on the order", value: orderLimitsWords(form.wishes) },
    { label: "Tools", value: toolsWords(form.tools) },
    ...(form.box
      ? [
          ...boxBoxes(form.box).map(([, label, value]) => ({
            label: `${label[0].toUpperCase()}${label.slice(1)}`,
            value,
          })),
          {
            label: "Corners",
            value:
              `${form.box.corner}, relief ${form.box.relief} ${form.box.reliefSize} ${form.box.gap}`.trim(),
          },
          { label: "Sides", value: form.box.there.join(", ") },
        ]
      : []),
    ...(form.box ? [] : form.flats).map((flat, i) => ({ label: `Flat ${i + 1}`, value: flat })),
    ...(form.box ? [] : form.bends).map((bend, i) => ({
      label: `Bend ${i + 1}`,
      value: [
        bend.kind === "bend" ? `${bend.angle}°` : bend.kind.replace("_", " "),
        bend.direction,
        bend.radius && `radius ${bend.radius}`,
        bend.gap && `gap ${bend.gap}`,
        toolsWords(bend),
      ]
        .filter(Boolean)
        .join(", "),
    })),
    ...form.holes.map((hole, i) => ({
      label: `Hole ${i + 1}`,
      value: `flat ${hole.flat}, at ${hole.position}, size ${hole.diameter}`,
    })),
  ];
}

/**
 * @param {PartForm} form
 * @returns {Record<string, string>}
 */
const asText = (form) => Object.fromEntries(boxesOf(form).map(({ label, value }) => [label, value]));
