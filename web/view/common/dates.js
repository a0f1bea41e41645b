// Days and times as people say them.

/**
 * @param {string} iso
 * @returns {string} "14 Sep 2026"
 */
export function day(iso) {
  const date = new Date(iso);
  return Number.isNaN(date.valueOf())
    ? ""
    : date.toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric" });
}

/**
 * @param {string} iso
 * @returns {string} "14 Sep 2026, 08:20"
 */
export function moment(iso) {
  const date = new Date(iso);
  if (Number.isNaN(date.valueOf())) return "";
  return `${day(iso)}, ${date.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" })}`;
}

const NEAR_MS = 5 * 60_000;

/**
 * When something was typed. The shop's time stands first; the device's is shown as such where the
 * two differ: it was typed away from the shop, or the device's clock is wrong.
 * @param {{made_at?: string|null, received_at?: string}} one
 * @returns {string}
 */
export function madeAt({ made_at, received_at }) {
  if (!received_at) return moment(made_at ?? "");
  if (!made_at || Math.abs(Date.parse(made_at) - Date.parse(received_at)) < NEAR_MS) {
    return moment(received_at);
  }
  return `in the shop ${moment(received_at)}, made ${moment(made_at)} by the device’s clock`;
}

/**
 * Who wrote something, and the paired device that sent it.
 * @param {{by?: string | null, device?: string}} one
 */
export function whoSent({ by, device }) {
  return [by, device === by ? "" : device].filter(Boolean).join(", ");
}
