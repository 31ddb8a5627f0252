// Keeps a picture of each page for looking at, never for comparing. Without BENCHSLATE_SHOTS only a few are taken.
import { appUp, shot, test } from './harness.mjs';
import { exampleOf, faultyOf, go, linkOf, others, sheets } from './pages.mjs';

const all = Boolean(process.env.BENCHSLATE_SHOTS);
const screens = [['phone', 390, 844, 2], ['tablet', 1024, 768, 1], ['upright', 768, 1024, 1], ['desktop', 1440, 900, 1]];

for (const [name, width, height, deviceScaleFactor] of all ? screens : screens.slice(0, 2)) {
  test(`shots: ${name}`, async ({ open }) => {
    const touch = name !== 'desktop';
    const { page } = await open({ width, height, context: { deviceScaleFactor, hasTouch: touch, isMobile: touch },
      before: (p) => p.addInitScript((mode) => localStorage.setItem('benchslate.pad', mode), touch ? 'own' : 'system') });
    await appUp(page);
    const kept = all ? sheets : sheets.slice(0, 3);
    for (const scheme of ['light', 'dark']) {
      await page.emulateMedia({ colorScheme: scheme });
      const take = async (link, what) => {
        await go(page, link);
        await shot(page, `${name}-${scheme}-${what}`, { fullPage: !what.startsWith('call') });
      };
      for (const link of others) await take(link, link.replace(/[^a-z]/g, '') || 'home');
      for (const sheet of kept) await take(exampleOf(sheet), sheet.id);
      await take(linkOf(kept[0]), 'empty');
      await take(faultyOf(kept[0]), 'faulty');
      await go(page, exampleOf(kept[0]));
      await page.getByRole('button', { name: 'Read out', exact: true }).click();
      await page.locator('main.call').waitFor();
      await shot(page, `${name}-${scheme}-call`);
      await page.goBack();
      await page.locator('main.call').waitFor({ state: 'detached' });
      await page.locator('input[data-pad]').first().focus();
      await shot(page, `${name}-${scheme}-pad`);
    }
  }, { timeout: 240_000 });
}
