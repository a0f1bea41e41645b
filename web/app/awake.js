// The display must not go dark while nobody touches it. Where the browser cannot, the machine's
// own settings have to.

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
