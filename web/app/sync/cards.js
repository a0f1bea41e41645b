// Opening a card: from this device at once, then from the shop in the background. A dead server
// never keeps anybody waiting for what is here already.
import { call, Problem, Unreachable } from "./api.js";
import { asShown } from "./card_edits.js";
import { inReach } from "../results/setting_limits.js";
import { StorageSilent } from "./storage.js";
import { keepCard, keptCard, keptList } from "./local_shop.js";
import { reached, syncStanding } from "./sync.js";

/** @typedef {import("./card_edits.js").CardHere} CardHere */
/** @typedef {{where: "device"|"shop"}} From where the card shown came from */

/**
 * Show a card with what waits here, and show it again when the shop has it otherwise.
 * @param {string} code
 * @param {(card: CardHere, from: From) => void | Promise<void>} show
 * @param {AbortSignal} signal
 * @throws {import("./api.js").Problem | import("./api.js").Unreachable} only when it is not on this device
 */
export async function openCard(code, show, signal) {
  /** @type {unknown} */
  let unread = null; // storage blocked or silent: the shop still has it
  const kept = await keptCard(code).catch((error) => void (unread = error));
  if (!kept) {
    await show(await asShown(await fetchUnread(code, signal, unread)), { where: "shop" });
    return;
  }
  await show(await asShown(kept), { where: "device" });
  refresh(kept, show, signal);
}

/**
 * @param {string} code
 * @param {AbortSignal} signal
 * @param {unknown} unread why it was not read from this device
 * @throws {StorageSilent} nobody can tell whether the card is on this device
 */
async function fetchUnread(code, signal, unread) {
  try {
    return await fetchCard(code, signal);
  } catch (error) {
    throw error instanceof Unreachable && unread instanceof StorageSilent ? unread : error;
  }
}

/**
 * A line of each card: of this device, or where it cannot be kept or read there, of the shop.
 * @returns {Promise<{list: import("./stored.js").Summary[], where: "device"|"shop"}>}
 */
export async function cardLines() {
  try {
    const list = await keptList();
    if (list.length || !syncStanding().unkept) return { list, where: "device" };
  } catch {
    // silent or refused
  }
  try {
    const { body } = /** @type {{body: Api.CardList}} */ (
      await call("GET", "/cards?archived=all&limit=200", { timeout: 4000 })
    );
    reached(true);
    // The shop's list leaves the notes out.
    return { list: body.cards.map((card) => ({ ...card, note: "" })), where: "shop" };
  } catch (error) {
    reached(false, error);
    return { list: [], where: "shop" };
  }
}

/**
 * @param {Api.Card} kept
 * @param {(card: CardHere, from: From) => void | Promise<void>} show
 * @param {AbortSignal} signal
 */
async function refresh(kept, show, signal) {
  try {
    const card = await fetchCard(kept.code, signal);
    if (!signal.aborted && card.etag !== kept.etag) await show(await asShown(card), { where: "shop" });
  } catch {
    // Silent, or it knows the card no longer: what is on the device stays open.
  }
}

/**
 * Whether there is such a card: on this device, in the shop, in neither; or silent, when nobody can tell.
 * @param {string} code
 * @param {AbortSignal} signal
 * @returns {Promise<"device"|"shop"|"nowhere"|"silent">}
 */
export async function whereIs(code, signal) {
  if (await keptCard(code).catch(() => undefined)) return "device";
  try {
    await fetchCard(code, signal);
    return "shop";
  } catch (error) {
    if (error instanceof Problem && error.status === 404) return "nowhere";
    if (error instanceof Unreachable) return "silent";
    throw error;
  }
}

/**
 * The card as the shop has it now; kept on this device.
 * @param {string} code
 * @param {AbortSignal} [signal]
 * @returns {Promise<Api.Card>}
 */
export async function fetchCard(code, signal) {
  try {
    const { body } = /** @type {{body: Api.Card}} */ (
      await call("GET", `/cards/${code}`, { signal, timeout: 4000 })
    );
    reached(true);
    return await keepCard(body).catch(() => body);
  } catch (error) {
    if (!signal?.aborted) reached(false, error);
    throw error;
  }
}

/**
 * Change a card: a new revision, kept here too.
 * @param {Api.Card} card as it was shown
 * @param {Record<string, unknown>} change
 * @returns {Promise<Api.Card>} the card after it
 * @throws {import("./api.js").Problem | import("./api.js").Unreachable}
 */
export async function changeCard(card, change) {
  const { body } = /** @type {{body: Api.Card}} */ (
    await call("PUT", `/cards/${card.code}`, {
      body: change,
      etag: card.etag,
      timeout: change.replan ? 60_000 : 8000,
    })
  );
  return keepCard(body).catch(() => body);
}

/**
 * The setting in force for a step: one that came from a result, or the plan's; two nulls where tools and
 * press do not reach it. firstHit: what the plan's setting comes out at where nobody measured a piece.
 * @param {Api.Card} card
 * @param {Api.Step} step
 */
export function settingOf(card, step) {
  const own = card.settings?.find((setting) => setting.step === step.number);
  const set = {
    set_angle_deg: own?.set_angle_deg ?? step.set_angle_deg,
    punch_depth_mm: own?.punch_depth_mm ?? step.punch_depth_mm,
  };
  const within = inReach(step, set);
  return {
    ...(within ? set : { set_angle_deg: null, punch_depth_mm: null }),
    firstHit: own || !within ? null : (step.first_hit ?? null),
    gauge_x_mm: own?.gauge_x_mm ?? step.gauge_x_mm,
    fromTrial: Boolean(own),
    reason: own?.reason ?? "",
  };
}
