// What the shop has: the press, the crib drawn to scale, the metals, and what can be printed.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { messageOf } from "../../app/sync/api.js";
import {
  pressScreenList,
  pressScreenWords,
  removePressScreen,
} from "../../app/press_screen/press_screens.js";
import { KINDS, readList, readPress, WRITES } from "../../app/sync/shop_lists.js";
import { force, length, words } from "../../app/shell/units.js";
import { pressScreenPanel } from "../../view/press_screen/press_screen_list.js";
import { flag } from "../../view/common/finding.js";
import { offer, way } from "../../view/common/if_allowed.js";
import { rack } from "../../view/shop/rack.js";

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Shop");
  const [{ press, kept }, punches, dies, holders, metals, benches] = await Promise.all([
    readPress(visit.signal),
    readList("punches", visit.signal),
    readList("dies", visit.signal),
    readList("holders", visit.signal),
    readList("metals", visit.signal),
    pressScreenList(visit.signal).catch(() => null),
  ]);
  const floor = { benches, fault: "" };
  /** @param {Api.PressScreen} bench */
  async function takeOut(bench) {
    const name = pressScreenWords(bench.name);
    if (
      !confirm(
        `Take ${name} out of the shop? Its card stays as it is. A display that still shows it asks which ` +
          "press screen it is.",
      )
    ) {
      return;
    }
    floor.fault = "";
    try {
      await removePressScreen(bench.name);
    } catch (error) {
      floor.fault = messageOf(error);
    }
    // somebody else may have taken it out
    floor.benches = await pressScreenList(visit.signal).catch(() => floor.benches);
    draw();
  }
  const draw = () =>
    visit.render(
      html`<h1>The shop</h1>
        ${
          kept
            ? html`<p data-test="kept">
                As this device last saw it.
                ${offer(WRITES.press, "Changing anything needs the shop's server.")}
              </p>`
            : nothing
        }
        <div class="shop-grid">
          ${pressPanel(press)} ${toolsPanel("punches", punches.items)} ${toolsPanel("dies", dies.items)}
          ${toolsPanel("holders", holders.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${metals.items.length}</span></h2>
            ${way(
              "/shop/test-bend",
              html`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`,
            )}
            <ul class="plain-list metal-list">
              ${metals.items.map(metalLinks)}
            </ul>
          </section>
          ${floor.benches ? pressScreenPanel(floor.benches, { ...floor, takeOut }) : nothing} ${paperPanel()}
        </div>`,
    );
  draw();
  visit.ready();
}

/** @param {{code: string, name: string}} metal */
const metalLinks = ({ code, name }) =>
  html`<li>
    <a href="/shop/metals/${encodeURIComponent(code)}">${name}</a>
    ${way(
      "/shop/learned/x",
      html`<a href="/shop/learned/${encodeURIComponent(code)}" data-test="learned-${code}"
        ><span class="wide-only">Measured&nbsp;</span>springback</a
      >`,
    )}
  </li>`;

/** @param {Api.Press|null} press */
function pressPanel(press) {
  if (!press) {
    return html`<section class="panel" data-test="panel-press">
      <h2>Press</h2>
      <p>${flag("unknown", "No press yet")}</p>
      <p>Without its figures nothing can be checked against it.</p>
      ${offer(WRITES.press, html`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`;
  }
  return html`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${press.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${words(force(press.force_kn))}</dd>
      </div>
      <div>
        <dt>Bed</dt>
        <dd>${words(length(press.bed_length_mm, { digits: 0 }))}</dd>
      </div>
      <div>
        <dt>Open height</dt>
        <dd>${words(length(press.open_height_mm, { digits: 0 }))}</dd>
      </div>
      <div>
        <dt>Holder in the ram</dt>
        <dd>${press.holder ?? "none"}</dd>
      </div>
    </dl>
  </section>`;
}

/**
 * @param {"punches"|"dies"|"holders"} kind
 * @param {import("../../app/sync/shop_lists.js").Tool[]} tools
 */
function toolsPanel(kind, tools) {
  const unrated = tools.filter((tool) => tool.rating_kn_per_m === null).length;
  const spent = tools.filter((tool) => tool.condition === "damaged" || tool.condition === "worn").length;
  return html`<section class="panel" data-test="panel-${kind}">
    <h2><a href="/shop/${kind}">${KINDS[kind].title}</a> <span class="soft">${tools.length}</span></h2>
    ${
      tools.length
        ? rack(kind, tools)
        : html`<p>None yet. ${offer(WRITES[kind], html`<a href="/shop/${kind}/+">Add the first</a>`)}</p>`
    }
    ${
      unrated || spent
        ? html`<p class="rack-flags">
            ${unrated ? flag("unknown", `${unrated} without a rating`) : nothing}
            ${spent ? flag("caution", `${spent} worn or damaged`) : nothing}
          </p>`
        : nothing
    }
  </section>`;
}

function paperPanel() {
  const copies = way(
    "/backups",
    html`<a class="button wide" href="/backups" data-test="to-backups">Backups and export</a>`,
  );
  return way(
    "/chart",
    html`<section class="panel" data-test="panel-paper">
      <h2>On paper${copies === nothing ? "" : ", backups, crew"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${copies}
        ${way("/crew", html`<a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>`)}
      </div>
    </section>`,
  );
}
