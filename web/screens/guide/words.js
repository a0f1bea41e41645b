// The trade's words, all of them, each with its sketch.
import { html } from "/vendor/lit-html/lit-html.js";
import { entry, WORDS } from "../../view/guide/words.js";

/** @param {import("../../app/shell/routes.js").Visit} visit */
export function show(visit) {
  visit.title("The trade’s words");
  visit.render(
    html`<p class="crumb"><a href="/guide">Guide</a></p>
      <h1>The trade’s words</h1>
      <div class="word-list" data-test="words">
        ${Object.entries(WORDS).map(
          ([key, { title }]) =>
            html`<section class="panel" id=${key}>
              <h2>${title}</h2>
              ${entry(key)}
            </section>`,
        )}
      </div>`,
  );
  visit.ready();
}
