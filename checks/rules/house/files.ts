import { readdirSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';

/** Folders that hold what is made or installed, and what a person's own runs leave behind. */
const notOurs = new Set(['node_modules', 'dist', '.git', 'coverage', 'out', 'demo-programme', 'demo-data']);

/** Every file of a tree that is written by hand or committed, from its folder, with forward slashes. */
export function filesOf(folder: string): readonly string[] {
  const found: string[] = [];
  const walk = (within: string) => {
    for (const entry of readdirSync(join(folder, within), { withFileTypes: true })) {
      const path = within === '' ? entry.name : `${within}/${entry.name}`;
      if (notOurs.has(entry.name)) continue;
      if (entry.isDirectory()) walk(path);
      else if (statSync(join(folder, path)).isFile() && !path.endsWith('.tsbuildinfo')) found.push(path);
    }
  };
  walk('');
  return found.map((path) => path.split(sep).join('/')).sort();
}

const emptyWords = ['util', 'utils', 'helper', 'helpers', 'common', 'misc', 'core', 'shared', 'manager'];

/** Files and folders named for nothing in particular. */
export function emptyNames(files: readonly string[]): readonly string[] {
  return files.filter((path) =>
    path.split('/').some((part) => {
      const words = part.split(/[.\-_]|(?<=[a-z0-9])(?=[A-Z])/).map((word) => word.toLowerCase());
      return words.some((word) => emptyWords.includes(word));
    }),
  );
}
