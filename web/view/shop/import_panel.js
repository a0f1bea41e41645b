// A shop's file: chosen, looked through, and brought in when that is agreed to.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { flag } from "../common/finding.js";
import { moment } from "../common/dates.js";
import { heads } from "../common/table_heads.js";

/** @type {[keyof Api.Holdings, string][]} */
const ROWS = [
  ["press", "Press"],
  ["tools", "Tools"],
  ["metals", "Metals"],
  ["cards", "Cards"],
  ["revisions", "Revisions"],
  ["trials", "Results"],
  ["test_bends", "Test bends"],
];
const MOST_FAULTS = 8;

/** @param {import("../../app/sync/import_file.js").FileImport} from */
export function importPanel({ state, choose, take }) {
  const { name, busy, told, wrong } = state;
  return html`<section class="panel" data-test="panel-import">
    <h2>Bring a file in</h2>
    <p>
      A file that was exported here or in another shop. It is looked through first; nothing changes until you
      say so.
    </p>
    <label class="button wide dxf-file" for="import-file"
      >${name ? "Choose another file" : "Choose a file"}
      <input
        id="import-file"
        data-test="import-file"
        class="unseen"
        type="file"
        accept=".json,application/json"
        ?disabled=${Boolean(busy)}
        @change=${(/** @type {{target: HTMLInputElement}} */ { target }) => {
          if (target.files?.[0]) choose(target.files[0]);
          target.value = "";
        }} />
    </label>
    <div role="status">
      ${
        busy
          ? html`<p>${busy === "looking" ? `Looking through ${name}…` : `Bringing ${name} in…`}</p>`
          : nothing
      }
      ${wrong.length ? faults(name, wrong) : nothing}
      ${told ? (told.imported ? finished(told) : preview(name, told, take)) : nothing}
    </div>
  </section>`;
}

/**
 * @param {string} name
 * @param {string[]} wrong
 */
const faults = (name, wrong) =>
  html`<div data-test="import-wrong">
    <p>${flag("stop", "Not brought in")} ${name}</p>
    <ul>
      ${wrong.slice(0, MOST_FAULTS).map((words) => html`<li class="wrong">${words}</li>`)}
    </ul>
    ${wrong.length > MOST_FAULTS ? html`<p>There are more.</p>` : nothing}
    <p>Nothing in the shop was changed.</p>
  </div>`;

/**
 * @param {string} name
 * @param {Api.Imported} told
 * @param {() => void} take
 */
function preview(name, told, take) {
  return html`<div data-test="import-preview">
    <p><b>${name}</b>, exported ${moment(told.exported_at)} by ${told.made_by}</p>
    <table>
      ${heads("What", "In the file", "In the shop now")}
      <tbody>
        ${ROWS.map(
          ([key, words]) =>
            html`<tr>
              <th scope="row">${words}</th>
              <td>${shown(told.holds[key])}</td>
              <td>${shown(told.here[key])}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    ${
      told.untouched
        ? html`<p>${flag("ok", "The shop is empty")}</p>
            <button type="button" class="button next wide" data-test="import-now" @click=${take}>
              Bring it in
            </button>`
        : html`<p>
              ${flag("caution", "Everything in the shop is replaced")} A backup of what is there now is made
              first.
            </p>
            <button
              type="button"
              class="button next wide"
              data-test="import-now"
              @click=${() => agreed(told) && take()}>
              Replace the shop…
            </button>`
    }
  </div>`;
}

/** @param {string|number} value */
const shown = (value) => (value === "" ? "none" : value);

/** @param {Api.Imported} told */
const agreed = ({ here, holds }) =>
  confirm(
    `Replace the shop? Its ${here.cards} cards and ${here.trials} results go, the file's ` +
      `${holds.cards} cards and ${holds.trials} results come. A backup is made first.`,
  );

/** @param {Api.Imported} told */
const finished = ({ holds, kept_as: kept }) =>
  html`<div data-test="import-done">
    <p>${flag("ok", "Brought in")} ${holds.cards} cards, ${holds.trials} results.</p>
    ${kept ? html`<p>The shop that was there is kept as ${kept}.</p>` : nothing}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`;
