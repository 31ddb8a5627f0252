// Does axe-core find anything in any state of any page, in the light and in the dark?
import { appUp, assert, root, test } from './harness.mjs';
import { exampleOf, faultyOf, go, linkOf, others, sheets, unfold } from './pages.mjs';
import { readFileSync } from 'node:fs';
import path from 'node:path';

const axe = readFileSync(path.join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');

/** The violations, one line each. `only` names rules; without it all rules of WCAG 2.2 A and AA and the best practices. */
async function violations(page, only) {
  if (!await page.evaluate(() => 'axe' in window)) await page.evaluate(axe);
  return page.evaluate((rules) => window.axe.run(document, { resultTypes: ['violations'],
    ...(rules ? { runOnly: { type: 'rule', values: rules } }
      : { runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] } }) })
    .then((found) => found.violations.map((v) => `${v.id}: ${v.nodes.slice(0, 2).map((n) => `${n.html.slice(0, 140)} ${n.any[0]?.message ?? n.failureSummary}`).join(' | ')}`)), only);
}

const states = {
  'pages': others,
  'empty sheets': sheets.map((sheet) => linkOf(sheet)),
  'filled sheets': sheets.map(exampleOf),
  'faulty sheets': sheets.map(faultyOf),
};

for (const [what, links] of Object.entries(states)) {
  test(`axe: ${what}`, async ({ open }) => {
    // A page whole on the screen: what stands below the bar for the moment is not too small a target.
    const { page } = await open({ height: 16000 });
    await appUp(page);
    const found = [];
    for (const link of links) {
      await go(page, link);
      if (what !== 'empty sheets') await unfold(page);
      for (const v of await violations(page)) found.push(`${link} ${v}`);
      // Only colours differ in the dark.
      await page.emulateMedia({ colorScheme: 'dark' });
      for (const v of await violations(page, ['color-contrast'])) found.push(`${link} dark ${v}`);
      await page.emulateMedia({ colorScheme: 'light' });
    }
    assert.deepEqual(found, []);
  }, { timeout: 180_000 });
}

test('axe: call view, link panel, kept list, key pad', async ({ open }) => {
  const { page } = await open({ context: { reducedMotion: 'reduce' },
    before: (p) => p.addInitScript(() => localStorage.setItem('benchslate.pad', 'own')) });
  await appUp(page);
  const found = [];
  const look = async (what) => {
    for (const scheme of ['light', 'dark']) {
      await page.emulateMedia({ colorScheme: scheme });
      for (const v of await violations(page)) found.push(`${what}, ${scheme}: ${v}`);
    }
  };
  await go(page, exampleOf(sheets[0]));
  await page.locator('input[data-pad]').first().focus();
  await page.locator('.dock:not(.resting)').waitFor();
  await look('key pad');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Link', exact: true }).click();
  await page.locator('.panel .qr').waitFor();
  await look('link panel');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('To the saved list').waitFor();
  await look('kept panel');
  await page.getByRole('button', { name: 'Read out', exact: true }).click();
  await page.locator('main.call').waitFor();
  await look('call view');
  await go(page, '#/kept');
  await page.locator('.kept a.ask').waitFor();
  await look('kept list');
  assert.deepEqual(found, []);
}, { timeout: 120_000 });
