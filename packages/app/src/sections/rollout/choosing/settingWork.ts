import type { RowChange, RowNow } from '../../../forms/draft.ts';
import { mostOfOneRecord } from '../../../forms/setForMany.ts';

/** What is agreed with a village and bears on when it is served: columns of the table of sites. */
export const workColumns = ['agreedOn', 'readyFrom', 'finishBy', 'priority_factor', 'priorityReason'] as const;
export type WorkColumn = (typeof workColumns)[number];

/** Cells that are to stand in each of the rows; null is empty. Columns that are not named stay as they are. */
export type WorkCells = Partial<Readonly<Record<WorkColumn, string | null>>>;

/**
 * Several cells set alike in many rows: a change for each row that has another, and more than one record may hold are parted.
 *
 * @param rows - the rows as they stand
 */
export function settingWork(rows: readonly RowNow[], cells: WorkCells): readonly (readonly RowChange[])[] {
  const changes = rows.flatMap(({ table, key, cells: now }): readonly RowChange[] => {
    const changed = Object.entries(cells).filter(([column, cell]) => (now[column] ?? null) !== cell);
    if (changed.length === 0) return [];
    const before = Object.fromEntries(changed.map(([column]) => [column, now[column] ?? null]));
    return [{ kind: 'edited', table, key, before, after: Object.fromEntries(changed) }];
  });
  const parts = Math.ceil(changes.length / mostOfOneRecord);
  return Array.from({ length: parts }, (_, i) => changes.slice(i * mostOfOneRecord, (i + 1) * mostOfOneRecord));
}

/** What stands against setting cells in rows. */
export interface WorkFaults {
  /** A village comes before others, and nobody says why. */
  readonly isReasonWanted: boolean;
  /** Rows that would have to be finished before they are ready. */
  readonly turnedRound_count: number;
}

/** What is wrong with what is about to be set: every priority has its reason, and no site is to be finished before it is ready. */
export function workFaults(rows: readonly RowNow[], cells: WorkCells): WorkFaults {
  const after = rows.map((row): Readonly<Record<string, string | null>> => ({ ...row.cells, ...cells }));
  const is = (cell: string | null | undefined): cell is string => cell !== undefined && cell !== null && cell !== '';
  const isSetting = 'priority_factor' in cells || 'priorityReason' in cells;
  return {
    isReasonWanted:
      isSetting &&
      after.some(
        ({ priority_factor: factor, priorityReason: reason }) => is(factor) && Number(factor) !== 1 && !is(reason),
      ),
    turnedRound_count:
      'readyFrom' in cells || 'finishBy' in cells
        ? after.filter(({ readyFrom, finishBy }) => is(readyFrom) && is(finishBy) && finishBy < readyFrom).length
        : 0,
  };
}
