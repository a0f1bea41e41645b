// Is there a good copy of the shop? And the whole shop as one file, out and in.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call } from "../../app/sync/api.js";
import { importFile } from "../../app/sync/import_file.js";
import { sync } from "../../app/sync/sync.js";
import { flag } from "../../view/common/finding.js";
import { importPanel } from "../../view/shop/import_panel.js";
import { moment } from "../../view/common/dates.js";
import { heads } from "../../view/common/table_heads.js";

const KINDS = { night: "automatic", "by-hand": "by hand", replaced: "before it was replaced" };

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  visit.title("Backups and export");
  const from = importFile({ show: draw, done: again, signal: visit.signal });
  /** @type {Api.Backups} */
  let copies = await read();
  async function again() {
    sync();
    copies = await read();
    draw();
  }
  async function read() {
    const { body } = await call("GET", "/backups", { signal: visit.signal });
    return /** @type {Api.Backups} */ (body);
  }
  function draw() {
    visit.render(
      html`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Backups and export</h1>
        <div class="settings-grid">
          ${backupsPanel(copies)}
          <div class="stack">${exportPanel()}${importPanel(from)}</div>
        </div>`,
    );
  }
  draw();
  visit.ready();
}

/** @param {Api.Backups} copies */
function backupsPanel({ standing, last_good_at: last, trouble, folder, backups }) {
  return html`<section class="panel" data-test="panel-backups">
    <h2>Backups</h2>
    <p data-test="standing">${stands(standing)}</p>
    ${last ? html`<p class="lead-line" data-test="last-good">Last good backup: ${moment(last)}</p>` : nothing}
    ${
      trouble
        ? html`<p class="wrong" data-test="trouble">${moment(trouble.at)}: ${trouble.words}</p>`
        : nothing
    }
    <p>
      The server makes one each night, looks it through, and keeps seven days and four weeks. Put one on
      another disk, too: a backup beside the shop burns with it.
    </p>
    ${
      backups.length
        ? html`<table data-test="backups">
            ${heads("Made", "How", "Size")}
            <tbody>
              ${backups.map(
                (one) =>
                  html`<tr>
                    <td>${moment(one.at)}</td>
                    <td>${KINDS[one.kind]}</td>
                    <td>${megabytes(one.size_bytes)}</td>
                  </tr>`,
              )}
            </tbody>
          </table>`
        : nothing
    }
    <p class="hint path">
      They lie in ${folder}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> restores one.
    </p>
  </section>`;
}

/** @param {Api.Backups["standing"]} standing */
function stands(standing) {
  if (standing === "ok") return flag("ok", "There is a good backup");
  if (standing === "late") return flag("caution", "The last backup is over two days old");
  if (standing === "trouble") return flag("stop", "The last backup could not be made");
  return flag("unknown", "There is no backup yet");
}

/** @param {number} bytes */
const megabytes = (bytes) => `${(bytes / 1e6).toFixed(1)} MB`;

function exportPanel() {
  return html`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and results, as open JSON. Bring it in again here, or
      read it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`;
}
