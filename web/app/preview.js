// The outline of what is being typed, worked out by the server: asked for a moment after the last
// key, the newest answer only.
import { call, Problem } from "./api.js";
import { asSent } from "./crib.js";

/** @typedef {import("./view/tool_form.js").Preview} Preview */

/**
 * @param {"punch"|"die"|"holder"|"press"} kind
 * @param {(preview: Preview) => void} show
 * @param {AbortSignal} signal of the screen
 * @returns {(tool: Record<string, unknown>) => void} call it at every change
 */
export function outlinePreview(kind, show, signal) {
  /** @type {number|undefined} */
  let timer;
  /** @type {AbortController|undefined} */
  let asking;
  /** @type {Preview["rings"]} */
  let lastGood = [];
  signal.addEventListener("abort", () => clearTimeout(timer));
  /** @param {Record<string, unknown>} tool */
  async function ask(tool) {
    asking?.abort();
    asking = new AbortController();
    const mine = AbortSignal.any([signal, asking.signal]);
    try {
      const { body } = await call("POST", "/outline", { body: { kind, ...asSent(tool) }, signal: mine });
      lastGood = rings(body);
      if (!mine.aborted) show({ rings: lastGood, checks: body.checks ?? [], wrong: [] });
    } catch (error) {
      if (mine.aborted) return;
      const wrong = error instanceof Problem ? saidAbout(error) : ["The drawing waits: the shop's server does not answer."];
      show({ rings: lastGood, checks: [], wrong });
    }
  }
  return (tool) => {
    clearTimeout(timer);
    timer = setTimeout(() => ask(tool), 250);
  };
}

/** @param {any} body @returns {Preview["rings"]} */
function rings(body) {
  return [body.outline_mm, body.ram, body.bed].filter((ring) => ring?.length);
}

/** @param {Problem} error */
function saidAbout(error) {
  const said = Object.values(error.errors).flat();
  return said.length ? said : [error.message];
}
