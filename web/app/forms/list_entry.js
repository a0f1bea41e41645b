// One entry of a list of the shop: reading it, writing the list back with it changed, new or taken out.
import { freshList, readList, saveList, WRITES } from "../sync/shop_lists.js";
import { notice } from "../shell/notices.js";
import { may } from "../shell/rights.js";
import { go } from "../shell/router.js";

/** The address of a form for a new tool; no code can be this. */
export const NEW = "+";

/**
 * Reading and writing one entry of a list.
 * @param {import("../sync/shop_lists.js").Kind} kind
 * @param {import("../shell/routes.js").Visit} visit
 */
export function listEntry(kind, visit) {
  const isNew = visit.params.tool === NEW;
  const code = isNew ? undefined : visit.params.tool;
  /** @type {import("../sync/shop_lists.js").CribList} */
  let list = { items: [], etag: null, kept: false };
  return {
    kind,
    isNew,
    code,
    /** @param {AbortSignal} signal */
    async read(signal) {
      // only for editing it has to be new
      list = await (may(WRITES[kind]) ? freshList : readList)(kind, signal);
      return list.items.find((item) => item.code === code);
    },
    /** @param {import("../sync/shop_lists.js").Fields|null} record */
    async write(record) {
      /** @type {import("../sync/shop_lists.js").Fields[]} */
      const others = list.items.filter((item) => item.code !== code);
      const place = list.items.findIndex((item) => item.code === code);
      const entry = record ? [{ ...record, code: code ?? record.code }] : [];
      await saveList(kind, others.toSpliced(place < 0 ? others.length : place, 0, ...entry), list.etag);
    },
    /** @param {import("../sync/shop_lists.js").Fields|null} record */
    done(record) {
      notice(record ? `${record.name || code} is saved.` : `${code} is taken out.`);
      go(`/shop/${kind}`);
    },
    /** The first code of its kind that no other has. */
    free() {
      const letter = kind[0].toUpperCase();
      for (let number = 1; ; number += 1) {
        if (!list.items.some((item) => item.code === `${letter}${number}`)) return `${letter}${number}`;
      }
    },
    /** @param {string} typed */
    taken: (typed) => isNew && list.items.some((item) => item.code === typed.trim()),
  };
}

/** @typedef {ReturnType<typeof listEntry>} ListEntry */
