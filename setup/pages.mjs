import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root, runTool } from './run.mjs';

/** What the pages are made of, beside what is in node_modules: workspace packages are taken from their sources. */
const madeOf = ['packages', 'package-lock.json'];

/**
 * Builds the pages for people into packages/app/dist, where what they are made of is newer than what is there.
 *
 * @returns {number} 0 where they are there and fresh
 */
export function buildPages() {
  const built = join(root, 'packages/app/dist/index.html');
  const when = existsSync(built) ? statSync(built).mtimeMs : 0;
  if (madeOf.every((path) => newest(join(root, path)) < when)) return 0;
  // Tests name themselves in NODE_ENV, and libraries would come with what they carry for people who write programs.
  return runTool('vite', ['build', 'packages/app', '--logLevel', 'warn'], 'inherit', { NODE_ENV: 'production' });
}

/** When the newest file of a folder was written [ms]; what was built or installed does not count. @param {string} path @returns {number} */
function newest(path) {
  if (!statSync(path).isDirectory()) return statSync(path).mtimeMs;
  const inside = readdirSync(path).filter((name) => !/^(dist|node_modules|.*\.tsbuildinfo|.*\.test\.tsx?)$/.test(name));
  return Math.max(0, ...inside.map((name) => newest(join(path, name))));
}
