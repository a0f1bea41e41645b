// The rules for what is served from web/ and for the files of this folder; one linter for both languages.
// How lines are broken is the formatter's; the rules here are about what stands in them, and about what
// the formatter leaves alone: long words and comments.
import css from "@eslint/css";
import js from "@eslint/js";
import { defineConfig, globalIgnores } from "eslint/config";
import globals from "globals";
import habits from "./habits.mjs";

const COLUMNS = 110;

export default defineConfig([
  globalIgnores(["web/made", "web/vendor"]),
  { linterOptions: { reportUnusedDisableDirectives: "error" }, plugins: { habits } },
  { files: ["tests/**/*.mjs"], languageOptions: { globals: globals.nodeBuiltin } },
  { files: ["web/**/*.js"], languageOptions: { globals: globals.browser } },
  {
    files: ["web/sw.js"],
    languageOptions: { globals: { ...globals.serviceworker, SHELL: "readonly" }, sourceType: "script" },
  },
  {
    files: ["**/*.{js,mjs}"],
    plugins: { js },
    extends: ["js/recommended"],
    rules: {
      "habits/columns": ["error", COLUMNS],
      "habits/tags-on-lines": "error",
      curly: ["error", "multi-line", "consistent"],
      eqeqeq: "error",
      "no-else-return": "error",
      "no-implicit-coercion": "error",
      "no-lonely-if": "error",
      "no-shadow": "error",
      "no-unneeded-ternary": "error",
      "no-useless-rename": "error",
      "no-useless-return": "error",
      // What is taken out of an object to leave the rest of it is used by that; _ says "not this one".
      "no-unused-vars": [
        "error",
        { ignoreRestSiblings: true, destructuredArrayIgnorePattern: "^_$", varsIgnorePattern: "^_$" },
      ],
      "no-var": "error",
      "object-shorthand": "error",
      "prefer-arrow-callback": "error",
      "prefer-const": "error",
      "prefer-object-spread": "error",
      "prefer-template": "error",
    },
  },
  {
    files: ["web/**/*.css"],
    plugins: { css },
    language: "css/css",
    extends: ["css/recommended"],
    rules: {
      "habits/columns": ["error", COLUMNS],
      // The variables stand in tokens.css, and the linter sees one file at a time.
      "css/no-invalid-properties": ["error", { allowUnknownVariables: true }],
      // Refinements: a browser that does not know them skips them, and nothing is lost but looks.
      "css/use-baseline": [
        "error",
        {
          allowAtRules: ["page"],
          allowProperties: ["accent-color", "field-sizing", "paint-order", "resize", "text-wrap"],
          allowPropertyValues: { "break-after": ["avoid"], "font-family": ["ui-monospace"] },
          allowSelectors: ["marker"],
        },
      ],
    },
  },
]);
