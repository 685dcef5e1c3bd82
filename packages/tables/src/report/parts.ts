import { z } from 'zod';

const isoForm = /^\d{4}-\d{2}-\d{2}$/;

/** A day, year-month-day. */
export const day = z.string().regex(isoForm).describe('A day, YYYY-MM-DD.');

/** The two ends of a range. */
export const range = z
  .strictObject({ low: z.number(), high: z.number() })
  .describe(
    'The likely range, in the unit of the figure beside it; how much of the doubt it holds is settings.range_fraction.',
  );

export const verdict = z
  .enum(['holds', 'tight', 'short', 'unknown'])
  .describe(
    'holds: meets the target over its whole range. tight: at the point value only. short: misses it. unknown: not enough facts, never a pass.',
  );

export const stationVerdict = z
  .enum(['holds', 'tight', 'short', 'unknown', 'notJudged'])
  .describe('A station not modelled yet is notJudged and does not count.');

/** Where something was found. */
export const place = z
  .strictObject({
    file: z.string().optional(),
    row: z.int().optional().describe('Counted as a spreadsheet does: the first line is row 1.'),
    column: z.string().optional(),
    cell: z.string().optional().describe('As a spreadsheet names it, such as D14; in workbooks.'),
    siteId: z.string().optional(),
    gaugeId: z.string().optional(),
    day: day.optional(),
  })
  .describe('Where it was found.');

/** A problem, as data and in words. */
export const problem = z
  .strictObject({
    code: z.string().regex(/^[a-zA-Z]+\.[a-z_]+$/),
    severity: z.enum(['blocker', 'warning', 'note']),
    place,
    facts: z.record(z.string(), z.union([z.string(), z.number(), z.array(z.string())])),
    what: z.string().describe('What is wrong.'),
    todo: z.string().describe('What to do about it.'),
  })
  .meta({ id: 'problem' });

/** One line of a working. */
export const workingLine = z
  .strictObject({
    code: z.string().regex(/^[a-zA-Z]+\.[a-zA-Z]+$/),
    label: z.string(),
    value: z.union([z.number(), z.string(), range, z.null()]).describe('Null where no such figure exists.'),
    said: z.string().optional().describe('A value that is a word, in words.'),
    unit: z.string().describe('Empty where the value has none.'),
    formula: z.string().describe('In words.'),
    inputs: z.array(
      z.strictObject({
        name: z.string(),
        label: z.string(),
        value: z.union([z.number(), z.string()]),
        said: z.string().optional().describe('A value that is a word, in words.'),
        unit: z.string(),
        from: z
          .array(
            z.strictObject({ table: z.string(), key: z.string(), column: z.string(), said: z.string().optional() }),
          )
          .optional()
          .describe('Cells of the tables it is taken from; `said` where it was entered there.'),
      }),
    ),
    source: z.string().describe('`id, place` of docs/sources.json, or survey, settings, definition.'),
    sourceSaid: z.string().describe('The source in words.'),
  })
  .meta({ id: 'workingLine' });

/** What "enough water" means. */
export const target = z.strictObject({
  daysMet_fraction: z.number(),
  longestDryRun_days: z.number(),
  goodYears_fraction: z.number(),
});

/** A row or a cell that was not used. */
export const notUsed = z
  .strictObject({
    file: z.string(),
    row: z.int(),
    column: z.string().nullable().describe('Null where the whole row was not used.'),
    value: z.string().describe('As it was written.'),
    code: z.string(),
    cells: z.array(z.string()).describe('The whole row as it was written.'),
  })
  .meta({ id: 'notUsed' });
