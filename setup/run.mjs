import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the repository, wherever the command was typed. */
export const root = resolve(fileURLToPath(new URL('..', import.meta.url)));

/** Where tools of node_modules begin, by the name they have here. */
const tools = {
  tsc: 'node_modules/ts7/bin/tsc',
  biome: 'node_modules/@biomejs/biome/bin/biome',
  knip: 'node_modules/knip/bin/knip.js',
  depcruise: 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
  vite: 'node_modules/vite/bin/vite.js',
  vitest: 'node_modules/vitest/vitest.mjs',
  eavewell: 'packages/cli/bin/eavewell.js',
};

/** The folders whose imports are held to the dependency rules. */
export const cruisedFolders = ['packages/*/src', 'packages/*/bin', 'demo/src', 'checks'];

/**
 * Runs a JavaScript file of the repository with the Node that runs this one.
 *
 * @param {string} file - path from the repository's folder
 * @param {readonly string[]} args
 * @param {'inherit' | 'ignore'} stdio - whether its output is shown
 * @param {Readonly<Record<string, string>>} more - what it finds in its environment beside ours
 * @returns {number} its exit code; 70 where it was stopped by a signal or could not start
 */
export function runNode(file, args = [], stdio = 'inherit', more = {}) {
  const path = join(root, file);
  if (!existsSync(path)) {
    console.error(`${file} is not there.`);
    return 70;
  }
  const ended = spawnSync(process.execPath, [path, ...args], { cwd: root, stdio, env: { ...process.env, ...more } });
  if (ended.error) console.error(ended.error.message);
  return ended.status ?? 70;
}

/**
 * Runs one of the tools above.
 *
 * @param {keyof typeof tools} name
 * @param {readonly string[]} args
 * @param {'inherit' | 'ignore'} stdio - whether its output is shown
 * @param {Readonly<Record<string, string>>} more - what it finds in its environment beside ours
 * @returns {number} its exit code
 */
export function runTool(name, args = [], stdio = 'inherit', more = {}) {
  return runNode(tools[name], args, stdio, more);
}

/**
 * Runs one of the tools above beside others: what it says is told when it has ended.
 *
 * @param {keyof typeof tools} name
 * @param {readonly string[]} args
 * @returns {Promise<number>} its exit code; 70 where it was stopped by a signal or could not start
 */
export function runToolBeside(name, args = []) {
  return new Promise((tell) => {
    const tool = spawn(process.execPath, [join(root, tools[name]), ...args], {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    /** @type {Buffer[]} */
    const said = [];
    tool.stdout.on('data', (part) => said.push(part));
    tool.stderr.on('data', (part) => said.push(part));
    tool.on('error', (error) => said.push(Buffer.from(`${error.message}\n`)));
    tool.on('close', (code) => {
      process.stdout.write(Buffer.concat(said));
      tell(code ?? 70);
    });
  });
}
