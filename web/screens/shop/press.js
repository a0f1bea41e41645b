// The press, as on its plate.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { freshPress, readList, readPress, savePress, WRITES } from "../../app/sync/shop_lists.js";
import { fromDraft, specsOf, toDraft } from "../../app/forms/entry_form.js";
import { startEditing } from "../../app/forms/entry_editing.js";
import { clearTyping, keepTyping, keptTyping } from "../../app/forms/kept_typing.js";
import { notice } from "../../app/shell/notices.js";
import { asKept, outlinePreview } from "../../app/forms/outline_preview.js";
import { may } from "../../app/shell/rights.js";
import { go } from "../../app/shell/router.js";
import { restoredLine } from "../../view/common/restored.js";
import { conflictPanel } from "../../view/common/save_conflict.js";
import { onlyRead } from "../../view/shop/entry_parts.js";
import { askGauge, gaugePanel } from "../../view/shop/gauge_zero_panel.js";
import { vOf } from "../../view/part/named_tools_fields.js";
import { freshStrips, stripPanel } from "../../view/shop/crown_strips_panel.js";
import { pressForm } from "../../view/shop/tool_form.js";
import { zeroPanel } from "../../view/shop/press_zero_panel.js";
import { focusField, unhide } from "../../view/common/form_errors.js";
import { roomy } from "../../view/common/fold.js";
import { submitting } from "../../view/common/field.js";

/** @typedef {import("../../app/sync/shop_lists.js").Fields} Fields */

const ADDRESS = "/shop/press";

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  const writes = may(WRITES.press);
  const holders = (await readList("holders", visit.signal)).items;
  /** @type {[string, string][]} */
  const holderOptions = holders.map(({ code, name }) => [code, `${code}, ${name}`]);
  /** @param {"metals"|"dies"|"punches"} kind */
  const named = async (kind) =>
    (await readList(kind, visit.signal)).items
      .flatMap(vOf)
      .map(({ code, name }) => /** @type {[string, string]} */ ([code, name ? `${code}, ${name}` : code]));
  const strips = freshStrips();
  // Only who may write sees them; together, so that the screen waits for the slowest and not for their sum.
  const [gauge, metals, dies, punches] = writes
    ? await Promise.all([askGauge(visit.signal), named("metals"), named("dies"), named("punches")])
    : [null, [], [], []];
  /** @type {string|null} */
  let etag = null;
  /** When the zero of its depth was set: as it was read, as it is saved. */
  const zero = /** @type {{before: string|null, after: string|null}} */ ({ before: null, after: null });
  /** @type {import("../../view/shop/tool_form.js").Preview|null} */
  let preview = null;
  const edit = await startEditing(
    {
      async read(signal) {
        const fresh = await (writes ? freshPress : readPress)(signal);
        etag = fresh.etag;
        zero.before = fresh.press?.depth_zeroed_at ?? null;
        return fresh.press ?? undefined;
      },
      async write(record) {
        const saved = await savePress(/** @type {Fields} */ (record), etag);
        zero.after = saved.depth_zeroed_at;
      },
      blank: {},
      boxes: specsOf("press"),
      toDraft: (press) => toDraft("press", press),
      // When depth and gauge were zeroed has no box: it stays as it is kept.
      fromDraft: (draft, kept) => ({
        ...fromDraft("press", draft, kept),
        depth_zeroed_at: kept?.depth_zeroed_at ?? null,
        gauge_zeroed_at: kept?.gauge_zeroed_at ?? null,
      }),
      preview: !writes
        ? undefined
        : outlinePreview(
            "press",
            (fresh) => {
              preview = fresh;
              edit.show();
            },
            visit.signal,
          ),
      // What was typed goes on from the press as it was then: who changed it meanwhile is not overwritten.
      drafts: {
        begun() {
          const before = writes ? keptTyping(ADDRESS) : null;
          if (!before) return null;
          etag = before.etag;
          zero.before = before.kept?.depth_zeroed_at ?? null;
          return before;
        },
        keep: ({ draft, kept }) => keepTyping(ADDRESS, { draft, kept, etag }),
        clear: () => clearTyping(ADDRESS),
      },
      draw: () => edit && draw(),
      done() {
        notice(
          zero.after === zero.before
            ? "The press is saved."
            : "The press is saved. Its error is measured anew.",
        );
        go("/shop");
      },
    },
    visit.signal,
  );
  visit.title("The press");
  const room = roomy(); // as it opens: a phone that is turned while somebody types folds nothing
  if (!writes) preview = asKept(/** @type {Api.Press|undefined} */ (edit.state.kept));

  /**
   * The press is saved with the moment at which its zeros were set.
   * @param {...("depth_zeroed_at"|"gauge_zeroed_at")} which
   */
  const zeroSet = (...which) => {
    const moment = new Date().toISOString();
    for (const name of which) /** @type {Fields} */ (edit.state.kept)[name] = moment;
    edit.save();
  };

  /** @param {string} typed what three strips say */
  const takeDeflection = (typed) => {
    edit.change("deflection_mm", typed);
    focusField("deflection_mm");
  };

  function draw() {
    const { state, change, save } = edit;
    visit.render(
      html`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${state.kept?.name ?? "The press"}</h1>
        ${
          writes
            ? html`<p>
                ${
                  state.kept
                    ? "Take every figure from the press's own plate and manual."
                    : "No press yet. Name, force and bed length are enough, from its own plate."
                }
                What is not known may stay empty.
              </p>`
            : nothing
        }
        ${state.restored ? restoredLine(ADDRESS) : nothing}
        ${
          state.clash
            ? conflictPanel(state.clash, "press", { saveMine: save, takeTheirs: edit.takeTheirs })
            : nothing
        }
        ${gaugePanel(gauge, () => zeroSet("gauge_zeroed_at"))}
        <form novalidate @submit=${submitting(save)}>
          ${onlyRead(
            WRITES.press,
            pressForm(
              {
                draft: state.draft,
                change,
                wrong: state.wrong,
                preview,
                reader: edit.reader,
                options: { holder: holderOptions },
              },
              { kept: Boolean(state.kept), open: Boolean(state.kept) && room },
            ),
          )}
          <div role="alert">
            ${state.others.map((said) => html`<p class="wrong-line" data-test="not-saved">${said}</p>`)}
          </div>
          <div class="buttons">
            ${
              writes
                ? html`<button class="button next" data-test="save" ?disabled=${state.busy}>
                    ${state.busy ? "Saving…" : "Save the press"}
                  </button>`
                : nothing
            }
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${
          writes && state.kept
            ? stripPanel(strips, { metals, dies, punches }, { draw, take: takeDeflection })
            : nothing
        }
        ${
          writes && state.kept
            ? zeroPanel(
                () => zeroSet("depth_zeroed_at"),
                () => zeroSet("depth_zeroed_at", "gauge_zeroed_at"),
              )
            : nothing
        }`,
    );
    document.querySelectorAll(".workbench :is(.wrong, .fault)").forEach(unhide);
  }
  draw();
  visit.ready();
}
