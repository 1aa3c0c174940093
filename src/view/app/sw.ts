/**
 * Keeps the whole tool on the device: everything the build lists is fetched once, and served from there. A new version
 * waits until every tab of the old one is closed, so that nothing changes under a job that is open.
 */
const worker = self as unknown as ServiceWorkerGlobalScope;

interface OfflineList {
  readonly version: string;
  readonly files: readonly string[];
}

const PREFIX = 'kickset-';

async function listed(): Promise<OfflineList> {
  const answer = await fetch('offline.json', { cache: 'no-store' });
  if (!answer.ok) throw new Error(`offline.json: ${answer.status}`);
  return (await answer.json()) as OfflineList;
}

async function keepAll(): Promise<void> {
  const { version, files } = await listed();
  const cache = await caches.open(PREFIX + version);
  await cache.addAll(files.map((file) => new Request(file, { cache: 'reload' })));
  const shelf = await caches.open(`${PREFIX}now`);
  await shelf.put('version', new Response(version));
}

/** Everything but the version that is in use now goes. */
async function dropOld(): Promise<void> {
  const shelf = await caches.open(`${PREFIX}now`);
  const version = await (await shelf.match('version'))?.text();
  const names = (await caches.keys()).filter((name) => name.startsWith(PREFIX));
  await Promise.all(
    names.filter((name) => name !== `${PREFIX}now` && name !== PREFIX + version).map((name) => caches.delete(name)),
  );
}

async function answerFor(request: Request): Promise<Response> {
  const page = request.mode === 'navigate';
  const kept = await caches.match(page ? new URL('./index.html', worker.registration.scope).href : request, {
    ignoreSearch: page,
  });
  return kept ?? fetch(request);
}

worker.addEventListener('install', (event) => event.waitUntil(keepAll()));
worker.addEventListener('activate', (event) => event.waitUntil(dropOld().then(() => worker.clients.claim())));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  event.respondWith(answerFor(request));
});
