/**
 * Keeps the whole tool on the device: everything the build lists is fetched once, and served from there. A new version
 * waits until every tab of the old one is closed, so that nothing changes under a job that is open.
 */
interface Offline {
  readonly version: string;
  readonly files: readonly string[];
}

/** `__OFFLINE__` is put before this code by the build. */
const worker = self as unknown as ServiceWorkerGlobalScope & { readonly __OFFLINE__: Offline };
const PREFIX = 'kickset-';
const current = PREFIX + worker.__OFFLINE__.version;

async function keepAll(): Promise<void> {
  const cache = await caches.open(current);
  await cache.addAll(worker.__OFFLINE__.files.map((file) => new Request(file, { cache: 'reload' })));
}

async function dropOld(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(PREFIX) && name !== current).map((name) => caches.delete(name)),
  );
  await worker.clients.claim();
}

async function answerFor(request: Request): Promise<Response> {
  const page = request.mode === 'navigate';
  const cache = await caches.open(current);
  // A host may answer "Vary: Origin", and a script is asked for with an origin at one time and without at another.
  const kept = await cache.match(page ? new URL('index.html', worker.registration.scope).href : request, {
    ignoreVary: true,
  });
  return kept ?? fetch(request);
}

worker.addEventListener('install', (event) => event.waitUntil(keepAll()));
worker.addEventListener('activate', (event) => event.waitUntil(dropOld()));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== worker.location.origin) return;
  event.respondWith(answerFor(request));
});

export {};
