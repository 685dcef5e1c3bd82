import { type ChangeRecord, compareRecords, recordName } from './changeRecord.ts';

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
  return JSON.stringify(record, (_, value: unknown) =>
    value !== null && typeof value === 'object' && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
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
