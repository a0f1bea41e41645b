// Makes web/made: all of the app's scripts as one and its stylesheets as one, so that a phone asks for two
// files instead of some hundred. The sources stay what they are, and the source map names them.
//
//     npm run made              make them again, after a change to what web/ holds
//     npm run made -- --check   say whether they are what the sources give
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const WEB = fileURLToPath(new URL("../../web/", import.meta.url));
// The QR reader is larger than the app and loaded when it is needed: it stays a file of its own.
const READER = "/vendor/barcode-detector/ponyfill.js";

const fromTheRoot = {
  name: "addresses that begin at the web folder",
  setup(builder) {
    builder.onResolve({ filter: /^\// }, (asked) => {
      if (asked.kind === "entry-point") return null;
      if (asked.path === READER) return { path: READER, external: true };
      return { path: path.join(WEB, asked.path) };
    });
  },
};

const made = await build({
  entryPoints: [
    { in: path.join(WEB, "app/main.js"), out: "app" },
    { in: path.join(WEB, "style/app.css"), out: "app" },
  ],
  outdir: path.join(WEB, "made"),
  absWorkingDir: WEB,
  bundle: true,
  charset: "utf8",
  format: "esm",
  legalComments: "eof",
  lineLimit: 110, // what changed is seen, and kept small, line by line
  minify: true,
  plugins: [fromTheRoot],
  sourcemap: true,
  sourcesContent: false,
  target: ["es2022", "safari16.4"],
  write: !process.argv.includes("--check"),
});
if (process.argv.includes("--check")) {
  const stale = made.outputFiles.filter((file) => kept(file.path) !== file.text);
  for (const file of stale) {
    console.log(`web/made/${path.basename(file.path)} is not what the sources in web/ give.`);
  }
  if (stale.length) console.log("Make it again: npm --prefix tests/web_tools run made");
  process.exitCode = stale.length ? 1 : 0;
}

/** @param {string} file what stands in it, whatever ends its lines; nothing where it is not there */
function kept(file) {
  return existsSync(file) ? readFileSync(file, "utf8").replaceAll("\r\n", "\n") : "";
}
