// Tools asked for by name, for a whole part or for one bend: as typed, to and from what the API takes.

/** @typedef {{die: string, punch: string}} NamedTools codes as typed; empty: the planner chooses */

/**
 * Of a part or a bend; cards from before tools could be named have none.
 * @param {{die?: string|null, punch?: string|null}|null|undefined} kept
 * @returns {NamedTools}
 */
export const toolsFromPart = (kept) => ({ die: kept?.die ?? "", punch: kept?.punch ?? "" });

/**
 * Only what is named.
 * @param {Partial<NamedTools>|undefined} typed
 * @returns {{die?: string, punch?: string}}
 */
export function namedTools(typed) {
  const [die, punch] = [typed?.die?.trim(), typed?.punch?.trim()];
  return { ...(die ? { die } : {}), ...(punch ? { punch } : {}) };
}

/**
 * @param {Partial<NamedTools>|undefined} typed
 * @returns {{tools?: {die?: string, punch?: string}}}
 */
export function toolsRequest(typed) {
  const tools = namedTools(typed);
  return Object.keys(tools).length ? { tools } : {};
}

/**
 * In a few words; empty where none is named.
 * @param {Partial<NamedTools>|undefined} typed
 * @returns {string}
 */
export function toolsWords(typed) {
  const { die, punch } = namedTools(typed);
  return [die && `die ${die}`, punch && `punch ${punch}`].filter(Boolean).join(", ");
}
