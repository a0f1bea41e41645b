// What the scan screen says where there is no picture: what is missing, why, and what works instead.
import { html, nothing } from "/vendor/lit-html/lit-html.js";

/** @typedef {import("../../app/scan/camera.js").CameraFault | "no-decoder"} ScanFault */

const OWN_CAMERA = html`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`;

/** @type {Record<ScanFault, {title: string, words: unknown, again: boolean}>} */
const FAULTS = {
  insecure: {
    title: "This page gets no camera",
    words: html`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${OWN_CAMERA}`,
    again: false,
  },
  none: {
    title: "No camera found",
    words: html`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,
    again: true,
  },
  refused: {
    title: "The camera is not allowed",
    words: html`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${OWN_CAMERA}`,
    again: true,
  },
  busy: {
    title: "The camera does not start",
    words: html`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,
    again: true,
  },
  "no-decoder": {
    title: "The reader could not be loaded",
    words: html`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${OWN_CAMERA}`,
    again: true,
  },
};

/**
 * @param {ScanFault} fault
 * @param {() => void} again
 */
export function scanFault(fault, again) {
  const { title, words, again: worth } = FAULTS[fault];
  return html`<section class="panel scan-fault" data-test="scan-fault" data-fault=${fault}>
    <h2>${title}</h2>
    ${words}
    ${
      worth
        ? html`<button class="button wide" type="button" data-test="again" @click=${again}>Try again</button>`
        : nothing
    }
  </section>`;
}
