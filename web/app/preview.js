// The outline of what is being typed, worked out by the server; the last good one stays while
// something is half typed.
import { call, Problem } from "./api.js";
import { asSent } from "./crib.js";
import { newestAnswer } from "./newest.js";

/** @typedef {import("./view/tool_form.js").Preview} Preview */

/**
 * @param {"punch"|"die"|"holder"|"press"} kind
 * @param {(preview: Preview) => void} show
 * @param {AbortSignal} leaving of the screen
 * @returns {(tool: Record<string, unknown>) => void} call it at every change
 */
export function outlinePreview(kind, show, leaving) {
  /** @type {Preview["rings"]} */
  let lastGood = [];
  const { ask } = newestAnswer(
    async (/** @type {Record<string, unknown>} */ tool, signal) => (await call("POST", "/outline", { body: { kind, ...asSent(tool) }, signal })).body,
    ({ answer, error }) => {
      if (answer) lastGood = [answer.outline_mm, answer.ram, answer.bed].filter((ring) => ring?.length);
      show({ rings: lastGood, checks: answer?.checks ?? [], wrong: error ? saidAbout(error) : [] });
    },
    leaving,
  );
  return (tool) => ask(tool);
}

/** @param {unknown} error @returns {string[]} */
function saidAbout(error) {
  if (!(error instanceof Problem)) return ["The drawing waits: the shop's server does not answer."];
  const said = Object.values(error.errors).flat();
  return said.length ? said : [error.message];
}
