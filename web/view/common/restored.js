// A form that opens with what was typed before: said, and one tap to start over.
import { html } from "/vendor/lit-html/lit-html.js";
import { clearTyping, keepTyping, keptTyping } from "../../app/forms/kept_typing.js";
import { notice } from "../../app/shell/notices.js";
import { askBeforeLeaving, go } from "../../app/shell/router.js";

/** @param {string} address of the form's screen */
export const restoredLine = (address) =>
  html`<p class="restored" data-test="restored">
    What you typed before is back.
    <button type="button" class="link" data-test="start-over" @click=${() => startOver(address)}>
      Start over
    </button>
  </p>`;

/** @param {string} address */
function startOver(address) {
  const before = keptTyping(address);
  clearTyping(address);
  askBeforeLeaving(null);
  go(address, { replace: true });
  const back = () => {
    keepTyping(address, before);
    go(address, { replace: location.pathname === address });
  };
  notice("The form as it was before you typed.", { label: "Put mine back", act: back });
}
