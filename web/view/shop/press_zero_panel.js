// Since when the press stands as it does: what results taught of its error holds until its zero is set anew,
// or another press comes.
import { html } from "/vendor/lit-html/lit-html.js";

/**
 * @param {() => void} depthSet the zero of its depth was set anew
 * @param {() => void} another it is another press
 */
export function zeroPanel(depthSet, another) {
  return html`<section class="panel" id="zero" data-test="zero">
    <h2>Zero set anew, or another press?</h2>
    <p>
      What results taught of this press’s error no longer holds then. It is measured again from the next piece
      on; until then each bend begins with a first hit, and the measured springback of the metals stays.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="depth-zero-set" @click=${depthSet}>
        The depth’s zero was set
      </button>
      <button type="button" class="button" data-test="another-press" @click=${another}>
        It is another press
      </button>
    </div>
  </section>`;
}
