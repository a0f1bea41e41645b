// Every address of the app and the screen that shows it.
import { plainCode } from "../scan/card_code.js";
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
  { name: "home", path: "/", load: () => import("../../screens/card/home.js") },
  { name: "bend", path: "/bend", needs: "bends.bend", load: () => import("../../screens/plan/bend.js") },
  { name: "bench", path: "/bench", floor: true, load: () => import("../../screens/card/press_screen.js") },
  { name: "part", path: "/part", needs: "parts.plan", load: () => import("../../screens/plan/part.js") },
  { name: "scan", path: "/scan", floor: true, load: () => import("../../screens/card/scan.js") },
  { name: "card", path: "/c/:code", floor: true, load: () => import("../../screens/card/card.js") },
  {
    name: "step",
    path: "/c/:code/step/:step",
    floor: true,
    load: () => import("../../screens/card/step.js"),
  },
  {
    name: "trial",
    path: "/c/:code/trial/:step",
    floor: true,
    needs: "trials.keep",
    load: () => import("../../screens/card/result.js"),
  },
  { name: "history", path: "/c/:code/history", load: () => import("../../screens/card/history.js") },
  {
    name: "note",
    path: "/c/:code/note",
    floor: true,
    needs: "cards.change",
    load: () => import("../../screens/card/note.js"),
  },
  {
    name: "settle",
    path: "/c/:code/settle",
    floor: true,
    needs: "cards.revise",
    load: () => import("../../screens/card/resolve.js"),
  },
  { name: "print", path: "/c/:code/print", load: () => import("../../screens/print/card_sheet.js") },
  { name: "label", path: "/c/:code/label", load: () => import("../../screens/print/label.js") },
  {
    name: "labels",
    path: "/labels",
    needs: "labels.sheet_json",
    load: () => import("../../screens/print/label_sheet.js"),
  },
  {
    name: "chart",
    path: "/chart",
    needs: "bends.chart",
    load: () => import("../../screens/print/wall_chart.js"),
  },
  { name: "shop", path: "/shop", load: () => import("../../screens/shop/shop.js") },
  { name: "press", path: "/shop/press", load: () => import("../../screens/shop/press.js") },
  {
    name: "test-bend",
    path: "/shop/test-bend",
    floor: true,
    needs: "evidence.keep",
    load: () => import("../../screens/shop/test_bend.js"),
  },
  {
    name: "learned",
    path: "/shop/learned/:metal",
    needs: "evidence.learned",
    load: () => import("../../screens/shop/measured_springback.js"),
  },
  { name: "tools", path: "/shop/:kind", load: () => import("../../screens/shop/tool_list.js") },
  { name: "tool", path: "/shop/:kind/:tool", load: () => import("../../screens/shop/tool.js") },
  { name: "crew", path: "/crew", needs: "crew.listed", load: () => import("../../screens/device/crew.js") },
  { name: "pair", path: "/pair", load: () => import("../../screens/device/pair.js") },
  {
    name: "copies",
    path: "/copies",
    needs: "copies.listed",
    load: () => import("../../screens/device/backups.js"),
  },
  { name: "settings", path: "/settings", load: () => import("../../screens/device/settings.js") },
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
