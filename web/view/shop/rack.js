// The tools as they stand in the rack: outlines to one scale, each with its code, each a link.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { sharedFrame, smallOutline } from "../../drawing/tool_outline.js";

/**
 * @param {"punches"|"dies"|"holders"} kind
 * @param {import("../../app/sync/shop_lists.js").Tool[]} tools
 */
export function rack(kind, tools) {
  const frame = sharedFrame(tools.map((tool) => tool.outline_mm));
  return html`<ul class="rack">
    ${tools.map(
      (tool) =>
        html`<li>
          <a
            href="/shop/${kind}/${encodeURIComponent(tool.code)}"
            aria-label="${tool.code}, ${tool.name}${tool.rating_kn_per_m === null ? ", rating unknown" : ""}">
            ${smallOutline(tool.outline_mm, frame)}<span class="under"
              >${tool.code}${
                tool.rating_kn_per_m === null ? html`<span class="unknown-mark">?</span>` : nothing
              }</span
            >
          </a>
        </li>`,
    )}
  </ul>`;
}
