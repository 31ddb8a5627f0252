// Runs every tests/browser/*.test.mjs; a word on the command line keeps the tests whose name holds it. The last line is
// `N passed, N failed`.
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { run } from './harness.mjs';

const here = path.dirname(fileURLToPath(import.meta.url));
let broken = 0;
for (const name of readdirSync(here).filter((n) => n.endsWith('.test.mjs')).sort()) {
  try {
    await import(pathToFileURL(path.join(here, name)));
  } catch (error) {
    broken += 1;
    console.log(`FAILED  ${name} cannot be loaded\n${error.stack}`);
  }
}
const { passed, failed } = await run(process.argv[2]);
console.log(`${passed} passed, ${failed + broken} failed`);
process.exit(failed + broken > 0 ? 1 : 0);
