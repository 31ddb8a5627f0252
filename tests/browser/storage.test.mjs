// Does the app work on where storage is refused, full, damaged or from a newer version, say so, and overwrite nothing?
import { appUp, assert, test } from './harness.mjs';
import { exampleOf, go, sheets } from './pages.mjs';

const KEEP = exampleOf(sheets[0]);

/** Keeps an answer, changes the shop, and gives what the pages say of it. */
async function work(page) {
  await go(page, KEEP);
  await page.locator('.answer .result .big').first().waitFor();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('To the saved list').click();
  await page.locator('.kept a.ask').waitFor();
  const kept = await page.locator('main').innerText();
  await go(page, '#/shop');
  await page.getByLabel('millimeter', { exact: true }).check({ force: true });
  const shop = await page.locator('main').innerText();
  await go(page, '#/about');
  return { kept, shop, about: await page.locator('main').innerText() };
}

test('storage: refused', async ({ open }) => {
  const { page } = await open({ before: (p) => p.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });
  }) });
  await appUp(page);
  for (const [where, text] of Object.entries(await work(page))) assert.match(text, /stores nothing for this page/, where);
});

test('storage: full', async ({ open }) => {
  const { page } = await open({ before: (p) => p.addInitScript(() => {
    Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
  }) });
  await appUp(page);
  const said = await work(page);
  assert.match(said.kept, /no room left/);
  assert.match(said.shop, /no room left/);
});

for (const [what, texts, words] of [
  ['damaged', { 'my-shop': '{"record":"my-', kept: 'not even' }, /could not be read/],
  ['of another record', { 'my-shop': '{"record":"kept","version":1,"data":{}}', kept: '[]' }, /could not be read/],
  ['from a newer version', { 'my-shop': '{"record":"my-shop","version":99,"data":{"new":1}}',
    kept: '{"record":"kept","version":99,"data":{"new":1}}' }, /newer version/],
]) {
  test(`storage: ${what}`, async ({ open }) => {
    const { page } = await open({ before: (p) => p.addInitScript((all) => {
      if (localStorage.length > 0) return;
      for (const [name, text] of Object.entries(all)) localStorage.setItem(`benchslate.${name}`, text);
    }, texts) });
    await appUp(page);
    for (const [where, text] of Object.entries(await work(page))) assert.match(text, words, where);
    const left = () => page.evaluate((names) => Object.fromEntries(names.map((n) => [n, localStorage.getItem(`benchslate.${n}`)])), Object.keys(texts));
    assert.deepEqual(await left(), texts, 'nothing is written over');
    // Only the user starts afresh, and what stood there is put aside.
    await go(page, '#/kept');
    await page.getByRole('button', { name: 'Start over' }).click();
    await page.locator('.notice').waitFor({ state: 'detached' });
    assert.equal(await page.evaluate(() => localStorage.getItem('benchslate.kept.unread')), texts.kept);
    assert.equal(await page.locator('.kept a.ask').count(), 1);
    assert.equal((await left())['my-shop'], texts['my-shop']);
    await page.reload();
    await appUp(page);
    assert.equal(await page.locator('.kept a.ask').count(), 1, 'kept now');
  });
}

test('storage: what was kept comes back, and two tabs agree', async ({ site, open }) => {
  const { page, context } = await open();
  await appUp(page);
  const other = await context.newPage();
  await other.goto(`${site.url}#/kept`);
  await appUp(other);
  await work(page);
  await other.locator('.kept a.ask').waitFor();
  await page.reload();
  await appUp(page);
  await go(page, '#/shop');
  assert.ok(await page.getByLabel('millimeter', { exact: true }).isChecked());
});

test('storage: the first thing saved asks the browser to keep it, and About tells its answer', async ({ open }) => {
  const { page } = await open({ link: exampleOf(sheets[0]), before: (p) => p.addInitScript(() => {
    window.asked = 0;
    navigator.storage.persisted = () => Promise.resolve(false);
    navigator.storage.persist = () => { window.asked += 1; return Promise.resolve(true); };
  }) });
  await appUp(page);
  assert.equal(await page.evaluate(() => window.asked), 0, 'nothing is asked before something is saved');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForFunction(() => document.documentElement.dataset.lasting === 'yes');
  assert.equal(await page.evaluate(() => window.asked), 1);
  await go(page, '#/about');
  await page.getByText('has promised not to clear them').waitFor();
});
