// Can every page be worked with the keyboard alone?
import { appUp, assert, test } from './harness.mjs';
import { exampleOf, figure, go, linkOf, others, sheets, unfold } from './pages.mjs';

/** Walks the page with Tab from its top; gives what was never reached, and what was reached but out of sight. */
async function walk(page) {
  const most = await page.evaluate(() => {
    const shown = (e) => e.getClientRects().length > 0 && getComputedStyle(e).visibility === 'visible';
    const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
      .filter((e) => shown(e) && !e.disabled && e.tabIndex >= 0)
      .filter((e) => e.type !== 'radio' || e.checked || !document.querySelector(`input[name="${e.name}"]:checked`));
    const groups = new Set();
    window.wanted = new Set(all.filter((e) => e.type !== 'radio' || (!groups.has(e.name) && groups.add(e.name))));
    window.hiddenOnes = [];
    document.activeElement?.blur();
    getSelection().removeAllRanges();
    getSelection().setBaseAndExtent(document.body, 0, document.body, 0);
    return window.wanted.size;
  });
  const visit = () => page.evaluate(() => {
    const e = document.activeElement;
    if (!e || e === document.body) return false;
    window.wanted.delete(e);
    // A choice shows its words, not the round mark; a file input its button.
    const r = (e.closest('label') ?? e).getBoundingClientRect();
    const top = document.elementFromPoint(Math.min(r.left + r.width / 2, innerWidth - 1), r.top + Math.min(r.height / 2, 24));
    const over = top?.closest('.bar, .dock, .panel');
    if (r.bottom <= 0 || r.top >= innerHeight || (over && !over.contains(e))) window.hiddenOnes.push(e.outerHTML.slice(0, 120));
    return true;
  });
  for (let step = 0; step < most + 12; step += 1) {
    await page.keyboard.press('Tab');
    await visit();
    if (await page.evaluate(() => window.wanted.size) === 0) break;
  }
  return page.evaluate(() => ({ missed: [...window.wanted].map((e) => e.outerHTML.slice(0, 160)), unseen: window.hiddenOnes }));
}

for (const [pad, size] of [['system', { width: 390, height: 844 }], ['own', { width: 390, height: 844 }], ['own', { width: 1024, height: 700 }]]) {
  test(`keyboard: Tab reaches everything, ${pad} pad, ${size.width} wide`, async ({ open }) => {
    const { page } = await open({ ...size, before: (p) => p.addInitScript((mode) => localStorage.setItem('benchslate.pad', mode), pad) });
    await appUp(page);
    const links = pad === 'system' ? [...others, ...sheets.map(exampleOf)] : sheets.slice(0, 4).map(exampleOf);
    for (const link of links) {
      await go(page, link);
      if (pad === 'system') await unfold(page);
      const { missed, unseen } = await walk(page);
      assert.deepEqual(missed, [], `${link}: not reached`);
      assert.deepEqual(unseen, [], `${link}: reached, but out of sight`);
    }
  }, { timeout: 120_000 });
}

test('keyboard: a question from search to call view and back without a pointer', async ({ open }) => {
  const { page } = await open();
  await appUp(page);
  const tabTo = async (name) => {
    for (let step = 0; step < 60; step += 1) {
      const here = await page.evaluate(() => document.activeElement?.id || document.activeElement?.textContent.trim());
      if (here === name) return;
      await page.keyboard.press('Tab');
    }
    assert.fail(`Tab never comes to ${name}`);
  };
  await tabTo('find');
  await page.keyboard.type('length every way');
  await page.keyboard.press('Enter');
  const first = page.locator('input[data-pad]').first();
  await first.waitFor();
  await tabTo(await first.getAttribute('id'));
  await page.keyboard.type('7/16');
  await page.locator('.answer .result .big').first().waitFor();
  assert.equal(await figure(page), '0.4375');
  await tabTo('Read out');
  await page.keyboard.press('Enter');
  await page.locator('main.call').waitFor();
  await tabTo('Back');
  await page.keyboard.press('Enter');
  await page.locator('main.call').waitFor({ state: 'detached' });
  assert.equal(await figure(page), '0.4375');
});

test('keyboard: Enter goes from field to field, Escape leaves the pad, arrows choose', async ({ open }) => {
  const { page } = await open({ before: (p) => p.addInitScript(() => localStorage.setItem('benchslate.pad', 'own')) });
  await appUp(page);
  const sheet = sheets.find((s) => s.fields.filter((f) => f.kind === 'Length').length > 1 && s.fields.some((f) => f.kind === 'Choice'));
  await go(page, linkOf(sheet));
  const inputs = page.locator('input[data-pad]');
  await inputs.nth(0).focus();
  await page.locator('.dock:not(.resting)').waitFor();
  await page.keyboard.press('Enter');
  assert.ok(await inputs.nth(1).evaluate((e) => e === document.activeElement));
  await page.keyboard.press('Escape');
  await page.locator('.dock.resting').waitFor({ state: 'attached' });
  assert.ok(await page.evaluate(() => !document.activeElement.hasAttribute('data-pad')));
  const choice = page.locator('.entries fieldset input[type=radio]:checked').first();
  const before = await choice.inputValue();
  await choice.focus();
  await page.keyboard.press('ArrowRight');
  assert.notEqual(await page.locator('.entries fieldset input[type=radio]:checked').first().inputValue(), before);
});

test('keyboard: the pad types into the field', async ({ open }) => {
  const { page } = await open({ width: 360, height: 740, context: { hasTouch: true, isMobile: true } });
  await appUp(page);
  await go(page, linkOf(sheets.find((s) => s.id === 'length')));
  await page.locator('input[data-pad]').first().tap();
  for (const key of ['7', '/', '1', '6']) {
    const button = page.locator('.dock .keys button').filter({ hasText: new RegExp(`^${key}$`) });
    const box = await button.boundingBox();
    assert.ok(box.height >= 48 && box.width >= 44, `the key ${key} is ${box.width} × ${box.height}`);
    await button.tap();
  }
  assert.equal(await page.locator('input[data-pad]').first().inputValue(), '7/16');
  assert.equal(await figure(page), '0.4375');
  assert.ok(await page.locator('input[data-pad]').first().evaluate((e) => e.inputMode === 'none'));
});
