import { checkBrowser } from './browser.mjs';
import { checkGenerated } from './generate.mjs';
import { buildPages } from './pages.mjs';
import { cruisedFolders, runTool } from './run.mjs';
import { compile, install } from './setUp.mjs';

install();

/** Everything that must be right, in order. A step is 0 where it is. @type {[string, () => number | Promise<number>][]} */
const steps = [
  ['browser of the journeys', () => checkBrowser()],
  ['build', () => compile()],
  ['pages', () => buildPages()],
  ['types of the pages', () => runTool('tsc', ['-p', 'packages/app'])],
  ['types of tests, checks, bench and setup', () => runTool('tsc', ['-p', 'tsconfig.checks.json'])],
  ['format and lint', () => runTool('biome', ['ci', '--error-on-warnings', '.'])],
  ['dependency rules', () => runTool('depcruise', ['--config', '.dependency-cruiser.cjs', ...cruisedFolders])],
  ['dead code', () => runTool('knip')],
  ['generated pages', () => checkGenerated()],
  ['tests', () => runTool('vitest', ['run'])],
];

/** @type {string[]} */
const failed = [];
const lines = [];
for (const [name, step] of steps) {
  console.log(`\n— ${name}`);
  const began = Date.now();
  const code = await step();
  const seconds = ((Date.now() - began) / 1000).toFixed(1);
  lines.push(`${code === 0 ? 'right ' : 'WRONG '} ${seconds.padStart(7)} s  ${name}`);
  console.log(lines.at(-1));
  if (code !== 0) failed.push(name);
}
console.log(`\n${lines.join('\n')}`);
if (failed.length > 0) {
  console.error(`\nNot right: ${failed.join(', ')}.`);
  process.exit(1);
}
console.log('\nAll is right.');
