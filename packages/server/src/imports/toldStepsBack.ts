import { type ChangeRecord, changesWithout, type RowChange, stepsBack } from '@eavewell/records';

/** Cells and rows by name, or all of them. */
export type TakenBack =
  | 'all'
  | readonly { readonly table: string; readonly key: string; readonly column: string | null }[];

/** A cell, or a row, that was changed here since: the file has what stood before. */
export interface StepBackTold {
  readonly table: string;
  readonly key: string;
  readonly column: string | null;
  readonly stands: string | null;
  readonly older: string | null;
  readonly by: string;
  readonly at: string;
  /** Is the file's to be taken all the same? */
  readonly isTaken: boolean;
}

/** Tables that say how others are kept: nobody mends them by hand. */
const notByHand = ['headers', 'files'];

/**
 * The changes without those that would only bring back what was changed here since, but for what is to be taken all the same.
 *
 * @param known - the records the files are compared with; none for an export, which is compared with its own history
 * @param taken - what is to be as the files have it
 * @param changes - what the files would change
 */
export function withoutStepsBack(
  known: readonly ChangeRecord[],
  taken: TakenBack,
  changes: readonly RowChange[],
): { readonly back: readonly StepBackTold[]; readonly changes: readonly RowChange[] } {
  const found = stepsBack(known, changes);
  const nameOf = ({ table, key, column }: { table: string; key: string; column: string | null }) =>
    JSON.stringify([table, key, column]);
  const wanted = new Set(taken === 'all' ? [] : taken.map(nameOf));
  const back = found
    .filter(({ table }) => !notByHand.includes(table))
    .map(({ since: { by, at }, ...one }) => ({ ...one, by, at, isTaken: taken === 'all' || wanted.has(nameOf(one)) }));
  const left = back.filter(({ isTaken }) => !isTaken);
  return { back, changes: changesWithout(changes, left) };
}
