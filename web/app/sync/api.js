// Talking to the shop's server. Nothing else in the app calls fetch.
import { hearRole } from "../shell/rights.js";
import { fill } from "../shell/units.js";

/** @typedef {Omit<Api.Problem, "type"|"detail"> & {detail?: string}} ProblemBody */

/** The server answered, and said no. */
export class Problem extends Error {
  /** @param {ProblemBody} body */
  constructor(body) {
    const said = body.said ? fill(body.said.template, body.said.numbers) : "";
    super(said || body.detail || body.title);
    this.status = body.status;
    this.title = body.title;
    /** @type {Record<string, string[]>} */
    this.errors = body.errors ?? {};
    if (said) for (const path of Object.keys(this.errors)) this.errors[path] = [said];
    this.outline = body.outline ?? null;
  }
}

/** No answer: no network, or the server is not running. */
export class Unreachable extends Error {
  constructor() {
    super("The shop's server does not answer.");
  }
}

/**
 * What to say of something that failed.
 * @param {unknown} error
 */
export const messageOf = (error) => (error instanceof Error ? error.message : String(error));

/** @typedef {import("../../view/part/part_waiting.js").Progress} Progress */
/** @typedef {ReadableWritablePair<string, Uint8Array>} Decoding */
/**
 * @typedef {{status: number, body: unknown, etag: string|null, at: string}} Answer body: who asks knows which
 *   of the API's answers it is, and says so; at: the shop's clock
 */

/**
 * @param {string} method
 * @param {string} path below /api/v1
 * @param {{body?: unknown, etag?: string|null, seen?: string|null, signal?: AbortSignal,
 *   timeout?: number}} [options]
 *   etag: of what a change is made from; seen: of what is known already, answered by 304 while it stands
 * @returns {Promise<Answer>}
 */
export async function call(method, path, { body, etag, seen, signal, timeout = 8000 } = {}) {
  const type = body === undefined ? "" : "application/json";
  return ask(method, path, body === undefined ? undefined : JSON.stringify(body), {
    type,
    etag,
    seen,
    signal,
    timeout,
  });
}

/**
 * Send a file as it is.
 * @param {string} path
 * @param {Blob} file
 * @param {string} type
 * @param {AbortSignal} [signal]
 * @param {number} [timeout]
 * @returns {Promise<Answer>}
 */
export async function upload(path, file, type, signal, timeout = 20_000) {
  return ask("POST", path, file, { type, signal, timeout });
}

/**
 * @param {string} method
 * @param {string} path
 * @param {BodyInit|undefined} sent
 * @param {{type: string, etag?: string|null, seen?: string|null, signal?: AbortSignal, timeout: number}} how
 * @returns {Promise<Answer>}
 */
async function ask(method, path, sent, { type, etag, seen, signal, timeout }) {
  /** @type {Record<string, string>} */
  const headers = { Accept: "application/json" };
  if (type) headers["Content-Type"] = type;
  if (etag) headers["If-Match"] = etag;
  if (seen) headers["If-None-Match"] = seen;
  const limit = AbortSignal.timeout(timeout);
  const asked = performance.now();
  /** @type {Response} */
  let response;
  try {
    response = await fetch(`/api/v1${path}`, {
      method,
      headers,
      body: sent,
      signal: signal ? AbortSignal.any([signal, limit]) : limit,
      cache: "no-store",
    });
  } catch (error) {
    if (signal?.aborted) throw error;
    throw new Unreachable();
  }
  hearRole(response.headers.get("Flangebook-Role"));
  if (!response.ok && response.status !== 304) throw await problemOf(response, asked);
  const data = EMPTY.includes(response.status) ? null : await wholeOf(response, signal);
  return { status: response.status, body: data, etag: response.headers.get("ETag"), at: shopTime(response) };
}

/** Answers that have no body: done, and nothing new. */
const EMPTY = [204, 304];

/**
 * The whole of an answer. One that was torn off on the way, or that something else gave in the
 * shop's place (a hotspot's sign-in page), is no answer: what was asked may or may not have been done.
 * @param {Response} response
 * @param {AbortSignal} [signal] of who asked
 */
async function wholeOf(response, signal) {
  try {
    return await response.json();
  } catch (error) {
    if (signal?.aborted) throw error;
    throw new Unreachable();
  }
}

/**
 * What the shop's no says. A no that does not read like one of the shop's is not its own either.
 * @param {Response} response
 * @param {number} [asked] when, by performance.now
 */
async function problemOf(response, asked = Infinity) {
  const data = await response.json().catch(() => null);
  if (!data?.status) throw new Unreachable();
  const problem = new Problem(data);
  tellIfTurnedAway(problem, asked);
  return problem;
}

/**
 * Not a fault of the one call: the whole app has to know.
 * @param {Problem} problem
 * @param {number} asked
 */
function tellIfTurnedAway({ status, errors }, asked) {
  if (status === 401 && errors.pairing) {
    document.dispatchEvent(new CustomEvent("not-paired", { detail: { why: errors.pairing[0], asked } }));
  }
  if (status === 403 && errors.role) document.dispatchEvent(new CustomEvent("other-role"));
}

/**
 * Send a body, and be told line by line how far the answer is; the last line is the answer or the
 * problem. Aborting the signal hangs up, and the server stops working on it.
 * @param {string} path
 * @param {unknown} body
 * @param {{signal: AbortSignal, tell: (progress: Progress) => void, silence?: number}} how silence: most
 *   milliseconds without a line
 * @returns {Promise<{plan: Api.Plan}>} the last line
 */
export async function callInLines(path, body, { signal, tell, silence = 20_000 }) {
  const quiet = new AbortController();
  let timer = setTimeout(() => quiet.abort(), silence);
  const heard = () => {
    clearTimeout(timer);
    timer = setTimeout(() => quiet.abort(), silence);
  };
  try {
    const response = await fetch(`/api/v1${path}`, {
      method: "POST",
      headers: { Accept: "application/x-ndjson", "Content-Type": "application/json" },
      body: JSON.stringify(body),
      signal: AbortSignal.any([signal, quiet.signal]),
      cache: "no-store",
    });
    if (!response.ok || !response.body) throw await problemOf(response);
    for await (const line of linesOf(response.body, heard)) {
      const said = JSON.parse(line);
      if (said.problem) throw new Problem(said.problem);
      if (!said.progress) return said;
      tell(said.progress);
    }
    throw new Unreachable(); // cut off before the last line
  } catch (error) {
    if (signal.aborted || error instanceof Problem) throw error;
    throw new Unreachable();
  } finally {
    clearTimeout(timer);
  }
}

/**
 * Whole lines as they come.
 * @param {ReadableStream<Uint8Array>} stream
 * @param {() => void} heard
 * @returns {AsyncGenerator<string>}
 */
async function* linesOf(stream, heard) {
  const reader = stream.pipeThrough(/** @type {Decoding} */ (new TextDecoderStream())).getReader();
  let rest = "";
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    heard();
    const pieces = (rest + value).split("\n");
    rest = pieces.pop() ?? "";
    yield* pieces.filter(Boolean);
  }
  if (rest) yield rest;
}

/** @param {Response} response */
const shopTime = (response) => new Date(response.headers.get("Date") ?? Date.now()).toISOString();

/**
 * Fetch a file the server makes from a body, and hand it to the browser.
 * @param {string} path
 * @param {unknown} body
 * @param {string} name
 */
export async function download(path, body, name) {
  /** @type {Blob} */
  let file;
  try {
    const response = await fetch(`/api/v1${path}`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(20000),
      cache: "no-store",
    });
    if (!response.ok) throw await problemOf(response);
    file = await response.blob();
  } catch (error) {
    throw error instanceof Problem ? error : new Unreachable();
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
