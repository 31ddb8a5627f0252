import { appUp, test, run } from './harness.mjs';
import { exampleOf, go, sheets } from './pages.mjs';
const want = process.env.WANT.split(' ');
test('zz', async ({ open }) => {
  for (const [name, width, height, touch, scheme] of [['phone', 360, 740, true, 'light'], ['tablet', 800, 1280, true, 'dark'], ['desk', 1440, 900, false, 'light']]) {
    const { page } = await open({ width, height, scheme, errorsOk: true, context: { hasTouch: touch, isMobile: touch } });
    await appUp(page);
    for (const w of want) {
      const link = w.startsWith('#') ? w : exampleOf(sheets.find((s) => s.id === w));
      await go(page, link); await page.waitForTimeout(900);
      const n = w.replace(/[^a-z0-9]+/gi, '_').slice(0, 40);
      await page.screenshot({ path: `/tmp/shots/${name}-${n}.png`, fullPage: true });
    }
  }
}, { timeout: 300000 });
console.log(await run('zz'));
