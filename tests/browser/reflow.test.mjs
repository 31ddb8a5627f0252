// Is every page whole on a screen 320 px wide and with letters twice as large, without sideways scroll?
import { appUp, assert, test } from './harness.mjs';
import { exampleOf, faultyOf, go, linkOf, others, sheets, unfold } from './pages.mjs';

/** What stands beyond the right edge, unless its own box scrolls (a table may). */
const beyond = (page) => page.evaluate(() => {
  const wide = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= wide) return [];
  const inBox = (e) => { for (let p = e.parentElement; p; p = p.parentElement) if (/auto|scroll|hidden/.test(getComputedStyle(p).overflowX)) return true; return false; };
  const out = [...document.querySelectorAll('body *')].filter((e) => e.getBoundingClientRect().right > wide + 1 && !inBox(e));
  return [`${document.documentElement.scrollWidth} px wide: ${out.slice(-3).map((e) => e.outerHTML.slice(0, 100)).join(' | ')}`];
});

const links = [...others, '#/v1/nothing', ...sheets.flatMap((sheet) => [linkOf(sheet), exampleOf(sheet), faultyOf(sheet)])];

// The letters of the browser's own setting: 16 px as a rule.
for (const [what, width, letters] of [['320 px wide', 320, 16], ['letters twice as large on a phone', 390, 32]]) {
  test(`reflow: ${what}`, async ({ open }) => {
    const { page } = await open({ width, height: 800, args: [`--blink-settings=defaultFontSize=${letters}`], before: (p) => p.addInitScript(() => localStorage.setItem('benchslate.pad', 'own')) });
    await appUp(page);
    assert.equal(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize), `${letters}px`);
    const found = [];
    const look = async (where) => { for (const text of await beyond(page)) found.push(`${where} ${text}`); };
    for (const link of links) {
      await go(page, link);
      if (link.includes('?')) await unfold(page);
      await look(link);
    }
    await go(page, exampleOf(sheets[0]));
    await page.locator('input[data-pad]').first().focus();
    await look('key pad');
    await page.keyboard.press('Escape');
    for (const name of ['Link', 'Save']) {
      await page.getByRole('button', { name, exact: true }).click();
      await look(name);
    }
    await go(page, '#/kept');
    await look('kept');
    for (const sheet of sheets) {
      await go(page, exampleOf(sheet));
      await page.getByRole('button', { name: 'Read out', exact: true }).click();
      await page.locator('main.call').waitFor();
      await look(`call view of ${sheet.id}`);
      await page.goBack();
      await page.locator('main.call').waitFor({ state: 'detached' });
    }
    assert.deepEqual(found, []);
  }, { timeout: 120_000 });
}

test('reflow: nothing shifts while the app starts', async ({ site, open }) => {
  const { page } = await open({ goto: false });
  await page.addInitScript(() => {
    window.shift = 0;
    new PerformanceObserver((list) => { for (const e of list.getEntries()) if (!e.hadRecentInput) window.shift += e.value; })
      .observe({ type: 'layout-shift', buffered: true });
  });
  for (const link of ['', exampleOf(sheets[0])]) {
    await page.goto('about:blank');
    await page.goto(site.url + link);
    await appUp(page);
    await page.evaluate(() => new Promise((yes) => { setTimeout(yes, 300); }));
    assert.equal(await page.evaluate(() => window.shift), 0, link || 'home');
  }
});
