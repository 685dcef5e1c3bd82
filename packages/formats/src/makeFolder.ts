import { mkdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * Makes a folder and those above it, one step at a time. Node's own `recursive` runs on without end where a file system
 * says "not there" to a folder that cannot be made in it (seen under /proc, Node 20).
 *
 * @param path - the folder [text]
 * @returns when it stands; rejects with the disk's own error where it cannot be made
 * @definition ours
 */
export async function makeFolder(path: string): Promise<void> {
  const missingParent = await makeOne(path);
  if (!missingParent) return;
  await makeFolder(dirname(path));
  const stillMissing = await makeOne(path);
  if (stillMissing) throw stillMissing;
}

/** Makes the folder alone; gives the error where the one above it is missing. */
async function makeOne(path: string): Promise<Error | null> {
  try {
    await mkdir(path);
    return null;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' && dirname(path) !== path) return error as Error;
    if (code === 'EEXIST' && (await stat(path)).isDirectory()) return null;
    throw error;
  }
}
