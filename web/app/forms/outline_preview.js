// The outline of what is being typed, worked out by the server; the last good one stays while
// something is half typed.
import { call, Problem } from "../sync/api.js";
import { asSent } from "../sync/shop_lists.js";
import { specsOf } from "./entry_form.js";
import { newestAnswer } from "./newest_answer.js";

/** @typedef {import("../../view/shop/tool_form.js").Preview} Preview */
/** @typedef {Pick<Api.Outline, "outline_mm"|"ram"|"bed">} Outlined of a tool its outline, of a press both */

/**
 * What is read only is drawn as it is kept.
 * @param {Outlined & {outlines_mm?: Outlined}|undefined} tool
 * @returns {Preview}
 */
export const asKept = (tool) => ({
  parts: parts({ ...tool, ...tool?.outlines_mm }, { ...tool }),
  checks: [],
  wrong: [],
  fault: null,
  assumed: {},
});

/**
 * @param {"punch"|"die"|"holder"|"press"} kind
 * @param {(preview: Preview) => void} show
 * @param {AbortSignal} leaving of the screen
 * @returns {(tool: Record<string, unknown>) => void} call it at every change
 */
export function outlinePreview(kind, show, leaving) {
  /** @type {Preview["parts"]} */
  let lastGood = [];
  /** @type {Preview["assumed"]} */
  let assumed = {};
  const { ask } = newestAnswer(
    async (/** @type {Record<string, unknown>} */ tool, signal) => {
      const { body } = await call("POST", "/outline", { body: { kind, ...named(kind, tool) }, signal });
      return /** @type {Api.Outline} */ (body);
    },
    ({ question, answer, error }) => {
      if (answer) [lastGood, assumed] = [parts(answer, question), answer.assumed_mm ?? {}];
      const fault =
        error instanceof Problem && error.outline?.lines_mm.some((line) => line.length > 1)
          ? error.outline
          : null;
      const wrong = error ? saidAbout(error) : [];
      show({ parts: lastGood, checks: aboutOutline(answer), wrong, fault, assumed });
    },
    leaving,
  );
  return (tool) => {
    if (sized(kind, tool)) ask(tool);
  };
}

/**
 * Whether every size is typed: before that there is nothing to draw.
 * @param {"punch"|"die"|"holder"|"press"} kind
 * @param {import("../sync/shop_lists.js").Fields} tool
 */
function sized(kind, tool) {
  const list = /** @type {import("./entry_form.js").Drawn} */ (
    { punch: "punches", die: "dies", holder: "holders", press: "press" }[kind]
  );
  const assumed = /** @type {string[]} */ (tool.assumed ?? []);
  return (
    specsOf(list)
      .filter(
        ({ name, type, blank, when }) =>
          ["length", "number"].includes(type) &&
          blank === undefined &&
          !assumed.includes(name) &&
          (!when || when(/** @type {import("./tool_fields.js").Draft} */ (tool))),
      )
      .every(({ name }) => tool[name] !== undefined) &&
    (tool.shape !== "multi_v" ||
      /** @type {Partial<Api.GivenOpening>[]} */ (tool.openings).every(
        (one) =>
          one.v_opening_mm &&
          one.angle_deg &&
          (one.shoulder_radius_mm || assumed.includes("shoulder_radius_mm")),
      ))
  );
}

/**
 * A rating that is not known is told at its own box.
 * @param {Api.Outline|null|undefined} answer
 * @returns {Preview["checks"]}
 */
const aboutOutline = (answer) =>
  (answer?.checks ?? []).filter(({ code }) => !/(rating-unknown|no-segments)$/.test(code));

/**
 * @param {Outlined} answer
 * @param {import("../sync/shop_lists.js").Fields} tool whose it is
 * @returns {Preview["parts"]}
 */
function parts({ outline_mm: outline, ram, bed }, tool) {
  /** @param {string} what */
  const assumed = (what) => [`${what}_width_mm`, `${what}_height_mm`].some((size) => tool[size] === null);
  return /** @type {Preview["parts"]} */ ([
    { name: "", ring: outline },
    { name: assumed("ram") ? "Ram, usual size assumed" : "Ram", ring: ram },
    { name: assumed("bed") ? "Bed, usual size assumed" : "Bed", ring: bed },
  ]).filter(({ ring }) => ring?.length);
}

/**
 * A new tool is drawn before it has a code.
 * @param {string} kind
 * @param {Record<string, unknown>} tool
 */
function named(kind, tool) {
  return kind === "press" ? asSent(tool) : { ...asSent(tool), code: tool.code || "new" };
}

/**
 * @param {unknown} error
 * @returns {string[]}
 */
function saidAbout(error) {
  if (!(error instanceof Problem)) return ["The drawing waits: the shop's server does not answer."];
  const said = [...new Set(Object.values(error.errors).flat())];
  return said.length ? said : [error.message];
}
