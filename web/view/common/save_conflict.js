// Somebody else saved meanwhile: nothing typed is lost, and the choice is put plainly.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { flag } from "./finding.js";
import { heads } from "./table_heads.js";

/** @typedef {{label: string, theirs: string, mine: string}} Difference */
/** @typedef {{how: "others changed"|"this changed"|"taken out", differences: Difference[]}} Conflict */

/** @param {Difference[]} differences */
export const differenceTable = (differences) =>
  html`<div class="table">
    <table>
      ${heads("Where", "Saved now", "You typed")}
      <tbody>
        ${differences.map(
          ({ label, theirs, mine }) =>
            html`<tr>
              <td>${label}</td>
              <td>${theirs || "empty"}</td>
              <td>${mine || "empty"}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;

/**
 * @param {Conflict} clash
 * @param {string} one what is edited, "punch"
 * @param {{saveMine: () => void, takeTheirs: () => void}} act
 */
export function conflictPanel({ how, differences }, one, { saveMine, takeTheirs }) {
  return html`<section class="panel clash" data-test="clash" role="alert">
    <h2>${flag("caution")} Somebody else saved meanwhile</h2>
    <p>
      ${
        how === "others changed"
          ? `Not this ${one}, but others in the list. Save again to keep both.`
          : nothing
      }
      ${
        how === "taken out"
          ? `This ${one} was taken out of the list. Save to put it back as you typed it.`
          : nothing
      }
      ${how === "this changed" ? `This ${one} too. What you typed is still in the boxes.` : nothing}
    </p>
    ${differences.length ? differenceTable(differences) : nothing}
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${saveMine}>
        Save what I typed
      </button>
      ${
        how === "taken out"
          ? nothing
          : html`<button type="button" class="button" data-test="take-theirs" @click=${takeTheirs}>
              Take what is saved
            </button>`
      }
    </div>
  </section>`;
}

/**
 * @param {Record<string, string>} mine
 * @param {Record<string, string>} theirs
 * @param {{name: string, label: string}[]} boxes
 * @returns {Difference[]}
 */
export function differencesBetween(mine, theirs, boxes) {
  return boxes
    .filter(({ name }) => (mine[name] ?? "") !== (theirs[name] ?? ""))
    .map(({ name, label }) => ({ label, theirs: theirs[name] ?? "", mine: mine[name] ?? "" }));
}
