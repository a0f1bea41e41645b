// Where a figure comes from, in a word: model, handbook, your test bends.

const WORDS = ["model", "handbook", "your test bends"];

/**
 * The word before the colon of a source.
 * @param {string|undefined} source
 * @returns {string} "" where it says none of these
 */
export function originOf(source) {
  const word = (source ?? "").split(":")[0].trim();
  return WORDS.includes(word) ? word : "";
}

/** @type {[string, string][]} */
const FIGURES = [
  ["force_kn", "force"],
  ["springback_deg", "springback"],
  ["inside_radius_mm", "radius"],
  ["punch_depth_mm", "depth"],
  ["bend_allowance_mm", "allowance"],
];

/**
 * A step's figures by where they come from: "Model: force, radius. Your test bends: springback."
 * @param {Record<string, string|null>|undefined} origin
 * @returns {string} "" on a card made before this was kept
 */
export function originWords(origin) {
  if (!origin) return "";
  /** @type {Map<string, string[]>} */
  const by = new Map();
  for (const [name, called] of FIGURES) {
    const word = origin[name];
    if (word) by.set(word, [...(by.get(word) ?? []), called]);
  }
  return [...by]
    .map(([word, names]) => `${word[0].toUpperCase()}${word.slice(1)}: ${names.join(", ")}.`)
    .join(" ");
}
