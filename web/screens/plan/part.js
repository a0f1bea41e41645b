// Enter a part by its section: the drawing grows as you type, the plan stands beside it, and a
// button makes it a card.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { callInLines, download, messageOf, Problem, Unreachable } from "../../app/sync/api.js";
import { fetchCard } from "../../app/sync/cards.js";
import { displayCode, newCode } from "../../app/scan/card_code.js";
import { readList } from "../../app/sync/shop_lists.js";
import { newestAnswer } from "../../app/forms/newest_answer.js";
import { notice } from "../../app/shell/notices.js";
import { clearDraft, keepDraft, keptDraft } from "../../app/forms/part_draft.js";
import {
  asBox,
  emptyPart,
  formFromPart,
  gaps,
  partRequest,
  planKey,
  typedOrder,
} from "../../app/forms/part_form.js";
import { saveNewCard, saveRevision } from "../../app/sync/save_part.js";
import { may } from "../../app/shell/rights.js";
import { go } from "../../app/shell/router.js";
import { plainCode } from "../../app/scan/card_code.js";
import { offer } from "../../view/common/if_allowed.js";
import { partConflict } from "../../view/part/part_conflict.js";
import { calledOf, enterGoesOn, fieldNames, partFields } from "../../view/part/part_fields.js";
import { pressTo } from "../../view/plan/order_panel.js";
import { partPlan } from "../../view/plan/part_plan.js";
import { partPicture } from "../../view/part/part_picture.js";
import { howTo, takesLong, waitingPanel } from "../../view/part/part_waiting.js";
import { loading } from "../../view/common/screen_states.js";
import { errorSummary, focusField, unhide } from "../../view/common/form_errors.js";
import { submitting } from "../../view/common/field.js";

/** @typedef {import("../../app/forms/part_form.js").PartForm} PartForm */
/** @typedef {import("../../app/forms/part_draft.js").Base} Base */

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  const from = plainCode(visit.query.get("from") ?? "").slice(0, 7);
  const right = from ? "cards.revise" : "cards.create"; // without it a part can be planned, and not saved
  visit.title(from ? `Edit ${displayCode(from)}` : "New part");
  visit.render(loading(from ? "Fetching the card…" : "Looking into the shop…"));
  const [{ items: metals }, { items: dies }, { items: punches }] = await Promise.all([
    readList("metals", visit.signal),
    readList("dies", visit.signal),
    readList("punches", visit.signal),
  ]);
  const copied = from ? "" : plainCode(visit.query.get("copy") ?? "").slice(0, 7);
  const begun = copied ? keptDraft("") : null;
  const start = copied ? await copyOf(copied, visit.signal) : await startingPoint(from, metals, visit.signal);
  if (!from && visit.query.get("shape") === "box") start.form = asBox(start.form, true);

  const state = {
    ...start,
    /** @type {Api.Plan|null} */ plan: null,
    /** @type {PartForm|null} */ planned: null,
    /** @type {import("../../view/part/part_waiting.js").Progress|null} */ progress: null,
    stopped: false,
    key: "",
    /** @type {unknown} */ error: null,
    /** @type {Api.Card|null} */ clash: null,
    taken: "",
    busy: false,
    saving: false,
    summary: false,
    kept: true,
  };

  const asking = newestAnswer(
    async (/** @type {PartForm} */ form, signal) =>
      (await callInLines("/plan", partRequest(form), { signal, tell })).plan,
    ({ question, answer, error = null }) => {
      if (answer) Object.assign(state, { plan: answer, planned: question });
      Object.assign(state, { error, busy: false, progress: null, summary: state.summary && error !== null });
      draw();
    },
    visit.signal,
    350,
  );

  /** @param {import("../../view/part/part_waiting.js").Progress} progress */
  function tell(progress) {
    if (!takesLong(progress)) return;
    state.progress = progress;
    draw();
  }

  function ask(now = false) {
    const key = planKey(state.form);
    if (!now && key === state.key && !state.error) return draw(); // name and note need no new plan
    Object.assign(state, { key, busy: gaps(state.form).length === 0, progress: null, stopped: false });
    if (state.busy) {
      asking.ask(state.form, { now });
    } else {
      asking.stop();
      state.error = null;
    }
    draw();
  }

  const waiting = {
    cancel() {
      asking.stop();
      Object.assign(state, { busy: false, progress: null, stopped: true, error: null });
      draw();
    },
    again: () => ask(true),
    /** The part that the plan on the screen is of, without looking for its order again. */
    back() {
      if (!state.planned) return;
      const before = state.form;
      Object.assign(state, { form: state.planned, key: planKey(state.planned), stopped: false });
      state.kept = keepDraft(from, { form: state.form, base: state.base, newCode: state.newCode });
      draw();
      notice("The part of this plan is in the boxes again.", {
        label: "Put mine back",
        act: () => change(before),
      });
    },
  };

  /** @type {import("../../app/forms/part_form.js").Change} */
  function change(form, { focus, undo } = {}) {
    const before = state.form;
    state.form = form;
    state.kept = keepDraft(from, { form, base: state.base, newCode: state.newCode });
    ask();
    if (focus) requestAnimationFrame(() => focusField(focus));
    if (undo) notice(undo, { label: "Put it back", act: () => change(before) });
  }

  /**
   * An order of the list, or null for the planner's own.
   * @param {number[]|null} order
   */
  function pin(order) {
    change(
      { ...state.form, order },
      { undo: order ? `Order ${order.join(", ")} is yours now.` : "The planner chooses the order." },
    );
  }

  /**
   * The order a card's button asked for, once.
   * @param {string} asked
   */
  function pinAsked(asked) {
    history.replaceState(history.state, "", from ? `/part?from=${from}` : "/part");
    pin(typedOrder(asked));
  }

  /** @param {() => Promise<import("../../app/sync/save_part.js").Outcome>} send */
  async function save(send) {
    const [gap] = gaps(state.form);
    if (gap) {
      state.summary = true;
      draw();
      focusField(gap[0]);
      return;
    }
    Object.assign(state, { saving: true, clash: null, taken: "" });
    draw();
    try {
      const outcome = await send();
      if ("saved" in outcome) return saved(outcome.saved);
      if ("stale" in outcome) state.clash = outcome.stale;
      else state.taken = outcome.taken;
    } catch (error) {
      state.error = error;
      state.summary = true;
    }
    state.saving = false;
    draw();
    const wrong = state.error instanceof Problem ? state.error.errors : {};
    const name = fieldNames(state.form).find((one) =>
      Object.keys(wrong).some((path) => path === one || path.startsWith(`${one}.`)),
    );
    if (name) focusField(name);
  }

  /** @param {Api.Card} card */
  function saved(card) {
    clearDraft(from);
    const same = card.revision === state.base?.revision;
    notice(
      same
        ? "Nothing was changed, so nothing was saved."
        : `Card ${displayCode(card.code)} saved${card.revision > 1 ? `, revision ${card.revision}` : ""}.`,
    );
    go(`/c/${card.code}`);
  }

  const saveIt = () =>
    may(right) &&
    save(() => (state.base ? saveRevision(state.form, state.base) : saveNewCard(state.form, state.newCode)));
  const saveAsNew = () => {
    state.newCode = newCode();
    return save(() => saveNewCard(state.form, state.newCode));
  };

  function startOver() {
    clearDraft(from);
    const before = state.form;
    Object.assign(state, {
      restored: false,
      plan: null,
      planned: null,
      clash: null,
      ...fresh(state.card, metals),
    });
    ask(true);
    notice(from ? "The card as it is saved." : "An empty part.", {
      label: "Put mine back",
      act: () => change(before),
    });
  }

  /** @param {Api.Card} theirs */
  function takeTheirs(theirs) {
    const before = state.form;
    Object.assign(state, { clash: null, base: baseOf(theirs) });
    change(formFromPart(theirs.part, theirs.note));
    notice("What is saved is in the boxes now.", { label: "Put mine back", act: () => change(before) });
  }

  /** @param {"svg"|"dxf"} kind */
  async function saveBlank(kind) {
    try {
      await download(
        `/blank.${kind}`,
        partRequest(state.form),
        `${state.form.title.trim() || "blank"}.${kind}`,
      );
    } catch (error) {
      notice(messageOf(error));
    }
  }

  function draw() {
    const errors = state.error instanceof Problem ? state.error.errors : {};
    const open = gaps(state.form);
    const waits = waitingPanel(state, waiting);
    const settled = !state.busy && !state.stopped && !open.length && !state.error;
    visit.render(
      html`<h1>
          ${
            from
              ? html`${offer(right, "Edit", "Plan")} ${state.card?.title || "card"}
                  <small class="code">${displayCode(from)}</small>`
              : offer(right, "New part", "Plan a part")
          }
        </h1>
        ${
          state.restored
            ? html`<p class="restored" data-test="restored">
                What you typed before is back.
                <button type="button" class="link" data-test="start-over" @click=${startOver}>
                  ${from ? "Back to the saved card" : "Start an empty part"}
                </button>
              </p>`
            : nothing
        }
        ${
          state.kept
            ? nothing
            : html`<p class="panel">
                This browser keeps nothing on this device: a reload loses what you type.
              </p>`
        }
        ${
          state.clash
            ? partConflict(state.clash, state.form, {
                saveMine: () => {
                  state.base = baseOf(/** @type {Api.Card} */ (state.clash));
                  saveIt();
                },
                takeTheirs: () => takeTheirs(/** @type {Api.Card} */ (state.clash)),
                saveAsNew,
              })
            : nothing
        }
        ${
          state.taken
            ? html`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${state.taken}">card ${displayCode(state.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${saveAsNew}>
                  Save this as another card
                </button>
              </div>`
            : nothing
        }
        ${state.summary ? errorSummary(errors, calledOf, fieldNames(state.form)) : nothing}
        ${
          state.summary && state.error instanceof Unreachable
            ? html`<p class="panel" role="alert" data-test="not-saved">
                Not saved: the shop's server does not answer. What you typed stays on this device. Save again
                when it is back.
              </p>`
            : nothing
        }
        <div
          class="part-desk"
          data-test="part"
          data-busy=${String(state.busy)}
          aria-busy=${state.busy ? "true" : "false"}>
          <div class="part-edit">
            ${partPicture(state, { open, stale: !settled, waiting: waits })}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${enterGoesOn}
              @submit=${submitting(saveIt)}>
              ${partFields(state.form, {
                metals,
                crib: { dies, punches },
                plan: settled ? state.plan : null,
                editing: Boolean(from),
                errors,
                change,
              })}
              ${offer(
                right,
                html`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${state.saving}>
                    ${state.saving ? "Saving…" : from ? "Save as the next revision" : "Save as a card"}
                  </button>
                </div>`,
                html`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`,
              )}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth < 1000 ? nothing : waits}
            <div class="part-plan ${settled || !state.plan ? "" : "stale"}" data-test="plan">
              ${
                state.plan && !settled && !state.busy
                  ? html`<p class="stale-note">
                      ${
                        state.stopped
                          ? "The plan from before your last change:"
                          : "The plan of the last section that was whole:"
                      }
                    </p>`
                  : nothing
              }
              ${
                state.plan
                  ? partPlan(state.plan, { save: saveBlank, order: pressTo(pin) })
                  : howTo(Boolean(state.form.box))
              }
            </div>
          </div>
        </div>`,
    );
    document.querySelectorAll(".part-form .wrong").forEach(unhide);
    if (!state.busy) visit.ready();
  }

  ask(true);
  if (copied) {
    // From here on it is a new part like any other: a reload finds what was typed.
    history.replaceState(null, "", "/part");
    state.kept = keepDraft("", { form: state.form, base: null, newCode: state.newCode });
    if (begun) {
      const back = () => change(begun.form);
      notice("The copy took the place of a part you had begun.", { label: "Put it back", act: back });
    }
  }
  const asked = visit.query.get("order");
  if (asked) pinAsked(asked);
}

/**
 * @param {Api.Card} card
 * @returns {Base}
 */
const baseOf = (card) => ({
  code: card.code,
  etag: card.etag,
  revision: card.revision,
  revision_id: card.revision_id,
});

/**
 * @param {Api.Card|null} card none for a new part
 * @param {Api.Metal[]} metals
 * @returns {{form: PartForm, base: Base|null}}
 */
function fresh(card, metals) {
  return card
    ? { form: formFromPart(card.part, card.note), base: baseOf(card) }
    : { form: emptyPart(metals[0]?.code ?? ""), base: null };
}

/**
 * A draft left on this device, the card, or an empty part.
 * @param {string} from
 * @param {Api.Metal[]} metals
 * @param {AbortSignal} signal
 */
async function startingPoint(from, metals, signal) {
  const draft = keptDraft(from);
  let card = null;
  try {
    if (from) card = await fetchCard(from, signal);
  } catch (error) {
    if (!draft) throw error;
  }
  if (draft) return { form: draft.form, base: draft.base, newCode: draft.newCode, card, restored: true };
  return { ...fresh(card, metals), newCode: newCode(), card, restored: false };
}

/**
 * A new part that begins as another card's.
 * @param {string} code
 * @param {AbortSignal} signal
 */
async function copyOf(code, signal) {
  const { part, note } = await fetchCard(code, signal);
  const title = `Copy of ${part.title || displayCode(code)}`;
  const form = formFromPart({ ...part, title }, note);
  return { form, base: null, newCode: newCode(), card: null, restored: false };
}
