// What a scanned square holds: the code of a card, a code with a slip, or something else.
import { displayCode, readCode } from "./card_code.js";

/**
 * @typedef {{kind: "card"|"slip"|"other", code: string, words: string}} Scanned code only of a card, words
 *   only of the others
 */

const LABEL_PATH = /^\/c\/([^/]+)\/?$/i;
const BARE_CODE = /^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i; // printed, not typed: no O for 0
const MOST_SHOWN = 40;

/**
 * The host is not looked at: a shop's address may have changed since its labels were printed.
 * @param {string} text
 * @returns {Scanned}
 */
export function readScan(text) {
  const address = webAddress(text.trim());
  const held = address ? LABEL_PATH.exec(address.pathname)?.[1] : BARE_CODE.exec(text.trim())?.[0];
  if (!held) return { kind: "other", code: "", words: whatElse(text, address) };
  const { code, whole, fault } = readCode(unescaped(held));
  if (whole) return { kind: "card", code, words: "" };
  const why = fault || `A card code has seven characters. This one has ${code.length}.`;
  return { kind: "slip", code: "", words: `${short(displayCode(code))} is not a card code. ${why}` };
}

/** @param {string} text */
function webAddress(text) {
  if (!URL.canParse(text)) return null;
  const address = new URL(text);
  return /^https?:$/.test(address.protocol) ? address : null;
}

/** @param {string} piece */
function unescaped(piece) {
  try {
    return decodeURIComponent(piece);
  } catch {
    return piece; // a broken percent sign: no code either way
  }
}

/**
 * @param {string} text
 * @param {URL|null} address
 */
function whatElse(text, address) {
  if (address) return `It leads to ${short(address.host)}, not to a card.`;
  return text.trim()
    ? `It says “${short(text.trim())}”, which is not a card code.`
    : "It holds nothing that can be read.";
}

/** @param {string} words */
const short = (words) => (words.length > MOST_SHOWN ? `${words.slice(0, MOST_SHOWN)}…` : words);
