// Reading a tool's outline out of a DXF file: the server reads it, the choices stay on the screen.
import { messageOf, Problem, upload } from "../sync/api.js";

/** @typedef {"punch"|"die"|"holder"|"ram"|"bed"|"die_holder"} DxfKind */
/**
 * @typedef {{units: string, layer: string, origin: string, point: string, turn_deg: string,
 *   mirror: string}} Choices
 */
/** @typedef {import("../../drawing/outline_fault.js").Fault} Fault */
/**
 * @typedef {object} DxfState
 * @property {string} file its name; empty before one was chosen
 * @property {boolean} busy
 * @property {Choices} choices
 * @property {Api.DxfOutline|null} answer
 * @property {string} wrong what the server said; empty when it read the file
 * @property {Fault|null} fault to be drawn
 * @property {string} code what kind of fault
 * @property {string[]} layers that lines were found on
 */

const AS_IT_SAYS = { units: "", layer: "", origin: "rule", point: "", turn_deg: "0", mirror: "no" };
const MOST_BYTES = 2_000_000;

/**
 * @param {DxfKind} kind
 * @param {{took: (answer: Api.DxfOutline) => void, show: () => void, signal: AbortSignal}} told
 */
export function dxfReader(kind, { took, show, signal }) {
  /** @type {DxfState} */
  const state = {
    file: "",
    busy: false,
    choices: { ...AS_IT_SAYS },
    answer: null,
    wrong: "",
    fault: null,
    code: "",
    layers: [],
  };
  /** @type {Blob|null} */
  let file = null;
  let asked = 0;

  /** @param {File} chosen */
  function choose(chosen) {
    file = chosen;
    Object.assign(state, { file: chosen.name, choices: { ...AS_IT_SAYS }, layers: [] });
    return read();
  }

  /**
   * @param {keyof Choices} name
   * @param {string} value
   */
  function set(name, value) {
    state.choices = { ...state.choices, [name]: value };
    return state.choices.origin === "point" && !state.choices.point ? show() : read();
  }

  async function read() {
    if (!file) return;
    const mine = ++asked;
    Object.assign(state, { busy: true, answer: null, wrong: "", fault: null, code: "" });
    show();
    try {
      if (file.size > MOST_BYTES) {
        throw new Error("The file is over 2 MB. Save the tool's outline by itself.");
      }
      const { body } = /** @type {{body: Api.DxfOutline}} */ (
        await upload(`/outlines/dxf?${query(state.choices, kind)}`, file, "image/vnd.dxf", signal)
      );
      if (mine !== asked) return;
      Object.assign(state, { answer: body, layers: body.layers });
      took(body);
    } catch (error) {
      if (mine !== asked || signal.aborted) return;
      state.wrong = messageOf(error);
      if (error instanceof Problem && error.outline) {
        const { code, layers } = error.outline;
        Object.assign(state, { fault: error.outline, code, layers: layers.length ? layers : state.layers });
      }
    }
    state.busy = false;
    show();
  }

  return { state, choose, set };
}

/** @typedef {ReturnType<typeof dxfReader>} DxfReader */

/**
 * @param {Choices} choices
 * @param {DxfKind} kind
 */
function query(choices, kind) {
  const given = Object.entries(choices).filter(
    ([name, value]) => value && (name !== "point" || choices.origin === "point"),
  );
  return new URLSearchParams([["kind", kind], ...given]);
}
