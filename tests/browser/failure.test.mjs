// What does one see where the app cannot start, and is the entry kept?
import { appUp, assert, test } from './harness.mjs';
import { exampleOf, figure, sheets } from './pages.mjs';

const link = exampleOf(sheets[0]);

test('failure: a module that cannot be loaded leaves the link and a way to reload', async ({ site, open }) => {
  let broken = true;
  const { page } = await open({ link, errorsOk: true, context: { serviceWorkers: 'block' },
    before: (p) => p.route(/\.wasm$/, (route) => (broken ? route.abort() : route.continue())) });
  await page.getByRole('heading', { name: 'Benchslate has stopped' }).waitFor();
  assert.equal(await page.locator('a.keep').getAttribute('href'), site.url + link);
  broken = false;
  await page.getByRole('button', { name: 'Reload', exact: true }).click();
  await appUp(page);
  await page.locator('.answer .result .big').first().waitFor();
  assert.notEqual(await figure(page), '');
});

test('failure: a script that cannot be loaded says so', async ({ open }) => {
  const { page } = await open({ link, errorsOk: true, context: { serviceWorkers: 'block' },
    before: (p) => p.route(/app-[0-9a-f]+\.js$/, (route) => route.abort()) });
  await page.getByRole('heading', { name: 'Benchslate has stopped' }).waitFor();
});

test('failure: a browser without WebAssembly is told', async ({ open }) => {
  const { page } = await open({ link, errorsOk: true, before: (p) => p.addInitScript(() => { delete window.WebAssembly; }) });
  await page.getByText('has no WebAssembly', { exact: false }).waitFor();
});

test('failure: without JavaScript the page says what to do', async ({ open }) => {
  const { page } = await open({ link, context: { javaScriptEnabled: false } });
  // The text locators pass over noscript.
  await page.locator('noscript strong').waitFor();
});

test('failure: a link of no question, and one that is damaged, open a page that says so', async ({ open }) => {
  const { page } = await open({ link: '#/v1/no-such-question?a=1' });
  await appUp(page);
  await page.getByRole('heading', { name: 'This link does not open' }).waitFor();
  for (const bad of ['#/v1/', `#/v1/${sheets[0].id}?%zz=%`, `#/v1/${sheets[0].id}?a=1&a=2`, `#/v1/${sheets[0].id}?${'x'.repeat(5000)}`, '#/%%%']) {
    await page.evaluate((to) => { location.hash = to; }, bad);
    await page.locator('main h1').first().waitFor();
  }
});

test('failure: a browser that is too old is told so in words', async ({ open }) => {
  const { page } = await open({ link, errorsOk: true, before: (p) => p.addInitScript(() => {
    // as an engine without reference types does
    WebAssembly.validate = () => false;
    const no = () => Promise.reject(new WebAssembly.CompileError('expected type form'));
    WebAssembly.instantiate = no;
    WebAssembly.instantiateStreaming = no;
  }) });
  await page.getByText('This browser is too old', { exact: false }).waitFor();
  assert.equal(await page.locator('a.keep').count(), 1, 'the entry is in the link');
});
