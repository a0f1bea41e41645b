// Wiring only.
import { listenForPairing, turnedAway } from "./shell/pairing.js";
import { drawMasthead } from "./shell/masthead.js";
import { showCurrent, showUnlessTyping, startRouter } from "./shell/router.js";
import { screens } from "./shell/screens.js";
import { applyTheme, onSettings } from "./shell/settings.js";
import { keepSyncing, sync } from "./sync/sync.js";
import { startWorker } from "./shell/update.js";

applyTheme();
onSettings(() => applyTheme());
document.addEventListener("sync", () => drawMasthead());
document.addEventListener("held", () => drawMasthead());
document.addEventListener("storage", (event) => {
  drawMasthead();
  if (/** @type {CustomEvent<{silent: boolean}>} */ (event).detail.silent) return;
  if (document.documentElement.dataset.ready === "failed") showCurrent();
  sync();
});
document.addEventListener("turned-away", () => {
  drawMasthead();
  if (document.documentElement.dataset.screen !== "pair") showCurrent(); // else what was typed there would go
});
document.addEventListener("rights", () => {
  if (turnedAway() === null && document.documentElement.dataset.screen !== "pair") showUnlessTyping();
});
listenForPairing();
startRouter(screens).finally(() => {
  keepSyncing();
  startWorker();
});
