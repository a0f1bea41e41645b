// One metal, or a new one: every figure with its band, its source and how far to trust it.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { metalFromDraft, metalToDraft } from "../../app/forms/entry_form.js";
import { WRITES } from "../../app/sync/shop_lists.js";
import { startEditing } from "../../app/forms/entry_editing.js";
import { FIGURES, GAUGE_FAMILIES, NUMBERS, STANDINGS } from "../../app/forms/metal_fields.js";
import { codeBox, onlyRead, saveButtons } from "../../view/shop/entry_parts.js";
import { conflictPanel } from "../../view/common/save_conflict.js";
import { flag } from "../../view/common/finding.js";
import { field, pick, submitting, textArea } from "../../view/common/field.js";
import { way } from "../../view/common/if_allowed.js";
import { empty } from "../../view/common/screen_states.js";

const PARTS = [
  ["low", "Low"],
  ["nominal", "Nominal"],
  ["high", "High"],
];

const BOXES = [
  { name: "code", label: "Code" },
  { name: "name", label: "Name" },
  { name: "note", label: "Note" },
  { name: "gauge_family", label: "Gauge numbers" },
  ...NUMBERS,
  ...FIGURES.flatMap(({ name, label }) =>
    [...PARTS, ["source", "source"], ["standing", "reliability"]].map(([part, word]) => ({
      name: `${name}.${part}`,
      label: `${label}: ${word.toLowerCase()}`,
    })),
  ),
  ...FIGURES,
];

/**
 * @param {import("../../app/shell/routes.js").Visit} visit
 * @param {import("../../app/forms/list_entry.js").ListEntry} job
 */
export async function showMetal(visit, job) {
  const edit = await startEditing(
    {
      ...job,
      blank: { poisson: 0.3 },
      boxes: BOXES,
      toDraft: (metal) => ({ code: String(metal.code ?? ""), ...metalToDraft(metal) }),
      fromDraft: (draft) => ({ ...metalFromDraft(draft), code: draft.code.trim() }),
      draw: () => edit && draw(),
    },
    visit.signal,
  );
  if (!edit.state.kept && !job.isNew) {
    visit.title("No such metal");
    visit.render(empty(`No metal ${job.code} in the shop`, html`<a href="/shop/metals">Metals</a>`));
    return visit.ready();
  }
  visit.title(job.isNew ? "New metal" : `${edit.state.kept?.name}`);

  function draw() {
    const { state, change } = edit;
    /**
     * @param {string} name
     * @param {string} label
     * @param {{keys?: "text"|"decimal", hint?: string}} [more]
     */
    const box = (name, label, more = {}) =>
      field({
        name,
        label,
        value: state.draft[name] ?? "",
        change: (value) => change(name, value),
        wrong: state.wrong[name],
        ...more,
      });
    visit.render(
      html`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${job.isNew ? "New metal" : html`${job.code}<span class="soft"> ${state.kept?.name}</span>`}</h1>
        ${
          job.isNew
            ? nothing
            : html`<div class="buttons">
                ${way(
                  "/shop/learned/x",
                  html`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(job.code ?? "")}"
                    data-test="to-learned"
                    >Measured springback</a
                  >`,
                )}
                ${way(
                  "/shop/test-bend",
                  html`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(job.code ?? "")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`,
                )}
              </div>`
        }
        ${
          state.clash
            ? conflictPanel(state.clash, "metal", { saveMine: edit.save, takeTheirs: edit.takeTheirs })
            : nothing
        }
        <form novalidate @submit=${submitting(edit.save)}>
          ${onlyRead(
            WRITES.metals,
            html`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${job.isNew ? codeBox(edit, job) : nothing} ${box("name", "Name")}
                  ${pick({
                    name: "gauge_family",
                    label: "Gauge numbers mean",
                    value: state.draft.gauge_family,
                    options: GAUGE_FAMILIES,
                    change: (value) => change("gauge_family", value),
                    wrong: state.wrong.gauge_family,
                  })}
                  ${NUMBERS.map(({ name, label }) => box(name, label, { keys: "decimal" }))}
                </div>
                ${textArea({
                  name: "note",
                  label: "Note",
                  value: state.draft.note,
                  change: (value) => change("note", value),
                  wrong: state.wrong.note,
                  lines: 2,
                })}
              </section>
              <div class="figure-cards">${FIGURES.map((spec) => figureBox(spec, edit))}</div>`,
          )}
          ${saveButtons(edit, job, "metal")}
        </form>`,
    );
  }
  draw();
  visit.ready();
}

/**
 * @param {import("../../app/forms/metal_fields.js").FigureSpec} spec
 * @param {import("../../app/forms/entry_editing.js").Edit} edit
 */
function figureBox({ name, label, unit, needed }, { state, change }) {
  const value = (/** @type {string} */ part) => state.draft[`${name}.${part}`] ?? "";
  const wrong = (/** @type {string} */ part) => state.wrong[`${name}.${part}`] ?? [];
  const set = (/** @type {string} */ part) => (/** @type {string} */ typed) =>
    change(`${name}.${part}`, typed);
  const unknown = !needed && !PARTS.some(([part]) => value(part).trim());
  return html`<fieldset class="panel figure-card" data-test="figure-${name}">
    <legend>${label}${unit ? html` <span class="hint">(${unit})</span>` : nothing}</legend>
    ${(state.wrong[name] ?? []).map((said) => html`<p class="wrong-line">${said}</p>`)}
    <div class="fields three">
      ${PARTS.map(([part, word]) =>
        field({
          name: `${name}.${part}`,
          label: word,
          value: value(part),
          change: set(part),
          wrong: wrong(part),
          keys: "decimal",
        }),
      )}
    </div>
    ${unknown ? flag("unknown", "Not known") : nothing}
    <div class="fields source-line">
      ${textArea({
        name: `${name}.source`,
        label: "Source",
        value: value("source"),
        change: set("source"),
        wrong: wrong("source"),
        lines: 3,
      })}
      ${pick({
        name: `${name}.standing`,
        label: "Reliability",
        value: value("standing"),
        options: STANDINGS.map((word) => [word, word]),
        change: set("standing"),
        wrong: wrong("standing"),
      })}
    </div>
  </fieldset>`;
}
