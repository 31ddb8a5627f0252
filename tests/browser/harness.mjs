// How the whole-product tests meet the product: the built site on a server of its own, a fresh browser profile for each
// visit, every request and every console error kept. A test that leaves the origin or logs an error fails.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

export { assert };

const here = path.dirname(fileURLToPath(import.meta.url));
export const root = path.resolve(here, '../..');
const target = process.env.CARGO_TARGET_DIR ?? path.join(root, 'target');
/** The built site, the program that serves it, the terminal door, the browser. `cargo xtask test` names them. */
export const built = process.env.BENCHSLATE_SITE ?? path.join(target, 'site');
const xtask = process.env.BENCHSLATE_XTASK ?? path.join(target, 'debug/xtask');
export const cli = process.env.BENCHSLATE_CLI ?? path.join(target, 'debug/benchslate');
const browser = process.env.BENCHSLATE_CHROMIUM ?? '/usr/bin/chromium';

// No host but this machine's own address can be found, so a request that tries to leave fails and is seen.
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync', '--disable-dev-shm-usage',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1'];

const tests = [];
/** Declares a test. `work` gets `{ site, open, tmp }`; see `fixtures`. */
export function test(name, work, { timeout = 60_000 } = {}) {
  tests.push({ name, work, timeout });
}

/** Runs the declared tests one after the other, and returns how many passed and failed. */
export async function run(filter = '') {
  let passed = 0;
  let failed = 0;
  for (const { name, work, timeout } of tests) {
    if (!name.includes(filter)) continue;
    const started = Date.now();
    const given = fixtures();
    let timer;
    try {
      const late = new Promise((_, no) => { timer = setTimeout(() => no(new Error(`not done in ${timeout} ms`)), timeout); });
      await Promise.race([given.start().then(() => work(given)), late]);
      given.check();
      passed += 1;
      console.log(`ok      ${name}  ${Date.now() - started} ms`);
    } catch (error) {
      failed += 1;
      console.log(`FAILED  ${name}  ${Date.now() - started} ms\n${String(error.stack ?? error).replace(/^/gm, '        ')}`);
    } finally {
      clearTimeout(timer);
      await given.end();
    }
  }
  return { passed, failed };
}

/** What a test is given. */
function fixtures() {
  const tmp = mkdtempSync(path.join(tmpdir(), 'benchslate-'));
  const site = new Site(built, tmp);
  const visits = [];
  return {
    site,
    tmp,
    start: () => site.start(),
    /**
     * Opens the site in a fresh profile, or in that of an earlier visit (`profile: visit.profile`, closed before).
     * @param options `link` (a fragment), `width`, `height`, `scheme` ('dark' or 'light'), `profile`, `context` (more of
     *   Playwright's context options), `args` (more words for the browser), `before` (called with page and context
     *   before the page opens), `errorsOk` (this visit may log errors), `goto: false` (does not open the page).
     * @returns `{ page, context, profile, requests, errors, close }`
     */
    async open(options = {}) {
      const visit = await openVisit(site, tmp, options);
      visits.push(visit);
      return visit;
    },
    /** Fails where a visit logged an error or asked another origin. */
    check() {
      for (const { requests, errors, errorsOk } of visits) {
        const strays = requests.filter((r) => !r.startsWith(site.origin) && !/^(data|blob|about):/.test(r));
        assert.deepEqual(strays, [], 'requests to another origin');
        if (!errorsOk) assert.deepEqual(errors, [], 'console errors');
      }
    },
    async end() {
      for (const visit of visits) await visit.close().catch(() => {});
      await site.stop();
      rmSync(tmp, { recursive: true, force: true, maxRetries: 3 });
    },
  };
}

let profiles = 0;
export async function openVisit(site, tmp, options) {
  const { link = '', width = 390, height = 844, scheme = 'light', errorsOk = false } = options;
  const profile = options.profile ?? path.join(tmp, `profile-${profiles += 1}`);
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: browser, headless: true, args: [...ARGS, ...(options.args ?? [])], colorScheme: scheme, viewport: { width, height },
    ...options.context,
  });
  const visit = { context, profile, requests: [], errors: [], errorsOk, closed: false };
  visit.close = async () => { if (!visit.closed) { visit.closed = true; await context.close(); } };
  context.on('request', (r) => visit.requests.push(r.url()));
  const watch = (page) => {
    page.on('console', (m) => { if (m.type() === 'error') visit.errors.push(m.text()); });
    page.on('pageerror', (e) => visit.errors.push(String(e)));
  };
  context.on('page', watch);
  const page = context.pages()[0] ?? await context.newPage();
  if (page.listenerCount('console') === 0) watch(page);
  visit.page = page;
  await options.before?.(page, context);
  if (options.goto !== false) await page.goto(site.url + link);
  return visit;
}

/** The built site on a server of its own, which can be stopped, started again, and given another build. */
export class Site {
  constructor(source, tmp, under = '/') {
    this.dir = path.join(tmp, 'site');
    this.under = under;
    cpSync(source, this.dir, { recursive: true });
  }

  /** Starts the server; a second start comes back on the same port, as the same origin. */
  async start() {
    const words = ['serve', '--dir', this.dir, '--port', String(this.port ?? 0), '--under', this.under];
    this.server = spawn(xtask, words, { stdio: ['ignore', 'pipe', 'inherit'] });
    this.url = await new Promise((yes, no) => {
      let text = '';
      this.server.once('error', no);
      this.server.once('exit', () => no(new Error('the server stopped at once')));
      this.server.stdout.on('data', (part) => {
        text += part;
        if (/^ready$/m.test(text)) yes(text.split('\n')[0]);
      });
    });
    this.origin = new URL(this.url).origin;
    this.port = Number(new URL(this.url).port);
  }

  /** Stops the server, so that nothing answers any more. */
  async stop() {
    const server = this.server;
    this.server = undefined;
    if (!server || server.exitCode !== null) return;
    const gone = new Promise((yes) => { server.once('exit', yes); });
    server.kill('SIGKILL');
    await gone;
  }

  /** Puts another build in the place of this one, as a host does at a release. The server keeps running. */
  release(version = 'bbbbbbbbbbbbbbbb') {
    const old = /VERSION = '([0-9a-f]{16})'/.exec(readFileSync(path.join(this.dir, 'sw.js'), 'utf8'))[1];
    for (const name of ['index.html', 'sw.js']) {
      const file = path.join(this.dir, name);
      let text = readFileSync(file, 'utf8').replaceAll(old, version);
      if (name === 'index.html') text = text.replace('</body>', `<!-- ${version} --></body>`);
      writeFileSync(file, text);
      for (const packed of ['.br', '.gz']) rmSync(file + packed, { force: true });
    }
    return version;
  }

  /** Takes a file of the build away, as a half-done upload does. `pattern` is matched with the names. */
  lose(pattern) {
    for (const name of readdirSync(this.dir, { recursive: true })) {
      if (pattern.test(String(name))) rmSync(path.join(this.dir, String(name)), { force: true });
    }
  }
}

/** Waits until the worker holds the whole build, so that the server may go; a worker that never takes its files is a failure. */
export async function offlineReady(page) {
  // Not waitForFunction: it takes the promise that an async function returns for a yes.
  await page.evaluate(() => Promise.race([
    navigator.serviceWorker.ready.then((r) => new Promise((yes) => {
      const done = () => r.active?.state === 'activated' && yes();
      r.active?.addEventListener('statechange', done);
      done();
    })),
    new Promise((_, no) => { setTimeout(() => no(new Error('the worker did not take its files in 20 s')), 20_000); }),
  ]));
}

/** Waits until the app itself is on the page: neither the static shell nor the failure page. */
export async function appUp(page) {
  await page.waitForFunction(() => document.body && !document.querySelector('.shell'), null, { timeout: 10_000 });
}

/** Keeps a picture for looking at, never for comparing. */
export async function shot(page, name, options = {}) {
  const dir = path.join(here, 'shots');
  mkdirSync(dir, { recursive: true });
  await page.screenshot({ path: path.join(dir, `${name}.png`), ...options });
}

/** True where a file of the project is there. */
export const has = (file) => existsSync(path.join(root, file));
