// Does what was typed stay what was typed: through results in another system, a reload at once, a second tab in the same
// instant, clearing, and Back?
import { appUp, assert, test } from './harness.mjs';
import { go } from './pages.mjs';

test('state: results in another system read nothing again', async ({ open }) => {
  const { page } = await open({ link: '#/v1/bolt-torque?thread=3/8-16&grade=sae-5&from=torque&torque=25%20ft-lb' });
  await appUp(page);
  const torque = page.locator('#f-torque');
  await torque.waitFor();
  await page.locator('.padtoggle').getByText('mm', { exact: true }).click();
  await page.waitForFunction(() => location.hash.includes('u=mm'));
  assert.match(await page.evaluate(() => location.hash), /torque=25%20ft-lb/);
  assert.match(await page.locator('#f-torque-read').innerText(), /Read as 25 ft-lb/);
  // My shop and a dated record: what stands there is read as it was.
  await go(page, '#/shop');
  await page.getByLabel(/^Mill rapid traverse/).fill('50');
  await go(page, '#/proving');
  await page.locator('#new-test').fill('Mill');
  await page.getByRole('button', { name: 'Begin a test' }).click();
  await page.locator('details', { has: page.locator('summary', { hasText: 'Longitudinal' }) }).locator('summary').click();
  const slack = page.getByLabel('Measured: Backlash of screw and nut', { exact: false }).first();
  await slack.fill('0.012');
  await slack.blur();
  await page.getByText('Read as 0.012 in').first().waitFor();
  await go(page, '#/shop');
  await page.getByLabel('millimeter', { exact: true }).check({ force: true });
  await page.getByText(/Read as 50 in\/min/).waitFor();
  await go(page, '#/proving');
  await page.locator('details', { has: page.locator('summary', { hasText: 'Longitudinal' }) }).locator('summary').click();
  await page.getByText('Read as 0.012 in').first().waitFor();
});

test('state: the last stroke and a text too long for a link live through a reload', async ({ open }) => {
  const { page } = await open({ link: '#/v1/length?length=7%20in' });
  await appUp(page);
  const field = page.locator('#f-length');
  await field.waitFor();
  await field.fill('7.25');
  await page.reload();
  await appUp(page);
  assert.equal(await field.inputValue(), '7.25');
  const long = 'x'.repeat(100_000);
  await field.fill(long);
  await page.getByText('too long for the address').waitFor();
  await page.reload();
  await appUp(page);
  assert.equal((await field.inputValue()).length, long.length);
  await page.getByText('too long for the address').waitFor();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Not saved: this entry is too long.').waitFor();
});

test('state: a note that was left in its field is saved', async ({ open }) => {
  const { page } = await open({ link: '#/v1/length?length=7%20in' });
  await appUp(page);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('To the saved list').click();
  const note = page.getByLabel(/^Note on/);
  for (const [text, wait] of [['behind the feed box', 0], ['on the knee', 500]]) {
    await note.fill(text);
    await page.waitForTimeout(wait);
    await page.reload();
    await appUp(page);
    assert.equal(await note.inputValue(), text);
  }
  assert.match(await page.locator('.kept').innerText(), /7\.0000 in/, 'the answer stands on the line');
});

test('state: two tabs in the same instant lose nothing', async ({ site, open }) => {
  const { page, context } = await open({ link: '#/v1/length?length=0.5%20in' });
  await appUp(page);
  const other = await context.newPage();
  await other.goto(`${site.url}#/v1/length?length=0.5%20in`);
  await appUp(other);
  const press = (tab) => tab.evaluate(() => {
    [...document.querySelectorAll('.bar button')].find((b) => b.textContent === 'Save').click();
  });
  for (let round = 1; round <= 8; round += 1) {
    await go(page, `#/v1/length?length=${round}%20in`);
    await go(other, `#/v1/length?length=${round}%20mm`);
    await page.waitForTimeout(300);
    await Promise.all([press(page), press(other)]);
    await page.waitForFunction((wanted) => JSON.parse(localStorage.getItem('benchslate.kept')).data.items.length === wanted,
      2 * round, { timeout: 3000 });
  }
  // An entry that is still under the keys is not written over by what the other tab saves.
  for (const tab of [page, other]) await go(tab, '#/proving');
  await page.locator('#new-test').fill('Mill');
  await page.getByRole('button', { name: 'Begin a test' }).click();
  await other.locator('#p-by').waitFor();
  await page.locator('#p-by').click();
  await page.locator('#p-by').pressSequentially('Ann');
  await other.locator('#p-remark').fill('dry');
  await other.locator('#p-remark').blur();
  await page.locator('#p-by').blur();
  await page.waitForTimeout(800);
  const record = await page.evaluate(() => JSON.parse(localStorage.getItem('benchslate.proving')).data.tests[0]);
  assert.deepEqual([record.by, record.note], ['Ann', 'dry']);
  assert.equal(await page.locator('#p-by').inputValue(), 'Ann');
  assert.equal(await page.locator('#p-remark').inputValue(), 'dry');
});

test('state: clearing is taken back, and Back closes a panel', async ({ open }) => {
  const { page } = await open({ link: '#/v1/length?length=7/16%20in' });
  await appUp(page);
  const field = page.locator('#f-length');
  await field.waitFor();
  await page.getByRole('button', { name: 'Clear', exact: true }).click();
  assert.equal(await field.inputValue(), '');
  await page.getByRole('button', { name: 'Undo clear' }).click();
  assert.equal(await field.inputValue(), '7/16');
  await page.getByRole('button', { name: 'Clear', exact: true }).click();
  await page.waitForTimeout(300);
  await page.goBack();
  await page.waitForFunction(() => document.querySelector('#f-length')?.value === '7/16');
  // The panel is a step of its own, also where something was typed under it.
  await page.getByRole('button', { name: 'Link', exact: true }).click();
  await page.locator('.qr').waitFor();
  await field.fill('3/8');
  await page.waitForFunction(() => location.hash.includes('3/8'));
  await page.goBack();
  await page.locator('.qr').waitFor({ state: 'detached' });
  assert.equal(await field.inputValue(), '3/8');
  assert.match(await page.evaluate(() => location.hash), /3\/8/);
  await page.getByRole('button', { name: 'Link', exact: true }).click();
  await page.locator('.qr').waitFor();
  await page.getByRole('button', { name: 'Close' }).click();
  await page.locator('.qr').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Saved.').waitFor();
  await page.goBack();
  await page.getByText('Saved.').waitFor({ state: 'detached' });
  assert.equal(await field.inputValue(), '3/8');
});

test('state: a list from elsewhere leads nowhere but to calculations', async ({ open }) => {
  const bad = ['https://evil.example/x?leak=1', '//evil.example/', 'javascript:alert(1)', 'data:text/html,<p>x</p>',
    'https://evil.example/#/v1/length?length=1%20in'];
  const items = [...bad.map((link, at) => ({ name: `Size a dowel ${at}`, link })), { name: 'n'.repeat(3000), link: '#/v1/length?length=1%20in' }];
  const { page } = await open({ link: '#/kept', before: (p) => p.addInitScript((text) => {
    if (!localStorage.getItem('benchslate.kept')) localStorage.setItem('benchslate.kept', text);
  }, JSON.stringify({ record: 'kept', version: 1, data: { items } })) });
  await appUp(page);
  await page.locator('.kept li').first().waitFor();
  assert.equal(await page.locator('.kept li').count(), items.length, 'what was there stays');
  assert.deepEqual(await page.locator('.kept a').evaluateAll((all) => all.map((a) => a.getAttribute('href'))), ['#/v1/length?length=1%20in']);
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), 'no sideways scroll');
  const put = (list) => page.locator('input[type=file]').setInputFiles({ name: 'k.json', mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ record: 'kept', version: 1, data: { items: list } })) });
  await put(items);
  await page.getByText('Nothing imported: all of the file was here already.').waitFor();
  await put([{ name: 'new', link: 'https://evil.example/new' }]);
  await page.getByText('Imported: 1 from the file.').waitFor();
  assert.equal(await page.locator('.kept a').count(), 1);
});

test('state: an older record says in which unit it is read, or asks', async ({ open }) => {
  const old = JSON.stringify({ record: 'proving', version: 1, data: { tests: [{ machine: 'Mill', found: [{ id: 'a1.slack', measured: '0.3' }] }] } });
  const { page } = await open({ link: '#/proving' });
  await appUp(page);
  await page.locator('input[type=file]').setInputFiles({ name: 'p.json', mimeType: 'application/json', buffer: Buffer.from(old) });
  await page.getByText('In which were the figures without a unit measured?').waitFor();
  await page.locator('details', { has: page.locator('summary', { hasText: 'Longitudinal' }) }).locator('summary').click();
  await page.getByText('No unit stands behind this figure').waitFor();
  await page.getByRole('button', { name: 'In millimeters' }).click();
  await page.getByText('Read as 0.3 mm').waitFor();
});

test('state: my drill press is used behind the choice that brings it up, and nobody is a sender', async ({ open }) => {
  const { page } = await open({ link: '#/shop' });
  await appUp(page);
  await page.getByLabel(/^Drill press spindle speeds/).fill('80;150;280;520;960');
  await go(page, '#/');
  await page.locator('a[href^="#/v1/speed-feed"]').first().click();
  await page.locator('#f-diameter').waitFor();
  assert.equal(await page.getByText('Use my shop').count(), 0);
  const cut = page.locator('#f-cut');
  await cut.selectOption('drill');
  await page.locator('#f-diameter').fill('1/2');
  await page.waitForFunction(() => location.hash.includes('80%20rpm;150%20rpm'));
  assert.equal(await page.getByText('Use my shop').count(), 0);
  await page.reload();
  await appUp(page);
  assert.equal(await page.getByText('Use my shop').count(), 0);
});

test('state: abc brings letters for one field alone, and a refused wake lock is no error', async ({ open }) => {
  const { page } = await open({ link: '#/v1/dial-slack?ask=slack&how=indicator&moved=0.038%20in&turned=0.050%20in', before: (p) => p.addInitScript(() => {
    localStorage.setItem('benchslate.pad', 'own');
    Object.defineProperty(navigator, 'wakeLock', { configurable: true,
      value: { request: () => Promise.reject(new DOMException('refused', 'NotAllowedError')) } });
  }) });
  await appUp(page);
  const inputs = page.locator('input[data-pad]');
  await inputs.nth(0).focus();
  await page.locator('.dock:not(.resting)').waitFor();
  await page.getByRole('button', { name: 'Phone keyboard for this field' }).click();
  await page.waitForFunction(() => document.activeElement?.getAttribute('inputmode') === 'text');
  assert.equal(await page.locator('.dock.resting').count(), 1);
  await inputs.nth(1).focus();
  await page.locator('.dock:not(.resting)').waitFor();
  assert.equal(await page.evaluate(() => localStorage.getItem('benchslate.pad')), 'own');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Read out', exact: true }).click();
  await page.locator('main.call').waitFor();
  await page.waitForTimeout(200);
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await page.locator('main.call').waitFor({ state: 'detached' });
});
