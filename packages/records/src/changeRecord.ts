/** Cells of a row by column, as text. An empty cell is not there. */
export type Cells = Readonly<Record<string, string>>;

/** Cells that a change touches: null is an empty cell. */
export type ChangedCells = Readonly<Record<string, string | null>>;

/** A row of a table: its key cells, joined by `rowKey`. */
export interface RowName {
  readonly table: string;
  readonly key: string;
}

/** A row that comes into being. */
export interface RowAdded extends RowName {
  readonly kind: 'added';
  readonly after: Cells;
}

/** Cells of a row that change, and what stood there before: the two have the same columns. */
export interface RowEdited extends RowName {
  readonly kind: 'edited';
  readonly before: ChangedCells;
  readonly after: ChangedCells;
}

/** A row that goes, with all it held. */
export interface RowRemoved extends RowName {
  readonly kind: 'removed';
  readonly before: Cells;
}

export type RowChange = RowAdded | RowEdited | RowRemoved;

/** Where a change comes from. */
export const recordSources = ['form', 'import', 'visit', 'undo', 'redo'] as const;

/** One change of the facts, made by one person in one go. It is written once and never altered. */
export interface ChangeRecord {
  /** The device it was made on, and its number among that device's records, from 1 without a gap: together its name. */
  readonly device: string;
  readonly number: number;
  /** Greater than that of every record its maker knew of. Not a time: the clocks of phones are wrong. */
  readonly clock: number;
  /** The instant by the device's clock, ISO 8601 in UTC, and its offset from UTC there. */
  readonly at: string;
  readonly offset_min: number;
  readonly by: string;
  readonly source: { readonly kind: (typeof recordSources)[number]; readonly name: string | null };
  /** The name of the record this one takes back, or, for a redo, of the undo it takes back. */
  readonly takesBack: string | null;
  readonly changes: readonly RowChange[];
}

/**
 * What is a record called?
 *
 * @param record - device [text] and number [count]
 * @returns its name [text], the only one of that name
 * @definition ours: docs/decisions/0100-change-records.md
 * @example
 * recordName({ device: 'office', number: 7 }) // → 'office.7'
 */
export function recordName({ device, number }: Pick<ChangeRecord, 'device' | 'number'>): string {
  return `${device}.${number}`;
}

/**
 * What names a row within its table? Its key cells in the table's order; an id may hold no slash, so they stay apart.
 *
 * @param keyCells - the cells of the key [text]
 * @returns the key [text]
 * @definition ours
 * @example
 * rowKey(['KAL-03', 'roof1']) // → 'KAL-03/roof1'
 */
export function rowKey(keyCells: readonly string[]): string {
  return keyCells.join('/');
}

/**
 * Which of two records comes first? The lower clock; at one clock neither knew of the other, and the device's name decides,
 * so that every device puts the same records into the same order.
 *
 * @param a - a record
 * @param b - another
 * @returns under 0 where a comes first, above 0 where b does, 0 for one and the same [number]
 * @law a total order: whatever the order of arrival, sorting gives one sequence
 * @source lamport-1978, section "Ordering the Events Totally"
 */
export function compareRecords(
  a: Pick<ChangeRecord, 'clock' | 'device' | 'number'>,
  b: Pick<ChangeRecord, 'clock' | 'device' | 'number'>,
): number {
  if (a.clock !== b.clock) return a.clock - b.clock;
  if (a.device !== b.device) return a.device < b.device ? -1 : 1;
  return a.number - b.number;
}
