// Bringing a shop's file in: the server looks it through first, and nothing changes until that is agreed to.
import { messageOf, Problem, upload } from "./api.js";

/**
 * @typedef {object} ImportState
 * @property {string} name of the file; empty before one was chosen
 * @property {""|"looking"|"importing"} busy
 * @property {Api.Imported|null} told what is in the file and in the shop, or what was done
 * @property {string[]} wrong what the server said, place by place
 */

const LONGEST_MS = 300_000;
const MOST_BYTES = 60_000_000;

/** @param {{show: () => void, done: () => void, signal: AbortSignal}} tell */
export function importFile({ show, done, signal }) {
  /** @type {ImportState} */
  const state = { name: "", busy: "", told: null, wrong: [] };
  /** @type {Blob|null} */
  let file = null;

  /** @param {File} chosen */
  function choose(chosen) {
    file = chosen;
    state.name = chosen.name;
    return ask("looking", "preview=true");
  }

  function take() {
    return ask("importing", `replace=${!state.told?.untouched}`);
  }

  /**
   * @param {"looking"|"importing"} busy
   * @param {string} query
   */
  async function ask(busy, query) {
    if (!file || state.busy) return;
    Object.assign(state, { busy, told: null, wrong: [] });
    show();
    try {
      if (file.size > MOST_BYTES) {
        throw new Error("The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");
      }
      const answer = await upload(`/import?${query}`, file, "application/json", signal, LONGEST_MS);
      state.told = /** @type {Api.Imported} */ (answer.body);
    } catch (error) {
      if (signal.aborted) return;
      state.wrong = said(error);
    }
    state.busy = "";
    show();
    if (state.told?.imported) done();
  }

  return { state, choose, take };
}

/** @typedef {ReturnType<typeof importFile>} FileImport */

/**
 * @param {unknown} error
 * @returns {string[]}
 */
function said(error) {
  if (!(error instanceof Problem)) return [messageOf(error)];
  const places = Object.entries(error.errors)
    .slice(1)
    .map(([place, words]) => `${place}: ${words.join(" ")}`);
  return [error.message, ...places];
}
