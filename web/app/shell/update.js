// The service worker's life: start it, and tell when a newer app waits. Never reloads by itself:
// somebody may be in the middle of a step.
import { notice } from "./notices.js";

export async function startWorker() {
  if (!("serviceWorker" in navigator)) return;
  try {
    const registration = await navigator.serviceWorker.register("/sw.js");
    if (registration.waiting) offer(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const fresh = registration.installing;
      fresh?.addEventListener("statechange", () => {
        if (fresh.state === "installed" && navigator.serviceWorker.controller) offer(fresh);
      });
    });
    await navigator.serviceWorker.ready;
    document.documentElement.dataset.offlineReady = "true";
    await navigator.storage?.persist?.();
  } catch (error) {
    console.warn("The app could not be kept on this device:", error);
  }
}

/** @param {ServiceWorker} fresh */
function offer(fresh) {
  notice("A newer Flangebook is here. It opens when you say so.", {
    label: "Open it now",
    act: () => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
      fresh.postMessage("take over");
    },
  });
}
