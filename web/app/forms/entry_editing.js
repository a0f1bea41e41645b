// Editing one record of the shop: what is typed stays until it is saved, whatever the server says.
import { messageOf, Problem } from "../sync/api.js";
import { same } from "../sync/shop_lists.js";
import { pointsToType, sortErrors } from "./entry_form.js";
import { dxfReader } from "./outline_dxf.js";
import { askBeforeLeaving } from "../shell/router.js";
import { lengthToType } from "../shell/units.js";
import { differencesBetween } from "../../view/common/save_conflict.js";
import { focusFirstWrong } from "../../view/common/field.js";

/** @typedef {import("../sync/shop_lists.js").Fields} Record_ */
/** @typedef {import("./tool_fields.js").Draft} Draft */

/**
 * @typedef {object} State
 * @property {Record_|undefined} kept as the server has it; none for a new one
 * @property {Draft} draft
 * @property {Record<string, string[]>} wrong what the server said, by box
 * @property {string[]} others what it said that fits no box
 * @property {import("../../view/common/save_conflict.js").Conflict|null} clash
 * @property {boolean} busy
 * @property {boolean} restored what was typed before is in the boxes again
 */

/**
 * @typedef {object} Drafts
 * @property {() => {draft: Draft, kept: Record_|undefined}|null} begun what was typed before, and the
 *   record it was begun on
 * @property {(state: State) => void} keep
 * @property {() => void} clear
 */

/**
 * @typedef {object} Job
 * @property {(signal: AbortSignal) => Promise<Record_|undefined>} read anew, remembering the ETag
 * @property {(record: Record_|null) => Promise<void>} write with that ETag; null takes it out
 * @property {(record: Record_) => Draft} toDraft
 * @property {(draft: Draft, kept: Record_) => Record_} fromDraft
 * @property {{name: string, label: string}[]} boxes
 * @property {Record_} blank a new one
 * @property {(record: Record_) => void} [preview]
 * @property {Drafts} [drafts] where what is typed is kept until it is saved
 * @property {(state: State) => void} draw
 * @property {(record: Record_|null) => void} done
 */

/**
 * @param {Job} job
 * @param {AbortSignal} signal
 */
export async function startEditing(job, signal) {
  const read = await job.read(signal);
  const begun = job.drafts?.begun() ?? null;
  const kept = begun ? begun.kept : read;
  /** @type {State} */
  const state = {
    kept,
    draft: { ...job.toDraft(kept ?? job.blank), ...begun?.draft },
    restored: begun !== null,
    wrong: {},
    others: [],
    clash: null,
    busy: false,
  };
  const typed = () => job.fromDraft(state.draft, state.kept ?? {});
  const show = () => job.draw(state);

  /**
   * @param {string} name
   * @param {string} value
   */
  function change(name, value) {
    state.draft = { ...state.draft, [name]: value };
    delete state.wrong[name];
    askBeforeLeaving(() => "Leave without saving what you typed?");
    job.drafts?.keep(state);
    job.preview?.(typed());
    show();
  }

  /** @param {Record_|null} record */
  async function write(record) {
    Object.assign(state, { busy: true, wrong: {}, others: [], clash: null });
    show();
    try {
      await job.write(record);
      job.drafts?.clear();
      askBeforeLeaving(null);
      job.done(record);
      return;
    } catch (error) {
      await explain(error);
    }
    state.busy = false;
    show();
    focusFirstWrong(state.wrong);
  }

  /** @param {unknown} error */
  async function explain(error) {
    if (error instanceof Problem && error.status === 412) {
      const before = state.kept;
      state.kept = await job.read(signal);
      const theirs = state.kept ? job.toDraft(state.kept) : {};
      const how = same(before, state.kept) ? "others changed" : state.kept ? "this changed" : "taken out";
      state.clash = {
        how,
        differences: how === "this changed" ? differencesBetween(state.draft, theirs, job.boxes) : [],
      };
    } else if (error instanceof Problem && Object.keys(error.errors).length) {
      const { byName, others } = sortErrors(
        error.errors,
        job.boxes.map(({ name }) => name),
      );
      Object.assign(state, { wrong: byName, others });
    } else {
      state.others = [`Not saved: ${messageOf(error)} What you typed is still here.`];
    }
  }

  function takeTheirs() {
    Object.assign(state, { draft: job.toDraft(state.kept ?? job.blank), clash: null, restored: false });
    askBeforeLeaving(null);
    job.drafts?.clear();
    job.preview?.(typed());
    show();
  }

  /**
   * DXF readers by the box their points go to.
   * @type {Map<string, import("./outline_dxf.js").DxfReader>}
   */
  const readers = new Map();
  /**
   * @param {import("./outline_dxf.js").DxfKind} kind
   * @param {string} name
   */
  function reader(kind, name) {
    const made = readers.get(name) ?? dxfReader(kind, { signal, show, took: (answer) => took(name, answer) });
    readers.set(name, made);
    return made;
  }

  /**
   * Points from a drawing; its height where none was typed.
   * @param {string} name
   * @param {Api.DxfOutline} answer
   */
  function took(name, { points_mm: points, height_mm: height }) {
    if (name === "points_mm" && state.draft.height_mm === "") change("height_mm", lengthToType(height));
    change(name, pointsToType(points));
  }

  if (begun) askBeforeLeaving(() => "Leave without saving what you typed?");
  job.preview?.(typed());
  return { reader, state, change, takeTheirs, show, save: () => write(typed()), takeOut: () => write(null) };
}

/** @typedef {Awaited<ReturnType<typeof startEditing>>} Edit */
