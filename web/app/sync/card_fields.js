// The fields of a card that may be changed without the shop: its title, its note, whether it is
// put away, and the settings that came from results, step by step.

/** @typedef {{title?: string, note?: string, archived?: boolean, settings?: Api.Setting[]}} Changes */
/** @typedef {{name: string, label: string}} Field */
/** @typedef {string|boolean|Api.Setting|undefined} Value of a title, a note, "in use", or one step */
/**
 * @typedef {{name: string, label: string, shop: Value, yours: Value, before: Value}} Row a field on which two
 *   sides differ
 */

/** @type {(keyof Changes)[]} */
export const FIELDS = ["title", "note", "archived", "settings"];

/**
 * Only what may be changed without the shop.
 * @param {Changes} from
 * @param {(keyof Changes)[]} [names]
 * @returns {Changes}
 */
export function fieldsOf(from, names = FIELDS) {
  return Object.fromEntries(
    names.filter((name) => from[name] !== undefined).map((name) => [name, from[name]]),
  );
}

/**
 * @param {unknown} a
 * @param {unknown} b
 */
export const same = (a, b) => JSON.stringify(plain(a)) === JSON.stringify(plain(b));

/**
 * Settings that differ only in their order or in what is left out are the same.
 * @param {unknown} value
 */
function plain(value) {
  if (!Array.isArray(value)) return value ?? null;
  return [...value]
    .sort((a, b) => a.step - b.step)
    .map(({ step, set_angle_deg, punch_depth_mm }) => [step, set_angle_deg ?? null, punch_depth_mm ?? null]);
}

/**
 * What of these changes would change a card.
 * @param {Changes} changes
 * @param {Changes} card
 * @returns {Changes}
 */
export const realChanges = (changes, card) =>
  fieldsOf(
    changes,
    FIELDS.filter((name) => name in changes && !same(changes[name], card[name])),
  );

/**
 * Whether a card still has what an edit's fields were on the screen.
 * @param {{before?: Changes}} entry
 * @param {Changes} card
 */
export const sameAsBefore = ({ before = {} }, card) =>
  /** @type {(keyof Changes)[]} */ (Object.keys(before)).every((name) => same(before[name], card[name]));

/** @type {["title"|"note"|"archived", string][]} */
const PLAIN = [
  ["title", "Title"],
  ["note", "Note"],
  ["archived", "In use"],
];

/**
 * Where an edit and the card as the shop has it differ: of settings, only the steps it changed.
 * @param {Changes} changes
 * @param {Changes} before
 * @param {Changes & {settings: Api.Setting[]}} card
 * @returns {Row[]}
 */
export function differing(changes, before, card) {
  /** @type {Row[]} */
  const rows = [];
  for (const [name, label] of PLAIN) {
    const [yours, was] = [changes[name], before[name]];
    if (yours !== undefined && !same(yours, card[name])) {
      rows.push({ name, label, shop: card[name], yours, before: was });
    }
  }
  if (!changes.settings) return rows;
  const [yours, was, shop] = [changes.settings, before.settings ?? [], card.settings].map(byStep);
  for (const step of new Set([...yours.keys(), ...was.keys()])) {
    const [mine, old, theirs] = [yours.get(step), was.get(step), shop.get(step)];
    if (sameSetting(mine, old) || sameSetting(mine, theirs)) continue;
    rows.push({
      name: `settings ${step}`,
      label: `Setting of step ${step}`,
      shop: theirs,
      yours: mine,
      before: old,
    });
  }
  return rows;
}

/**
 * @param {Api.Setting[]} settings
 * @returns {Map<number, Api.Setting>}
 */
const byStep = (settings) => new Map(settings.map((one) => [one.step, one]));

/**
 * @param {Api.Setting} [a]
 * @param {Api.Setting} [b]
 */
const sameSetting = (a, b) => same(a ? [a] : [], b ? [b] : []);

/**
 * The changes that bring a card from what the shop has to what was chosen, field by field.
 * @param {Row[]} rows
 * @param {Record<string, "shop"|"yours">} chosen
 * @param {Api.Card} card
 * @returns {Changes}
 */
export function merged(rows, chosen, card) {
  /** @type {Record<string, Value>} */
  const changes = {};
  const mine = rows.filter((row) => chosen[row.name] === "yours");
  for (const row of mine) if (!row.name.startsWith("settings ")) changes[row.name] = row.yours;
  const steps = mine.filter((row) => row.name.startsWith("settings "));
  if (!steps.length) return changes;
  const settings = byStep(card.settings);
  for (const row of steps) {
    const step = Number(row.name.split(" ")[1]);
    if (row.yours) settings.set(step, /** @type {Api.Setting} */ (row.yours));
    else settings.delete(step);
  }
  return { ...changes, settings: [...settings.values()] };
}
