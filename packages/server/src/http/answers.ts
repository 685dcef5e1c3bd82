import type { Problem } from '@eavewell/engine';
import { type ChangeRecord, recordName } from '@eavewell/records';
import { problemIn, problemReport, reportedFaults, shortIn } from '@eavewell/report';
import { folderTableNames, folderTables, type ProblemReport, type SiteReport } from '@eavewell/tables';
import { english, type Language } from '@eavewell/words';
import type { z } from 'zod';
import type { DesignState } from '../designs/designs.ts';
import type { Looked } from '../imports/lookTask.ts';
import type { Review } from '../imports/reviews.ts';
import type { Changed, OpenProgramme } from '../openProgramme.ts';
import { plansTold } from '../plansTold.ts';
import type * as schemas from './schemas.ts';

/** How many changes of a record are told at once. Ours. */
const mostChanges = 200;

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

export function sitesAnswer(
  programme: OpenProgramme,
  state: DesignState,
  language: Language,
): z.infer<typeof schemas.siteList> {
  const { version, facts } = programme;
  const sites = [...facts.rowsAsEntered('sites')].map(([key, cells]) => {
    // A second row of one id is not used, so it has no verdict of its own.
    const found = key === cells['siteId'] ? state.sites.get(key) : undefined;
    if (!found) return { key, cells, design: null };
    const { verdict, stations, finding, people, remedy } =
      language === english ? found.short : shortIn(found.short, found.said, language);
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
  language: Language,
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
  const problems = problemsIn(state, language).filter(({ place }) => place.siteId === siteId);
  return { version, ...progressOf(state), rows, design, problems };
}

/** What is wrong in the tables, in a language. */
function problemsIn({ rest }: DesignState, language: Language): readonly ProblemReport[] {
  const problems = rest?.problems ?? [];
  if (language === english) return problems;
  const faultAt = reportedFaults(problems);
  return problems.map((problem) => problemIn(problem, language, faultAt));
}

/** What a design is told with, up to its report. */
export function designHead(
  { version }: OpenProgramme,
  state: DesignState,
): Omit<z.infer<typeof schemas.design>, 'report'> {
  return { version, ...progressOf(state) };
}

export function problemsAnswer(
  { version }: OpenProgramme,
  state: DesignState,
  language: Language,
): z.infer<typeof schemas.problemsFound> {
  const problems = [...problemsIn(state, language)];
  return { version, designVersion: state.version, problems, notUsed: state.rest?.notUsed ?? [] };
}

export function changedAnswer(
  { version }: OpenProgramme,
  made: Extract<Changed, { ok: true }>,
  language: Language,
): z.infer<typeof schemas.changed> {
  const { record } = made.value;
  return {
    version,
    record: record && recordName(record),
    problems: made.problems.map((problem) => problemReport(problem, language)),
  };
}

function headOf({ changes: _, ...head }: ChangeRecord) {
  return { ...head, source: { ...head.source } };
}

export function recordsAnswer(
  { version, records, facts }: OpenProgramme,
  { before = version + 1, most }: z.infer<typeof schemas.recordsAsked>,
  language: Language,
): z.infer<typeof schemas.records> {
  const end = Math.min(before - 1, version);
  const start = Math.max(0, end - most);
  const said = plansTold({ records, facts }, { start, end }, language);
  const told = records.slice(start, end).map((record, i) => ({
    ...headOf(record),
    place: start + i + 1,
    changes: record.changes.slice(0, mostChanges) as z.infer<typeof schemas.changesAsked>['changes'],
    changeCount: record.changes.length,
    said: said.get(record) ?? null,
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

const notLooked = {
  ...{
    programmeName: null,
    files: [],
    problems: [],
    elsewhere: [],
    notUsed: [],
    rowsShown: [],
    unplaced: [],
    inSheets: [],
  },
  ...{ columns: { headers: [], sheets: [] }, changes: [], freshRecords: 0, mayBeAccepted: false },
  ...{ there: null, stepsBack: [], stepsBackCount: 0 },
};

export function reviewAnswer(review: Review, language: Language): z.infer<typeof schemas.review> {
  const { importId, programmeId, sent, absent, done_fraction, mends, undone } = review;
  const looked: Omit<Looked, 'version' | 'changesName' | 'hasRecords'> = review.looked ?? notLooked;
  const isReading = done_fraction < 1;
  const reported = (problem: Problem) => problemReport(problem, language);
  const answer = {
    ...{ importId, programmeId, programmeName: looked.programmeName, file: sent[0] ?? '', sent, absent, isReading },
    ...{ done_fraction, mayBeAccepted: looked.mayBeAccepted && !isReading },
    files: looked.files,
    problems: looked.problems.map(reported),
    elsewhere: looked.elsewhere.map(reported),
    notUsed: looked.notUsed.map((one) => ({ ...one, column: one.column ?? null })),
    ...{
      rowsShown: looked.rowsShown,
      inSheets: looked.inSheets,
      unplaced: looked.unplaced,
      ...looked.columns,
      mends,
      undone,
    },
    ...{
      freshRecords: looked.freshRecords,
      there: looked.there,
      stepsBack: looked.stepsBack,
      stepsBackCount: looked.stepsBackCount,
      changes: looked.changes,
    },
  };
  return answer as unknown as z.infer<typeof schemas.review>;
}
