import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** The packages a design follows from, but for this one. */
const parts = ['engine', 'tables', 'formats', 'report', 'words'] as const;

let known: Promise<string> | null = null;

/**
 * Which program is this, to the letter? Two builds of one version number may judge differently; what was kept by the one is not
 * used by the other.
 *
 * @returns a hash of the code that judges [text]
 * @definition ours: docs/decisions/0115-designs-carried-over.md
 */
export function programBuild(): Promise<string> {
  known ??= readBuild();
  return known;
}

async function readBuild(): Promise<string> {
  const { resolve } = createRequire(import.meta.url);
  const hash = createHash('sha256');
  for (const part of parts) {
    const folder = dirname(resolve(`@eavewell/${part}`));
    const names = (await readdir(folder, { recursive: true })).filter((name) => /\.(?:js|ts)$/.test(name)).sort();
    for (const name of names) hash.update(name).update(await readFile(join(folder, name)));
  }
  return hash.digest('base64url').slice(0, 16);
}
