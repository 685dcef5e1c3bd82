import { open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { makeFolder } from './makeFolder.ts';

/**
 * Writes a file so that a reader finds the old one or the new one, never half of it: under another name first, then renamed.
 *
 * @param path - where it is to stand [text]
 * @param content - what it is to hold [text or byte]
 * @definition ours
 */
export async function writeFileWhole(path: string, content: string | Uint8Array): Promise<void> {
  await makeFolder(dirname(path));
  const unfinished = `${path}.${process.pid}.unfinished`;
  try {
    const file = await open(unfinished, 'w');
    try {
      await file.writeFile(content, 'utf8');
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(unfinished, path);
  } catch (error) {
    await rm(unfinished, { force: true });
    throw error;
  }
}
