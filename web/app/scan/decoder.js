// What finds QR codes in a picture: the browser's own reader where it has one, else the one in
// web/vendor, which is fetched when first needed and kept on the device like the rest of the app.

/** @typedef {{rawValue: string, boundingBox: DOMRectReadOnly}} Mark */
/** @typedef {{new (how: object): Detector, getSupportedFormats: () => Promise<string[]>}} OwnDetector */
/** @typedef {{detect: (video: HTMLVideoElement) => Promise<Mark[]>}} Detector */
/**
 * @typedef {{own: boolean, read: (video: HTMLVideoElement) => Promise<Mark[]>}} Decoder own: the browser's
 */

/** Neither the browser nor the app can read a square now. */
export class NoDecoder extends Error {}

const PROGRAM = "/vendor/zxing-wasm/zxing_reader.wasm";
const QR_ONLY = { formats: /** @type {["qr_code"]} */ (["qr_code"]) };

/** @type {Promise<Decoder>|undefined} */
let opened;

/**
 * @returns {Promise<Decoder>}
 * @throws {NoDecoder}
 */
export function openDecoder() {
  opened ??= open();
  opened.catch(() => (opened = undefined)); // the next call tries again
  return opened;
}

/** @returns {Promise<Decoder>} */
async function open() {
  const own = await browsersDetector();
  let detector = own ?? (await vendoredDetector());
  /** @type {Decoder} */
  const decoder = {
    own: Boolean(own),
    async read(video) {
      try {
        return await detector.detect(video);
      } catch (error) {
        // Some browsers have the name of a reader and no reader behind it.
        if (detector !== own) throw new NoDecoder(String(error));
        detector = await vendoredDetector();
        return decoder.read(video);
      }
    },
  };
  return decoder;
}

/** @returns {Promise<Detector|null>} */
async function browsersDetector() {
  const Own = /** @type {{BarcodeDetector?: OwnDetector}} */ (globalThis).BarcodeDetector;
  const formats = /** @type {string[]|undefined} */ (await Own?.getSupportedFormats().catch(() => []));
  return Own && formats?.includes("qr_code") ? new Own(QR_ONLY) : null;
}

/**
 * @returns {Promise<Detector>}
 * @throws {NoDecoder}
 */
async function vendoredDetector() {
  try {
    const { BarcodeDetector, prepareZXingModule } = await import("/vendor/barcode-detector/ponyfill.js");
    // Left alone it would ask a public server for the program.
    await prepareZXingModule({ overrides: { locateFile: () => PROGRAM }, fireImmediately: true });
    return new BarcodeDetector(QR_ONLY);
  } catch (error) {
    throw new NoDecoder(String(error));
  }
}
