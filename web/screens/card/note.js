// A card's note and title, and whether it is in use: changed with or without the shop.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { clearTyping, keepTyping, keptTyping } from "../../app/forms/kept_typing.js";
import { displayCode, readCode } from "../../app/scan/card_code.js";
import { messageOf, Problem } from "../../app/sync/api.js";
import { changeHere } from "../../app/sync/card_edits.js";
import { notice } from "../../app/shell/notices.js";
import { askBeforeLeaving, go } from "../../app/shell/router.js";
import { mayOpen } from "../../app/shell/rights.js";
import { sync } from "../../app/sync/sync.js";
import { badCode, openOrRefuse, refuse } from "../../view/card/no_card.js";
import { offer } from "../../view/common/if_allowed.js";
import { choice, field, focusFirstWrong, submitting, textArea } from "../../view/common/field.js";
import { restoredLine } from "../../view/common/restored.js";
import { savedWords } from "../../view/card/saved_where.js";

/**
 * @typedef {{title: string, note: string, archived: boolean, typed: boolean, restored: boolean,
 *   sending: boolean, wrong: Record<string, string[]>, general: string}} State
 */

/** @param {string} code */
const addressOf = (code) => `/c/${code}/note`;

/** @type {import("../../app/shell/routes.js").Screen["show"]} */
export async function show(visit) {
  const { code } = visit.params;
  if (!readCode(code).whole) return refuse(visit, badCode(code));
  /** @type {import("../../app/sync/card_edits.js").CardHere} the card as it was when the form was filled */
  let seen;
  /** @type {State} */
  const state = {
    title: "",
    note: "",
    archived: false,
    typed: false,
    restored: false,
    sending: false,
    wrong: {},
    general: "",
  };
  const draw = () => {
    visit.title(`${seen.title || displayCode(code)}: note`);
    visit.render(noteScreen(seen, state, { draw, save: () => saveNote(seen, state, draw, visit.signal) }));
  };
  askBeforeLeaving(() => (state.typed ? "Leave without saving what you typed?" : null));
  await openOrRefuse(visit, (card) => {
    if (state.typed || state.sending) return; // what is being typed was begun on the card as it was shown
    const before = keptTyping(addressOf(code));
    // What was typed goes on from the card as it was then: who changed it meanwhile is not overwritten.
    seen = { ...card, ...before?.on };
    const { title, note, archived } = before ?? card;
    Object.assign(state, { title, note, archived, typed: Boolean(before), restored: Boolean(before) });
    draw();
    visit.ready();
  });
}

/**
 * What a change needs of the card that it was begun on.
 * @param {import("../../app/sync/card_edits.js").CardHere} card
 */
const changedOn = ({ title, note, archived, etag, revision, revision_id, after }) => ({
  title,
  note,
  archived,
  etag,
  revision,
  revision_id,
  after,
});

/**
 * @param {import("../../app/sync/card_edits.js").CardHere} seen
 * @param {State} state
 * @param {() => void} draw
 * @param {AbortSignal} left whoever saved it may be elsewhere by the time it arrives
 */
async function saveNote(seen, state, draw, left) {
  if (state.sending) return;
  const [title, note] = [state.title.trim(), state.note.replace(/\r\n/g, "\n").trim()];
  Object.assign(state, { wrong: title ? {} : { title: ["A card needs a title."] }, general: "" });
  if (!title) {
    draw();
    return focusFirstWrong(state.wrong);
  }
  state.sending = true;
  draw();
  try {
    const { where } = await changeHere(seen, { title, note, archived: state.archived });
    state.typed = false;
    clearTyping(addressOf(seen.code));
    notice(savedWords(where));
    sync();
    if (left.aborted) return;
    go(
      where === "settle" && mayOpen(`/c/${seen.code}/resolve`)
        ? `/c/${seen.code}/resolve`
        : `/c/${seen.code}`,
    );
  } catch (error) {
    state.wrong = error instanceof Problem ? error.errors : {};
    state.general = messageOf(error);
    state.sending = false;
    draw();
    focusFirstWrong(state.wrong);
  }
}

/**
 * @param {import("../../app/sync/card_edits.js").CardHere} card
 * @param {State} state
 * @param {{draw: () => void, save: () => void}} act
 */
function noteScreen(card, state, { draw, save }) {
  /** @param {Partial<State>} change */
  const type = (change) => {
    const { title, note, archived } = Object.assign(state, change, { typed: true });
    keepTyping(addressOf(card.code), { title, note, archived, on: changedOn(card) });
  };
  return html`<form class="note-screen" novalidate data-test="note-screen" @submit=${submitting(save)}>
    <header>
      <p><a class="button" href="/c/${card.code}" data-test="to-card">‹ ${displayCode(card.code)}</a></p>
      <h1>${offer("cards.revise", "Note and title", "Note")}</h1>
    </header>
    ${state.restored ? restoredLine(addressOf(card.code)) : nothing}
    ${state.general ? html`<p class="wrong" role="alert" data-test="wrong">${state.general}</p>` : nothing}
    ${textArea({
      name: "note",
      label: "Note",
      value: state.note,
      lines: 5,
      wrong: state.wrong.note,
      change: (note) => type({ note }),
    })}
    ${offer("cards.revise", [
      field({
        name: "title",
        label: "Title",
        value: state.title,
        wrong: state.wrong.title,
        change: (title) => type({ title }),
      }),
      choice({
        name: "archived",
        label: "This card",
        value: state.archived ? "away" : "use",
        options: [
          ["use", "In use"],
          ["away", "Archived"],
        ],
        change: (value) => {
          type({ archived: value === "away" });
          draw();
        },
      }),
    ])}
    <p class="hint">
      This works without the shop too: it is saved here and sent automatically.
      ${offer(
        "cards.revise",
        "To change the part itself, use Edit: that is planned by the shop, so the shop must answer.",
        "The owner changes the rest of the card.",
      )}
    </p>
    <div class="buttons">
      <button class="button next wide" data-test="save" ?disabled=${state.sending}>
        ${state.sending ? "Saving…" : "Save"}
      </button>
    </div>
  </form>`;
}
