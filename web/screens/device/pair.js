// Ask for pairing: what a device sees that the shop does not know, and where its code goes.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { askWhoIAm, inWords, leave, pair, ROLES, turnedAway } from "../../app/shell/pairing.js";
import { waiting } from "../../app/sync/outbox.js";
import { go } from "../../app/shell/router.js";
import { settings } from "../../app/shell/settings.js";
import { sync } from "../../app/sync/sync.js";
import { flag } from "../../view/common/finding.js";
import { field, submitting } from "../../view/common/field.js";
import { keptHowLong } from "../../view/card/storage_duration.js";
import { loading } from "../../view/common/screen_states.js";

/** @type {Record<string, string>} */
const WHY = {
  revoked: "This device was taken off the shop's list. Its cards were removed from it.",
  expired: "This device was not used for half a year, so its pairing has ended.",
};

/**
 * @typedef {{me: Api.Me|null, code: string, name: string, fault: string,
 *   asking: boolean, waits: number}} State
 */

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Pair this device");
  visit.render(loading("Asking the shop…"));
  /** @type {State} */
  const state = {
    me: null,
    code: codeInAddress(),
    name: settings().name,
    fault: "",
    asking: false,
    waits: 0,
  };
  const draw = () => visit.render(page(state, draw));
  state.me = await askWhoIAm(visit.signal).catch(() => null);
  state.waits = (await waiting().catch(() => [])).length;
  draw();
  visit.ready();
}

/** The code stands behind the #, so it is in no log; it works once, so it leaves the address bar. */
function codeInAddress() {
  if (location.pathname !== "/pair" || !location.hash) return "";
  const code = decodeURIComponent(location.hash.slice(1)).slice(0, 20);
  history.replaceState(null, "", location.pathname);
  return code;
}

/**
 * @param {State} state
 * @param {() => void} draw
 */
function page(state, draw) {
  const { me } = state;
  if (!me) {
    return html`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      Pairing needs it. Try again when this device is in the shop's network.
      <p>
        <button type="button" class="button next" data-test="try-again" @click=${() => location.reload()}>
          Try again
        </button>
      </p>
    </div>`;
  }
  if (me.role) return paired(me);
  return html`<div class="door">
    <h1>Ask for pairing</h1>
    ${
      WHY[turnedAway() ?? me.why]
        ? html`<p data-test="why">${flag("caution", "Not paired")} ${WHY[turnedAway() ?? me.why]}</p>`
        : html`<p class="lead" data-test="why">The shop does not know this device yet.</p>`
    }
    ${
      state.waits
        ? html`<p data-test="waits">
            ${state.waits === 1 ? "1 result" : `${state.waits} results`} typed here still
            ${state.waits === 1 ? "waits" : "wait"}. Pair again and
            ${state.waits === 1 ? "it is" : "they are"} sent.
          </p>`
        : nothing
    }
    <ol class="ways">
      <li>The owner opens <b>Shop, Crew</b> on the shop's computer or a paired phone, and shows a code.</li>
      <li>Point this phone's camera at it, or type the eight characters here.</li>
    </ol>
    <form class="panel" novalidate @submit=${submitting(() => send(state, draw))}>
      ${field({
        name: "pair-code",
        label: "Pairing code",
        value: state.code,
        placeholder: "ABCD-1234",
        change: (value) => (state.code = value),
        wrong: state.fault ? [state.fault] : [],
      })}
      ${field({
        name: "pair-name",
        label: "Whose device is this?",
        value: state.name,
        placeholder: "Ann's phone",
        change: (value) => (state.name = value),
        hint: "The owner sees this name in the list.",
      })}
      <button class="button next wide" data-test="pair" ?disabled=${state.asking}>Pair this device</button>
    </form>
    ${
      me.way === "http"
        ? html`<p data-test="plain-http">
            ${flag("caution", "Not encrypted")} This is plain http: whoever is in the network can listen.
            <a href="/join">Join the shop's https first</a>; it also gives you cards in dead spots and the
            camera.
          </p>`
        : nothing
    }
  </div>`;
}

/** @param {Api.Me} me */
function paired(me) {
  const role = /** @type {import("../../app/shell/pairing.js").Role} */ (me.role);
  if (me.way === "loopback") {
    return html`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`;
  }
  return html`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${flag("ok", ROLES[role].word)} <b>${me.name}</b>: ${ROLES[role].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${keptHowLong}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${ask}>Unpair this device…</button>
    </p>
  </div>`;
}

async function ask() {
  if (confirm("Unpair this device? Its cards go; what waits to be sent stays until it is paired again.")) {
    await leave();
  }
}

/**
 * @param {State} state
 * @param {() => void} draw
 */
async function send(state, draw) {
  Object.assign(state, { asking: true, fault: "" });
  draw();
  try {
    await pair(state.code, state.name.trim());
    sync();
    go(location.pathname === "/pair" ? "/" : location.pathname, { replace: true });
  } catch (error) {
    Object.assign(state, { asking: false, fault: inWords(error) });
    draw();
  }
}
