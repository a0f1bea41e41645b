// One punch, die or holder, or a new one: its outline drawn as it is typed.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { kindOf, KINDS, WRITES } from "../../app/sync/shop_lists.js";
import { fromDraft, specsOf, toDraft } from "../../app/forms/entry_form.js";
import { startEditing } from "../../app/forms/entry_editing.js";
import { listEntry, NEW } from "../../app/forms/list_entry.js";
import { draftOfAssumed, SHAPES, withAssumed } from "../../app/forms/quick_tool.js";
import { asKept, outlinePreview } from "../../app/forms/outline_preview.js";
import { may } from "../../app/shell/rights.js";
import { conflictPanel } from "../../view/common/save_conflict.js";
import { codeBox, onlyRead, saveButtons } from "../../view/shop/entry_parts.js";
import { notYours } from "../../view/common/if_allowed.js";
import { empty } from "../../view/common/screen_states.js";
import { quickForm } from "../../view/shop/quick_tool.js";
import { toolForm } from "../../view/shop/tool_form.js";
import { showMetal } from "./metal.js";
import { submitting } from "../../view/common/field.js";

/**
 * What a new one starts from: nothing guessed that could be taken for a figure.
 * @type {Record<string, import("../../app/sync/shop_lists.js").Fields>}
 */
const BLANK = {
  punches: { shape: "straight", condition: "unknown", neck_relief_mm: null },
  dies: { shape: "single_v", condition: "unknown", up: 1 },
  holders: { shape: "block", condition: "unknown" },
};

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  const kind = kindOf(visit.params.kind);
  if (!kind) {
    visit.render(empty("No such list in the shop", html`<a href="/shop">The shop</a>`));
    return visit.ready();
  }
  if (visit.params.tool === NEW && !may(WRITES[kind])) {
    visit.title(`New ${KINDS[kind].one}`);
    visit.render(notYours(WRITES[kind]));
    return visit.ready();
  }
  return kind === "metals" ? showMetal(visit, listEntry(kind, visit)) : showTool(visit, kind);
}

/**
 * @param {import("../../app/shell/routes.js").Visit} visit
 * @param {"punches"|"dies"|"holders"} kind
 */
async function showTool(visit, kind) {
  const words = KINDS[kind];
  const job = listEntry(kind, visit);
  const writes = may(WRITES[kind]);
  /** @type {import("../../view/shop/tool_form.js").Preview|null} */
  let preview = null;
  /** The shape picked by its picture; none where every size is typed. */
  let shape = writes && job.isNew ? SHAPES[kind]?.[0] : undefined;
  const edit = await startEditing(
    {
      ...job,
      blank: BLANK[kind],
      boxes: [{ name: "code", label: "Code" }, ...specsOf(kind)],
      toDraft: (tool) => ({
        code: String(tool.code ?? (shape ? job.free() : "")),
        ...draftOfAssumed(kind, tool, toDraft(kind, tool)),
      }),
      fromDraft: (draft, kept) =>
        withAssumed(
          kind,
          { ...fromDraft(kind, draft, kept), code: draft.code.trim() },
          { draft, kept, shape },
        ),
      preview: !writes
        ? undefined
        : outlinePreview(
            /** @type {"punch"|"die"|"holder"} */ (words.one),
            (fresh) => {
              preview = fresh;
              edit.show();
            },
            visit.signal,
          ),
      draw: () => edit && draw(),
    },
    visit.signal,
  );
  if (!edit.state.kept && !job.isNew) {
    visit.title("Not in the crib");
    visit.render(
      empty(
        `No ${words.one} ${job.code} in the crib`,
        html`It may have been taken out. <a href="/shop/${kind}">${words.title}</a>`,
      ),
    );
    return visit.ready();
  }
  visit.title(job.isNew ? `New ${words.one}` : `${job.code}, ${words.one}`);
  if (!writes) {
    preview = asKept(/** @type {import("../../app/sync/shop_lists.js").Tool|undefined} */ (edit.state.kept));
  }

  /** @param {import("../../app/forms/quick_tool.js").Shape} picked */
  function pick(picked) {
    shape = picked;
    edit.change("shape", picked.shape);
  }

  function draw() {
    const { state, change } = edit;
    visit.render(
      html`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${kind}">${words.title}</a></p>
        <h1>
          ${job.isNew ? `New ${words.one}` : html`${job.code}<span class="soft"> ${state.kept?.name}</span>`}
        </h1>
        ${
          state.clash
            ? conflictPanel(state.clash, words.one, { saveMine: edit.save, takeTheirs: edit.takeTheirs })
            : nothing
        }
        <form novalidate @submit=${submitting(edit.save)}>
          ${onlyRead(
            WRITES[kind],
            shape && kind !== "holders"
              ? quickForm({
                  kind,
                  shape,
                  draft: state.draft,
                  change,
                  wrong: state.wrong,
                  preview,
                  first: codeBox(edit, job),
                  pick,
                  allSizes: () => {
                    shape = undefined;
                    draw();
                  },
                })
              : toolForm({
                  kind,
                  draft: state.draft,
                  change,
                  wrong: state.wrong,
                  preview,
                  reader: edit.reader,
                  first: job.isNew ? codeBox(edit, job) : nothing,
                }),
          )}
          ${saveButtons(edit, job, words.one)}
        </form>`,
    );
  }
  draw();
  visit.ready();
}
