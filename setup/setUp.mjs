import { spawnSync } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolders, whyNotInstalled, writeStamp } from './installed.mjs';
import { nodeIsSupported, nodeWanted } from './nodeVersion.mjs';
import { buildPages } from './pages.mjs';
import { root, runTool } from './run.mjs';

/** The package of the pages: built by another tool (pages.mjs). */
const pagesFolder = 'packages/app';

const installCommand = 'npm ci --engine-strict';

/** Ends the run with what went wrong and the one thing to do. @param {string} wrong @param {string} todo @returns {never} */
function stop(wrong, todo) {
  console.error(`\n${wrong}\n${todo}\n`);
  process.exit(1);
}

/** Checks Node and installs the packages of package-lock.json where they are not there yet. */
export function install() {
  if (!nodeIsSupported(process.versions.node))
    stop(
      `This is Node ${process.versions.node}; Eavewell needs ${nodeWanted}.`,
      'Install it, then run the same command again.',
    );
  const reason = whyNotInstalled(root);
  if (reason) {
    console.log(`Installing (${reason}): ${installCommand}`);
    if (runNpm(['ci', '--engine-strict', '--no-audit', '--no-fund']) !== 0)
      stop('The packages could not be installed; npm says why above.', `With a network, type:  ${installCommand}`);
    const still = whyNotInstalled(root);
    if (still) stop(`npm ended well, and yet: ${still}.`, `Type:  ${installCommand}`);
  }
  writeStamp(root);
}

/** Builds every package, or stops with what to do. */
export function build() {
  if (compile() !== 0 || buildPages() !== 0)
    stop('The build failed; the errors stand above.', 'Mend them, then type:  npm run build');
}

/**
 * Builds every package. The compiler goes by its own notes and does not look whether its output is still there: where
 * output is gone, or the build fails, the notes go and all is built afresh, so that a failure is one of the sources.
 *
 * @returns {number} 0 where all were built
 */
export function compile() {
  const folders = packageFolders(root)
    .filter((folder) => folder !== pagesFolder)
    .map((folder) => join(root, folder));
  const whole = folders.every((folder) =>
    ['index.js', 'index.d.ts'].every((file) => existsSync(join(folder, 'dist', file))),
  );
  if (whole && runTool('tsc', ['-b'], 'ignore') === 0) return 0;
  for (const folder of folders) rmSync(join(folder, 'tsconfig.tsbuildinfo'), { force: true });
  return runTool('tsc', ['-b']);
}

/** npm as it was started, or the one on the path. @param {readonly string[]} args */
function runNpm(args) {
  const own = process.env['npm_execpath'];
  const options = /** @type {const} */ ({ cwd: root, stdio: 'inherit' });
  const ended =
    own && /npm-cli\.c?js$/.test(own)
      ? spawnSync(process.execPath, [own, ...args], options)
      : spawnSync('npm', [...args], { ...options, shell: process.platform === 'win32' });
  if (ended.error) console.error(ended.error.message);
  return ended.status ?? 1;
}
