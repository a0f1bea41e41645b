// The guide: its pages, and one of them. On the device, so it opens without network too.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { wordPicture } from "../../drawing/word_pictures.js";
import { way } from "../../view/common/if_allowed.js";
import { empty } from "../../view/common/screen_states.js";
import { PAGES } from "../../view/guide/pages.js";

/** @param {import("../../app/shell/routes.js").Visit} visit */
export function show(visit) {
  const { page } = visit.params;
  visit.title("Guide");
  visit.render(page ? onePage(page) : contents());
  visit.ready();
}

const contents = () =>
  html`<h1>Guide</h1>
    <ol class="guide-list" data-test="guide">
      ${PAGES.map(
        ({ key, title, picture }) =>
          html`<li>
            <a class="panel" href="/guide/${key}" data-test="guide-${key}"
              >${wordPicture(picture)}<b>${title}</b></a
            >
          </li>`,
      )}
    </ol>
    <p><a class="button" href="/words" data-test="to-words">The trade’s words</a></p>`;

/** @param {string} key */
function onePage(key) {
  const at = PAGES.findIndex((page) => page.key === key);
  if (at < 0) return empty("No such page of the guide", html`<a href="/guide">Guide</a>`);
  const { title, picture, steps, to } = PAGES[at];
  const next = PAGES[at + 1];
  return html`<p class="crumb"><a href="/guide">Guide</a></p>
    <h1>${title}</h1>
    <div class="guide-page" data-test="guide-page">
      <div>${wordPicture(picture)}</div>
      <div>
        <ol class="guide-steps">
          ${steps.map((step) => html`<li>${step}</li>`)}
        </ol>
        <div class="buttons">
          ${way(to[0], html`<a class="button next" href=${to[0]}>${to[1]}</a>`)}
          ${next ? html`<a class="button" href="/guide/${next.key}">Next: ${next.title}</a>` : nothing}
        </div>
      </div>
    </div>`;
}
