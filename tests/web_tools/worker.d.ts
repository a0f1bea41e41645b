// What the service worker's scope has beyond that of a plain worker, and what /shell-files.js sets.
declare const SHELL: { version: string; files: string[] };

interface WorkerGlobalScopeEventMap {
  install: ExtendableEvent;
  activate: ExtendableEvent;
  fetch: FetchEvent;
  message: ExtendableMessageEvent;
}

interface WorkerGlobalScope {
  readonly clients: Clients;
  skipWaiting(): Promise<void>;
}
