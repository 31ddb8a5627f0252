// Does a new build wait for the tap, keep what is half typed, and fail without harm?
import { appUp, assert, offlineReady, test } from './harness.mjs';
import { address, go, linkOf, sheets } from './pages.mjs';

const build = (page) => page.evaluate(() => document.querySelector('meta[name=build]').content);
/** Looks for a new build, and waits until its worker has installed or given up. */
const look = (page) => page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r.update()
  .then(() => new Promise((yes) => {
    const next = r.installing;
    if (!next) yes(); else next.addEventListener('statechange', () => yes());
  }))).catch(() => {}));

async function halfTyped(open) {
  const visit = await open();
  await appUp(visit.page);
  await offlineReady(visit.page);
  await go(visit.page, linkOf(sheets[0]));
  await visit.page.locator('input[data-pad]').first().pressSequentially('7/');
  return visit;
}

test('update: from build A to build B at the tap, with half-typed text', async ({ site, open }) => {
  const { page } = await halfTyped(open);
  const a = await build(page);
  const b = site.release();
  await look(page);
  const offer = page.getByText('A newer version is ready', { exact: false });
  await offer.waitFor();
  const input = page.locator('input[data-pad]').first();
  assert.equal(await build(page), a, 'nothing changes before the tap');
  assert.equal(await input.inputValue(), '7/');
  await page.reload();
  await appUp(page);
  assert.equal(await build(page), a, 'a reload does not take it either');
  assert.equal(await input.inputValue(), '7/');
  await offer.waitFor();
  await input.focus();
  await page.keyboard.press('End');
  await page.keyboard.type('1');
  await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Use it now' }).click()]);
  await appUp(page);
  assert.equal(await build(page), b);
  assert.equal(await input.inputValue(), '7/1');
  assert.match(await address(page), /7\/1/);
  await site.stop();
  await page.reload();
  await appUp(page);
  assert.equal(await build(page), b, 'the new build is whole');
  assert.deepEqual((await page.evaluate(() => caches.keys())).length, 1, 'the old one is gone');
});

test('update: a second tab keeps its text too', async ({ site, open }) => {
  const { page, context } = await halfTyped(open);
  const other = await context.newPage();
  await other.goto(site.url + linkOf(sheets[0]));
  await appUp(other);
  await other.locator('input[data-pad]').first().fill('3/');
  const b = site.release();
  await look(page);
  const use = page.getByRole('button', { name: 'Use it now' });
  await use.waitFor();
  await Promise.all([page.waitForEvent('load'), use.click()]);
  await appUp(page);
  assert.equal(await build(page), b);
  assert.equal(await other.locator('input[data-pad]').first().inputValue(), '3/');
  await other.reload();
  await appUp(other);
  assert.equal(await other.locator('input[data-pad]').first().inputValue(), '3/');
});

test('update: a half-done upload leaves the old build working', async ({ site, open }) => {
  const { page } = await halfTyped(open);
  const a = await build(page);
  site.release();
  site.lose(/icon-512/);
  await look(page);
  assert.equal(await page.getByText('A newer version').count(), 0);
  await site.stop();
  await page.reload();
  await appUp(page);
  assert.equal(await build(page), a);
  assert.equal(await page.locator('input[data-pad]').first().inputValue(), '7/');
});

test('update: a worker that cannot register does not stop the app', async ({ site, open }) => {
  site.lose(/^sw\.js/);
  const { page } = await open({ link: linkOf(sheets[0], sheets[0].examples[0]), errorsOk: true });
  await appUp(page);
  await page.locator('.answer .result .big').first().waitFor();
  await page.waitForFunction(() => document.documentElement.dataset.offline === 'failed');
  await go(page, '#/about');
  await page.getByText('Could not be stored').waitFor();
});
