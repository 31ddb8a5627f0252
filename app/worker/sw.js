// Keeps one whole build for use without a network. The build step fills in the version and the list of files.
// A new build installs whole or not at all, waits beside the old one, and takes over at the user's tap
// (or when no page is open any more). Index and assets always come from the same cache, so from the same build.
// A file that the browser threw away is fetched again; the page may ask whether all are there.
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
  // The page hands over a port, and is told true where every file is kept.
  if (event.data === 'is-it-whole') event.waitUntil(refill().then((whole) => event.ports[0].postMessage(whole)));
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
    if (!(await ofThisBuild(await cache.match('./')))) throw new Error('the page is of another build');
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

async function ofThisBuild(page) {
  return (await page.clone().text()).includes(VERSION);
}

// Fetches what is missing; true where nothing is missing any more. A page of another build is no help.
async function refill() {
  const cache = await caches.open(CACHE);
  for (const file of FILES) {
    if (await cache.match(file)) continue;
    try {
      const got = await fetch(fresh(file));
      if (!got.ok || (file === './' && !(await ofThisBuild(got)))) return false;
      await cache.put(file, got);
    } catch (error) {
      return false;
    }
  }
  return true;
}

async function dropOld() {
  const names = await caches.keys();
  await Promise.all(names.filter((n) => n.startsWith(MINE) && n !== CACHE).map((n) => caches.delete(n)));
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  const home = new URL('./', self.location.href).href;
  const place = request.url.split(/[?#]/)[0];
  const opens = request.mode === 'navigate' && (place === home || place === `${home}index.html`);
  const held = (await cache.match(request)) || (opens && (await cache.match('./')));
  if (held) return held;
  try {
    return await fetch(request);
  } catch (error) {
    // Without a network a path that is not the app's leads to the app, whose own files then are found.
    if (request.mode === 'navigate' && !opens) return Response.redirect(home);
    throw error;
  }
}
