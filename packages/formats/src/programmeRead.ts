import { defaultSettings, noKit, noRollout, type Problem, type ProgrammeFacts } from '@eavewell/engine';
import type { NotUsed } from '@eavewell/tables';
import type { Kept } from './keepFiles.ts';

/** A file that was read, and how many of its rows were used. */
export interface FileUse {
  readonly file: string;
  /** Rows with anything in them. */
  readonly rows: number;
  readonly used: number;
}

/** A programme as it was read: what the engine is told, everything found wrong, everything not used. */
export interface ProgrammeRead {
  readonly facts: ProgrammeFacts;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly files: readonly FileUse[];
  /** The files as they stood, for tablesAsRead; only where that was asked for. */
  readonly kept?: Kept;
}

/** What comes of a programme that cannot be read at all. */
export function nothingRead(problem: Problem): ProgrammeRead {
  const facts = {
    settings: defaultSettings,
    sites: [],
    gauges: [],
    parts: [],
    prices: [],
    kit: noKit,
    rollout: noRollout,
  };
  return { facts, problems: [problem], notUsed: [], files: [] };
}

/** Rows of a file without those that were left out whole. */
export function usedRows(file: string, rows: number, notUsed: readonly NotUsed[]): number {
  const left = new Set<number>();
  for (const listed of notUsed) if (listed.file === file && listed.column === undefined) left.add(listed.row);
  return rows - left.size;
}
