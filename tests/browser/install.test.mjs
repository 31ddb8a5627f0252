// The browser's offer to install waits for a tap on the about page, and is used once.
import { appUp, assert, test } from './harness.mjs';

test('install: the offer waits for the tap', async ({ open }) => {
  const { page } = await open({ link: '#/about' });
  await appUp(page);
  const button = page.getByRole('button', { name: 'Put it on the home screen' });
  assert.equal(await button.count(), 0, 'no offer, no button');
  await page.evaluate(() => {
    const event = new Event('beforeinstallprompt', { cancelable: true });
    event.prompt = () => { window.asked = (window.asked ?? 0) + 1; };
    window.dispatchEvent(event);
  });
  await button.click();
  await button.waitFor({ state: 'detached' });
  assert.equal(await page.evaluate(() => window.asked), 1);
});
