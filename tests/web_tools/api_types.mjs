// Turns an OpenAPI document, read from the input, into types: every schema is one of the namespace Api.
// Not with openapi-typescript: that needs the programming interface of a TypeScript before the native one.
import { writeFileSync } from "node:fs";
import process from "node:process";
import { json } from "node:stream/consumers";
import { compile } from "json-schema-to-typescript";

const { schemas } = (await json(process.stdin)).components;
const definitions = JSON.parse(JSON.stringify(schemas), (_, value) => plain(value));
// What holds the schemas together is no type of the API; it is the first that is written.
const HOLDER = "AllSchemas";
const written = await compile({ title: HOLDER, type: "object", definitions }, HOLDER, {
  additionalProperties: false,
  bannerComment: "",
  format: false,
  unreachableDefinitions: true,
});
// Not interfaces: those cannot be read by a name that is only known when it runs, as some of the app is.
const types = written.replaceAll(/^export interface (\w+) \{/gm, "export type $1 = {");
writeFileSync(process.argv[2], `declare namespace Api {\n${types}}\n`);

/** @param {unknown} value of the document, as it reads best in types */
function plain(value) {
  if (!value || typeof value !== "object") return value;
  // With anything beside it, what is referred to would be written once more, as a type of its own.
  if ("$ref" in value) return { $ref: String(value.$ref).replace("#/components/schemas/", "#/definitions/") };
  if (!("maxItems" in value) || value.maxItems === value.minItems) return value;
  const { minItems: _, maxItems: __, ...list } = value; // of a list, only one of fixed length is a type
  return list;
}
