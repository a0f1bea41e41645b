// One list of the shop: what there is, where it lies, in what condition, and what it bears.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { kindOf, KINDS, placeWords, readList, WRITES } from "../../app/sync/shop_lists.js";
import { forcePerLength, length, words } from "../../app/shell/units.js";
import { flag } from "../../view/common/finding.js";
import { offer } from "../../view/common/if_allowed.js";
import { empty } from "../../view/common/screen_states.js";
import { sharedFrame, smallOutline } from "../../drawing/tool_outline.js";

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  const kind = kindOf(visit.params.kind);
  if (!kind) {
    visit.title("Not here");
    visit.render(empty("No such list in the shop", html`<a href="/shop">The shop</a>`));
    return visit.ready();
  }
  const { one, title, many } = KINDS[kind];
  visit.title(title);
  const { items, kept } = await readList(kind, visit.signal);
  const frame = sharedFrame(items.map((item) => /** @type {Partial<Tool>} */ (item).outline_mm ?? []));
  visit.render(
    html`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${title}</h1>
        ${
          kept
            ? nothing
            : offer(
                WRITES[kind],
                html`<a class="button" href="/shop/${kind}/+" data-test="add">Add a ${one}</a>`,
              )
        }
      </div>
      ${
        kept
          ? html`<p data-test="kept">
              As this device last saw them.
              ${offer(WRITES[kind], "Changing anything needs the shop's server.")}
            </p>`
          : nothing
      }
      ${
        items.length
          ? html`<ul class="rows tool-rows" data-test="list">
              ${items.map((item) =>
                kind === "metals"
                  ? metalRow(/** @type {Api.Metal} */ (item))
                  : toolRow(kind, /** @type {Tool} */ (item), frame),
              )}
            </ul>`
          : empty(
              `No ${many} yet`,
              offer(
                WRITES[kind],
                "Add what lies in the rack: plans choose from it.",
                "The owner adds what lies in the rack.",
              ),
            )
      }`,
  );
  visit.ready();
}

/** @typedef {import("../../app/sync/shop_lists.js").Tool} Tool */

/**
 * @param {"punches"|"dies"|"holders"} kind
 * @param {Tool} tool
 * @param {[number, number, number, number]} frame
 */
function toolRow(kind, tool, frame) {
  return html`<li class="row" data-test="row-${tool.code}">
    <a href="/shop/${kind}/${encodeURIComponent(tool.code)}">
      <span class="thumb">${smallOutline(tool.outline_mm, frame)}</span>
      <span class="who"
        ><span class="lead">${tool.code}</span> <span>${tool.name}</span>${vs(tool)}${assumedMark(tool)}</span
      >
      <span class="fact"><span class="what">Place</span>${placeWords(tool)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${
          tool.rating_kn_per_m === null ? flag("unknown") : words(forcePerLength(tool.rating_kn_per_m))
        }</span
      >
      ${
        tool.segments_mm
          ? html`<span class="fact"
              ><span class="what">Pieces</span>${
                tool.segments_mm.length
                  ? html`${tool.segments_mm.length}, up to
                    ${words(length(longest(tool.segments_mm), { digits: 0 }))}`
                  : "not entered"
              }</span
            >`
          : nothing
      }
      <span class="fact"><span class="what">Condition</span>${conditionMark(tool)}</span>
    </a>
  </li>`;
}

/** @param {Tool} tool */
const assumedMark = (tool) =>
  /** @type {Partial<Api.Die>} */ (tool).assumed?.length ? flag("unknown", "Sizes assumed") : nothing;

/**
 * The V's of a block, each with its code to plan with.
 * @param {Tool} tool
 */
function vs({ shape, openings = [] }) {
  if (shape !== "multi_v") return nothing;
  return html`<span class="soft" data-test="block-vs"
    >${openings.map((one) => `${one.code}: V ${words(length(one.v_opening_mm))}`).join(", ")}</span
  >`;
}

/** @param {number[]} pieces */
const longest = (pieces) => Math.max(...pieces);

/** @param {Tool} tool */
function conditionMark({ condition, condition_note: note }) {
  if (condition === "good") return flag("ok", "Good");
  const mark =
    condition === "damaged"
      ? flag("stop", "Damaged")
      : condition === "worn"
        ? flag("caution", "Worn")
        : flag("unknown");
  return html`${mark}${note ? html` <span class="soft">${note}</span>` : nothing}`;
}

/** @param {Api.Metal} metal */
function metalRow(metal) {
  const { tensile_mpa: tensile } = metal;
  return html`<li class="row" data-test="row-${metal.code}">
    <a href="/shop/metals/${encodeURIComponent(metal.code)}">
      <span class="who"><span class="lead">${metal.name}</span> <span class="soft">${metal.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${tensile.low} to ${tensile.high} MPa</span>
      <span class="fact"><span class="what">Reliability</span>${tensile.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${metal.gauge_family ?? "none"}</span>
    </a>
  </li>`;
}
