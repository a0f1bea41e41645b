// What an empty shop opens with: a bend can be checked at once; units, press and tools, each when it suits.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { isSkipped, skip } from "../../app/shell/first_start.js";
import { changeSettings, settings } from "../../app/shell/settings.js";
import { choice } from "../common/field.js";

/** @typedef {import("../../app/shell/first_start.js").Step} Step */
/** @typedef {{step: Step, done: boolean}} Standing */

/**
 * @param {Standing[]} steps
 * @param {() => void} draw
 */
export function firstStepsPanel(steps, draw) {
  return html`<p>
      Check a bend at once: until your press and tools are entered, plain stand-in tools are counted with, and
      the answer says so.
    </p>
    <a class="button next wide first-bend" href="/bend" data-test="check-a-bend">Check a bend</a>
    <section aria-label="Set up the shop">
      <h2>Set up the shop</h2>
      <ol class="first-steps" data-test="first-steps">
        ${steps.map((standing) => stepItem(standing, draw))}
      </ol>
    </section>
    <nav class="home-new" aria-label="Start something">
      <a class="button" href="/part" data-test="new-part">New part</a>
      <a class="button" href="/scan">Scan a label</a>
    </nav>`;
}

/**
 * @param {Standing} standing
 * @param {() => void} draw
 */
function stepItem({ step, done }, draw) {
  const { title, words, body } = STEPS[step](draw);
  const open = !done && !isSkipped(step);
  const putOff = () => {
    skip(step);
    draw();
  };
  return html`<li class="panel" data-test="step-${step}" data-open=${String(open)}>
    <h3>${title} ${done ? html`<span class="soft">done</span>` : nothing}</h3>
    ${open ? html`<p>${words}</p>` : nothing} ${body}
    ${
      open
        ? html`<button type="button" class="button" data-test="later-${step}" @click=${putOff}>
            ${step === "units" ? "That is right" : "Later"}
          </button>`
        : nothing
    }
  </li>`;
}

/** @type {Record<Step, (draw: () => void) => {title: string, words: string, body: unknown}>} */
const STEPS = {
  units: (draw) => ({
    title: "Units",
    words: "Guessed from the language of this browser. Settings change them at any time.",
    body: choice({
      name: "units",
      label: "Units",
      value: settings().units,
      options: [
        ["mm", "mm and kN"],
        ["inch", "inch and tons"],
      ],
      change: (value) => {
        changeSettings({ units: value === "inch" ? "inch" : "mm" });
        draw();
      },
    }),
  }),
  press: () => ({
    title: "Press",
    words: "Its name, force and bed length are enough.",
    body: html`<a class="button" href="/shop/press" data-test="to-press">The press</a>`,
  }),
  tools: () => ({
    title: "Tools",
    words: "Pick a shape by its picture, type the sizes that are engraved on it.",
    body: html`<a class="button" href="/shop/dies/+" data-test="to-dies">Add a die</a>
      <a class="button" href="/shop/punches/+" data-test="to-punches">Add a punch</a>`,
  }),
};
