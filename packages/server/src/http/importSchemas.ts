import { rowChange } from '@eavewell/records';
import { folderTableNames } from '@eavewell/tables';
import { z } from 'zod';
import { by, changed, notUsed, problem, programmeId } from './schemaParts.ts';

/** Where an import goes: into a programme, or, where none is named, into one of its own. */
export type ImportOf = z.ZodType<{ programmeId?: string | undefined }>;
export type ImportAsked = z.ZodType<{ programmeId?: string | undefined; importId: string }>;

const importId = z.string().regex(/^[0-9a-f]{16}$/);
export const importOf = { into: programmeId as ImportOf, alone: z.strictObject({}) as ImportOf };
export const importAsked = {
  into: programmeId.extend({ importId }) as ImportAsked,
  alone: z.strictObject({ importId }) as ImportAsked,
};

const tableName = z.enum(['rain', ...folderTableNames]);
const fileName = z.string().min(1).max(500);

export const uploadAsked = z.strictObject({
  name: fileName
    .optional()
    .describe('The name of the file that is the body; left out where a form with files is sent.'),
  absent: z.enum(['stay', 'go']).default('stay').describe('What becomes of rows that are not in their file.'),
  table: tableName.optional().describe('For a table alone whose name does not say which it is.'),
  gaugeId: z.string().max(64).optional(),
  wait: z
    .enum(['yes', 'no'])
    .default('yes')
    .describe('no: answered before it is read; events and the review tell how far it is.'),
});

export const cellMended = z.strictObject({
  file: z.string().max(200),
  row: z.int().min(2),
  column: z.string().max(500).describe('The header of the column, as it stands in the file.'),
  value: z.string().max(10_000),
});
const columnSaid = z.strictObject({
  workbook: fileName
    .nullable()
    .default(null)
    .describe('The workbook it stands in, as it was sent; null: a table of its own.'),
  file: z.string().max(200).describe("The table's file, or the sheet."),
  header: z.string().max(500),
  column: z.string().max(64).nullable().describe('Null: the column is kept and not read.'),
  unit: z.string().max(20).optional(),
  dateOrder: z.enum(['dmy', 'mdy', 'ymd']).optional(),
});
const sheetSaid = z.strictObject({
  workbook: fileName,
  sheet: z.string().max(200),
  table: z.string().max(100).nullable().describe('A table, or "rain " and a gauge; null: it is left alone.'),
});

const cellNamed = z.strictObject({
  table: z.string().max(64),
  key: z.string().max(1000),
  column: z.string().max(500).nullable().describe('Null: the row.'),
});

/** What is done to files that wait: a cell mended, headers and sheets said, or a file placed. */
export const importStep = z.union([
  cellMended,
  z.strictObject({
    columns: z.array(columnSaid).max(500).default([]),
    sheets: z.array(sheetSaid).max(100).default([]),
  }),
  z.strictObject({
    stepsBack: z
      .union([z.literal('all'), z.array(cellNamed).max(5000)])
      .describe('What was changed here since and is to be as the file has it; the others stay.'),
  }),
  z.strictObject({
    place: z.strictObject({ name: fileName, table: tableName, gaugeId: z.string().max(64).nullable().default(null) }),
  }),
]);

const header = columnSaid
  .omit({ unit: true, dateOrder: true })
  .extend({
    workbook: z.string().nullable(),
    unit: z.string().nullable(),
    dateOrder: z.string().nullable(),
    why: z.array(z.string()),
    fits: z.int().describe('Of the cells looked at, those that would be read.'),
    looked: z.int(),
    open: z.string().nullable().describe('What must be said before it can be accepted; null where nothing must.'),
    choices: z.array(z.strictObject({ column: z.string(), hows: z.array(z.string()) })),
  })
  .describe('A header that is not understood, and what it likely is. Nothing is taken so until it is said.');
const sheet = z.strictObject({
  workbook: z.string(),
  sheet: z.string(),
  likely: z.string().nullable(),
  why: z.array(z.string()),
  headers: z.array(z.string()),
  open: z.literal('gauge').nullable(),
  gauges: z.array(z.string()),
});

export const review = z
  .strictObject({
    importId: z.string(),
    programmeId: z.string().nullable().describe('Null: the files are to become a programme of their own.'),
    programmeName: z.string().nullable().describe('What the files call the programme.'),
    file: z.string().describe('The first of the files.'),
    sent: z.array(z.string()),
    absent: z.enum(['stay', 'go']),
    isReading: z.boolean(),
    done_fraction: z.number(),
    mayBeAccepted: z.boolean(),
    files: z.array(
      z.strictObject({
        file: z.string(),
        rows: z.int(),
        used: z.int(),
        from: z.string().describe('The file it was sent in.'),
        sheet: z.string().nullable().describe('The sheet of the workbook it was sent in; null for a file of its own.'),
      }),
    ),
    problems: z.array(problem),
    elsewhere: z.array(problem).describe('What taking it in would break in tables that were not sent.'),
    notUsed: z.array(notUsed),
    rowsShown: z
      .array(
        z.strictObject({
          file: z.string(),
          columns: z.array(z.strictObject({ header: z.string(), column: z.string().nullable() })),
          rows: z.array(z.strictObject({ row: z.int(), cells: z.array(z.string()) })),
        }),
      )
      .describe('The rows of which something is said, whole; the first 1,000.'),
    inSheets: z
      .array(z.strictObject({ file: z.string(), row: z.int(), inSheet: z.int() }))
      .describe('Rows of workbooks of which something is said, and the numbers they have in their sheets.'),
    unplaced: z
      .array(z.strictObject({ name: z.string(), table: z.string().nullable(), gaugeId: z.string().nullable() }))
      .describe('Files whose names do not say which table they are, and what they likely are.'),
    headers: z.array(header),
    sheets: z.array(sheet),
    mends: z.array(cellMended),
    undone: z.array(cellMended).describe('Mends that were taken back and can be made again.'),
    freshRecords: z.int().describe('Records of an export that are not here yet.'),
    there: z
      .strictObject({ programmeId: z.string(), name: z.string() })
      .nullable()
      .describe('The programme here that has this history already.'),
    stepsBack: z
      .array(
        cellNamed.extend({
          stands: z.string().nullable(),
          older: z.string().nullable().describe('What the file has, which stood here before.'),
          by: z.string().describe('Who changed it since.'),
          at: z.string(),
          isTaken: z
            .boolean()
            .describe('Is it to be as the file has it? Where not, it stays, and no change tells of it.'),
        }),
      )
      .describe('Cells and rows that were changed here since, and that the file would set back. The first 500.'),
    stepsBackCount: z.int(),
    changes: z.array(
      z.strictObject({
        table: z.string(),
        added: z.int(),
        edited: z.int(),
        removed: z.int(),
        rows: z.array(rowChange).describe('The first 500.'),
      }),
    ),
  })
  .meta({ id: 'review' });
export const reviews = z.strictObject({ imports: z.array(review) });

export const newFrom = z.strictObject({
  by,
  name: z.string().trim().min(1).max(200).optional(),
  beside: z
    .boolean()
    .default(false)
    .describe('Where a programme here has this history already: make a second one beside it, with names of its own.'),
});
export const taken = changed.extend({ programmeId: z.string() });

export const task = z
  .strictObject({
    taskId: z.string(),
    kind: z.enum(['import', 'export', 'design', 'rollout']),
    programmeId: z.string().nullable(),
    name: z.string().nullable(),
    importId: z.string().nullable(),
    begunAt: z.string(),
    done_fraction: z.number(),
    state: z
      .enum(['running', 'done', 'cancelled', 'failed', 'cutOff'])
      .describe('cutOff: it ran when the program ended, and nothing of it counts.'),
  })
  .meta({ id: 'task' });
export const taskList = z.strictObject({ tasks: z.array(task) });
export const taskAsked = z.strictObject({ taskId: z.string().regex(/^[0-9a-f]{16}$/) });
