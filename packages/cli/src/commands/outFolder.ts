import { mkdir, stat } from 'node:fs/promises';
import { english } from '@eavewell/words';
import { WrongUse } from '../exitCodes.ts';

const { trouble } = english.commandLine;

function reasonOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}

/** Makes the folder for the results, before any work is done for them. */
export async function makeOutFolder(path: string): Promise<void> {
  const found = await stat(path).catch(() => null);
  if (found && !found.isDirectory()) throw new WrongUse(trouble.outIsFile(path));
  try {
    await mkdir(path, { recursive: true });
  } catch (error) {
    throw new WrongUse(trouble.cannotWrite(path, `${reasonOf(error)}, ${trouble.noRoom}`));
  }
}
