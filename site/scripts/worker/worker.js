/**
 * Keeps the checklist for when there is no line. The template of this file sets before it
 * KEPT, what is kept from the first visit on, RELEASE, which changes with the list, and `worker`.
 */

/** Longer than this nobody waits in a shop, if the page is here already. In milliseconds. */
const PATIENCE = 4000;

const scope = new URL(worker.registration.scope);
const family = `holdback ${scope.pathname} `;
const name = `${family}${RELEASE}`;

worker.addEventListener('install', (event) => {
  event.waitUntil(keepAll().then(() => worker.skipWaiting()));
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(dropOlder().then(() => worker.clients.claim()));
});

worker.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  const address = new URL(url);
  const ours = address.origin === scope.origin && address.pathname.startsWith(scope.pathname);
  if (method !== 'GET' || !ours) return;
  const path = address.pathname.slice(scope.pathname.length);
  if (path.startsWith('assets/')) event.respondWith(assetOf(event.request));
  else if (/(?:^|[/])$/.test(path)) event.respondWith(pageOf(event.request, event));
});

async function keepAll() {
  const cache = await caches.open(name);
  await cache.addAll(KEPT.map((path) => new Request(new URL(path, scope), { cache: 'no-cache' })));
}

/** What an older release kept goes at once: something may have been taken back. */
async function dropOlder() {
  const names = await caches.keys();
  const older = names.filter((each) => each.startsWith(family) && each !== name);
  await Promise.all(older.map((each) => caches.delete(each)));
}

/**
 * Styles, scripts and fonts go by the digest of what is in them: one that is here is the right one.
 *
 * @param {Request} request
 */
async function assetOf(request) {
  const cache = await caches.open(name);
  const kept = await cache.match(request);
  if (kept) return kept;
  const response = await fetch(request);
  if (response.ok) await cache.put(request, response.clone());
  return response;
}

/**
 * A page comes from the site while there is a line, so that what was taken back is not shown. One
 * that is not there any more is not kept any longer.
 *
 * @param {Request} request
 * @param {FetchEvent} event
 * @returns {Promise<Response>}
 */
async function pageOf(request, event) {
  const cache = await caches.open(name);
  const kept = await cache.match(request, { ignoreSearch: true });
  const fresh = freshPage(request, cache);
  if (!kept) return fresh;
  event.waitUntil(fresh.catch(() => null));
  const late = new Promise((/** @type {(response: Response) => void} */ resolve) => {
    setTimeout(() => resolve(kept), PATIENCE);
  });
  return Promise.race([fresh.catch(() => kept), late]);
}

/**
 * @param {Request} request
 * @param {Cache} cache
 */
async function freshPage(request, cache) {
  const response = await fetch(request, { cache: 'no-cache' });
  const { origin, pathname } = new URL(request.url);
  if (response.ok) await cache.put(origin + pathname, response.clone());
  else if (response.status === 404 || response.status === 410)
    await cache.delete(origin + pathname);
  return response;
}
