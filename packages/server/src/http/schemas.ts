import { recordFields, rowChange } from '@eavewell/records';
import { designReport, folderTableNames, remediesInWords, siteShort } from '@eavewell/tables';
import { z } from 'zod';

/** A problem, as the report has it. */
export const problem = designReport.shape.problems.element;
const siteReport = designReport.shape.sites.element;
const notUsed = designReport.shape.notUsed.element;

const by = z.string().trim().min(1).max(200).describe('Who makes the change.');
const version = z.int().describe('Grows with every change.');
const cells = z
  .record(z.string(), z.string())
  .describe('The cells of a row by column, as text; an empty cell is not there.');

/** The body of an answer that is a problem: RFC 9457, with the problems as data and in words. */
export const problemBody = z
  .strictObject({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    problems: z.array(problem),
  })
  .meta({ id: 'problems' });

export const programmeId = z.strictObject({ programmeId: z.string().regex(/^[A-Za-z0-9_-]{1,64}$/) });
export const siteAsked = programmeId.extend({ siteId: z.string().min(1).max(64) });
export const tableAsked = programmeId.extend({
  table: z.enum(['rain', 'settings', 'wayLines', 'headers', 'files', ...folderTableNames]),
});
export const importOf = programmeId.partial();
export const importAsked = importOf.extend({ importId: z.string().regex(/^[0-9a-f]{16}$/) });

export const programmeEntry = z
  .strictObject({ programmeId: z.string(), name: z.string(), madeAt: z.string() })
  .meta({ id: 'programme' });
export const programmeListed = programmeEntry
  .extend({
    isSetAside: z.boolean().describe('Put away, kept whole; it can be brought back.'),
    version,
    sites: z.int().nullable().describe('Null where it is set aside and was not opened, or cannot be read.'),
    people: z.int().nullable().describe('Of the sites whose people are known.'),
    lastChange: z.strictObject({ at: z.string(), by: z.string() }).nullable(),
    size_bytes: z.int().describe('What its history takes.'),
  })
  .meta({ id: 'programmeListed' });
export const programmes = z.strictObject({ programmes: z.array(programmeListed) });
export const programmeChanged = z.strictObject({
  by,
  name: z.string().trim().min(1).max(200).optional(),
  isSetAside: z.boolean().optional(),
});
export const newProgramme = z.strictObject({
  name: z.string().trim().min(1).max(200),
  from: z.enum(['empty', 'demo']).default('empty').describe('To make one of files, send them to /api/imports.'),
  by,
});

const designProgress = {
  designVersion: version.nullable().describe('The version the design is of; null where there is none yet.'),
  done_fraction: z.number().describe('How far the design of the present facts is; 1 where it is this one.'),
  isFailed: z.boolean(),
  isCalledOff: z.boolean().describe('A person called it off: it waits until it is begun again, or the facts change.'),
};

export const programmeState = programmeEntry.extend({
  version,
  ...designProgress,
  undo: z.string().nullable().describe('The record that undo would take back.'),
  redo: z.string().nullable(),
  conflicts: z.int(),
});

export const tableRows = z.strictObject({
  version,
  rows: z.array(z.strictObject({ key: z.string(), cells })),
});

export const siteList = z.strictObject({
  version,
  ...designProgress,
  sites: z.array(
    z.strictObject({
      key: z.string(),
      cells,
      design: siteReport
        .pick({ verdict: true, stations: true, finding: true, people: true })
        .extend({ remedy: z.string().nullable().describe('The first change that would mend it, in words.') })
        .nullable()
        .describe('Null where it is not worked out yet, or the row cannot be used.'),
    }),
  ),
});

const counted = z.strictObject({
  sites: z.int(),
  people: z.int().describe('Of the sites whose people are known.'),
  withoutPeople_count: z.int(),
});
const { siteId, name, siteClass, people, latitude_deg, longitude_deg } = siteShort.shape;
const judged = siteShort.omit({
  ...{ siteId: true, name: true, siteClass: true, people: true, latitude_deg: true, longitude_deg: true },
  ...{ weight: true, target: true },
}).shape;

/** What the page of sites needs, in one answer. It is sent once: If-None-Match is answered with 304 while nothing changed. */
export const overview = z
  .strictObject({
    version,
    designVersion: version
      .nullable()
      .describe('The version the verdicts are of, but for those told while a newer design runs.'),
    name: z.string(),
    tally: z
      .strictObject({ short: counted, unknown: counted, tight: counted, holds: counted, notYet: counted })
      .describe('Sites and people by verdict; notYet: not worked out yet, or a row that cannot be used.'),
    targets: z.array(siteShort.shape.target).describe('What sites are judged by: each site names its place here.'),
    remedies: remediesInWords.nullable().describe('What would mend them together; null before the first design.'),
    problemCounts: z.strictObject({ blocker: z.int(), warning: z.int(), note: z.int() }).nullable(),
    sites: z
      .array(
        z.strictObject({
          key: z.string().describe('The key of its row in the table of sites.'),
          ...{ siteId, name },
          area: z.string().nullable(),
          ...{ latitude_deg, longitude_deg, siteClass, people },
          design_people: judged.design_people,
          verdict: judged.verdict
            .nullable()
            .describe('Null where it is not worked out yet, or the row cannot be used.'),
          stations: judged.stations.nullable(),
          finding: judged.finding.nullable(),
          withheldBy: judged.withheldBy,
          remedy: judged.remedy,
          notMended: judged.notMended,
          figures: judged.figures,
          target: z.int().nullable().describe('Place in targets, from 0.'),
        }),
      )
      .describe('Short first, then unknown, tight, holds; within each the most people for the most dry days.'),
  })
  .meta({ id: 'overview' });

export const problemsFound = z.strictObject({
  version,
  designVersion: version.nullable(),
  problems: z.array(problem),
  notUsed: z.array(notUsed),
});

export const siteInFull = z.strictObject({
  version,
  ...designProgress,
  rows: z.array(z.strictObject({ table: z.string(), key: z.string(), cells })),
  design: siteReport.nullable(),
  problems: z.array(problem).describe('What was found in the tables about it.'),
});

export const design = z.strictObject({ version, ...designProgress, report: designReport.nullable() });

export const changesAsked = z.strictObject({
  by,
  changes: z.array(rowChange).min(1).max(5000),
  sendId: z
    .string()
    .regex(/^[A-Za-z0-9_-]{8,64}$/)
    .optional()
    .describe('What this sending is called: sent once more, because its answer was lost, nothing is made twice.'),
});
export const byWhom = z.strictObject({ by });
export const changed = z.strictObject({
  version,
  record: z.string().nullable().describe('The name of the record that was made; null where nothing changed.'),
  problems: z.array(problem),
});

export const recordsAsked = z.strictObject({
  before: z.coerce.number().int().min(1).optional().describe('Only records before this place, counted from 1.'),
  most: z.coerce.number().int().min(1).max(500).default(100),
});
const recordHead = recordFields.omit({ changes: true });
export const records = z.strictObject({
  version,
  records: z.array(
    recordHead.extend({ place: z.int(), changes: z.array(rowChange).describe('The first 200.'), changeCount: z.int() }),
  ),
});

export const historyAsked = z.strictObject({
  table: z.string().max(64),
  key: z.string().max(1000),
  column: z.string().max(500),
});
export const history = z.strictObject({
  entries: z.array(z.strictObject({ record: recordHead, before: z.string().nullable(), after: z.string().nullable() })),
});

const conflictPlace = { table: z.string(), key: z.string() };
const conflict = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('cell'),
      ...conflictPlace,
      column: z.string(),
      stands: z.string().nullable(),
      standsBy: z.string(),
      over: z.string().nullable(),
      overBy: z.string(),
    })
    .describe('Two people changed a cell unseen. The later entry stands until somebody changes the cell again.'),
  z
    .strictObject({ kind: z.literal('row'), ...conflictPlace, removedBy: z.string(), changedBy: z.string() })
    .describe('One removed a row while another changed it: it stays.'),
]);
export const conflicts = z.strictObject({ version, conflicts: z.array(conflict) });

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

/** What is done to files that wait: a cell mended, headers and sheets said, or a file placed. */
export const importStep = z.union([
  cellMended,
  z.strictObject({
    columns: z.array(columnSaid).max(500).default([]),
    sheets: z.array(sheetSaid).max(100).default([]),
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
    unplaced: z
      .array(z.strictObject({ name: z.string(), table: z.string().nullable(), gaugeId: z.string().nullable() }))
      .describe('Files whose names do not say which table they are, and what they likely are.'),
    headers: z.array(header),
    sheets: z.array(sheet),
    mends: z.array(cellMended),
    undone: z.array(cellMended).describe('Mends that were taken back and can be made again.'),
    freshRecords: z.int().describe('Records of an export that are not here yet.'),
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

export const newFrom = z.strictObject({ by, name: z.string().trim().min(1).max(200).optional() });
export const taken = changed.extend({ programmeId: z.string() });

export const task = z
  .strictObject({
    taskId: z.string(),
    kind: z.enum(['import', 'export', 'design']),
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
