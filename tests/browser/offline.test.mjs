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
