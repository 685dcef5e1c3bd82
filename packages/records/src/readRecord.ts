import { z } from 'zod';
import { type ChangeRecord, recordSources } from './changeRecord.ts';

/** Ids of programmes, devices and tables: they may become part of a path. */
const name = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/);
/** A key is the cells of a row's key, joined by `/`; a cell may be empty. */
const key = z.string().max(1000);
const cells = z.record(z.string().min(1), z.string().min(1));
const changed = z.record(z.string().min(1), z.string().min(1).nullable());

/** A change of one row, as it may come from outside. */
export const rowChange = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('added'), table: name, key, after: cells }),
  z
    .strictObject({ kind: z.literal('edited'), table: name, key, before: changed, after: changed })
    .refine(({ before, after }) => Object.keys(before).sort().join('\n') === Object.keys(after).sort().join('\n')),
  z.strictObject({ kind: z.literal('removed'), table: name, key, before: cells }),
]);

/** The fields of a record, as it may come from outside. */
export const recordFields = z.strictObject({
  device: name,
  number: z.int().min(1),
  clock: z.int().min(1),
  at: z.iso.datetime(),
  offset_min: z.int().min(-1440).max(1440),
  by: z.string().min(1).max(500),
  source: z.strictObject({ kind: z.enum(recordSources), name: z.string().max(500).nullable() }),
  takesBack: z.string().max(200).nullable(),
  changes: z.array(rowChange),
});

const schema: z.ZodType<ChangeRecord> = recordFields.refine(
  ({ changes }) => new Set(changes.map((one) => `${one.table}/${one.key}`)).size === changes.length,
);

/**
 * Is this a record? Nothing is mended: what is not wholly a record is none.
 *
 * @param value - what was read, such as a line of records.jsonl parsed
 * @returns the record, or null; a row may stand in it once only, and an edit names the same columns before and after
 * @definition ours: docs/decisions/0100-change-records.md
 */
export function readRecord(value: unknown): ChangeRecord | null {
  const read = schema.safeParse(value);
  return read.success ? read.data : null;
}
