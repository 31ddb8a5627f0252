// The browser's offer to install waits for a tap on the about page, and is used once. This browser may make a real offer
// of its own; the one made here takes its place.
import { appUp, assert, test } from './harness.mjs';

test('install: the offer waits for the tap', async ({ open }) => {
  // The browser may make an offer of its own at any moment and take the place of the test's: it stays outside.
  const before = (page) => page.addInitScript(() => {
    window.addEventListener('beforeinstallprompt', (e) => { if (e.isTrusted) e.stopImmediatePropagation(); }, { capture: true });
  });
  const { page } = await open({ link: '#/about', before });
  await appUp(page);
  const button = page.getByRole('button', { name: 'Put it on the home screen' });
  await page.evaluate(() => {
    const event = new Event('beforeinstallprompt', { cancelable: true });
    event.prompt = () => { window.asked = (window.asked ?? 0) + 1; };
    window.dispatchEvent(event);
  });
  await button.click();
  await button.waitFor({ state: 'detached' });
  assert.equal(await page.evaluate(() => window.asked), 1);
});
