// One press screen, kept in step with the shop: asks every second, slower while nobody answers, and moves
// it. What is sent and what is asked take turns, so that no answer is older than what was sent.
import { call, Problem, Unreachable } from "../sync/api.js";
import { settings } from "../shell/settings.js";
import { reached, sync } from "../sync/sync.js";

/**
 * @typedef {{code: string|null, step: number}} Place step: one past the card's last when it is done, 0 for an
 *   empty press screen
 */
/**
 * @typedef {{answers: boolean|null, gone: boolean, waits: boolean, late: boolean, refused: string}} Standing
 *   waits: a move is not sent yet; late: one was given up, since it had become old
 */
/**
 * @typedef {object} Hands
 * @property {(bench: Api.PressScreen, etag: string) => void} heard where others have put it
 * @property {(standing: Standing) => void} changed how the link stands
 * @property {(place: Place, etag: string, more: boolean) => void} [sent] a move of ours has arrived; more:
 *   another waits
 * @property {number} keepMs how long a move that could not be sent is worth sending
 */
/** @typedef {{move: (place: Place, how?: {whatever?: boolean}) => void, standing: () => Standing}} Link */

const EVERY_MS = 1000;
const SLOWEST_MS = 4000;
const ANSWER_MS = 3000;

/**
 * @param {string} name of the bench
 * @param {string|null} known the ETag it was last seen with
 * @param {Hands} hands
 * @param {AbortSignal} signal ends it
 * @returns {Link}
 */
export function pressScreenLink(name, known, hands, signal) {
  const path = `/press-screens/${encodeURIComponent(name)}`;
  /** @type {Standing} */
  let standing = { answers: null, gone: false, waits: false, late: false, refused: "" };
  /** @type {{place: Place, at: number, whatever: boolean}|null} */
  let pending = null;
  let etag = known;
  let failures = 0;
  let running = false;
  /** @type {number|undefined} */
  let timer;

  /** @param {Partial<Standing>} change */
  function stand(change) {
    const next = { ...standing, waits: pending !== null, ...change };
    const same = /** @type {(keyof Standing)[]} */ (Object.keys(next)).every(
      (key) => next[key] === standing[key],
    );
    standing = next;
    if (!same && !signal.aborted) hands.changed(standing);
  }

  async function round() {
    clearTimeout(timer);
    if (running || signal.aborted) return;
    running = true;
    try {
      await (pending && !tooOld() ? send() : look());
      answered();
    } catch (error) {
      if (!signal.aborted) unanswered(error);
    }
    running = false;
    const soon = pending !== null && failures === 0;
    if (!signal.aborted) {
      timer = setTimeout(round, soon ? 0 : Math.min(SLOWEST_MS, EVERY_MS * 1.5 ** failures));
    }
  }

  function tooOld() {
    if (!pending || Date.now() - pending.at <= hands.keepMs) return false;
    pending = null;
    stand({ late: true });
    return true;
  }

  async function send() {
    const sending = pending;
    if (!sending) return;
    const by = settings().name ? { by: settings().name } : {};
    try {
      const answer = await call("PUT", path, {
        body: { ...sending.place, ...by },
        etag: sending.whatever ? null : etag,
        signal,
        timeout: ANSWER_MS,
      });
      etag = answer.etag;
      if (pending === sending) pending = null;
      hands.sent?.(sending.place, etag ?? "", pending !== null);
      stand({ refused: "", late: false });
    } catch (error) {
      if (!(error instanceof Problem) || error.status >= 500) throw error;
      // It was moved in between, or the shop has that step no longer: where it stands is the shop's to say.
      pending = null;
      etag = null;
      stand({ refused: error.status === 412 ? "" : error.message });
      await look();
    }
  }

  async function look() {
    const before = pending;
    const { status, body, etag: now } = await call("GET", path, { seen: etag, signal, timeout: ANSWER_MS });
    if (signal.aborted || pending !== before || status === 304) return;
    etag = now;
    stand({ late: false });
    hands.heard(/** @type {Api.PressScreen} */ (body), now ?? "");
  }

  function answered() {
    const back = standing.answers === false;
    failures = 0;
    stand({ answers: true, gone: false });
    reached(true);
    if (back) sync();
  }

  /** @param {unknown} error */
  function unanswered(error) {
    failures += 1;
    if (error instanceof Problem && error.status === 404) stand({ answers: true, gone: true });
    else if (error instanceof Problem && error.status < 500) stand({ answers: true, refused: error.message });
    else stand({ answers: false });
    if (error instanceof Unreachable) reached(false, error);
    else if (!(error instanceof Problem)) console.error(error);
  }

  const wake = () => document.visibilityState === "visible" && round();
  document.addEventListener("visibilitychange", wake, { signal });
  addEventListener("online", wake, { signal });
  signal.addEventListener("abort", () => clearTimeout(timer));
  round();

  return {
    move(place, { whatever = false } = {}) {
      pending = { place, at: Date.now(), whatever };
      stand({ late: false, refused: "" });
      if (failures === 0) round();
    },
    standing: () => standing,
  };
}
