// Does one get a right answer within a few taps, on a small phone, from what stands on the part?
import { appUp, assert, test } from './harness.mjs';
import { answer, figure } from './pages.mjs';

// Sizes by definition (7/16 of 25.4 mm), from ANSI B94.11M (No. 7 is .2010 in) and ASME B18.8.2 (2/0 pin: .1410 in).
const asked = [
  ['7/16', [/length/i, '0.4375', /11\.1125/]],
  ['1/4-20', [/tap/i, null, /0\.2010|#7/]],
  ['2/0', [/2\/0.*0\.1410/s, null, /0\.1410|length/]],
];

test('search: 7/16, 1/4-20 and 2/0 on a small phone', async ({ open }) => {
  const { page } = await open({ width: 360, height: 740, context: { hasTouch: true, isMobile: true } });
  await appUp(page);
  for (const [typed, [title, big, shows]] of asked) {
    await page.evaluate(() => { location.hash = '#/'; });
    const box = page.locator('#find');
    await box.tap();
    await box.fill(typed);
    const hits = page.locator('.list a.ask');
    await hits.first().waitFor();
    const names = await hits.allInnerTexts();
    const at = names.findIndex((name) => title.test(name));
    assert.ok(at >= 0 && at < 6, `${typed} finds ${names.slice(0, 6).join(' | ')}`);
    const box2 = await hits.nth(at).boundingBox();
    assert.ok(box2.y + box2.height < 740 && box2.height >= 44, `${typed}: the row is on the screen and large enough`);
    await hits.nth(at).tap();
    await page.locator('.answer').waitFor();
    if (big) assert.equal(await figure(page), big);
    assert.match(await answer(page), shows, `${typed}: ${names[at]}`);
  }
});

test('search: Enter opens the first, and the way back keeps what was typed', async ({ open }) => {
  const { page } = await open();
  await appUp(page);
  await page.locator('#find').fill('#7');
  await page.locator('#find').press('Enter');
  await page.locator('.answer .result .big').first().waitFor();
  await page.goBack();
  await page.locator('#find').waitFor();
  assert.equal(await page.locator('#find').inputValue(), '#7');
});
