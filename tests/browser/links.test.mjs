// Does a link show the same figures on another device, with another shop?
import { appUp, assert, test } from './harness.mjs';
import { address, answer, exampleOf, figure, go, linkOf, sheets } from './pages.mjs';

const metric = { record: 'my-shop', version: 1, data: { system: 'Metric', items: [
  ['spindle-steps', '63 rpm;90 rpm;125 rpm;180 rpm;250 rpm;355 rpm;500 rpm'],
  ['feed-steps', '16 mm/min;25 mm/min;40 mm/min;63 mm/min;100 mm/min'],
  ['motor', '0.55 kw'], ['drills', 'metric']] } };
const withShop = (shop) => (page) => page.addInitScript(
  (text) => { if (!localStorage.getItem('benchslate.my-shop')) localStorage.setItem('benchslate.my-shop', text); },
  JSON.stringify(shop));

async function twoShops(open) {
  const here = await open();
  const there = await open({ before: withShop(metric) });
  for (const { page } of [here, there]) await appUp(page);
  await go(there.page, '#/shop');
  assert.equal(await there.page.locator('.notice').count(), 0, 'the other shop is read');
  assert.ok(await there.page.getByLabel('millimeter', { exact: true }).isChecked());
  return [here.page, there.page];
}

test('links: the examples show the same in another shop', async ({ open }) => {
  const [here, there] = await twoShops(open);
  for (const sheet of sheets) {
    for (const entry of sheet.examples) {
      await go(here, linkOf(sheet, entry));
      const link = await address(here);
      const shown = await answer(here);
      assert.notEqual(await figure(here), '', `${link} has a result`);
      await go(there, link);
      assert.equal(await answer(there), shown, link);
      assert.equal(await address(there), link, 'and keeps its link');
    }
  }
});

test('links: what another shop figured shows the same here, and says so', async ({ open }) => {
  const [here, there] = await twoShops(open);
  let told = 0;
  for (const sheet of sheets) {
    // The home page's own link carries the shop; the example is typed on top of it.
    await go(there, '#/');
    const home = await there.locator('a.ask', { has: there.getByText(sheet.title, { exact: true }) }).getAttribute('href');
    const link = home + exampleOf(sheet).slice(`#/v1/${sheet.id}`.length).replace('?', home.includes('?') ? '&' : '?');
    const keys = link.split('?')[1].split('&').map((pair) => pair.split('=')[0]);
    if (new Set(keys).size < keys.length) continue;
    await go(there, link);
    const sent = await address(there);
    await go(here, sent);
    assert.equal(await answer(here), await answer(there), sent);
    if (await here.getByText('Figured with the shop in the link.').count() === 0) continue;
    told += 1;
    const before = await answer(here);
    await here.getByRole('button', { name: 'Use my shop' }).click();
    await here.getByText('Figured with the shop in the link.').waitFor({ state: 'detached', timeout: 3000 });
    assert.notEqual(await address(here), sent, `${sheet.id}: the link changes with the shop`);
    if (told === 1) {
      // Back brings the sender's figures again.
      await here.goBack();
      await here.getByText('Figured with the shop in the link.').waitFor();
      assert.equal(await address(here), sent);
      assert.equal(await answer(here), before);
      await here.getByRole('button', { name: 'Use my shop' }).click();
      await here.getByText('Figured with the shop in the link.').waitFor({ state: 'detached', timeout: 3000 });
    }
    if (sheet.id === 'speed-feed') assert.notEqual(await answer(here), before, 'other steps, other answer');
  }
  assert.ok(told >= 2, `${told} sheets told of the sender's shop`);
});

test('links: back, forward and reload keep the entry', async ({ open }) => {
  const { page } = await open();
  await appUp(page);
  const [a, b] = [sheets[0], sheets.find((s) => s.id === 'tap-drill') ?? sheets[1]];
  const seen = [];
  for (const sheet of [a, b]) {
    await go(page, linkOf(sheet));
    await page.getByRole('button', { name: 'Show an example' }).click();
    await page.locator('.answer .result .big').first().waitFor();
    seen.push([await address(page), await figure(page)]);
  }
  const shows = async ([link, shown], how) => {
    await page.waitForFunction((to) => location.hash === to, link, { timeout: 3000 }).catch(() => {});
    assert.equal(await page.evaluate(() => location.hash), link, how);
    await page.locator('.answer .result .big').first().waitFor();
    assert.equal(await figure(page), shown, how);
  };
  await page.goBack();
  await shows(seen[0], 'back');
  await page.goForward();
  await shows(seen[1], 'forward');
  await page.reload();
  await appUp(page);
  await shows(seen[1], 'reload');
  // So is what was typed just now.
  await page.locator('input[data-pad]').first().fill('3/8-16');
  await page.waitForFunction(() => location.hash.includes('3/8-16'));
  await page.reload();
  await appUp(page);
  assert.match(await page.locator('input[data-pad]').first().inputValue(), /^3\/8-16/);
});

test('links: what a page still had to write is not written into the page that came after it', async ({ open }) => {
  const { page } = await open();
  await appUp(page);
  // within the 200 ms in which the address of the first page is still to be written, with the focus in the page
  for (const [from, to] of [['#/v1/length', '#/v1/length?length=1//2'], ['#/v1/length?length=1//2', '#/v1/length?length=7/16%20in']]) {
    await go(page, '#/');
    await go(page, from);
    await page.locator('#main').focus();
    await go(page, to);
    await page.waitForTimeout(500);
    assert.equal(await page.evaluate(() => location.hash), to);
  }
});
