import { recordFields, rowChange } from '@eavewell/records';
import { designReport, folderTableNames, remediesInWords, siteShort } from '@eavewell/tables';
import { z } from 'zod';
import { by, notUsed, problem, programmeId, version } from './schemaParts.ts';

export * from './factsSchemas.ts';
export * from './importSchemas.ts';
export { byWhom, changed, problem, programmeId } from './schemaParts.ts';
export * from './siteTextSchemas.ts';

const siteReport = designReport.shape.sites.element;
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

export const siteAsked = programmeId.extend({ siteId: z.string().min(1).max(64) });
export const tableAsked = programmeId.extend({
  table: z.enum(['rain', 'settings', 'wayLines', 'headers', 'files', ...folderTableNames]),
});

export const programmeEntry = z
  .strictObject({ programmeId: z.string(), name: z.string(), madeAt: z.string() })
  .meta({ id: 'programme' });
export const programmeListed = programmeEntry
  .extend({
    isSetAside: z.boolean().describe('Put away, kept whole; it can be brought back.'),
    version,
    sites: z.int().nullable().describe('Null where it is set aside and was not opened, or cannot be read.'),
    people: z.int().nullable().describe('Of the sites whose people are known.'),
    withoutPeople_count: z.int().nullable().describe('Sites whose people are not known.'),
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

export const overviewAsked = z.strictObject({
  from: z.coerce
    .number()
    .int()
    .min(0)
    .default(0)
    .describe('The first site wanted, counted from 0 in the order of the list.'),
  most: z.coerce
    .number()
    .int()
    .min(1)
    .max(100_000)
    .optional()
    .describe('How many; all that follow where it is left out.'),
});

/** What the page of sites needs, in one answer. It is sent once: If-None-Match is answered with 304 while nothing changed. */
export const overview = z
  .strictObject({
    version,
    designVersion: version
      .nullable()
      .describe('The version the verdicts are of, but for those told while a newer design runs.'),
    name: z.string(),
    count: z.int().describe('Sites in all.'),
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
          decides: judged.decides,
          isNotToDrink: judged.isNotToDrink.nullable(),
          standGate: judged.standGate.nullable(),
          hasStorm: judged.hasStorm.nullable(),
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
export const recordsAsked = z.strictObject({
  before: z.coerce.number().int().min(1).optional().describe('Only records before this place, counted from 1.'),
  most: z.coerce.number().int().min(1).max(500).default(100),
});
const recordHead = recordFields.omit({ changes: true });
export const records = z.strictObject({
  version,
  records: z.array(
    recordHead.extend({
      place: z.int(),
      changes: z.array(rowChange).describe('The first 200.'),
      changeCount: z.int(),
      said: z.string().nullable().describe('What it did to plans, without an end; null: its changes are all there is.'),
    }),
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
