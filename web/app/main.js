// Wiring only.
import { drawMasthead } from "./masthead.js";
import { startRouter } from "./router.js";
import { applyTheme, onSettings } from "./settings.js";
import { keepSyncing } from "./sync.js";
import { startWorker } from "./update.js";

applyTheme();
onSettings(() => applyTheme());
document.addEventListener("sync", () => drawMasthead());
startRouter().finally(() => {
  keepSyncing();
  startWorker();
});
