// Keeps the page's files on the device, so that it opens without a network. A new version waits until the reader asks
// for it, or until no tab shows the old one.

/** Set by the build: every file of this version, and a sign of what they hold. */
declare const shippedFiles: { readonly version: string; readonly files: readonly string[] };

/** What of a worker's surroundings is used here; the page's types know none of it. */
interface WorkerSurroundings {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", listener: (event: { waitUntil(work: Promise<unknown>): void }) => void): void;
  addEventListener(type: "message", listener: (event: { readonly data: unknown }) => void): void;
  addEventListener(type: "fetch", listener: (event: { readonly request: Request; respondWith(answer: Promise<Response>): void }) => void): void;
}

const worker = self as unknown as WorkerSurroundings;
const prefix = "airledger files ";
const cacheName = prefix + shippedFiles.version;

worker.addEventListener("install", (event) => {
  const requests = shippedFiles.files.map((file) => new Request(file, { cache: "reload" }));
  event.waitUntil(caches.open(cacheName).then((cache) => cache.addAll(requests)));
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(dropOthers().then(() => worker.clients.claim()));
});

worker.addEventListener("message", ({ data }) => {
  if (data === "take over") void worker.skipWaiting();
});

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(worker.registration.scope)) event.respondWith(answerTo(request));
});

async function answerTo(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  const { scope } = worker.registration;
  const isPage = request.mode === "navigate" && [scope, `${scope}index.html`].includes(request.url.replace(/[?#].*$/s, ""));
  const wanted = isPage ? scope : request;
  return (await cache.match(wanted, { ignoreSearch: true, ignoreVary: true })) ?? fetch(request);
}

async function dropOthers(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(prefix) && name !== cacheName).map((name) => caches.delete(name)));
}
