// Looking through the camera's pictures one after the other, and which square in one is meant.
import { readScan } from "./scanned_text.js";

/** @typedef {import("./decoder.js").Mark} Mark */
/** @typedef {import("./scanned_text.js").Scanned} Scanned */

const REST_MS = 60; // leaves a slow phone time to draw

/**
 * Read picture after picture until the signal comes.
 * @param {HTMLVideoElement} video
 * @param {import("./decoder.js").Decoder} decoder
 * @param {(marks: Mark[]) => void | Promise<void>} seen
 * @param {AbortSignal} signal
 * @throws {import("./decoder.js").NoDecoder}
 */
export async function look(video, decoder, seen, signal) {
  while (!signal.aborted) {
    if (video.readyState >= video.HAVE_CURRENT_DATA) {
      const marks = await decoder.read(video);
      if (!signal.aborted) await seen(marks);
    }
    await new Promise((resume) => setTimeout(resume, REST_MS));
  }
}

/**
 * The square that is meant. A card's label goes before whatever else sticks on the bin. Of two
 * cards' labels the one in the frame; with both in it, neither: the wrong card is a wrong set-up.
 * @param {Mark[]} marks
 * @param {HTMLVideoElement} video
 * @param {Element} frame
 * @returns {Scanned | "several" | null}
 */
export function meant(marks, video, frame) {
  const shown = marks.filter((mark) => within(mark, video, video));
  const read = shown.map((mark) => ({ ...readScan(mark.rawValue), mark }));
  const cards = read.filter((one) => one.kind === "card");
  if (cards.length === 0) return read[0] ?? null;
  if (sameCode(cards)) return cards[0];
  const framed = cards.filter((one) => within(one.mark, video, frame));
  return framed.length > 0 && sameCode(framed) ? framed[0] : "several";
}

/** @param {Scanned[]} cards a large label carries its code twice */
const sameCode = (cards) => cards.every((card) => card.code === cards[0].code);

/**
 * Whether a square's middle lies within something on the screen: the video fills its box and is cut at the
 * sides.
 * @param {Mark} mark
 * @param {HTMLVideoElement} video
 * @param {Element} box
 */
function within({ boundingBox }, video, box) {
  const place = video.getBoundingClientRect();
  const scale = Math.max(place.width / video.videoWidth, place.height / video.videoHeight);
  const x =
    place.x + place.width / 2 + (boundingBox.x + boundingBox.width / 2 - video.videoWidth / 2) * scale;
  const y =
    place.y + place.height / 2 + (boundingBox.y + boundingBox.height / 2 - video.videoHeight / 2) * scale;
  const { left, right, top, bottom } = box.getBoundingClientRect();
  return x >= left && x <= right && y >= top && y <= bottom;
}
