// Talking to the shop's server. Nothing else in the app calls fetch.

/** @typedef {{title: string, status: number, detail?: string, errors?: Record<string, string[]>, outline?: import("../drawing/outline_fault.js").Fault}} ProblemBody */

/** The server answered, and said no. */
export class Problem extends Error {
  /** @param {ProblemBody} body */
  constructor(body) {
    super(body.detail || body.title);
    this.status = body.status;
    this.title = body.title;
    /** @type {Record<string, string[]>} */
    this.errors = body.errors ?? {};
    this.outline = body.outline ?? null;
  }
}

/** No answer: no network, or the server is not running. */
export class Unreachable extends Error {
  constructor() {
    super("The shop's server does not answer.");
  }
}

/** @typedef {{status: number, body: any, etag: string|null}} Answer */

/**
 * @param {string} method
 * @param {string} path below /api/v1
 * @param {{body?: unknown, etag?: string|null, seen?: string|null, signal?: AbortSignal, timeout?: number}} [options]
 *   etag: of what a change is made from; seen: of what is known already, answered by 304 while it stands
 * @returns {Promise<Answer>}
 */
export async function call(method, path, { body, etag, seen, signal, timeout = 8000 } = {}) {
  const type = body === undefined ? "" : "application/json";
  return ask(method, path, body === undefined ? undefined : JSON.stringify(body), { type, etag, seen, signal, timeout });
}

/** Send a file as it is. @param {string} path @param {Blob} file @param {string} type @param {AbortSignal} [signal] @param {number} [timeout] @returns {Promise<Answer>} */
export async function upload(path, file, type, signal, timeout = 20_000) {
  return ask("POST", path, file, { type, signal, timeout });
}

/**
 * @param {string} method @param {string} path @param {BodyInit|undefined} sent
 * @param {{type: string, etag?: string|null, seen?: string|null, signal?: AbortSignal, timeout: number}} how @returns {Promise<Answer>}
 */
async function ask(method, path, sent, { type, etag, seen, signal, timeout }) {
  /** @type {Record<string, string>} */
  const headers = { Accept: "application/json" };
  if (type) headers["Content-Type"] = type;
  if (etag) headers["If-Match"] = etag;
  if (seen) headers["If-None-Match"] = seen;
  const limit = AbortSignal.timeout(timeout);
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
  const data = await response.json().catch(() => null);
  if (!response.ok && response.status !== 304) {
    const problem = new Problem(data?.status ? data : { title: "The server's answer could not be read.", status: response.status });
    tellIfTurnedAway(problem);
    throw problem;
  }
  return { status: response.status, body: data, etag: response.headers.get("ETag") };
}

/** Not a fault of the one call: the whole app has to know. @param {Problem} problem */
function tellIfTurnedAway({ status, errors }) {
  if (status === 401 && errors.pairing) document.dispatchEvent(new CustomEvent("not-paired", { detail: errors.pairing[0] }));
}

/** Fetch a file the server makes from a body, and hand it to the browser. @param {string} path @param {unknown} body @param {string} name */
export async function download(path, body, name) {
  /** @type {Response} */
  let response;
  try {
    response = await fetch(`/api/v1${path}`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(20000),
      cache: "no-store",
    });
  } catch {
    throw new Unreachable();
  }
  if (!response.ok) {
    const problem = await response.json().catch(() => null);
    throw new Problem(problem?.status ? problem : { title: "The drawing could not be made.", status: response.status });
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(await response.blob());
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
