// Takes the pictures of README from the built app: `node tests/browser/pictures.mjs` after `cargo xtask test` or `dist`.
// Small: a phone's width, few colours.
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { appUp, root, run, test } from './harness.mjs';

const out = path.join(root, 'docs/pictures');
const shots = [
  ['home-light-phone', '', 'light', 360, 740],
  ['answer-dark-phone', '#/v1/taper-pin?number=3&length=1-1/2%20in', 'dark', 360, 740],
  ['answer-light-tablet', '#/v1/which-pair?stages=5~2;2~1&marks=1~slow;2~slow;3~well;6~well', 'light', 800, 600],
];

for (const [name, link, scheme, width, height] of shots) {
  test(name, async ({ open }) => {
    const { page } = await open({ link, scheme, width, height });
    await appUp(page);
    mkdirSync(out, { recursive: true });
    await page.screenshot({ path: path.join(out, `${name}.png`) });
  });
}
const { failed } = await run();
process.exitCode = failed ? 1 : 0;
