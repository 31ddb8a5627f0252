// Does the site arrive as it should, and does it stay when the network goes?
import { Site, appUp, assert, built, offlineReady, shot, test } from './harness.mjs';
import { readFileSync } from 'node:fs';
import path from 'node:path';

test('serving: headers of every kind of file', async ({ site }) => {
  const policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'";
  const page = await fetch(site.url);
  assert.equal(page.headers.get('content-type'), 'text/html; charset=utf-8');
  assert.equal(page.headers.get('cache-control'), 'no-cache');
  assert.ok(page.headers.get('content-security-policy').startsWith(policy));
  assert.match(page.headers.get('content-security-policy'), /frame-ancestors 'none'/);
  assert.equal(page.headers.get('x-frame-options'), 'DENY');
  const html = await page.text();
  assert.ok(html.includes(`content="${policy}`), 'the page holds the policy too');
  assert.doesNotMatch(html, /<script>|<style|\sstyle=/);

  const wasm = /"\.\/(app-[0-9a-f]{16}\.wasm)"/.exec(html)[1];
  const module = await fetch(site.url + wasm, { headers: { 'accept-encoding': 'br' } });
  assert.equal(module.headers.get('content-type'), 'application/wasm');
  assert.equal(module.headers.get('content-encoding'), 'br');
  assert.match(module.headers.get('cache-control'), /immutable/);
  await module.arrayBuffer();

  const worker = await fetch(site.url + 'sw.js');
  assert.equal(worker.headers.get('cache-control'), 'no-cache');
  assert.equal((await fetch(site.url + 'nothing-here')).status, 404);
});

test('serving: no folder of the builder is in the files', async () => {
  const html = readFileSync(path.join(built, 'index.html'), 'utf8');
  const wasm = readFileSync(path.join(built, /"\.\/(app-[0-9a-f]{16}\.wasm)"/.exec(html)[1]), 'latin1');
  for (const folder of [process.env.HOME, path.resolve(built, '..')]) {
    assert.ok(!folder || folder === '/' || !wasm.includes(`${folder}/`), `the module names ${folder}`);
  }
});

test('serving: a first visit, then the server gone', async ({ site, open }) => {
  const { page } = await open();
  await appUp(page);
  await offlineReady(page);
  await site.stop();
  await page.reload();
  await appUp(page);
  await shot(page, 'home-offline');
});

test('serving: works below a path', async ({ tmp, open, site }) => {
  await site.stop();
  const below = new Site(built, path.join(tmp, 'below'), '/shop/slate/');
  await below.start();
  try {
    const { page } = await open({ goto: false });
    site.origin = below.origin;
    await page.goto(below.url);
    await appUp(page);
    await offlineReady(page);
    await below.stop();
    await page.reload();
    await appUp(page);
  } finally {
    await below.stop();
  }
});

test('serving: a release is taken only when asked, and a broken one not at all', async ({ site, open }) => {
  const { page } = await open();
  await appUp(page);
  await offlineReady(page);
  const first = await page.evaluate(() => caches.keys());

  // A half-done upload: the worker is new, a file is missing. The old version stays whole.
  site.release('cccccccccccccccc');
  site.lose(/icon-192/);
  await page.evaluate(() => navigator.serviceWorker.getRegistration()
    .then((r) => r.update().then(() => new Promise((yes) => {
      const w = r.installing;
      if (!w || w.state === 'redundant') yes(); else w.addEventListener('statechange', yes);
    }))).catch(() => {}));
  await page.reload();
  await appUp(page);
  assert.deepEqual(await page.evaluate(() => caches.keys()), first);
});
