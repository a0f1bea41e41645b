// The shop's lists and its press: read with their ETag, saved whole with If-Match, so that two
// people editing at once cannot undo each other unseen.
import { call, Unreachable } from "./api.js";
import { settings } from "../shell/settings.js";
import { keptShop } from "./local_shop.js";
import { syncStanding } from "./sync.js";

/** @typedef {{punches: Api.Punch, dies: Api.Die, holders: Api.Holder, metals: Api.Metal}} Kinds */
/** @typedef {keyof Kinds} Kind */
/** @typedef {Kinds[Kind]} Item a tool or a metal */
/**
 * @typedef {Kinds[Exclude<Kind, "metals">] & {segments_mm?: number[], openings?: Api.GivenOpening[]}} Tool
 */
/** @typedef {Record<string, unknown>} Fields of a tool, a metal or the press, by their names */
/**
 * @template {Kind} [K=Kind]
 * @typedef {{items: Kinds[K][], etag: string|null, kept: boolean}} CribList kept: as this device last saw it
 */
/** @typedef {{press: Api.Press|null, etag: string|null, kept: boolean}} PressRead */

/** @type {Record<Kind, {one: string, many: string, title: string}>} */
export const KINDS = {
  punches: { one: "punch", many: "punches", title: "Punches" },
  dies: { one: "die", many: "dies", title: "Dies" },
  holders: { one: "holder", many: "holders", title: "Holders" },
  metals: { one: "metal", many: "metals", title: "Metals" },
};

/**
 * The right to write each.
 * @type {Record<Kind|"press", string>}
 */
export const WRITES = {
  press: "shop.write_press",
  punches: "shop.write_punches",
  dies: "shop.write_dies",
  holders: "shop.write_holders",
  metals: "shop.write_metals",
};

/**
 * @param {string} word
 * @returns {Kind|undefined}
 */
export function kindOf(word) {
  return Object.hasOwn(KINDS, word) ? /** @type {Kind} */ (word) : undefined;
}

/**
 * From the server; when it is silent, as this device last saw it.
 * @template {Kind} K
 * @param {K} kind
 * @param {AbortSignal} [signal]
 * @returns {Promise<CribList<K>>}
 */
export async function readList(kind, signal) {
  try {
    return await freshList(kind, signal);
  } catch (error) {
    const shop = error instanceof Unreachable ? await keptShop() : undefined;
    if (!shop?.[kind]) throw error;
    return { items: /** @type {Kinds[K][]} */ (shop[kind]), etag: null, kept: true };
  }
}

/**
 * The shop as last seen; where nothing can be kept or read on this device, press and metals as it has them.
 * @returns {Promise<Partial<Api.Shop>|undefined>}
 */
export async function seenShop() {
  try {
    const kept = await keptShop();
    if (kept || !syncStanding().unkept) return kept;
  } catch {
    // silent or refused
  }
  try {
    const [{ press }, { items }] = await Promise.all([freshPress(), freshList("metals")]);
    return { press, metals: items };
  } catch {
    return undefined; // the shop is silent too
  }
}

/**
 * What a metal is called; a code that is not known stays a code.
 * @param {Api.Metal[]|undefined} metals
 * @param {string} code
 */
export const nameOfMetal = (metals, code) => metals?.find((metal) => metal.code === code)?.name ?? code;

/**
 * From the server or not at all: for editing.
 * @template {Kind} K
 * @param {K} kind
 * @param {AbortSignal} [signal]
 * @returns {Promise<CribList<K>>}
 */
export async function freshList(kind, signal) {
  const { body, etag } = /** @type {{body: {[L in Kind]: Kinds[L][]}, etag: string|null}} */ (
    await call("GET", `/${kind}`, { signal })
  );
  return { items: body[kind], etag, kept: false };
}

/**
 * @param {Kind} kind
 * @param {Fields[]} items
 * @param {string|null} etag
 */
export async function saveList(kind, items, etag) {
  await call("PUT", `/${kind}`, { body: { [kind]: items.map(asSent), by: settings().name }, etag });
}

/**
 * @param {AbortSignal} [signal]
 * @returns {Promise<PressRead>}
 */
export async function readPress(signal) {
  try {
    return await freshPress(signal);
  } catch (error) {
    const shop = error instanceof Unreachable ? await keptShop() : undefined;
    if (!shop) throw error;
    return { press: shop.press ?? null, etag: null, kept: true };
  }
}

/**
 * @param {AbortSignal} [signal]
 * @returns {Promise<PressRead>}
 */
export async function freshPress(signal) {
  const { body, etag } = /** @type {{body: Api.PressAnswer, etag: string|null}} */ (
    await call("GET", "/press", { signal })
  );
  return { press: body.press, etag, kept: false };
}

/**
 * @param {Fields} press
 * @param {string|null} etag
 * @returns {Promise<Api.Press>}
 */
export async function savePress(press, etag) {
  const body = { press: asSent(press), by: settings().name };
  const saved = await call("PUT", "/press", { body, etag });
  return /** @type {{press: Api.Press}} */ (saved.body).press;
}

/**
 * What the server works out by itself is not sent back.
 * @param {Fields} tool
 */
export function asSent({ outline_mm, outlines_mm, ...tool }) {
  return tool;
}

/**
 * @param {Fields|undefined} a
 * @param {Fields|undefined} b
 */
export function same(a, b) {
  return JSON.stringify(a && asSent(a)) === JSON.stringify(b && asSent(b));
}

/**
 * Where a tool lies, as written on the rack.
 * @param {{tray: string, slot: string}} tool
 */
export function placeWords({ tray, slot }) {
  if (!tray && !slot) return "place not given";
  return [tray && (/^\S{1,4}$/.test(tray) ? `Tray ${tray}` : tray), slot && `slot ${slot}`]
    .filter(Boolean)
    .join(", ");
}
