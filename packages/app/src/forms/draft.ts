import type { RowChange } from '../api/client.ts';

/** A row as the programme has it. */
export interface RowNow {
  readonly table: string;
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

/** A field a person has touched: what she typed, which of two numbers she meant, and what stood there when she began. */
export interface DraftCell {
  readonly typed: string;
  readonly chosen: number | null;
  readonly seen: string | null;
}

/** A row a person has touched. One that is added has a name of the draft's own until it is saved. */
export interface DraftRow {
  readonly table: string;
  readonly key: string;
  readonly state: 'added' | 'edited' | 'removed';
  readonly cells: Readonly<Record<string, DraftCell>>;
  /** The form put it there, and nobody has typed into it: it is no change yet. */
  readonly isOffered?: boolean;
  /** What the sending of it is called, from when it was sent until something else is typed: sent once more it is the same entry. */
  readonly sentAs?: string;
}

/** What was typed into one form and is not saved yet. */
export interface Draft {
  readonly beganAt: string | null;
  readonly rows: Readonly<Record<string, DraftRow>>;
}

export type { RowChange };

export const emptyDraft: Draft = { beganAt: null, rows: {} };

/** Names a row within a draft. */
export const rowId = ({ table, key }: Pick<RowNow, 'table' | 'key'>): string => `${table}/${key}`;

/** What a person does to a form. */
export type DraftStep =
  | { readonly kind: 'type'; readonly row: RowName; readonly column: string; readonly cell: DraftCell }
  | {
      readonly kind: 'add';
      readonly table: string;
      readonly cells: Readonly<Record<string, string>>;
      /** The form offers it; nobody asked for it. */
      readonly isOffered?: boolean;
    }
  | { readonly kind: 'remove'; readonly row: RowName; readonly isNew: boolean }
  | { readonly kind: 'leaveRow'; readonly row: RowName }
  | { readonly kind: 'send'; readonly row: RowName; readonly sendId: string }
  | { readonly kind: 'see'; readonly row: RowName; readonly column: string; readonly present: string | null }
  | { readonly kind: 'leaveCell'; readonly row: RowName; readonly column: string }
  | { readonly kind: 'letGo' }
  | { readonly kind: 'take'; readonly draft: Draft };

export type RowName = Pick<RowNow, 'table' | 'key'>;

/**
 * The draft after a step. It is plain data, so that it can be kept in the browser until it is saved or let go.
 *
 * @param draft - before
 * @param step - what was done
 * @param now - the moment, for a draft that begins [ISO 8601]
 */
export function draftAfter(draft: Draft, step: DraftStep, now: string): Draft {
  if (step.kind === 'letGo') return emptyDraft;
  if (step.kind === 'take') return step.draft;
  const rows = rowsAfter(draft.rows, step);
  const all = Object.values(rows);
  if (all.length === 0) return emptyDraft;
  return { beganAt: all.every(({ isOffered }) => isOffered === true) ? null : (draft.beganAt ?? now), rows };
}

type RowStep = Exclude<DraftStep, { kind: 'letGo' | 'take' }>;

function rowsAfter(rows: Draft['rows'], step: RowStep): Draft['rows'] {
  switch (step.kind) {
    case 'add': {
      const key = `+${1 + Object.values(rows).filter(({ state }) => state === 'added').length}-${step.table}`;
      const cells = Object.entries(step.cells).map(([column, typed]) => [column, { typed, chosen: null, seen: null }]);
      const offered = step.isOffered === true ? { isOffered: true } : {};
      const row: DraftRow = { table: step.table, key, state: 'added', cells: Object.fromEntries(cells), ...offered };
      return {
        ...rows,
        [freeId(rows, rowId(row))]: { ...row, key: freeId(rows, rowId(row)).slice(step.table.length + 1) },
      };
    }
    case 'remove':
      if (step.isNew) return without(rows, rowId(step.row));
      return { ...rows, [rowId(step.row)]: { ...step.row, state: 'removed', cells: {} } };
    case 'leaveRow':
      return without(rows, rowId(step.row));
    case 'send': {
      const row = rows[rowId(step.row)];
      return row === undefined ? rows : { ...rows, [rowId(step.row)]: { ...row, sentAs: step.sendId } };
    }
    default:
      return cellsAfter(rows, step);
  }
}

function cellsAfter(rows: Draft['rows'], step: Extract<RowStep, { column: string }>): Draft['rows'] {
  const id = rowId(step.row);
  const {
    isOffered: _,
    sentAs: __,
    ...row
  } = rows[id] ?? { ...step.row, state: 'edited' as const, cells: {}, isOffered: false };
  if (step.kind === 'type') return { ...rows, [id]: { ...row, cells: { ...row.cells, [step.column]: step.cell } } };
  const cell = row.cells[step.column];
  if (cell === undefined) return rows;
  if (step.kind === 'see')
    return { ...rows, [id]: { ...row, cells: { ...row.cells, [step.column]: { ...cell, seen: step.present } } } };
  const cells = without(row.cells, step.column);
  return Object.keys(cells).length === 0 ? without(rows, id) : { ...rows, [id]: { ...row, cells } };
}

/** A name that no row of the draft has. */
function freeId(rows: Draft['rows'], wanted: string): string {
  let id = wanted;
  while (rows[id] !== undefined) id = `${id}x`;
  return id;
}

function without<T>(all: Readonly<Record<string, T>>, name: string): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(all).filter(([other]) => other !== name));
}
