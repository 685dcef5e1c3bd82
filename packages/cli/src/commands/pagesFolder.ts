import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** The folder the pages for people were built into; null where they are not built. */
export function pagesFolder(): string | null {
  const folder = join(dirname(createRequire(import.meta.url).resolve('@eavewell/app/package.json')), 'dist');
  return existsSync(join(folder, 'index.html')) ? folder : null;
}
