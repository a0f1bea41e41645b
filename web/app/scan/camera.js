// The camera: asked for, lit where it can be, given back as soon as nobody looks.

/**
 * @typedef {MediaTrackConstraintSet & {torch?: boolean}} Lamp a track's, which the language does not know yet
 */
/** @typedef {"insecure"|"none"|"refused"|"busy"} CameraFault */

/** There is no picture, and why. */
export class NoCamera extends Error {
  /** @param {CameraFault} fault */
  constructor(fault) {
    super(fault);
    this.fault = fault;
  }
}

// The one on the back. As fine as it gives: a label is small, and a glove does not come near.
const WANTED = {
  audio: false,
  video: { facingMode: { ideal: "environment" }, width: { ideal: 1920 }, height: { ideal: 1080 } },
};

/** @type {Record<string, CameraFault>} */
const FAULTS = {
  NotAllowedError: "refused",
  SecurityError: "refused",
  NotFoundError: "none",
  OverconstrainedError: "none",
};

/**
 * @param {AbortSignal} signal stops the camera
 * @param {() => void} lost told when the camera goes away by itself
 * @returns {Promise<MediaStream>}
 * @throws {NoCamera}
 */
export async function openCamera(signal, lost) {
  // Browsers leave mediaDevices out of pages that came over plain http.
  if (!navigator.mediaDevices?.getUserMedia) throw new NoCamera(isSecureContext ? "none" : "insecure");
  /** @type {MediaStream} */
  let stream;
  try {
    stream = await navigator.mediaDevices.getUserMedia(WANTED);
  } catch (error) {
    throw new NoCamera(FAULTS[/** @type {Error} */ (error).name] ?? "busy");
  }
  const stop = () => stream.getTracks().forEach((track) => track.stop());
  if (signal.aborted) stop(); // left while the browser was still asking
  signal.addEventListener("abort", stop);
  stream.getVideoTracks()[0]?.addEventListener("ended", lost); // not told of our own stop
  return stream;
}

/**
 * Whether this camera has a lamp that can be switched.
 * @param {MediaStream} stream
 */
export function hasLamp(stream) {
  const can = /** @type {{torch?: boolean}|undefined} */ (stream.getVideoTracks()[0]?.getCapabilities?.());
  return Boolean(can?.torch);
}

/**
 * @param {MediaStream} stream
 * @param {boolean} on
 * @returns {Promise<void>}
 */
export async function switchLamp(stream, on) {
  await stream.getVideoTracks()[0].applyConstraints({ advanced: [/** @type {Lamp} */ ({ torch: on })] });
}
