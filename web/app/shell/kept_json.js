// Small things that this device keeps as JSON. Where the browser's storage is blocked, full or damaged,
// nothing is kept and nothing fails.

/**
 * @param {string} key
 * @returns {unknown} null where nothing is kept, or nothing that can be read
 */
export function readKept(key) {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "null");
  } catch {
    return null;
  }
}

/**
 * @param {string} key
 * @param {unknown} value null: it is dropped
 * @returns {boolean} whether it is kept so
 */
export function writeKept(key, value) {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}
