import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** Where the pages are built into, from the repository's folder. */
export const builtPages = 'packages/app/dist';

/**
 * A file of the built pages.
 *
 * @typedef {{ file: string, plain_bytes: number, gzip_bytes: number }} PageFile
 */

/** Kinds of files that are compressed in themselves; for them both sizes are the same. */
const isPacked = (/** @type {string} */ file) => /\.(?:woff2?|png|webp|pmtiles)$/.test(file);

/**
 * Every file of the built pages with its size as it stands and as gzip sends it (level 6), the largest first.
 *
 * @param {string} folder
 * @returns {readonly PageFile[]}
 */
export function pageFiles(folder) {
  if (!existsSync(folder)) throw new Error('The pages are not built. Type:  npm run build');
  /** @type {(within: string) => string[]} */
  const walk = (within) =>
    readdirSync(join(folder, within)).flatMap((name) => {
      const path = within === '' ? name : `${within}/${name}`;
      return statSync(join(folder, path)).isDirectory() ? walk(path) : [path];
    });
  const sized = walk('').map((file) => {
    const bytes = readFileSync(join(folder, file));
    return { file, plain_bytes: bytes.length, gzip_bytes: isPacked(file) ? bytes.length : gzipSync(bytes).length };
  });
  return sized.sort((a, b) => b.gzip_bytes - a.gzip_bytes);
}

/**
 * Which of the files a browser asked for. An address of the pages is index.html.
 *
 * @param {readonly PageFile[]} files
 * @param {Iterable<string>} addresses - what the browser asked for; what belongs to the API is passed over
 * @returns {readonly PageFile[]}
 */
export function filesAskedFor(files, addresses) {
  const paths = new Set([...addresses].map((address) => new URL(address).pathname.slice(1)));
  const isPage = [...paths].some((path) => path === '' || path === 'programmes' || path.startsWith('p/'));
  return files.filter(({ file }) => paths.has(file) || (isPage && file === 'index.html'));
}

/** The name of a file without the hash the build gave it. @param {string} file */
const plainName = (file) => file.replace(/^assets\//, '').replace(/-[\w-]{8}(?=\.\w+$)/, '');

/** A list of files for a person: kB of 1,000 bytes. @param {readonly PageFile[]} files */
export function sizeLines(files) {
  const kB = (/** @type {number} */ bytes) => (bytes / 1000).toFixed(1).padStart(8);
  const sum = (/** @type {'plain_bytes' | 'gzip_bytes'} */ key) => files.reduce((all, file) => all + file[key], 0);
  const lines = files.map((one) => `${kB(one.gzip_bytes)} kB gzip ${kB(one.plain_bytes)} kB  ${plainName(one.file)}`);
  return [...lines, `${kB(sum('gzip_bytes'))} kB gzip ${kB(sum('plain_bytes'))} kB  in all (${files.length} files)`];
}
