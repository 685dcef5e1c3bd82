import { type ChangeRecord, recordName } from '@eavewell/records';
import { problemReport } from '@eavewell/report';
import { folderTableNames, folderTables, type SiteReport } from '@eavewell/tables';
import type { z } from 'zod';
import type { DesignState } from '../designs/designs.ts';
import type { Changed, OpenProgramme } from '../openProgramme.ts';
import type { Review } from '../reviews.ts';
import type * as schemas from './schemas.ts';

/** How many rows of a table, and changes of a record, are told at once. Ours. */
const [mostRows, mostChanges] = [500, 200] as const;

const progressOf = ({ version, done_fraction, isFailed, isCalledOff }: DesignState) => ({
  designVersion: version,
  done_fraction,
  isFailed,
  isCalledOff,
});

export function stateAnswer(programme: OpenProgramme, design: DesignState): z.infer<typeof schemas.programmeState> {
  const { entry, version, facts } = programme;
  const conflicts = facts.conflicts().length;
  return { ...entry, version, ...progressOf(design), ...programme.steps(), conflicts };
}

export function rowsAnswer({ version, facts }: OpenProgramme, table: string): z.infer<typeof schemas.tableRows> {
  return { version, rows: [...facts.rowsAsEntered(table)].map(([key, cells]) => ({ key, cells })) };
}

export function sitesAnswer(programme: OpenProgramme, state: DesignState): z.infer<typeof schemas.siteList> {
  const { version, facts } = programme;
  const sites = [...facts.rowsAsEntered('sites')].map(([key, cells]) => {
    // A second row of one id is not used, so it has no verdict of its own.
    const found = key === cells['siteId'] ? state.sites.get(key) : undefined;
    if (!found) return { key, cells, design: null };
    const { verdict, stations, finding, people, remedy } = found;
    return { key, cells, design: { verdict, stations, finding, people, remedy: remedy?.about ?? null } };
  });
  return { version, ...progressOf(state), sites };
}

/** Everything about one site; null where no row has its id. */
export function siteAnswer(
  programme: OpenProgramme,
  siteId: string,
  state: DesignState,
  design: SiteReport | null,
): z.infer<typeof schemas.siteInFull> | null {
  const { version, facts } = programme;
  const rows = folderTableNames
    .filter((table) => Object.hasOwn(folderTables[table].columns, 'siteId'))
    .flatMap((table) =>
      [...facts.rowsAsEntered(table)].flatMap(([key, cells]) =>
        cells['siteId'] === siteId ? [{ table, key, cells }] : [],
      ),
    );
  if (!rows.some(({ table }) => table === 'sites')) return null;
  const problems = (state.rest?.problems ?? []).filter(({ place }) => place.siteId === siteId);
  return { version, ...progressOf(state), rows, design, problems };
}

/** What a design is told with, up to its report. */
export function designHead(
  { version }: OpenProgramme,
  state: DesignState,
): Omit<z.infer<typeof schemas.design>, 'report'> {
  return { version, ...progressOf(state) };
}

export function problemsAnswer({ version }: OpenProgramme, state: DesignState): z.infer<typeof schemas.problemsFound> {
  const { problems = [], notUsed = [] } = state.rest ?? {};
  return { version, designVersion: state.version, problems, notUsed };
}

export function changedAnswer(
  { version }: OpenProgramme,
  made: Extract<Changed, { ok: true }>,
): z.infer<typeof schemas.changed> {
  const { record } = made.value;
  return { version, record: record && recordName(record), problems: made.problems.map(problemReport) };
}

function headOf({ changes: _, ...head }: ChangeRecord) {
  return { ...head, source: { ...head.source } };
}

export function recordsAnswer(
  { version, records }: OpenProgramme,
  { before = version + 1, most }: z.infer<typeof schemas.recordsAsked>,
): z.infer<typeof schemas.records> {
  const end = Math.min(before - 1, version);
  const start = Math.max(0, end - most);
  const told = records.slice(start, end).map((record, i) => ({
    ...headOf(record),
    place: start + i + 1,
    changes: record.changes.slice(0, mostChanges) as z.infer<typeof schemas.changesAsked>['changes'],
    changeCount: record.changes.length,
  }));
  return { version, records: told.reverse() };
}

export function historyAnswer(
  programme: OpenProgramme,
  { table, key, column }: z.infer<typeof schemas.historyAsked>,
): z.infer<typeof schemas.history> {
  const entries = programme.history(table, key, column);
  return { entries: entries.map(({ record, before, after }) => ({ record: headOf(record), before, after })) };
}

export function conflictsAnswer({ version, facts }: OpenProgramme): z.infer<typeof schemas.conflicts> {
  return { version, conflicts: facts.conflicts().map((one) => ({ ...one })) };
}

export function reviewAnswer(review: Review): z.infer<typeof schemas.review> {
  const tables = [...new Set(review.changes.map(({ table }) => table))];
  const changes = tables.map((table) => {
    const own = review.changes.filter((change) => change.table === table);
    const count = (kind: string) => own.filter((change) => change.kind === kind).length;
    const rows = own.slice(0, mostRows) as z.infer<typeof schemas.changesAsked>['changes'];
    return { table, added: count('added'), edited: count('edited'), removed: count('removed'), rows };
  });
  const { importId, programmeId, file, absent, isReading, mayBeAccepted, freshRecords } = review;
  return {
    ...{ importId, programmeId, file, absent, isReading, mayBeAccepted, freshRecords, changes },
    files: review.files.map((one) => ({ ...one })),
    problems: review.problems.map(problemReport),
    notUsed: review.notUsed.map((one) => ({ ...one, column: one.column ?? null, cells: [...one.cells] })),
  };
}
