import { checkBrowser } from './browser.mjs';
import { checkGenerated } from './generate.mjs';
import { buildPages } from './pages.mjs';
import { cruisedFolders, runTool, runToolBeside } from './run.mjs';
import { compile, install } from './setUp.mjs';

install();

/** What must be right. A step is 0 where it is. @typedef {[string, () => number | Promise<number>]} Step */

/** In order, one by one: what comes after needs what came before. @type {Step[]} */
const first = [
  ['browser of the journeys', () => checkBrowser()],
  ['build', () => compile()],
  ['pages', () => buildPages()],
];

/** Two at a time, as each is busy in one thread. @type {Step[]} */
const beside = [
  ['types of tests, checks, bench and setup', () => runToolBeside('tsc', ['-p', 'tsconfig.checks.json'])],
  ['types of the pages', () => runToolBeside('tsc', ['-p', 'packages/app'])],
  ['dependency rules', () => runToolBeside('depcruise', ['--config', '.dependency-cruiser.cjs', ...cruisedFolders])],
  ['generated pages', () => checkGenerated()],
  ['format and lint', () => runToolBeside('biome', ['ci', '--error-on-warnings', '.'])],
  ['dead code', () => runToolBeside('knip')],
];

/** @type {Step[]} */
const last = [['tests', () => runTool('vitest', ['run'])]];

/** @type {string[]} */
const failed = [];
/** @type {string[]} */
const lines = [];

/** Does steps one after the other until none is left: what several do of one list, each does a part of. @param {Step[]} steps */
async function work(steps) {
  for (let next = steps.shift(); next !== undefined; next = steps.shift()) {
    const [name, step] = next;
    console.log(`\n— ${name}`);
    const began = Date.now();
    const code = await step();
    const line = `${code === 0 ? 'right ' : 'WRONG '} ${((Date.now() - began) / 1000).toFixed(1).padStart(7)} s  ${name}`;
    lines.push(line);
    console.log(line);
    if (code !== 0) failed.push(name);
  }
}

await work(first);
await Promise.all([work(beside), work(beside)]);
await work(last);
console.log(`\n${lines.join('\n')}`);
if (failed.length > 0) {
  console.error(`\nNot right: ${failed.join(', ')}.`);
  process.exit(1);
}
console.log('\nAll is right.');
