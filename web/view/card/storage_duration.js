// How long a phone keeps what the app keeps on it.
import { html } from "/vendor/lit-html/lit-html.js";

export const keptHowLong = html`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop; what still waits to be sent does not, so open Flangebook in the shop’s network first. Some phones ask
  each time before the camera may be used.
</p>`;
