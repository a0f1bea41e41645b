// Two habits for which the linter has no rule.

import { readFileSync } from "node:fs";

// The linter keeps what it found of a file until the version of a plugin changes: this file's own text.
const meta = { name: "habits", version: readFileSync(new URL(import.meta.url), "utf8") };

/** @type {import("eslint").Rule.RuleModule} */
const columns = {
  meta: { type: "layout", schema: [{ type: "integer" }] },
  create: (context) => {
    const [most] = context.options;
    /** @param {import("eslint").Rule.Node} node the whole file, of JavaScript or of CSS */
    const check = (node) =>
      context.sourceCode.lines.forEach((text, index) => {
        const loc = { line: index + 1, column: most };
        const message = `The line is longer than ${most} columns.`;
        if (text.length > most) context.report({ node, loc, message });
      });
    return { Program: check, StyleSheet: check };
  },
};

/** @type {import("eslint").Rule.RuleModule} */
const tagsOnLines = {
  meta: { type: "layout", schema: [] },
  create: (context) => ({
    Program() {
      for (const comment of context.sourceCode.getAllComments()) {
        const lines = comment.value.startsWith("*") ? comment.value.slice(1).split("\n") : [];
        if (!lines.some((line) => /\S\s+@[a-z]/.test(line.replace(/^\s*\*/, "")))) continue;
        context.report({ loc: comment.loc, message: "Each tag of a comment begins a line of its own." });
      }
    },
  }),
};

export default { meta, rules: { columns, "tags-on-lines": tagsOnLines } };
