import { join } from 'node:path';
import { type Database, databaseProblem, type ProgrammeEntry, recordsBeside } from '@eavewell/database';
import type { Problem } from '@eavewell/engine';
import { compareRecords, foldRecords, recordProblem } from '@eavewell/records';
import { Stopped, type Work } from '@eavewell/work';
import { exportsFolder, keepExport, keptIn } from './exportFolder.ts';
import { exportZip } from './exportZip.ts';
import type { Now, OpenProgramme } from './openProgramme.ts';

/** After so many changes since the last export, another is kept. Ours. */
const changesBetween = 50;

/** What is asked of the thread that keeps an export. */
export interface KeepAsked {
  readonly folder: string;
  readonly entry: ProgrammeEntry;
  readonly at: string;
}

/** How many records were exported; or the code of the problem that stopped it. */
export type Kept = { readonly version: number } | { readonly reason: string };

/** Keeps an export of what is on the disk: read from there, so that what is kept is what would be read again. */
export async function keepExportTask({ folder, entry, at }: KeepAsked): Promise<Kept> {
  const found = await recordsBeside(folder, entry.programmeId);
  if (!found.ok) return { reason: found.problems[0]!.code };
  const records = [...found.value].sort(compareRecords);
  if (records.length === 0) return { version: 0 };
  try {
    await keepExport(folder, entry, at, records.length, exportZip({ facts: foldRecords(records), records }));
    return { version: records.length };
  } catch (error) {
    return { reason: databaseProblem(error, folder).code };
  }
}

/** What it is built of. */
export interface KeptExportsAsked {
  readonly database: Database;
  readonly work: Work;
  readonly folder: string;
  readonly now: Now;
  /** Told where an export could not be kept. */
  onProblem(problem: Problem): void;
  /** Told what is our own fault. */
  onFault(error: unknown): void;
}

/**
 * Keeps exports of the programmes in the data folder by itself: at the start of what is not exported yet, after an import, after every
 * so many changes, and at a clean end. In a thread; a programme is exported once at a time.
 */
export class KeptExports {
  private readonly asked: KeptExportsAsked;
  /** Records in the last export of each programme [count]. */
  private readonly exported = new Map<string, number>();
  private readonly running = new Map<string, Promise<void>>();
  private isEnding = false;

  constructor(asked: KeptExportsAsked) {
    this.asked = asked;
  }

  /** Exports what an earlier end of the program left without one; nobody waits for it. */
  async begin(): Promise<void> {
    for (const entry of await this.asked.database.programmes()) await this.keepIfBehind(entry, false);
  }

  /** Called after each change of a programme. */
  changed({ entry, records, version }: OpenProgramme): void {
    const since = version - (this.exported.get(entry.programmeId) ?? 0);
    const isImport = records.at(-1)?.source.kind === 'import';
    if (isImport || since >= changesBetween || since === version) void this.keepIfBehind(entry, false);
  }

  /** Exports what was changed since its last export, and is done when that is on the disk. */
  async close(): Promise<void> {
    this.isEnding = true;
    await Promise.all(this.running.values());
    for (const entry of await this.asked.database.programmes()) await this.keepIfBehind(entry, true);
  }

  private async keepIfBehind(entry: ProgrammeEntry, isAtEnd: boolean): Promise<void> {
    const { programmeId } = entry;
    const own = join(this.asked.folder, exportsFolder, programmeId);
    if (this.running.has(programmeId) || this.isEnding !== isAtEnd) return;
    const run = (async () => {
      if (!this.exported.has(programmeId)) this.exported.set(programmeId, (await keptIn(own))[0]?.version ?? 0);
      const count = await this.asked.database.recordCount(programmeId);
      if (count > this.exported.get(programmeId)!) await this.keep(entry);
    })().catch(this.asked.onFault);
    this.running.set(programmeId, run);
    await run;
    this.running.delete(programmeId);
  }

  private async keep(entry: ProgrammeEntry): Promise<void> {
    const { folder, now, work, onProblem } = this.asked;
    try {
      const input: KeepAsked = { folder, entry, at: now.at() };
      const kept = await work.start<Kept>('keepExport', input).result;
      if ('version' in kept) this.exported.set(entry.programmeId, kept.version);
      else onProblem(recordProblem('export.not_kept', {}, { value: entry.name, reason: kept.reason }));
    } catch (error) {
      if (!(error instanceof Stopped)) throw error;
    }
  }
}
