// Is the link that is handed on, copied, or scanned the very link of the answer?
import jsqr from 'jsqr';
import { PNG } from 'pngjs';
import { appUp, assert, test } from './harness.mjs';
import { address, exampleOf, figure, go, sheets } from './pages.mjs';

test('share: every example\'s code reads back as its link', async ({ site, open }) => {
  const { page } = await open({ scheme: 'dark' });
  await appUp(page);
  for (const sheet of sheets) {
    await go(page, exampleOf(sheet));
    await page.getByRole('button', { name: 'Link', exact: true }).click();
    const link = await page.locator('.link-text').inputValue();
    assert.equal(link, site.url + await address(page), sheet.id);
    assert.ok(link.length <= 300 + site.url.length, `${sheet.id}: ${link.length} characters`);
    assert.doesNotMatch(link, /[.),]$/);
    const { data, width, height } = PNG.sync.read(await page.locator('.panel .qr').screenshot());
    assert.equal(jsqr(new Uint8ClampedArray(data), width, height)?.data, link, sheet.id);
  }
});

test('share: copying gives the link and the answer as text', async ({ site, open }) => {
  const { page, context } = await open();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await appUp(page);
  await go(page, exampleOf(sheets[0]));
  await page.getByRole('button', { name: 'Link', exact: true }).click();
  const clip = () => page.evaluate(() => navigator.clipboard.readText());
  await page.getByRole('button', { name: 'Copy link' }).click();
  await page.getByText('Link copied.').waitFor();
  assert.equal(await clip(), site.url + await address(page));
  await page.getByRole('button', { name: 'Copy answer as text' }).click();
  await page.getByText('Answer copied.').waitFor();
  assert.ok((await clip()).includes(await figure(page)));
});
