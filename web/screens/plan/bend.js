// Check one bend: what it takes on this press with this crib, answered while you type.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call, Problem } from "../../app/sync/api.js";
import { bendRequest, formFromQuery, missing, queryFromForm } from "../../app/forms/bend_form.js";
import { readList } from "../../app/sync/shop_lists.js";
import { newestAnswer } from "../../app/forms/newest_answer.js";
import { angle, length, lengthUnit, words } from "../../app/shell/units.js";
import { allowFor } from "../../view/common/force.js";
import { bendAnswer } from "../../view/bend/bend_answer.js";
import { field, pick } from "../../view/common/field.js";
import { roomy } from "../../view/common/fold.js";
import { empty, failed, loading } from "../../view/common/screen_states.js";
import { wrongAt, wrongElsewhere } from "../../view/common/form_errors.js";

/** @typedef {import("../../app/forms/bend_form.js").BendForm} BendForm */

const FIELDS = [
  "metal",
  "thickness_mm",
  "bend_length_mm",
  "included_angle_deg",
  "die",
  "punch",
  "punch_radius_mm",
];
/** @type {Record<string, string>} */
const CALLED = {
  metal: "metal",
  thickness_mm: "thickness",
  bend_length_mm: "length",
  included_angle_deg: "angle",
};

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Check a bend");
  visit.render(loading("Looking into the crib…"));
  const [metals, dies, punches] = /** @type {[Api.Metal[], Api.Die[], Api.Punch[]]} */ (
    await Promise.all(
      /** @type {const} */ (["metals", "dies", "punches"]).map(
        async (kind) => (await readList(kind, visit.signal)).items,
      ),
    )
  );
  const crib = { dies, punches };
  const form = formFromQuery(visit.query);
  const openTools = Boolean(form.die || form.punch || form.punch_radius_mm);
  form.metal ||= metals[0]?.code ?? "";
  /** @type {{answer: Api.OneBend|null, error: unknown, busy: boolean, pose: "before"|"after"}} */
  const state = { answer: null, error: null, busy: false, pose: "after" };
  /** @type {{stroke: Api.StrokeOfBend|null, error: unknown, open: boolean}} */
  const picture = { stroke: null, error: null, open: roomy() };

  const asking = newestAnswer(
    async (/** @type {Record<string, unknown>} */ request, signal) =>
      (await call("POST", "/bend", { body: request, signal })).body,
    ({ answer = null, error = null }) => {
      Object.assign(state, { answer, error, busy: false });
      Object.assign(picture, { stroke: null, error: null });
      askStroke();
      draw();
    },
    visit.signal,
  );
  const asksStroke = newestAnswer(
    async (/** @type {Record<string, unknown>} */ request, signal) =>
      (await call("POST", "/stroke", { body: request, signal })).body,
    ({ answer = null, error = null }) => {
      Object.assign(picture, { stroke: answer, error });
      draw();
    },
    visit.signal,
  );

  /** The pictures follow the figures, when they are open. */
  function askStroke() {
    asksStroke.stop();
    if (picture.open && state.answer && !picture.stroke) asksStroke.ask(bendRequest(form), { now: true });
  }

  /** @param {{now?: boolean}} [how] */
  function ask(how) {
    history.replaceState(null, "", `/bend?${queryFromForm(form)}`);
    state.busy = missing(form).length === 0;
    if (state.busy) {
      asking.ask(bendRequest(form), how);
    } else {
      asking.stop();
      Object.assign(state, { answer: null, error: null });
    }
    draw();
  }

  /**
   * @param {Partial<BendForm>} part
   * @param {{now?: boolean}} [how]
   */
  function change(part, how) {
    Object.assign(form, part);
    ask(how);
  }

  function draw() {
    const errors = state.error instanceof Problem ? state.error.errors : {};
    visit.render(
      html`<h1 class="bend-title">Check a bend</h1>
        <div
          class="desk"
          aria-busy=${state.busy ? "true" : "false"}
          data-test="bend"
          data-busy=${String(state.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${(/** @type {Event} */ event) => event.preventDefault()}>
            ${formFields(form, { metals, ...crib, openTools, answer: state.answer }, errors, change)}
          </form>
          <p class="unseen" role="status">${spoken()}</p>
          <div class="desk-answer" data-test="answer">${outcome(errors)}</div>
        </div>`,
    );
    if (!state.busy) visit.ready();
  }

  /** The answer in a line, for who listens to it. */
  function spoken() {
    const { answer } = state;
    if (!answer || state.busy) return "";
    const worst = answer.worst === "ok" ? "" : `${answer.worst}. `;
    const set =
      answer.set_angle_deg === null ? "nothing to set" : `set ${words(angle(answer.set_angle_deg))}`;
    return `${worst}Die ${answer.die ?? "none"}, allow for ${words(allowFor(answer))}, ${set}.`;
  }

  /** @param {Record<string, string[]>} errors */
  function outcome(errors) {
    const gaps = missing(form);
    if (gaps.length) {
      return empty(
        "One bend, all its figures",
        html`Still to type: ${gaps.map((name) => CALLED[name]).join(", ")}.`,
      );
    }
    if (state.error) return refusal(errors);
    if (!state.answer) return loading("Working it out…");
    return bendAnswer(state.answer, crib, {
      pose: state.pose,
      show: (pose) => {
        state.pose = pose;
        draw();
      },
      use: (die) => change({ die: form.die === die ? "" : die }, { now: true }),
      stroke: {
        ...picture,
        toggled: (open) => {
          if (picture.open === open) return;
          picture.open = open;
          askStroke();
          draw();
        },
      },
    });
  }

  /** @param {Record<string, string[]>} errors */
  function refusal(errors) {
    if (!(state.error instanceof Problem) || state.error.status >= 500) {
      return html`${failed(state.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${() => ask({ now: true })}>
            Try again
          </button>
        </div>`;
    }
    const others = wrongElsewhere(errors, FIELDS);
    const told =
      Object.keys(errors).length > others.length
        ? ["The words are beside the field."]
        : [state.error.message];
    return html`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...told, ...others].map((said) => html`<p>${said}</p>`)}
    </div>`;
  }

  ask({ now: true });
}

/**
 * @param {BendForm} form
 * @param {{metals: Api.Metal[], dies: Api.Die[], punches: Api.Punch[], openTools: boolean,
 *   answer: Api.OneBend|null}} shop
 * @param {Record<string, string[]>} errors
 * @param {(change: Partial<BendForm>, how?: {now?: boolean}) => void} change
 */
function formFields(form, { metals, dies, punches, openTools, answer }, errors, change) {
  /**
   * @param {keyof BendForm} name
   * @param {string} label
   * @param {{hint?: string, unit?: string, keys?: "text"|"decimal"}} [more]
   */
  const box = (name, label, more = {}) =>
    field({
      name,
      label,
      value: form[name],
      wrong: wrongAt(errors, name),
      change: (value) => change({ [name]: value }),
      ...more,
    });
  /**
   * @param {keyof BendForm} name
   * @param {string} label
   * @param {[string, string][]} options
   */
  const list = (name, label, options) =>
    pick({
      name,
      label,
      value: form[name],
      options,
      wrong: wrongAt(errors, name),
      change: (value) => change({ [name]: value }, { now: true }),
    });
  const gone = form.metal && !metals.some(({ code }) => code === form.metal);
  return html`${list("metal", "Metal", [
      ...(gone ? [/** @type {[string, string]} */ ([form.metal, `${form.metal} (not in the shop)`])] : []),
      ...named(metals),
    ])}
    <div class="fields three">
      ${box("thickness_mm", "Thickness", {
        unit: lengthUnit(),
        hint: answer ? understood(answer, form.thickness_mm) : "3, 1/8 in, 16 ga",
      })}
      ${box("bend_length_mm", "Length", { unit: lengthUnit() })}
      ${box("included_angle_deg", "Angle", {
        unit: "°",
        keys: "decimal",
        hint: answer ? "" : "90 is square",
      })}
    </div>
    <details class="choose-tools" ?open=${openTools}>
      <summary>Choose tools yourself</summary>
      ${list("die", "Die", [["", "Best of the crib"], ...withGone(form.die, dies)])}
      ${list("punch", "Punch", [["", "Best of the crib"], ...withGone(form.punch, punches)])}
      ${box("punch_radius_mm", "Punch tip radius, if it differs", { unit: lengthUnit() })}
    </details>
    ${
      form.die || form.punch || form.punch_radius_mm
        ? html`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${() => change({ die: "", punch: "", punch_radius_mm: "" }, { now: true })}>
            Choose the tools for me
          </button>`
        : nothing
    }`;
}

/**
 * The thickness as the shop understood it, with the gauge it goes by, where that says more.
 * @param {Api.OneBend} answer
 * @param {string} typed
 */
function understood({ thickness_mm: mm, thickness_gauge: gauge }, typed) {
  const gauged = /ga/i.test(typed);
  return [gauged ? words(length(mm, { digits: 2 })) : "", gauge ?? ""].filter(Boolean).join(", ");
}

/**
 * @param {{code: string, name: string}[]} things
 * @returns {[string, string][]}
 */
const named = (things) => things.map(({ code, name }) => [code, name]);

/**
 * A tool a link still names stays in the list, so that the server's words have a place.
 * @param {string} code
 * @param {{code: string, name: string}[]} tools
 * @returns {[string, string][]}
 */
function withGone(code, tools) {
  const all = /** @type {[string, string][]} */ (
    tools.map((tool) => [tool.code, `${tool.code} · ${tool.name}`])
  );
  return code && !tools.some((tool) => tool.code === code)
    ? [[code, `${code} (not in the crib)`], ...all]
    : all;
}
