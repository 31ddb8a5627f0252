// What the tests of all pages share: the sheets as the terminal door declares them, links to their examples, and ways
// to go to a page and to read what it shows.
import { execFileSync } from 'node:child_process';
import { cli } from './harness.mjs';

/** Every sheet with its fields, results and examples. */
export const sheets = JSON.parse(execFileSync(cli, ['sheets', '--json'], { encoding: 'utf8', maxBuffer: 1 << 26 })).sheets;
/** The pages that are no question. */
export const others = ['#/', '#/?find=7/16', '#/shop', '#/kept', '#/proving', '#/about'];

const encode = (text) => encodeURIComponent(text).replace(/%(2F|3B|2C|3A)/g, (c) => decodeURIComponent(c));
/** The link of an entry, as a person might write it. */
export const linkOf = (sheet, entry = {}) => `#/v1/${sheet.id}${Object.entries(entry)
  .map(([id, text], at) => `${at ? '&' : '?'}${id}=${encode(text)}`).join('')}`;
/** The link of a sheet's first example. */
export const exampleOf = (sheet) => linkOf(sheet, sheet.examples[0]);
/** A sheet with something unreadable in its first field to type in. */
export const faultyOf = (sheet) => linkOf(sheet, { ...sheet.examples[0],
  [(sheet.fields.find((f) => f.id in sheet.examples[0] && f.kind !== 'Choice') ?? sheet.fields[0]).id]: '1//2' });

/** Goes to a fragment without loading anew, and waits until its page is drawn. */
export const go = (page, link) => page.evaluate((to) => new Promise((yes) => {
  const drawn = () => requestAnimationFrame(() => requestAnimationFrame(() => yes()));
  if (location.hash === to) { drawn(); return; }
  addEventListener('hashchange', drawn, { once: true });
  location.hash = to;
}), link);

/** The address, with what was typed last. */
export const address = (page) => page.evaluate(() => { dispatchEvent(new Event('pagehide')); return location.hash; });
/** All that the answer shows, as text. */
export const answer = (page) => page.locator('.answer').innerText();
/** The first result's figure; nothing where there is none. */
export const figure = (page) => page.evaluate(() => document.querySelector('.answer .result .big')?.textContent ?? '');
/** Opens every folded part. */
export const unfold = (page) => page.evaluate(() => {
  for (const part of document.querySelectorAll('details:not([open]) > summary')) part.click();
  return new Promise((yes) => { requestAnimationFrame(() => requestAnimationFrame(() => yes())); });
});
