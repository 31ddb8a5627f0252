// Keeps one whole build for use without a network. The build step fills in the version and the list of files.
// A new build installs whole or not at all, waits beside the old one, and takes over at the user's tap
// (or when no page is open any more). Index and assets always come from the same cache, so from the same build.
'use strict';
const VERSION = '__VERSION__';
const FILES = __FILES__;
const MINE = 'benchslate-';
const CACHE = MINE + VERSION;

self.addEventListener('install', (event) => {
  event.waitUntil(fill());
});

self.addEventListener('message', (event) => {
  if (event.data === 'use-new-version') self.skipWaiting();
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOld().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const request = event.request;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});

// Names with a hash in them may come from the browser's own cache; all else must be of this very build.
function fresh(file) {
  return new Request(file, { cache: /-[0-9a-f]{8,}[.\w]*$/.test(file) ? 'default' : 'reload' });
}

async function fill() {
  const cache = await caches.open(CACHE);
  try {
    await cache.addAll(FILES.map(fresh));
    // A host in the middle of an upload may serve another build's page beside these files.
    const page = await cache.match('./');
    if (!(await page.text()).includes(VERSION)) throw new Error('the page is of another build');
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

async function dropOld() {
  const names = await caches.keys();
  await Promise.all(names.filter((n) => n.startsWith(MINE) && n !== CACHE).map((n) => caches.delete(n)));
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  const held = (await cache.match(request)) || (request.mode === 'navigate' && (await cache.match('./')));
  return held || fetch(request);
}
