import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import type { Context } from './context.ts';
import { tellProblems } from './tellProblems.ts';

const { columns, serve } = spoken.commandLine;

/** Where a command finds its programme: a folder of tables, or a data folder. */
export interface FromData {
  readonly data?: string;
  readonly programme?: string;
}

/** A programme as a folder of tables. */
export interface FolderFound {
  readonly path: string;
  /** How it was named on the command line, to be named so again. */
  readonly shown: string;
  /** The surroundings of the command, which tell of it as it was named. */
  readonly context: Context;
}

/** Runs a command on a folder of tables, or on that which a programme of a data folder comes to; what cannot be opened is told. */
export async function inFolder(
  folder: string | undefined,
  { data, programme }: FromData,
  context: Context,
  work: (found: FolderFound) => Promise<ExitCode>,
): Promise<ExitCode> {
  if ((folder === undefined) === (data === undefined)) throw new WrongUse(serve.folderOrData);
  if (data === undefined) return work({ path: folder!, shown: folder!, context });
  const room = await mkdtemp(join(tmpdir(), 'eavewell-data-'));
  try {
    const path = join(room, 'programme');
    // Who names a folder of tables needs no server.
    const { writeKept } = await import('@eavewell/server');
    const written = await writeKept(data, programme ?? null, path);
    if (!written.ok) {
      tellProblems(written.problems, context.around);
      return exitCodes.blocker;
    }
    if (written.value !== null) throw new WrongUse(serve.programmesThere(written.value.ids));
    const shown = columns.dataTyped(data, programme ?? null);
    return await work({ path, shown, context: { ...context, shownAs: shown } });
  } finally {
    await rm(room, { recursive: true, force: true });
  }
}

/** Refuses options that would write into the folder, where there is none to write into. */
export function refuseWithData({ data }: FromData, writing: Readonly<Record<string, unknown>>): void {
  const [option] = Object.entries(writing).find(([, value]) => value !== undefined && value !== false) ?? [];
  if (data !== undefined && option !== undefined) throw new WrongUse(serve.notWithData(option));
}
