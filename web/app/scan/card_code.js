// The check rule of card codes, so that a slip is told at once, without the server: seven
// characters of Crockford base 32, the last a weighted sum over the field of 32 elements. The
// same rule as server/flangebook/labels/codes.py; a test holds the two together.

const ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const LENGTH = 7;
const MODULUS = 0b100101; // x^5 + x^2 + 1

/**
 * @typedef {{code: string, whole: boolean, fault: string}} ReadCode fault is empty while nothing is wrong yet
 */

/**
 * As it is kept: capitals, O read as 0, I and L as 1, spaces and hyphens dropped.
 * @param {string} typed
 */
export function plainCode(typed) {
  return typed.toUpperCase().replace(/[\s-]/g, "").replaceAll("O", "0").replace(/[IL]/g, "1");
}

/**
 * Grouped for the eye: SHE-7FA1.
 * @param {string} code
 */
export function displayCode(code) {
  return code.length > 3 ? `${code.slice(0, 3)}-${code.slice(3)}` : code;
}

/**
 * Read what is typed so far.
 * @param {string} typed
 * @returns {ReadCode}
 */
export function readCode(typed) {
  const code = plainCode(typed);
  const strange = [...code].filter((character) => !ALPHABET.includes(character));
  if (strange.length) {
    const which =
      strange[0] === "U" ? "There is no U in a card code." : `“${strange[0]}” is not in any card code.`;
    return { code, whole: false, fault: `${which} Codes have digits and letters without I, L, O and U.` };
  }
  if (code.length > LENGTH) {
    return { code, whole: false, fault: `A card code has seven characters. This one has ${code.length}.` };
  }
  if (code.length < LENGTH) return { code, whole: false, fault: "" };
  if (checkCharacter(code.slice(0, -1)) !== code.at(-1)) {
    return {
      code,
      whole: false,
      fault:
        "The check character does not fit: one character is wrong, or two are swapped. Read the label again.",
    };
  }
  return { code, whole: true, fault: "" };
}

/**
 * A fresh code, so that a card sent twice is one card.
 * @returns {string}
 */
export function newCode() {
  const drawn = crypto.getRandomValues(new Uint8Array(LENGTH - 1));
  const body = Array.from(drawn, (byte) => ALPHABET[byte % ALPHABET.length]).join("");
  return body + checkCharacter(body);
}

/**
 * @param {string} body six characters of the alphabet
 * @returns {string}
 */
function checkCharacter(body) {
  let total = 0;
  let weight = 2;
  for (const character of body) {
    total ^= product(weight, ALPHABET.indexOf(character));
    weight = product(weight, 2);
  }
  return ALPHABET[total];
}

/**
 * Product of two elements of the field.
 * @param {number} a
 * @param {number} b
 * @returns {number}
 */
function product(a, b) {
  let result = 0;
  for (let left = b, shifted = a; left; left >>= 1) {
    if (left & 1) result ^= shifted;
    shifted <<= 1;
    if (shifted & 32) shifted ^= MODULUS;
  }
  return result;
}
