// The crew: let a device in, see who is in, turn one out. The owner's screen.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call } from "../../app/sync/api.js";
import { askWhoIAm, inWords, ROLES } from "../../app/shell/pairing.js";
import { flag } from "../../view/common/finding.js";
import { choice, field, pick } from "../../view/common/field.js";
import { moment } from "../../view/common/dates.js";

const LOOK_AGAIN_MS = 2000;

/** @typedef {import("../../app/shell/pairing.js").Role} Role */
/**
 * @typedef {{devices: Api.Device[], joining: Api.Joining|null, open: boolean, role: Role, name: string,
 *   offer: Api.Offered|null, known: Set<string>, came: Api.Device|null, fault: string}} State
 */

/** @type {[string, string][]} */
const ROLE_CHOICES = Object.entries(ROLES).map(([role, { word }]) => [role, word]);

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Crew");
  const { signal } = visit;
  /** @type {State} */
  const state = {
    devices: [],
    joining: null,
    open: false,
    role: "operator",
    name: "",
    offer: null,
    known: new Set(),
    came: null,
    fault: "",
  };
  const draw = () => visit.render(page(state, acts));
  const acts = actions(state, draw, signal);
  const [devices, options, joining] = await Promise.all([
    call("GET", "/devices", { signal }),
    call("GET", "/crew-options", { signal }),
    askWhoIAm(signal).then(({ network }) => (network ? call("GET", "/join", { signal }) : null)),
  ]);
  Object.assign(state, {
    devices: /** @type {Api.Devices} */ (devices.body).devices,
    open: /** @type {Api.CrewOptions} */ (options.body).labels_open,
    joining: joining?.body ?? null,
  });
  draw();
  visit.ready();
  const timer = setInterval(acts.look, LOOK_AGAIN_MS);
  signal.addEventListener("abort", () => clearInterval(timer));
}

/** @typedef {ReturnType<typeof actions>} Acts */

/**
 * @param {State} state
 * @param {() => void} draw
 * @param {AbortSignal} signal
 */
function actions(state, draw, signal) {
  /** @param {() => Promise<void>} act */
  const tried = async (act) => {
    state.fault = "";
    try {
      await act();
    } catch (error) {
      if (signal.aborted) return;
      state.fault = inWords(error);
    }
    draw();
  };
  async function look() {
    if (document.visibilityState !== "visible") return;
    const answer = await call("GET", "/devices", { signal, timeout: 4000 }).catch(() => null);
    if (!answer || signal.aborted) return;
    state.devices = /** @type {Api.Devices} */ (answer.body).devices;
    const came = state.offer && state.devices.find((one) => !state.known.has(one.id) && !one.revoked_at);
    if (came) Object.assign(state, { came, offer: null, name: "" });
    else if (state.offer && Date.parse(state.offer.expires_at) <= Date.now()) state.offer = null;
    draw();
  }
  return {
    look,
    draw,
    offer: () =>
      tried(async () => {
        const { body } = await call("POST", "/pairings", {
          body: { role: state.role, name: state.name.trim() },
          signal,
        });
        Object.assign(state, { offer: body, came: null, known: new Set(state.devices.map((one) => one.id)) });
      }),
    /** @param {Api.Device} device */
    revoke: (device) =>
      tried(async () => {
        if (
          !confirm(
            `Remove ${device.name}? It can read nothing any more, and its cards go from it when it ` +
              "next asks.",
          )
        ) {
          return;
        }
        await call("DELETE", `/devices/${device.id}`, { signal });
        await look();
      }),
    /**
     * @param {Api.Device} device
     * @param {string} role
     */
    setRole: (device, role) =>
      tried(async () => {
        await call("PUT", `/devices/${device.id}`, { body: { role }, signal });
        await look();
      }),
    /** @param {boolean} open */
    setOpen: (open) =>
      tried(async () => {
        await call("PUT", "/crew-options", { body: { labels_open: open }, signal });
        state.open = open;
      }),
  };
}

/**
 * @param {State} state
 * @param {Acts} acts
 */
function page(state, acts) {
  return html`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${state.fault ? html`<p class="wrong" role="alert" data-test="fault">${state.fault}</p>` : nothing}
    ${
      state.joining
        ? html`<div class="crew-grid">${letIn(state, acts)}${begin(state.joining)}</div>`
        : noNetwork()
    }
    <section class="panel" data-test="devices">
      <h2>Devices in the shop</h2>
      ${deviceList(state, acts)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${choice({
        name: "labels-open",
        label: "A device that is not paired",
        value: state.open ? "open" : "shut",
        options: [
          ["shut", "sees nothing"],
          ["open", "may read the card of a label it scans"],
        ],
        change: (value) => acts.setOpen(value === "open"),
      })}
    </section>`;
}

const noNetwork = () =>
  html`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;

/**
 * @param {State} state
 * @param {Acts} acts
 */
function letIn(state, acts) {
  const { offer, came } = state;
  if (offer) {
    return html`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${ROLES[offer.role].word}${offer.name ? html`: <b>${offer.name}</b>` : nothing}. Works once, until
        ${moment(offer.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${offer.address}" src=${picture(offer.qr)} />
      <p class="pair-code" data-test="offer-code">${offer.code}</p>
      <p class="hint">
        A phone that has not joined the shop's https yet does that first, with the other code.
      </p>
      <button
        type="button"
        class="button wide"
        data-test="offer-done"
        @click=${() => {
          state.offer = null;
          acts.draw();
        }}>
        Hide the code
      </button>
    </section>`;
  }
  return html`<section class="panel" data-test="let-in">
    <h2>Let a device in</h2>
    ${
      came
        ? html`<p data-test="came">
            ${flag("ok", "Paired")} <b>${came.name}</b> is in, as ${ROLES[came.role].word.toLowerCase()}.
          </p>`
        : nothing
    }
    ${choice({
      name: "role",
      label: "As",
      value: state.role,
      options: ROLE_CHOICES,
      change: (value) => {
        state.role = /** @type {Role} */ (value);
        acts.draw();
      },
    })}
    <p class="hint" data-test="role-does">${ROLES[state.role].word}: ${ROLES[state.role].does}.</p>
    ${field({
      name: "device-name",
      label: "Whose?",
      value: state.name,
      placeholder: "Ann's phone",
      change: (value) => (state.name = value),
    })}
    <button type="button" class="button next wide" data-test="show-code" @click=${acts.offer}>
      Show a pairing code
    </button>
  </section>`;
}

/** @param {Api.Joining} joining */
function begin(joining) {
  return html`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${picture(joining.qr)} />
    <p>${joining.shop}: ${joining.https.map((address) => html`<span class="address">${address}</span> `)}</p>
    ${
      joining.http.length
        ? html`<p class="hint">Or type <span class="address">${joining.http[0]}/join</span></p>`
        : nothing
    }
    ${
      joining.fingerprint
        ? html`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${fours(joining.fingerprint)}</p>`
        : nothing
    }
  </section>`;
}

/**
 * @param {State} state
 * @param {Acts} acts
 */
function deviceList({ devices }, acts) {
  if (!devices.length) return html`<p data-test="nobody">Nobody yet but this computer.</p>`;
  return html`<ul class="plain-list devices">
    ${devices.map(
      (one) =>
        html`<li data-test="device" class=${one.revoked_at ? "turned-out" : ""}>
          <div class="who">
            <b>${one.name}</b>${one.own ? html` <span class="soft">this device</span>` : nothing}
            <span class="soft"
              >${one.revoked_at ? `removed ${moment(one.revoked_at)}` : `last seen ${moment(one.seen_at)}`},
              paired ${moment(one.paired_at)} by
              ${one.paired_by}${one.way === "http" ? ", over plain http" : ""}</span
            >
          </div>
          ${
            one.revoked_at
              ? html`<p>${flag("stop", "Removed")}</p>`
              : html`${pick({
                    name: `role-${one.id}`,
                    label: `Role of ${one.name}`,
                    value: one.role,
                    options: ROLE_CHOICES,
                    change: (role) => acts.setRole(one, role),
                  })}
                  <button type="button" class="button" data-test="revoke" @click=${() => acts.revoke(one)}>
                    Remove…
                  </button>`
          }
        </li>`,
    )}
  </ul>`;
}

/** @param {string} qr */
const picture = (qr) => `data:image/svg+xml,${encodeURIComponent(qr)}`;

/** @param {string} text */
const fours = (text) => text.replace(/(.{4})(?=.)/g, "$1 ");
