// A test bend, guided: choose a strip and tools, bend it, measure three things, see what that changed.
import { html } from "/vendor/lit-html/lit-html.js";
import { call, Problem, Unreachable } from "../../app/sync/api.js";
import { bendRequest, formFromQuery, missing, queryFromForm } from "../../app/forms/bend_form.js";
import { readList } from "../../app/sync/shop_lists.js";
import { newId } from "../../app/sync/outbox.js";
import { askBeforeLeaving } from "../../app/shell/router.js";
import { onSettings } from "../../app/shell/settings.js";
import { sync } from "../../app/sync/sync.js";
import { NOTHING_MEASURED, somethingMeasured, testBend } from "../../app/forms/test_bend_form.js";
import { lengthUnit } from "../../app/shell/units.js";
import { focusFirstWrong } from "../../view/common/field.js";
import { loading } from "../../view/common/screen_states.js";
import {
  bendStage,
  chooseStage,
  measureStage,
  stageList,
  changedStage,
} from "../../view/results/test_bend_stages.js";

/** @typedef {import("../../app/forms/test_bend_form.js").Stage} Stage */
/** @typedef {import("../../view/results/test_bend_stages.js").Answered} Answered */
/** @typedef {import("../../app/forms/test_bend_form.js").State} State */

/** @type {Record<string, string[]>} */
const GAPS = {
  metal: ["Choose the metal."],
  thickness_mm: ["Measure the strip and type its thickness, such as 1.98."],
  bend_length_mm: ["Type how wide the strip is along the bend."],
  included_angle_deg: ["Type the angle you want, such as 90."],
};

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Test bend");
  visit.render(loading("Looking into the crib…"));
  const [metals, dies, punches] = /** @type {[Api.Metal[], Api.Die[], Api.Punch[]]} */ (
    await Promise.all(
      /** @type {const} */ (["metals", "dies", "punches"]).map(
        async (kind) => (await readList(kind, visit.signal)).items,
      ),
    )
  );
  const form = formFromQuery(visit.query);
  form.metal ||= metals[0]?.code ?? "";
  form.bend_length_mm ||= lengthUnit() === "in" ? "4" : "100";
  /** @type {State} */
  const state = {
    stage: "choose",
    form,
    typed: { ...NOTHING_MEASURED },
    bend: null,
    answer: null,
    id: newId(),
    wrong: {},
    general: "",
    busy: false,
  };
  askBeforeLeaving(() =>
    state.stage === "measure" && somethingMeasured(state.typed)
      ? "Leave without keeping what you measured?"
      : null,
  );

  const draw = () =>
    visit.render(
      html`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${state.stage}
        aria-busy=${state.busy ? "true" : "false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${stageList(state.stage)} ${body()}
      </article>`,
    );

  function body() {
    const act = { draw, go, choose, send, again };
    if (state.stage === "bend") return bendStage(/** @type {Answered} */ (state), act);
    if (state.stage === "measure") return measureStage(/** @type {Answered} */ (state), act);
    if (state.stage === "taught") return changedStage(state, metals, act);
    return chooseStage(state, { metals, dies, punches }, act);
  }

  /** @param {Stage} stage */
  function go(stage) {
    Object.assign(state, { stage, wrong: {}, general: "" });
    draw();
    scrollTo(0, 0);
  }

  /** The strip is described: what to set for it? */
  async function choose() {
    const gaps = missing(form);
    if (gaps.length) return refuse(Object.fromEntries(gaps.map((name) => [name, GAPS[name]])));
    history.replaceState(null, "", `/shop/test-bend?${queryFromForm(form)}`);
    await asking(async () => {
      const answer = await call("POST", "/bend", { body: bendRequest(form), signal: visit.signal });
      state.bend = /** @type {Api.OneBend} */ (answer.body);
      go("bend");
    });
  }

  async function send() {
    const { body: sent, wrong } = testBend(
      state.id,
      form,
      /** @type {Api.OneBend} */ (state.bend),
      state.typed,
    );
    if (Object.keys(wrong).length) return refuse(wrong);
    await asking(async () => {
      const answer = await call("POST", "/test-bends", { body: sent, timeout: 20_000 });
      state.answer = /** @type {Api.TestBendAnswer} */ (answer.body);
      go("taught");
      sync();
    });
  }

  /** The same strip once more, measured afresh. */
  function again() {
    Object.assign(state, {
      typed: { ...NOTHING_MEASURED, lot: state.typed.lot, places: state.typed.places },
      answer: null,
      id: newId(),
    });
    choose();
  }

  /**
   * @param {Record<string, string[]>} wrong
   * @param {string} [general]
   */
  function refuse(wrong, general = "") {
    Object.assign(state, { wrong, general });
    draw();
    focusFirstWrong(wrong);
  }

  /** @param {() => Promise<void>} job */
  async function asking(job) {
    if (state.busy) return;
    Object.assign(state, { busy: true, wrong: {}, general: "" });
    draw();
    try {
      await job();
    } catch (error) {
      if (visit.signal.aborted) return;
      state.busy = false;
      return refuse(error instanceof Problem ? error.errors : {}, saidOf(error));
    }
    state.busy = false;
    draw();
  }

  onSettings(draw, visit.signal);
  draw();
  visit.ready();
}

/** @param {unknown} error */
function saidOf(error) {
  if (error instanceof Problem) return error.message;
  if (error instanceof Unreachable) {
    return "The shop’s server does not answer. What you typed stays here: try again.";
  }
  return String(error);
}
