// One page, many addresses: follows links and the back button, shows one screen at a time.
import { html, render } from "/vendor/lit-html/lit-html.js";
import { drawMasthead } from "./masthead.js";
import { isShut } from "./pairing.js";
import { plainCode } from "../scan/card_code.js";
import { may } from "./rights.js";
import { match, routeOf } from "./routes.js";
import { whyHeld } from "../sync/sending.js";
import { unhide } from "../../view/common/form_errors.js";
import { notYours } from "../../view/common/if_allowed.js";
import { failed, stillOpening } from "../../view/common/screen_states.js";

/** A page that shows nothing for so long says why. */
const EMPTY_MS = 1000;

/** @type {AbortController} */
let leaving = new AbortController();
/** @type {(() => string | null) | null} */
let holdBack = null;
/** @type {Record<string, () => Promise<import("./routes.js").Screen>>} */
let screens = {};

/** The part of the page that screens draw in. */
const page = () => /** @type {HTMLElement} */ (document.getElementById("main"));

/**
 * @param {string} address
 * @param {{replace?: boolean}} [how]
 */
export function go(address, { replace = false } = {}) {
  if (!mayLeave()) return;
  history[replace ? "replaceState" : "pushState"](null, "", address);
  showCurrent(true);
}

/**
 * Ask before leaving with something unsaved.
 * @param {(() => string | null) | null} question a sentence to confirm, or null
 */
export function askBeforeLeaving(question) {
  holdBack = question;
}

function mayLeave() {
  const question = holdBack?.();
  return !question || confirm(question);
}

/** The screen anew, since what it may offer is another; what is being typed stays until it is left. */
export function showUnlessTyping() {
  if (holdBack?.()) drawMasthead();
  else showCurrent();
}

/** @param {boolean} [moveFocus] */
export async function showCurrent(moveFocus = false) {
  leaving.abort();
  leaving = new AbortController();
  holdBack = null;
  const { signal } = leaving;
  const root = document.documentElement;
  delete root.dataset.ready;
  const found = letIn(match(location.pathname));
  root.dataset.screen = found?.route.name ?? "nowhere";
  root.toggleAttribute("data-floor", Boolean(found?.route.floor));
  drawMasthead();
  /** @param {unknown} template */
  const draw = (template) => {
    clearTimeout(timer);
    if (!signal.aborted) render(template, page());
  };
  render(html``, page()); // a new screen starts from an empty page
  const timer = setTimeout(() => draw(stillOpening()), EMPTY_MS);
  if (!found) {
    draw(
      html`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`,
    );
    root.dataset.ready = "nowhere";
    return;
  }
  const { needs } = found.route;
  if (needs && !may(needs)) {
    draw(notYours(needs));
    root.dataset.ready = "not-yours";
    return;
  }
  try {
    const screen = await screens[found.route.name]();
    if (signal.aborted) return;
    scrollTo(0, 0);
    await screen.show({
      params: withPlainCode(found.params),
      query: new URLSearchParams(location.search),
      render: draw,
      title: (title) => (document.title = `${title} · Flangebook`),
      ready: () => {
        if (!signal.aborted) root.dataset.ready = found.route.name;
      },
      signal,
    });
  } catch (error) {
    if (signal.aborted) return;
    draw(failed(error));
    root.dataset.ready = "failed";
  }
  if (moveFocus && !signal.aborted) page().focus({ preventScroll: true });
  if (!signal.aborted) showAnchor();
}

/** What the address points to, out of any fold: it was not there when the browser looked for it. */
function showAnchor() {
  const to = location.hash && document.getElementById(location.hash.slice(1));
  if (!to) return;
  unhide(to);
  to.scrollIntoView();
}

/**
 * A code as it is kept, however it stands in the address.
 * @param {Record<string, string>} params
 */
const withPlainCode = (params) => (params.code ? { ...params, code: plainCode(params.code) } : params);

/**
 * A device that is not paired sees how to be, whatever it asked for.
 * @param {ReturnType<typeof match>} found
 */
function letIn(found) {
  return found && isShut(found.route.name) ? { route: routeOf("pair"), params: {} } : found;
}

/** @param {typeof screens} all the module of each screen, by its route's name */
export function startRouter(all) {
  screens = all;
  addEventListener("popstate", () => showCurrent());
  addEventListener("beforeunload", (event) => (whyHeld() || holdBack?.()) && event.preventDefault());
  document.addEventListener("click", (event) => {
    const link = /** @type {Element} */ (event.target).closest("a");
    if (!link || event.defaultPrevented || event.button !== 0) return;
    if (event.ctrlKey || event.metaKey || event.shiftKey || link.target || link.hasAttribute("download")) {
      return;
    }
    if (link.origin !== location.origin || !match(link.pathname)) return;
    if (link.hash && link.pathname === location.pathname) return;
    event.preventDefault();
    go(link.pathname + link.search + link.hash);
  });
  page().replaceChildren(); // the words that stood there while the app loaded
  return showCurrent();
}
