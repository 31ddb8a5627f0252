// Does an answer print on one page?
import { appUp, assert, test } from './harness.mjs';
import { exampleOf, go, sheets } from './pages.mjs';

/** Pages of a PDF, counted by its page objects. */
const pages = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
// Lists of rows and long rankings may run on to another page, with their heads repeated.
const LONG = 2;

for (const format of ['A4', 'Letter']) {
  test(`print: every example on one page of ${format}`, async ({ open }) => {
    const { page } = await open();
    await appUp(page);
    const found = [];
    for (const sheet of sheets) {
      await go(page, exampleOf(sheet));
      // counted as printed: a folded table stands open on paper
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      await page.locator('.paper').waitFor({ state: 'attached' });
      const many = await page.locator('.ranked tbody tr, .cells tbody tr').count() > 12;
      const count = pages(await page.pdf({ format, printBackground: true, preferCSSPageSize: false }));
      if (count > (many ? LONG : 1)) found.push(`${sheet.id}: ${count} pages`);
      assert.ok(count > 0);
    }
    assert.deepEqual(found, []);
  }, { timeout: 120_000 });
}

test('print: the page holds the working, the sources and the link, and no buttons', async ({ open }) => {
  const { page } = await open();
  await appUp(page);
  await go(page, exampleOf(sheets[0]));
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  await page.locator('.paper .qr').waitFor();
  assert.equal(await page.locator('button:visible').count(), 0);
  assert.ok(await page.locator('.working').isVisible());
  assert.match(await page.locator('.paper-link').innerText(), new RegExp(`#/v1/${sheets[0].id}`));
});

// Firefox prints what stands when its `beforeprint` ends: a framework that draws a moment later comes too late.
test('print: by the browser\u2019s own command all of a question stands before the event ends', async ({ open }) => {
  const { page } = await open();
  await appUp(page);
  for (const sheet of sheets) {
    await go(page, exampleOf(sheet));
    await page.locator('.paper .qr').waitFor({ state: 'attached' });
    await page.locator('.working').waitFor({ state: 'attached' });
    const printed = await page.evaluate(() => {
      dispatchEvent(new Event('beforeprint'));
      const working = document.querySelector('.working');
      const all = { shown: working.checkVisibility(), sources: document.querySelectorAll('ul.sources li').length,
        link: document.querySelector('.paper-link').textContent };
      dispatchEvent(new Event('afterprint'));
      return all;
    });
    assert.ok(printed.shown && printed.sources > 0 && printed.link.includes(`#/v1/${sheet.id}`), `${sheet.id}: ${JSON.stringify(printed)}`);
  }
}, { timeout: 120_000 });

test('print: by the browser\u2019s own command the whole proving record stands before the event ends', async ({ open }) => {
  const { page } = await open({ link: '#/proving' });
  await appUp(page);
  await page.getByRole('button', { name: 'Begin a test' }).click();
  await page.waitForFunction(() => [...document.querySelectorAll('.proving details ul.list')].length >= 6);
  const printed = await page.evaluate(() => {
    dispatchEvent(new Event('beforeprint'));
    const lists = [...document.querySelectorAll('details ul.list')];
    const all = { shown: lists.filter((l) => l.checkVisibility()).length, lines: lists.reduce((n, l) => n + l.children.length, 0) };
    dispatchEvent(new Event('afterprint'));
    return all;
  });
  assert.ok(printed.shown >= 6 && printed.lines > 100, JSON.stringify(printed));
});
