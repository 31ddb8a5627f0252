// Does every sheet answer with the server gone?
import { appUp, assert, offlineReady, test } from './harness.mjs';
import { address, exampleOf, figure, go, sheets } from './pages.mjs';

test('offline: every sheet answers after one visit, from the list and by its example', async ({ site, open }) => {
  const { page } = await open();
  await appUp(page);
  await offlineReady(page);
  await site.stop();
  await page.reload();
  await appUp(page);
  for (const sheet of sheets) {
    await go(page, '#/');
    await page.locator('a.ask', { has: page.getByText(sheet.title, { exact: true }) }).click();
    await page.locator('h1', { hasText: sheet.title }).waitFor();
    const example = page.getByRole('button', { name: 'Show an example' });
    if (await example.count() > 0) await example.click();
    await page.locator('.answer .result .big').first().waitFor({ timeout: 5000 })
      .catch(() => assert.fail(`${sheet.id} gives no result for its example`));
  }
});

test('offline: an answer comes back from its link after a cold start', async ({ site, open }) => {
  const first = await open();
  await appUp(first.page);
  await offlineReady(first.page);
  await go(first.page, exampleOf(sheets[0]));
  const [link, shown] = [await address(first.page), await figure(first.page)];
  assert.notEqual(shown, '');
  await first.close();
  await site.stop();
  const again = await open({ profile: first.profile, link });
  await appUp(again.page);
  assert.equal(await figure(again.page), shown);
});

const mark = (page) => page.evaluate(() => document.documentElement.dataset.offline);
const marked = (page, want) => page.waitForFunction((w) => document.documentElement.dataset.offline === w, want, { timeout: 20_000 });
/** How many files are kept. */
const held = (page) => page.evaluate(async () => {
  let n = 0;
  for (const name of await caches.keys()) n += (await (await caches.open(name)).keys()).length;
  return n;
});

test('offline: files that the browser threw away are fetched again, and ready is said of a full copy only', async ({ site, open }) => {
  const { page } = await open({ errorsOk: true });
  await appUp(page);
  await offlineReady(page);
  const all = await held(page);
  assert.ok(all > 5, `${all} files`);
  await page.evaluate(async () => { for (const name of await caches.keys()) await caches.delete(name); });
  await page.reload();
  await appUp(page);
  await marked(page, 'ready');
  assert.equal(await held(page), all, 'every file is there again');
  await site.stop();
  await page.reload();
  await appUp(page);
  await marked(page, 'ready');
  // one file gone and no network to fetch it
  await page.evaluate(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const r of await cache.keys()) if (r.url.endsWith('icon-512.png')) await cache.delete(r);
    }
  });
  await page.reload();
  await appUp(page);
  await marked(page, 'holes');
  assert.equal(await mark(page), 'holes');
});

test('offline: a path that is not the app\u2019s leads to the app', async ({ site, open }) => {
  const { page } = await open({ errorsOk: true });
  await appUp(page);
  await offlineReady(page);
  await site.stop();
  await page.goto(`${site.url}nonsense/x`);
  await appUp(page);
  assert.equal(await page.evaluate(() => location.pathname), new URL(site.url).pathname);
});

test('offline: a first build that can\u2019t be stored whole is told', async ({ open }) => {
  const { page } = await open({ errorsOk: true,
    before: (p, context) => context.route(/icon-512\.png$/, (route) => route.fulfill({ status: 404, body: '' })) });
  await appUp(page);
  await marked(page, 'failed');
});
