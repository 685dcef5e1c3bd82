import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ProgrammeRead } from '@eavewell/formats';
import { readKept } from '@eavewell/server';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import type { Context } from './context.ts';
import { readFolder } from './readFolder.ts';
import { tellProblems } from './serve.ts';

const { serve } = spoken.commandLine;

/** Where a command finds its programme: a folder of tables, or a data folder. */
export interface FromData {
  readonly data?: string;
  readonly programme?: string;
}

/** Reads a programme from a folder of tables or from a data folder; null where the data folder cannot be opened, which is told. */
export async function readFolderOrData(
  folder: string | undefined,
  { data, programme }: FromData,
  context: Context,
): Promise<ProgrammeRead | null> {
  if ((folder === undefined) === (data === undefined)) throw new WrongUse(serve.folderOrData);
  if (data === undefined) return readFolder(folder!, context);
  const room = await mkdtemp(join(tmpdir(), 'eavewell-check-'));
  try {
    const read = await readKept(data, programme ?? null, join(room, 'programme'));
    if (!read.ok) {
      tellProblems(read.problems, context.around);
      return null;
    }
    if ('ids' in read.value) throw new WrongUse(serve.programmesThere(read.value.ids));
    return read.value;
  } finally {
    await rm(room, { recursive: true, force: true });
  }
}
