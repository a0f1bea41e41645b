// Keeps the app's files on the device. Cards and results are in IndexedDB (app/sync/local_shop.js).
// /shell-files.js is written by the server from the files that are there: it sets SHELL to
// { version, files }, so a changed file makes a new version.
importScripts("/shell-files.js");

const PREFIX = "flangebook-shell-";
const CACHE = PREFIX + SHELL.version;

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches.open(CACHE).then(async (cache) => {
      // The QR reader is heavier than all the rest: it comes last, after what screens are made of.
      await keep(
        cache,
        SHELL.files.filter((file) => !heavy(file)),
      );
      await keep(cache, SHELL.files.filter(heavy));
    }),
  );
});

/** @param {string} file */
const heavy = (file) => file.endsWith(".wasm");

/**
 * @param {Cache} cache
 * @param {string[]} files
 */
async function keep(cache, files) {
  // "no-cache" asks the server again but does not fetch twice what the page has just loaded.
  await cache.addAll(files.map((file) => new Request(file, { cache: "no-cache" })));
}

self.addEventListener("activate", (event) => {
  event.waitUntil(dropOldShells().then(() => self.clients.claim()));
});

async function dropOldShells() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
}

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== location.origin || url.pathname.startsWith("/api/")) return;
  if (url.pathname === "/join") return; // a page of its own, for devices that have no app yet
  event.respondWith(fromShell(request));
});

/** @param {Request} request */
async function fromShell(request) {
  const cache = await caches.open(CACHE);
  const wanted = request.mode === "navigate" ? "/" : request;
  // The address as it stands is found at once; without its search, the browser goes through all it keeps.
  const kept = (await cache.match(wanted)) ?? (await cache.match(wanted, { ignoreSearch: true }));
  return kept ?? fetch(request);
}
