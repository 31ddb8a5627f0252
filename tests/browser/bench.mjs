// Times in the browser at a 4× slowed processor: the app's heaviest sheet against the floor page, measured in the same
// run. Prints a table with gates; the exit code says whether all hold. Run by `cargo xtask bench`.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Site, appUp, built, offlineReady, openVisit, root } from './harness.mjs';

const STROKES = 200;
/** Strokes on each sheet, to find the heaviest; that one then gets all. The first of them run in code not yet optimized. */
const SURVEY = 30;
const STARTS = 7;
const SLOWED = 4;

const median = (list) => at(list, 0.5);
const at = (list, share) => [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(list.length * share))];

async function slow(page) {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
}

/** Types into a field, and takes for each stroke the time to the changed page and to the frame after it. */
async function strokes(page, field, wanted) {
  await page.evaluate((selector) => {
    const input = document.querySelector(selector);
    window.times = [];
    let start = 0;
    let changed = 0;
    new MutationObserver(() => { if (start && !changed) changed = performance.now(); })
      .observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true });
    // On the window, so that it comes before the app's own listener.
    window.addEventListener('input', () => {
      const own = performance.now();
      start = own;
      changed = 0;
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => {
          // a stroke that another overtook within the frame is left out
          if (start !== own) return;
          if (changed) window.times.push([changed - own, performance.now() - own]);
          start = 0;
        };
        channel.port2.postMessage(0);
      });
    }, { capture: true });
    input.focus();
  }, field);
  for (let i = 0; i < wanted; i += 1) {
    await page.keyboard.press(i % 2 ? 'Backspace' : '5');
    await page.waitForTimeout(15);
  }
  const times = await page.evaluate(() => window.times);
  if (times.length < wanted / 2) throw new Error(`only ${times.length} of ${wanted} strokes changed the page`);
  return times;
}

/** Starts again and again from the worker with the server gone: milliseconds from navigation to the fields. */
async function starts(site, visit, link) {
  await offlineReady(visit.page);
  await site.stop();
  const times = [];
  for (let i = 0; i < STARTS; i += 1) {
    await visit.page.goto('about:blank');
    const session = await visit.page.context().newCDPSession(visit.page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    await visit.page.goto(site.url + link);
    await appUp(visit.page);
    times.push(await visit.page.evaluate(() => window.upAt));
    await session.detach();
  }
  return times;
}

async function measure(name, folder, links, field) {
  const tmp = mkdtempSync(path.join(tmpdir(), 'benchslate-bench-'));
  const site = new Site(folder, tmp);
  await site.start();
  const visit = await openVisit(site, tmp, {
    goto: false,
    before: (page) => page.addInitScript(() => {
      // When the shell has gone, the app has drawn itself.
      window.shift = 0;
      new PerformanceObserver((l) => { for (const e of l.getEntries()) if (!e.hadRecentInput) window.shift += e.value; })
        .observe({ type: 'layout-shift', buffered: true });
      let shell = false;
      const watch = new MutationObserver(() => {
        const there = document.querySelector('.shell');
        if (there) shell = true;
        else if (shell && !window.upAt) { window.upAt = performance.now(); watch.disconnect(); }
      });
      watch.observe(document, { childList: true, subtree: true });
    }),
  });
  try {
    let shift = 0;
    await visit.page.goto(site.url);
    await appUp(visit.page);
    const type = async (link, wanted) => {
      await visit.page.goto('about:blank');
      await visit.page.goto(site.url + link);
      await appUp(visit.page);
      // Where all that is typed comes from the shop, its fields are folded away.
      if (await visit.page.locator(field).count() === 0) await visit.page.locator('main summary').first().click();
      await visit.page.waitForSelector(field);
      shift = Math.max(shift, await visit.page.evaluate(() => window.shift));
      await slow(visit.page);
      const times = await strokes(visit.page, field, wanted);
      const [dom, paint] = [times.map((t) => t[0]), times.map((t) => t[1])];
      const row = { link, count: times.length, dom: median(dom), paint: median(paint), paint95: at(paint, 0.95) };
      console.error(`${name} ${link}: changed ${row.dom.toFixed(1)}, painted ${row.paint.toFixed(1)} ms`);
      return row;
    };
    const rows = [];
    for (const link of links.length > 1 ? links : []) rows.push(await type(link, SURVEY));
    const heaviest = rows.sort((a, b) => b.dom - a.dom)[0]?.link ?? links[0];
    const row = await type(heaviest, STROKES);
    return { ...row, shift, start: median(await starts(site, visit, heaviest)) };
  } finally {
    await visit.close();
    await site.stop();
    rmSync(tmp, { recursive: true, force: true, maxRetries: 3 });
  }
}

// One link a sheet: its first example.
const all = execFileSync(path.join(process.env.CARGO_TARGET_DIR ?? path.join(root, 'target'), 'release/bench'), ['links'], { encoding: 'utf8' })
  .split('\n').filter(Boolean);
const links = [...new Map(all.reverse().map((l) => [l.split('?')[0], l])).values()].reverse();

const floor = await measure('floor', process.env.BENCHSLATE_FLOOR, [''], 'input[type=text]');
const app = await measure('app', built, links, 'main input[type=text], main input:not([type])');
const rows = [
  ['key stroke to changed page, median', floor.dom, app.dom, 8],
  ['key stroke to paint, median', floor.paint, app.paint, floor.paint + 17],
  ['key stroke to paint, 95th percentile', floor.paint95, app.paint95, 100],
  ['start without network, median', floor.start, app.start, floor.start * 1.5],
  ['layout shift', floor.shift, app.shift, 0],
];
console.log(`browser, ${SLOWED}× slowed; heaviest sheet: ${app.link} (${app.count} strokes seen)`);
console.log(`${'ms'.padEnd(40)}${'floor'.padStart(9)}${'app'.padStart(9)}${'gate'.padStart(9)}`);
let ok = true;
for (const [name, low, value, gate] of rows) {
  const fits = value <= gate;
  ok &&= fits;
  const cells = [low, value, gate].map((n) => n.toFixed(name === 'layout shift' ? 3 : 1).padStart(9)).join('');
  console.log(`${name.padEnd(40)}${cells}${fits ? '' : '  OVER'}`);
}
process.exit(ok ? 0 : 1);
