/// <reference lib="webworker" />
// Runs beside the page and serves it when there is no network. The build puts in the names of its files.

declare const self: ServiceWorkerGlobalScope;

/** The files of this build, relative to this script, and a hash of what is in them. */
declare const __OFFLINE_BUILD__: { readonly hash: string; readonly files: readonly string[] };

const OURS = 'sectionary-';
const { hash, files } = __OFFLINE_BUILD__;
const CACHE = OURS + hash;
const PAGE = new URL('index.html', self.location.href).href;
const SCOPE = new URL('./', self.location.href).href;

/** All files or none: a build of which one file is missing is not taken, and the one before goes on. */
async function fetchAll(): Promise<void> {
  const cache = await caches.open(CACHE);
  await cache.addAll(files.map((file) => new Request(new URL(file, self.location.href), { cache: 'no-cache' })));
}

async function removeOlder(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
}

/** A file of this build from its cache, so that page and scripts are always of one build; else from the server. */
async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const asked = request.url.split(/[?#]/)[0];
  const isPage = request.mode === 'navigate' && (asked === SCOPE || asked === PAGE);
  return (await cache.match(isPage ? PAGE : asked)) ?? fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(fetchAll()));

self.addEventListener('activate', (event) => event.waitUntil(removeOlder().then(() => self.clients.claim())));

self.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method === 'GET' && url.startsWith(SCOPE)) event.respondWith(answer(event.request));
});

// The page asks for this when its user wants the new version.
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') event.waitUntil(self.skipWaiting());
});

export {};
