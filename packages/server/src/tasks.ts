import {
  designSites,
  type Problem,
  readyProgramme,
  remediesOf,
  remediesTogether,
  type SmallestRemedy,
} from '@eavewell/engine';
import {
  type ProgrammeRead,
  programmeOfRows,
  type RowsByTable,
  readProgramme,
  rowsOfProgramme,
  tablesAsRead,
  writeProgramme,
} from '@eavewell/formats';
import { gaugeReport, peopleOf, problemReport, programmeRemediesReport, siteReport } from '@eavewell/report';
import { type DesignReport, designSchemaVersion, type SiteReport } from '@eavewell/tables';
import { english } from '@eavewell/words';
import type { JobAround } from '@eavewell/work';

/** What a folder is asked for. */
export interface ReadAsked {
  readonly folder: string;
}

/** What stands in a folder, as rows of records, and what is wrong in it. */
export interface FolderRows {
  readonly rows: RowsByTable;
  /** The columns each table's file has, by table. */
  readonly columns: ReadonlyMap<string, readonly string[]>;
  readonly problems: readonly Problem[];
  readonly notUsed: ProgrammeRead['notUsed'];
  readonly files: ProgrammeRead['files'];
}

/** Reads a folder into rows of records. */
export async function readTask({ folder }: ReadAsked): Promise<FolderRows> {
  const read = await readProgramme(folder);
  const { programme } = await tablesAsRead(folder);
  const columns = new Map<string, readonly string[]>();
  for (const [name, rows] of Object.entries(programme.tables))
    columns.set(name, [...new Set((rows ?? []).flatMap((row) => Object.keys(row)))]);
  const { problems, notUsed, files } = read;
  return { rows: rowsOfProgramme(programme), columns, problems, notUsed, files };
}

/** What a design is asked of. */
export interface DesignAsked {
  readonly rows: RowsByTable;
  /** A folder that is not there yet, to write the tables into; who asks takes it away. */
  readonly folder: string;
  readonly version: string;
}

/** Writes rows of records as the folder they come to, and reads it. */
async function readRows(rows: RowsByTable, folder: string): Promise<ProgrammeRead> {
  await writeProgramme(folder, programmeOfRows({ rowsAsEntered: (table) => rows.get(table) ?? [] }));
  return readProgramme(folder);
}

/** Gives every site of a programme its verdict: the report of the command `design`, with problems of folder, gauges and sites. */
export async function designTask({ rows, folder, version }: DesignAsked, around: JobAround): Promise<DesignReport> {
  const read = await readRows(rows, folder);
  const { facts } = read;
  around.report(0.1);
  const ready = readyProgramme(facts);
  const sites: SiteReport[] = [];
  const smallest: SmallestRemedy[] = [];
  for (const design of designSites(facts.sites, ready)) {
    const remedies = remediesOf(facts.sites[sites.length]!, ready, design);
    sites.push(siteReport(design, remedies, english));
    const { siteId, people } = design;
    if (remedies) {
      smallest.push({ siteId, people, smallest: remedies.remedies[0] ?? null, notMended: remedies.notMended });
    }
    around.report(0.1 + (0.9 * sites.length) / facts.sites.length);
    // Where jobs share a thread, others get their turn.
    await new Promise(setImmediate);
    if (around.stopped()) break;
  }
  const { people, unknown } = peopleOf(facts);
  return {
    eavewell: version,
    schema: designSchemaVersion,
    programme: { name: facts.settings.programme, sites: facts.sites.length, people, sitesWithoutPeople: unknown },
    settings: { ...facts.settings },
    gauges: [...ready.gauges.values()].map((gauge) => gaugeReport(gauge, english)),
    sites,
    remedies: programmeRemediesReport(remediesTogether(smallest), ready.market.day),
    problems: read.problems.map((problem) => problemReport(problem, english)),
    notUsed: read.notUsed.map((one) => ({ ...one, column: one.column ?? null, cells: [...one.cells] })),
  };
}

/** The long jobs of the server, by name. */
export const tasks = { read: readTask, design: designTask };
