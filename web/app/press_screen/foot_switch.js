// Next and back without a hand: a foot switch on USB is a keyboard with one or two keys.

const NEXT = new Set(["ArrowRight", "PageDown", " ", "Enter"]);
const BACK = new Set(["ArrowLeft", "PageUp", "Backspace"]);
const REST_MS = 300; // a switch bounces, and a heavy boot presses twice

/**
 * @param {{next: () => void, back: () => void}} turn
 * @param {AbortSignal} signal
 */
export function listenToPedal(turn, signal) {
  let last = -Infinity;
  /** @param {KeyboardEvent} event */
  const press = (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey || event.isComposing) return;
    const way = NEXT.has(event.key) ? turn.next : BACK.has(event.key) ? turn.back : null;
    if (!way || takesKey(event)) return;
    event.preventDefault(); // no scrolling, and no button under a key that is held down
    if (event.repeat || event.timeStamp - last < REST_MS) return;
    last = event.timeStamp;
    way();
  };
  addEventListener("keydown", press, { signal });
  // After a touch nothing keeps the focus: the next key is the pedal's, not that button's.
  addEventListener("click", (event) => event.detail > 0 && letGo(), { signal });
}

/**
 * What somebody reached with the Tab key takes the keys it lives by.
 * @param {KeyboardEvent} event
 */
function takesKey({ key, target, repeat }) {
  const element = /** @type {Element} */ (target);
  if (element.matches("input, select, textarea")) return true;
  return !repeat && (key === "Enter" || key === " ") && element.matches("button, a, summary");
}

function letGo() {
  const focused = /** @type {HTMLElement|null} */ (document.activeElement);
  if (focused?.matches("button, summary, input[type=range]")) focused.blur();
}
