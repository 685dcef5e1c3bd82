import { designReport } from '@eavewell/tables';
import { z } from 'zod';

/** A problem, as the report has it. */
export const problem = designReport.shape.problems.element;
export const notUsed = designReport.shape.notUsed.element;

export const by = z.string().trim().min(1).max(200).describe('Who makes the change.');
export const version = z.int().describe('Grows with every change.');

export const programmeId = z.strictObject({ programmeId: z.string().regex(/^[A-Za-z0-9_-]{1,64}$/) });

export const byWhom = z.strictObject({ by });
export const changed = z.strictObject({
  version,
  record: z.string().nullable().describe('The name of the record that was made; null where nothing changed.'),
  problems: z.array(problem),
});
