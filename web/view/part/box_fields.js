// The boxes of a box: what kind, the base, its sides, its corners. Each sketch shows what its
// numbers mean.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { KINDS as FOLDS } from "../../app/forms/bend_row.js";
import {
  alikeSet,
  angleField,
  errorsShown,
  flatAdded,
  flatField,
  flatRemoved,
  flatWord,
  foldField,
  hasBothPairs,
  kindOf,
  MOST_SIDE_BENDS,
  ofKind,
  shownSides,
  SIDES,
  sideToggled,
  withFlat,
  withFold,
} from "../../app/forms/box_form.js";
import { withBox } from "../../app/forms/part_form.js";
import { choice, field, pick } from "../common/field.js";
import { fold } from "../common/fold.js";
import { wrongAt } from "../common/form_errors.js";

/** @typedef {import("../../app/forms/part_form.js").PartForm} PartForm */
/** @typedef {import("../../app/forms/box_form.js").BoxForm} BoxForm */
/** @typedef {import("../../app/forms/box_form.js").SideName} SideName */
/** @typedef {import("../common/form_errors.js").Errors} Errors */
/** @typedef {(box: BoxForm, how?: {focus?: string, undo?: string}) => void} ChangeBox */

/** @type {[import("../../app/forms/box_form.js").Kind, string, string][]} walls in section, base below */
const KINDS = [
  ["tray", "Tray", "M10 14V44H86V14"],
  ["lips-in", "Lips in", "M24 14H10V44H86V14H72"],
  ["lips-out", "Lips out", "M2 14H16V44H80V14H94"],
  ["channel", "Two sides", "M10 14V44H86V14M18 36H30M66 36H78"],
];
/** @type {[string, string][]} */
const RELIEFS = [
  ["round", "Round"],
  ["square", "Square"],
  ["none", "None"],
];
/** @type {[string, string][]} */
const CORNERS = [
  ["closed", "Closed"],
  ["open", "Open"],
];
/** @type {[string, string][]} */
const TURNS = [
  ["left-right", "Left and right"],
  ["front-back", "Front and back"],
];
/** @type {[string, string][]} */
const WAYS = [
  ["up", "↑ in"],
  ["down", "↓ out"],
];

/**
 * @param {PartForm & {box: BoxForm}} form
 * @param {Errors} all
 * @param {import("../../app/forms/part_form.js").Change} change
 */
export function boxFields(form, all, change) {
  const { box, unit } = form;
  const errors = errorsShown(box, all);
  /** @type {ChangeBox} */
  const set = (next, how) => change(withBox(form, next), how);
  return html`${kinds(box, set)}
    <h2>Base <small>${unit}</small></h2>
    <div class="base-grid">
      ${baseSketch(box, set)}
      <div class="fields">
        ${field({
          next: true,
          name: "box.length_mm",
          label: "Length, left to right",
          value: box.length,
          wrong: wrongAt(errors, "box.length_mm"),
          change: (length) => set({ ...box, length }),
        })}
        ${field({
          next: true,
          name: "box.width_mm",
          label: "Width, front to back",
          value: box.width,
          wrong: wrongAt(errors, "box.width_mm"),
          change: (width) => set({ ...box, width }),
        })}
      </div>
    </div>
    ${wrongAt(errors, "box.sides").map(
      (words) => html`<p class="wrong" data-test="wrong-box.sides">${words}</p>`,
    )}
    <h2>Sides, from the base outwards <small>${unit}</small></h2>
    <label class="tick"
      ><input
        type="checkbox"
        name="box.alike"
        data-test="box.alike"
        .checked=${box.alike}
        @change=${(/** @type {{target: HTMLInputElement}} */ event) =>
          set(alikeSet(box, event.target.checked))} /><span>All sides alike</span></label
    >
    ${shownSides(box).map((side) => chain(box, side, errors, set))}
    ${fold(
      html`Corners <span class="fold-now">${cornerWords(box)}</span>`,
      html`${corners(form, errors, set)}${firstPair(box, set)}`,
      { test: "corners-fold" },
    )}`;
}

/**
 * The corners as they are, for the line that folds them away.
 * @param {BoxForm} box
 */
function cornerWords({ corner, relief, reliefSize }) {
  const cut = relief === "none" ? "no relief" : `${relief} relief`;
  return `${corner}, ${cut}${relief !== "none" && reliefSize ? ` ${reliefSize}` : ""}`;
}

/**
 * @param {BoxForm} box
 * @param {ChangeBox} set
 */
const firstPair = (box, set) =>
  hasBothPairs(box)
    ? choice({
        name: "box.first_pair",
        label: "Bent first; the others go between them",
        value: box.firstPair ?? TURNS[0][0],
        options: TURNS,
        change: (turn) => set({ ...box, firstPair: turn === "front-back" ? turn : "left-right" }),
      })
    : nothing;

/**
 * @param {BoxForm} box
 * @param {ChangeBox} set
 */
function kinds(box, set) {
  const chosen = kindOf(box);
  return html`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${KINDS.map(
      ([kind, name, path]) =>
        html`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(chosen === kind)}
          data-test="kind-${kind}"
          @click=${() => set(ofKind(box, kind))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${path} /></svg
          ><span>${name}</span>
        </button>`,
    )}
  </div>`;
}

/**
 * The base from above; a press on a side puts it there or takes it away.
 * @param {BoxForm} box
 * @param {ChangeBox} set
 */
function baseSketch(box, set) {
  /** @param {SideName} side */
  const button = (side) => {
    const on = box.there.includes(side);
    const last = on && box.there.length === 1;
    return html`<button
      type="button"
      class="base-side ${side}"
      aria-pressed=${String(on)}
      ?disabled=${last}
      data-test="side-${side}"
      @click=${() => set(sideToggled(box, side))}>
      ${side}<small>${on ? "stands" : "plain"}</small>
    </button>`;
  };
  return html`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${SIDES.map(button)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`;
}

/**
 * @param {BoxForm} box
 * @param {SideName} side
 * @param {Errors} errors
 * @param {ChangeBox} set
 */
function chain(box, side, errors, set) {
  const { flats, bends } = box.sides[side];
  const name = box.alike ? "Each side" : `${side[0].toUpperCase()}${side.slice(1)}`;
  return html`<fieldset class="box-side" data-test="chain-${side}">
    <legend>${name}</legend>
    ${chainSketch(bends)}
    <ol class="box-chain">
      ${flats.map((_, i) => html`<li>${foldRow(box, side, i, errors, set)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${side}"
        ?disabled=${flats.length >= MOST_SIDE_BENDS}
        @click=${() => set(flatAdded(box, side), { focus: flatField(side, flats.length) })}>
        + Lip beyond
      </button>
      ${
        flats.length > 1
          ? html`<button
              type="button"
              class="button"
              data-test="remove-flat-${side}"
              @click=${() =>
                set(flatRemoved(box, side), {
                  focus: flatField(side, flats.length - 2),
                  undo: `The outermost flat is out.`,
                })}>
              Remove the outermost
            </button>`
          : nothing
      }
    </div>
  </fieldset>`;
}

/**
 * A flat and the bend it hangs on.
 * @param {BoxForm} box
 * @param {SideName} side
 * @param {number} i
 * @param {Errors} errors
 * @param {ChangeBox} set
 */
function foldRow(box, side, i, errors, set) {
  const { flats, bends } = box.sides[side];
  const [bend, word] = [bends[i], titled(flatWord(i))];
  const gap = `${foldField(side, i)}.hem_gap_mm`;
  return html`<div class="bend-main">
      ${field({
        next: true,
        name: flatField(side, i),
        label: word,
        value: flats[i],
        wrong: [...wrongAt(errors, flatField(side, i)), ...wrongAt(errors, foldField(side, i))],
        change: (value) => set(withFlat(box, side, i, value)),
      })}
      ${
        bend.kind === "bend"
          ? field({
              next: true,
              name: angleField(side, i),
              label: "Bend",
              unit: "°",
              keys: "decimal",
              value: bend.angle,
              wrong: wrongAt(errors, angleField(side, i)),
              change: (angle) => set(withFold(box, side, i, { angle })),
            })
          : html`<p class="hem-word">${bend.kind === "closed_hem" ? "Closed hem" : "Open hem"}</p>`
      }
    </div>
    ${
      bend.kind === "open_hem"
        ? field({
            next: true,
            name: gap,
            label: "Clear gap inside",
            value: bend.gap,
            wrong: wrongAt(errors, gap),
            change: (value) => set(withFold(box, side, i, { gap: value })),
          })
        : nothing
    }
    ${choice({
      name: `${foldField(side, i)}.direction`,
      label: `${word} turns`,
      value: bend.direction,
      options:
        i === 0
          ? [
              ["up", "↑ up"],
              ["down", "↓ down"],
            ]
          : WAYS,
      change: (way) => set(withFold(box, side, i, { direction: way === "down" ? "down" : "up" })),
    })}
    ${foldMore(box, side, i, errors, set)}`;
}

/**
 * What most bends do not need.
 * @param {BoxForm} box
 * @param {SideName} side
 * @param {number} i
 * @param {Errors} errors
 * @param {ChangeBox} set
 */
function foldMore(box, side, i, errors, set) {
  const { flats, bends } = box.sides[side];
  const radius = `${foldField(side, i)}.inside_radius_mm`;
  const outermost = i === flats.length - 1;
  if (!outermost && bends[i].kind !== "bend") return nothing;
  return html`<details class="bend-more">
    <summary>
      <span class="unseen">${titled(flatWord(i))}: </span
      >${bends[i].radius ? `Radius ${bends[i].radius}` : "Radius"}${outermost ? ", kind" : nothing}
    </summary>
    ${
      bends[i].kind === "bend"
        ? field({
            next: true,
            name: radius,
            label: "Inside radius wanted",
            hint: "Empty: what the tools give.",
            value: bends[i].radius,
            wrong: wrongAt(errors, radius),
            change: (value) => set(withFold(box, side, i, { radius: value })),
          })
        : nothing
    }
    ${
      outermost
        ? pick({
            name: `${foldField(side, i)}.kind`,
            label: "Kind",
            value: bends[i].kind,
            options: FOLDS,
            change: (kind) =>
              set(
                withFold(box, side, i, {
                  kind: /** @type {import("../../app/forms/bend_row.js").Kind} */ (kind),
                }),
              ),
          })
        : nothing
    }
  </details>`;
}

/**
 * @param {string} word
 * @returns {string}
 */
const titled = (word) => word[0].toUpperCase() + word.slice(1);

/**
 * The chain in section as it is set, not to scale: which flat is which.
 * @param {import("../../app/forms/box_form.js").Fold[]} bends
 */
function chainSketch(bends) {
  const STEPS = [34, 22, 16, 12, 10, 8];
  /** @type {[number, number][]} */
  const points = [
    [8, 56],
    [56, 56],
  ];
  let heading = 0;
  for (const [i, { angle, direction, kind }] of bends.entries()) {
    const turn = ((180 - (kind === "bend" ? Number(angle) || 90 : 12)) * Math.PI) / 180;
    heading += direction === "up" ? turn : -turn;
    const [x, y] = points[points.length - 1];
    points.push([x + STEPS[i] * Math.cos(heading), y - STEPS[i] * Math.sin(heading)]);
  }
  return html`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${points.map((p) => p.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${points.slice(2).map(
      ([x, y], i) =>
        svg`<circle class="badge" cx=${(x + points[i + 1][0]) / 2} cy=${(y + points[i + 1][1]) / 2} r="9.5"/>
          <text class="badge-number" x=${(x + points[i + 1][0]) / 2} y=${(y + points[i + 1][1]) / 2}
            text-anchor="middle" dominant-baseline="central">${i + 1}</text>`,
    )}
  </svg>`;
}

/**
 * @param {PartForm & {box: BoxForm}} form
 * @param {Errors} errors
 * @param {ChangeBox} set
 */
function corners({ box, unit }, errors, set) {
  return html`<div class="corner-grid">
      ${cornerSketch(box)}
      <div>
        ${choice({
          name: "box.corner",
          label: "Walls at the corner",
          value: box.corner,
          options: CORNERS,
          change: (corner) => set({ ...box, corner: corner === "open" ? "open" : "closed" }),
        })}
        ${choice({
          name: "box.relief",
          label: "Relief",
          value: box.relief,
          options: RELIEFS,
          change: (relief) => set({ ...box, relief: /** @type {BoxForm["relief"]} */ (relief) }),
        })}
      </div>
    </div>
    <div class="fields">
      ${
        box.relief === "none"
          ? nothing
          : field({
              next: true,
              name: "box.relief_mm",
              label: box.relief === "round" ? "Relief, diameter" : "Relief, side",
              unit,
              hint: "Empty: by radius and thickness.",
              value: box.reliefSize,
              wrong: wrongAt(errors, "box.relief_mm"),
              change: (reliefSize) => set({ ...box, reliefSize }),
            })
      }
      ${
        box.corner === "open"
          ? nothing
          : field({
              next: true,
              name: "box.gap_mm",
              label: "Gap between the walls",
              unit,
              hint: "Empty: by thickness.",
              value: box.gap,
              wrong: wrongAt(errors, "box.gap_mm"),
              change: (gap) => set({ ...box, gap }),
            })
      }
    </div>`;
}

/**
 * @type {Record<BoxForm["relief"], string>} the cut line past the corner, from the back wall's root to the
 *   left wall's
 */
const CUT = { none: "L50 40L30 40", square: "L58 20L58 48L30 48", round: "L50 31A9 9 0 1 1 41 40L30 40" };

/**
 * A corner of the flat sheet: bend lines, walls, relief as chosen; not to scale.
 * @param {BoxForm} box
 */
function cornerSketch({ corner, relief }) {
  const [first, second] = corner === "closed" ? [18, 8] : [0, 0];
  return html`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${
        50 - second
      } 4L${50 - second} 20L50 20${CUT[relief]}L30 ${40 - first}L4 ${40 - first}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`;
}
