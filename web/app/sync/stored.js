// What stands in the stores of this device (database.js): types only.

/** @typedef {import("./card_fields.js").Changes} Changes */
/**
 * @typedef {"measured_deg"|"left_deg"|"middle_deg"|"right_deg"|"set_angle_deg"|"gauge_x_mm"} Read
 *   numbers; the rest goes as typed
 * @typedef {Partial<Omit<Api.ResultInput, Read> & Pick<Api.Result, Read>>} Measured
 * @typedef {Omit<Api.CardEditInput, "settings"> & Pick<Changes, "settings">} Edit
 * @typedef {Omit<Api.RunEntryInput, "step"> & {step?: number}} RunBody
 * @typedef {Measured & Edit & Partial<Omit<RunBody, "made_at">>} Body a trial, what is to change on a card,
 *   or what happened in a run
 */

/**
 * @typedef {"trial"|"note"|"edit"|"run"} Kind a note is an edit of nothing but the note
 * @typedef {object} Waiting
 * @property {string} id of the trial, or of the revision it is to be
 * @property {number} number what was typed first is sent first; the device's clock orders nothing
 * @property {Kind} kind
 * @property {string} code of its card
 * @property {Body} body what is sent
 * @property {string} queued_at by this device's clock
 * @property {string} [after] of an edit: the revision, or waiting edit, it was made on
 * @property {string} [etag] of the card it was made on
 * @property {number} [revision] the number the device showed
 * @property {Changes} [before] its fields as they were shown before
 * @property {boolean} [parked] the card was changed meanwhile; it goes out as a proposal
 * @property {string} [refused] why the shop said no
 * @property {string} [late] why the shop could not take it when it was last sent
 * @property {boolean} [missing] since the shop did not know its card or revision
 * @property {boolean} [again] the shop had it once, and was put back to an earlier day
 * @property {boolean} [proposed] of one that was sent: the shop keeps it as a proposal
 * @property {string} [sent_at] by the shop's clock
 */

/**
 * @typedef {{code: string, title: string, note: string, metal: string, thickness_mm: number, bends: number,
 *   revision: number, updated_at: string, updated_by: string, worst: "ok"|"unknown"|"caution"|"stop",
 *   trials: number, archived: boolean, settle?: number}} Summary
 */

/**
 * What each store holds, by what.
 * @typedef {{
 *   cards: {key: string, value: Api.Card},
 *   list: {key: string, value: Summary, indexes: {settle: number}},
 *   meta: {key: string, value: unknown},
 *   outbox: {key: string, value: Waiting},
 *   sent: {key: string, value: Waiting},
 *   lost: {key: string, value: Api.Card},
 *   runs: {key: string, value: Api.RunEntry, indexes: {code: string}},
 *   lost_runs: {key: string, value: Api.RunEntry},
 * }} Kept
 */

export {};
