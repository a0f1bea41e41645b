// The display must not go dark while nobody touches it. Where the browser cannot, the machine's
// own settings have to, and the screen says so.
import { html, nothing } from "/vendor/lit-html/lit-html.js";

export const mayGoDark = () =>
  "wakeLock" in navigator
    ? nothing
    : html`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`;

/** @param {AbortSignal} signal */
export function stayAwake(signal) {
  /** @type {WakeLockSentinel|undefined} */
  let lock;
  const ask = async () => {
    if (document.visibilityState !== "visible" || signal.aborted) return;
    lock = await navigator.wakeLock?.request("screen").catch(() => undefined); // refused on a low battery
    if (signal.aborted) lock?.release();
  };
  document.addEventListener("visibilitychange", ask, { signal });
  signal.addEventListener("abort", () => lock?.release());
  ask();
}
