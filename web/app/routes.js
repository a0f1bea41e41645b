// Every address of the app and the screen that shows it.
import { plainCode } from "./codes.js";
import { may } from "./rights.js";

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
 * @typedef {{name: string, path: string, floor?: boolean, needs?: string, load: () => Promise<Screen>}} Route
 *   needs: the right without which there is nothing to do there
 */

/** @type {Route[]} */
export const routes = [
  { name: "home", path: "/", load: () => import("../screens/home.js") },
  { name: "bend", path: "/bend", needs: "bends.bend", load: () => import("../screens/bend.js") },
  { name: "bench", path: "/bench", floor: true, load: () => import("../screens/follow.js") },
  { name: "part", path: "/part", needs: "parts.plan", load: () => import("../screens/part.js") },
  { name: "scan", path: "/scan", floor: true, load: () => import("../screens/scan.js") },
  { name: "card", path: "/c/:code", floor: true, load: () => import("../screens/card.js") },
  { name: "step", path: "/c/:code/step/:step", floor: true, load: () => import("../screens/step.js") },
  {
    name: "trial",
    path: "/c/:code/trial/:step",
    floor: true,
    needs: "trials.keep",
    load: () => import("../screens/trial.js"),
  },
  { name: "history", path: "/c/:code/history", load: () => import("../screens/history.js") },
  {
    name: "note",
    path: "/c/:code/note",
    floor: true,
    needs: "cards.change",
    load: () => import("../screens/note.js"),
  },
  {
    name: "settle",
    path: "/c/:code/settle",
    floor: true,
    needs: "cards.revise",
    load: () => import("../screens/settle.js"),
  },
  { name: "print", path: "/c/:code/print", load: () => import("../screens/print.js") },
  { name: "label", path: "/c/:code/label", load: () => import("../screens/label.js") },
  { name: "labels", path: "/labels", needs: "labels.sheet_json", load: () => import("../screens/labels.js") },
  { name: "chart", path: "/chart", needs: "bends.chart", load: () => import("../screens/chart.js") },
  { name: "shop", path: "/shop", load: () => import("../screens/shop.js") },
  { name: "press", path: "/shop/press", load: () => import("../screens/press.js") },
  {
    name: "test-bend",
    path: "/shop/test-bend",
    floor: true,
    needs: "evidence.keep",
    load: () => import("../screens/test_bend.js"),
  },
  {
    name: "learned",
    path: "/shop/learned/:metal",
    needs: "evidence.learned",
    load: () => import("../screens/learned.js"),
  },
  { name: "tools", path: "/shop/:kind", load: () => import("../screens/tools.js") },
  { name: "tool", path: "/shop/:kind/:tool", load: () => import("../screens/tool.js") },
  { name: "crew", path: "/crew", needs: "crew.listed", load: () => import("../screens/crew.js") },
  { name: "pair", path: "/pair", load: () => import("../screens/pair.js") },
  { name: "copies", path: "/copies", needs: "copies.listed", load: () => import("../screens/copies.js") },
  { name: "settings", path: "/settings", load: () => import("../screens/settings.js") },
];

/**
 * @param {string} name
 * @returns {Route}
 */
export const routeOf = (name) => /** @type {Route} */ (routes.find((route) => route.name === name));

/**
 * Whether a screen is for this device.
 * @param {string} pathname
 */
export function mayOpen(pathname) {
  const needs = match(pathname.split("?")[0])?.route.needs;
  return !needs || may(needs);
}

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
  if (params.code) params.code = plainCode(params.code);
  return params;
}
