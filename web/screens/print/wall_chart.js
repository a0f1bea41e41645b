// The wall chart: this press, this crib and one metal on one sheet.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call } from "../../app/sync/api.js";
import { readList, WRITES } from "../../app/sync/shop_lists.js";
import { onSettings } from "../../app/shell/settings.js";
import { lengthUnit, typedLength } from "../../app/shell/units.js";
import { chartSheet } from "../../view/print/chart_sheet.js";
import { field, pick } from "../../view/common/field.js";
import { offer } from "../../view/common/if_allowed.js";
import { paperChoice, printButton, sheet } from "../../view/print/paper.js";
import { empty, failed, loading } from "../../view/common/screen_states.js";
import { newestAnswer } from "../../app/forms/newest_answer.js";

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Wall chart");
  visit.render(loading("Working out the chart…"));
  const metals = (await readList("metals", visit.signal)).items;
  if (!metals.length) {
    visit.render(
      empty(
        "No metals yet",
        html`A chart needs one. ${offer(WRITES.metals, html`<a href="/shop/metals">Metals</a>`)}`,
      ),
    );
    return visit.ready();
  }
  let metal = visit.query.get("metal") ?? metals[0].code;
  let bend = visit.query.get("bend_length") ?? "";
  /** @type {Api.Chart|null} */
  let chart = null;
  /** @type {unknown} */
  let error = null;

  const { ask } = newestAnswer(
    async (/** @type {null} */ _, signal) =>
      (await call("GET", `/chart?${query()}`, { signal, timeout: 20000 })).body,
    (outcome) => {
      chart = /** @type {Api.Chart|undefined} */ (outcome.answer) ?? chart;
      error = outcome.error ?? null;
      draw();
      visit.ready();
    },
    visit.signal,
  );

  function query() {
    const asked = new URLSearchParams({ metal });
    if (bend.trim()) asked.set("bend_length_mm", typedLength(bend));
    return asked;
  }
  function change() {
    const shown = new URLSearchParams({ metal, ...(bend.trim() ? { bend_length: bend.trim() } : {}) });
    history.replaceState(null, "", `/chart?${shown}`);
    ask(null);
    draw();
  }
  function draw() {
    visit.render(
      html`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${pick({
            name: "metal",
            label: "Metal",
            value: metal,
            options: metals.map(({ code, name }) => [code, name]),
            change: (value) => {
              metal = value;
              change();
            },
          })}
          ${field({
            name: "bend_length",
            label: "Checked at a bend length of",
            value: bend,
            unit: lengthUnit(),
            keys: "decimal",
            placeholder: lengthUnit() === "mm" ? "1000" : "39.37",
            change: (value) => {
              bend = value;
              change();
            },
          })}
          ${paperChoice(draw)} ${printButton("Print the chart")}
        </div>
        ${error ? failed(error) : nothing}
        ${
          chart
            ? sheet(chartSheet(chart), { lying: true, about: "Wall chart as it prints" })
            : error
              ? nothing
              : loading("Working out the chart…")
        }`,
    );
  }
  onSettings(draw, visit.signal);
  ask(null, { now: true });
}
