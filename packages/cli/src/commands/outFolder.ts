import { stat } from 'node:fs/promises';
import { makeFolder } from '@eavewell/formats';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';

const { trouble } = spoken.commandLine;

/** Makes the folder for the results, before any work is done for them. */
export async function makeOutFolder(path: string): Promise<void> {
  if (path === '') throw new WrongUse(trouble.folderUnnamed);
  const found = await stat(path).catch(() => null);
  if (found && !found.isDirectory()) throw new WrongUse(trouble.outIsFile(path));
  await makeFolder(path);
}
