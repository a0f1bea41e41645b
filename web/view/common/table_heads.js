// The head of a plain table.
import { html } from "/vendor/lit-html/lit-html.js";

/** @param {string[]} names what stands in each column */
export const heads = (...names) =>
  html`<thead>
    <tr>
      ${names.map((name) => html`<th scope="col">${name}</th>`)}
    </tr>
  </thead>`;
