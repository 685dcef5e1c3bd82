import type { Mend } from './lookTask.ts';
import type { Accepted, ColumnSaid, SheetSaid } from './matchedColumns.ts';
import type { SentFile } from './sentFiles.ts';
import type { TakenBack } from './toldStepsBack.ts';

/** What somebody does to files that wait. */
export type Step =
  | { readonly kind: 'mend'; readonly mend: Mend }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' }
  | { readonly kind: 'columns'; readonly columns: readonly ColumnSaid[]; readonly sheets: readonly SheetSaid[] }
  | { readonly kind: 'stepsBack'; readonly taken: TakenBack }
  | { readonly kind: 'place'; readonly name: string; readonly table: string; readonly gaugeId: string | null };

/** What of an import somebody decided. */
export interface Decided {
  readonly sent: readonly SentFile[];
  readonly mends: readonly Mend[];
  readonly undone: readonly Mend[];
  readonly accepted: Accepted;
  readonly taken: TakenBack;
}

/** What is decided after a step; null where there is nothing to take back. */
export function decidedBy(before: Decided, step: Step): Decided | null {
  const { mends, undone, accepted, sent } = before;
  if (step.kind === 'mend') return { ...before, mends: [...mends, step.mend], undone: [] };
  if (step.kind === 'undo') {
    const last = mends.at(-1);
    return last ? { ...before, mends: mends.slice(0, -1), undone: [...undone, last] } : null;
  }
  if (step.kind === 'redo') {
    const last = undone.at(-1);
    return last ? { ...before, mends: [...mends, last], undone: undone.slice(0, -1) } : null;
  }
  if (step.kind === 'stepsBack') return { ...before, taken: step.taken };
  if (step.kind === 'place') {
    const placed = sent.map((one) =>
      one.name === step.name ? { ...one, table: step.table, gaugeId: step.gaugeId } : one,
    );
    return { ...before, sent: placed };
  }
  const columns = [
    ...accepted.columns.filter((old) => !step.columns.some((one) => isSameHeader(old, one))),
    ...step.columns,
  ];
  const isSameSheet = (a: SheetSaid, b: SheetSaid) => a.workbook === b.workbook && a.sheet === b.sheet;
  const sheets = [
    ...accepted.sheets.filter((old) => !step.sheets.some((one) => isSameSheet(old, one))),
    ...step.sheets,
  ];
  return { ...before, accepted: { columns, sheets } };
}

function isSameHeader(a: ColumnSaid, b: ColumnSaid): boolean {
  return a.workbook === b.workbook && a.file === b.file && a.header === b.header;
}
