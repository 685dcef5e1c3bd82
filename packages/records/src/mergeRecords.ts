import { type ChangeRecord, compareRecords, type RowChange, recordName } from './changeRecord.ts';
import { rowChange } from './readRecord.ts';

/** Two sets of records made one. */
export interface RecordsMerged {
  /** In their order. */
  readonly records: readonly ChangeRecord[];
  /** Names that stand for two different records: two devices share a name, or a record was altered. The first set's is kept. */
  readonly differing: readonly string[];
  /** Numbers that are not there though later ones of their device are: records still on their way. */
  readonly missing: readonly { readonly device: string; readonly numbers: readonly number[] }[];
}

/** How many missing numbers of one device are told at most. Ours. */
const mostTold = 100;

/**
 * Which records are known once these are added to those? The same whichever set is added to which, and however often.
 *
 * @param ours - records known
 * @param others - records that came
 * @returns all of them in their order, and what is wrong between them
 * @law commutative, associative and idempotent, but for records that differ under one name
 * @definition ours: docs/decisions/0100-change-records.md
 */
export function mergeRecords(ours: readonly ChangeRecord[], others: readonly ChangeRecord[]): RecordsMerged {
  const known = new Map<string, ChangeRecord>();
  const differing = new Set<string>();
  for (const record of [...ours, ...others]) {
    const name = recordName(record);
    const before = known.get(name);
    if (before === undefined) known.set(name, record);
    else if (recordText(before) !== recordText(record)) differing.add(name);
  }
  const records = [...known.values()].sort(compareRecords);
  return { records, differing: [...differing].sort(), missing: missingNumbers(records) };
}

/**
 * A record as one line of text: the same for the same record, whatever the order in which its fields were set.
 *
 * @param record - the record
 * @returns JSON with the fields of every object in the order of their names [text]
 * @law two records are the same exactly where their texts are
 * @definition ours
 */
export function recordText(record: ChangeRecord): string {
  return orderedText(record);
}

/** JSON with the fields of every object in the order of their names. */
function orderedText(whole: unknown): string {
  return JSON.stringify(whole, (_, value: unknown) =>
    value !== null && typeof value === 'object' && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}

/**
 * Changes as they stand in the text of a record, so that a thread can write them and the record is put together around them.
 *
 * @param changes - the changes
 * @returns them as JSON [text]; null where one of them is none, or two are of one row
 * @law recordTextOf with it is recordText of the record with these changes
 * @definition ours
 */
export function changesText(changes: readonly RowChange[]): string | null {
  const names = new Set<string>();
  const pieces: string[] = [];
  for (const change of changes) {
    if (!rowChange.safeParse(change).success) return null;
    names.add(`${change.table}/${change.key}`);
    pieces.push(orderedText(change));
  }
  return names.size === changes.length ? `[${pieces.join(',')}]` : null;
}

/**
 * The text of a record around changes that were written already.
 *
 * @param head - the record without its changes
 * @param changes - as changesText gives them [text]
 * @returns what recordText gives of the whole [text]
 * @definition ours
 */
export function recordTextOf(head: Omit<ChangeRecord, 'changes'>, changes: string): string {
  const [before, after] = orderedText({ ...head, changes: 0 }).split('"changes":0,');
  return `${before}"changes":${changes},${after}`;
}

function missingNumbers(records: readonly ChangeRecord[]): RecordsMerged['missing'] {
  const byDevice = new Map<string, Set<number>>();
  for (const { device, number } of records) {
    const numbers = byDevice.get(device) ?? new Set();
    byDevice.set(device, numbers.add(number));
  }
  return [...byDevice]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([device, numbers]) => {
      const absent: number[] = [];
      const last = Math.max(...numbers);
      for (let number = 1; number < last && absent.length < mostTold; number++)
        if (!numbers.has(number)) absent.push(number);
      return absent.length === 0 ? [] : [{ device, numbers: absent }];
    });
}
