// A line for each card: title, code, what it is made of, whether it has a stop, what waits.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { displayCode } from "../../app/scan/card_code.js";
import { tidyLength } from "../../drawing/section.js";
import { lengthUnit } from "../../app/shell/units.js";
import { flag } from "../common/finding.js";
import { day } from "../common/dates.js";

/** @typedef {import("../../app/sync/stored.js").Summary} Summary */

/**
 * @param {Summary[]} cards
 * @param {{metalName: (code: string) => string, waiting: Map<string, string>}} known
 */
export function cardList(cards, { metalName, waiting }) {
  return html`<ul class="rows cards" data-test="cards">
    ${cards.map(
      (card) =>
        html`<li class="row">
          <a href="/c/${card.code}" data-test="card" data-code=${card.code}>
            <span class="lead">${card.title || "Untitled"}</span>
            <span class="code">${displayCode(card.code)}</span>
            <span class="more">
              ${metalName(card.metal)}, ${tidyLength(card.thickness_mm)} ${lengthUnit()},
              ${card.bends === 1 ? "1 bend" : `${card.bends} bends`} · changed
              ${day(card.updated_at)}${
                card.updated_by ? ` by ${card.updated_by}` : ""
              }${card.archived ? " · archived" : ""}
              ${waits(waiting.get(card.code) ?? "")}
              ${
                card.settle
                  ? html`<span data-test="resolve">${flag("caution", `${card.settle} to resolve`)}</span>`
                  : nothing
              }
              ${card.worst === "stop" ? flag("stop") : nothing}
            </span>
          </a>
        </li>`,
    )}
  </ul>`;
}

/** @param {string} words such as "1 trial" */
const waits = (words) =>
  words ? html`· <b>${words} ${/^1 \S+$/.test(words) ? "waits" : "wait"}</b>` : nothing;
