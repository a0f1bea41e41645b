// Every address of the app. Which module shows it stands in screens.js.

/**
 * @typedef {object} Visit one showing of a screen
 * @property {Record<string, string>} params from the path; a card's code in capitals
 * @property {URLSearchParams} query
 * @property {(template: unknown) => void} render draws into the page; harmless after leaving
 * @property {(title: string) => void} title names the page
 * @property {() => void} ready tells that the data is on the screen
 * @property {AbortSignal} signal aborted when the screen is left
 */

/** @typedef {{show: (visit: Visit) => void | Promise<void>}} Screen */
/**
 * @typedef {{name: string, path: string, floor?: boolean, needs?: string}} Route
 *   needs: the right without which there is nothing to do there
 */

/** @type {Route[]} */
export const routes = [
  { name: "home", path: "/" },
  { name: "bend", path: "/bend", needs: "bends.bend" },
  { name: "press-screen", path: "/press-screen", floor: true },
  { name: "press-screen", path: "/bench", floor: true }, // displays set up with 0.3 start there
  { name: "part", path: "/part", needs: "parts.plan" },
  { name: "scan", path: "/scan", floor: true },
  { name: "card", path: "/c/:code", floor: true },
  { name: "step", path: "/c/:code/step/:step", floor: true },
  { name: "result", path: "/c/:code/result/:step", floor: true, needs: "results.keep" },
  { name: "history", path: "/c/:code/history" },
  { name: "note", path: "/c/:code/note", floor: true, needs: "cards.change" },
  { name: "resolve", path: "/c/:code/resolve", floor: true, needs: "cards.revise" },
  { name: "print", path: "/c/:code/print" },
  { name: "label", path: "/c/:code/label" },
  { name: "labels", path: "/labels", needs: "labels.sheet_json" },
  { name: "chart", path: "/chart", needs: "bends.chart" },
  { name: "shop", path: "/shop" },
  { name: "press", path: "/shop/press" },
  { name: "test-bend", path: "/shop/test-bend", floor: true, needs: "evidence.keep" },
  { name: "learned", path: "/shop/learned/:metal", needs: "evidence.learned" },
  { name: "tools", path: "/shop/:kind" },
  { name: "tool", path: "/shop/:kind/:tool" },
  { name: "crew", path: "/crew", needs: "crew.listed" },
  { name: "pair", path: "/pair" },
  { name: "backups", path: "/backups", needs: "backups.listed" },
  { name: "settings", path: "/settings" },
  { name: "guide", path: "/guide" },
  { name: "guide-page", path: "/guide/:page" },
  { name: "words", path: "/words" },
];

/**
 * @param {string} name
 * @returns {Route}
 */
export const routeOf = (name) => /** @type {Route} */ (routes.find((route) => route.name === name));

/**
 * @param {string} pathname
 * @returns {{route: Route, params: Record<string, string>} | undefined}
 */
export function match(pathname) {
  const parts = pathname.split("/").filter(Boolean);
  if (parts[0]?.toLowerCase() === "c") parts[0] = "c"; // labels are printed in capitals
  for (const route of routes) {
    const params = matchPath(route.path.split("/").filter(Boolean), parts);
    if (params) return { route, params };
  }
  return undefined;
}

/**
 * @param {string[]} pattern
 * @param {string[]} parts
 * @returns {Record<string, string> | undefined}
 */
function matchPath(pattern, parts) {
  if (pattern.length !== parts.length) return undefined;
  /** @type {Record<string, string>} */
  const params = {};
  for (const [index, piece] of pattern.entries()) {
    if (!piece.startsWith(":")) {
      if (piece !== parts[index]) return undefined;
      continue;
    }
    try {
      params[piece.slice(1)] = decodeURIComponent(parts[index]);
    } catch {
      return undefined; // a broken percent sign
    }
  }
  return params;
}
