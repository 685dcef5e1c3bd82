import type { Place, Problem, ProgrammeFacts, SiteFacts } from '@eavewell/engine';
import {
  assembleProgramme,
  checkWays,
  type FolderTableName,
  folderTableNames,
  folderTables,
  gaugeOfSheet,
  type NotUsed,
  nearest,
  readRows,
  sheetNames,
  type Table,
  type TableRead,
  type TablesRead,
  tableProblem,
} from '@eavewell/tables';
import { readColumnsFile } from '../columnsSaved.ts';
import { nothingRead, type ProgrammeRead, usedRows } from '../programmeRead.ts';
import { bearOnSites } from '../readTables.ts';
import { type MatchedWorkbook, matchedWorkbook } from './matchedWorkbook.ts';
import { openWorkbook, type Workbook } from './openWorkbook.ts';
import { readRainSheets } from './readRainSheets.ts';
import { readSettingsSheet } from './readSettingsSheet.ts';
import { readSheetTable, type SheetAsked } from './readSheetTable.ts';
import { bearsOnAll, findSheet, isProblem, sheetFile } from './sheets.ts';

interface TablesOfWorkbook {
  readonly tables: TablesRead;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly doubtsOfAll: readonly Place[];
  readonly letters: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

async function readTables(workbook: MatchedWorkbook): Promise<TablesOfWorkbook> {
  const tables: Partial<Record<FolderTableName, TableRead>> = {};
  const problems: Problem[] = [];
  const notUsed: NotUsed[] = [];
  const doubtsOfAll: Place[] = [];
  const letters = new Map<string, ReadonlyMap<string, string>>();
  for (const name of folderTableNames) {
    const table: Table = folderTables[name];
    const file = sheetFile(workbook, name);
    const matching = workbook.matchingOf(name);
    const needed = !table.optional;
    const asked: SheetAsked = { file, table, days: workbook.days, needed, namesEmptyRows: true, matching };
    const found = await findSheet(workbook, name, needed);
    problems.push(...found.problems);
    if (bearOnSites.includes(name)) doubtsOfAll.push(...bearsOnAll(found.problems));
    if (found.cells === null) continue;
    const sheet = readSheetTable(found.cells, asked);
    if (isProblem(sheet)) {
      problems.push(sheet);
      if (bearOnSites.includes(name)) doubtsOfAll.push(...bearsOnAll([sheet]));
      continue;
    }
    const options = { file, decimalComma: false, headerRow: sheet.headerRow, matching };
    const read = readRows(table, sheet.header, sheet.rows, options);
    // Faults of the sheet that name a site put it in doubt, as those of its rows do.
    tables[name] = { ...read, problems: [...sheet.problems, ...read.problems] };
    letters.set(file, sheet.letters);
    if (bearOnSites.includes(name))
      doubtsOfAll.push(...bearsOnAll(sheet.problems.filter(({ place }) => place.siteId === undefined)));
    problems.push(...sheet.problems, ...read.problems);
    notUsed.push(...sheet.notUsed, ...read.notUsed);
  }
  return { tables: tables as TablesRead, problems, notUsed, doubtsOfAll, letters };
}

/** Sheets that are none of ours: named, with ours that was likely meant. */
function otherSheets(workbook: Workbook, gaugeIds: readonly string[] | null): readonly Problem[] {
  const ours = [...sheetNames, ...(gaugeIds ?? []).map((id) => `rain ${id}`)];
  const problems: Problem[] = [];
  for (const { name } of workbook.sheets) {
    if (ours.includes(name)) continue;
    const place = { file: sheetFile(workbook, name) };
    const gaugeId = gaugeOfSheet(name);
    const likely = nearest(name, ours) ?? '';
    const facts = { value: name, likely, expected: ours };
    if (gaugeId !== null && gaugeIds !== null) {
      const near = nearest(gaugeId, gaugeIds) ?? '';
      problems.push(tableProblem('rainFile.without_gauge', { ...place, gaugeId }, { ...facts, likely: near }));
    } else if (gaugeId === null)
      problems.push(tableProblem(likely === '' ? 'sheet.unknown' : 'sheet.misnamed', place, facts));
  }
  return problems;
}

/** A gauge with normals may do without readings: the engine says what its rain is made from. */
function withoutNeedless(problems: readonly Problem[], { gauges }: ProgrammeFacts): readonly Problem[] {
  const hasNormals = new Set(gauges.flatMap(({ gaugeId, normals }) => (normals.length > 0 ? [gaugeId] : [])));
  return problems.filter(({ code, place }) => code !== 'rainFile.missing' || !hasNormals.has(place.gaugeId ?? ''));
}

/** Adds to places the name of the cell, as the spreadsheet has it. */
function locator(letters: ReadonlyMap<string, ReadonlyMap<string, string>>): (place: Place) => Place {
  return (place) => {
    const { file, row, column, cell } = place;
    const found = cell === undefined && row !== undefined ? letters.get(file ?? '')?.get(column ?? '') : undefined;
    return found === undefined ? place : { ...place, cell: `${found}${row}` };
  };
}

/** Each doubt of a site with the name of its cell. */
function doubtsLocated(site: SiteFacts, located: (place: Place) => Place): SiteFacts {
  const { drainage, settling, stand, head, treatment, safety } = site.doubtsBeside;
  const doubtsBeside = {
    drainage: drainage.map(located),
    settling: settling.map(located),
    stand: stand.map(located),
    head: head.map(located),
    treatment: treatment.map(located),
    safety: safety.map(located),
  };
  const unusableTests = site.safety.unusableTests.map((one) => ({ ...one, at: located(one.at) }));
  return {
    ...site,
    safety: { ...site.safety, unusableTests },
    doubts: site.doubts.map(located),
    doubtsBeside,
  };
}

/**
 * What does a programme in one workbook come to? The same as a folder of the same tables: its sheets are called as the tables, with
 * `settings` (field, value) and the rain in `rain` (gaugeId, date, rain_mm) or in a sheet `rain <gaugeId>` for each gauge.
 *
 * @param path - the workbook [text]
 * @returns the facts, every problem with its sheet, row, column and cell, all that was not used, and how much of each sheet was
 * @problem workbook.not_a_workbook - and the other codes of workbookProblems
 * @law never throws for what stands in the workbook; opens no other file
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export async function readWorkbookProgramme(path: string): Promise<ProgrammeRead> {
  const opened = await openWorkbook(path);
  if (isProblem(opened)) return nothingRead(opened);
  const workbook = matchedWorkbook(opened, await readColumnsFile(path));
  const settings = await readSettingsSheet(workbook);
  const found = await readTables(workbook);
  const gaugeIds = (found.tables.gauges?.rows ?? []).map(({ values }) => values.gaugeId!);
  const rain = await readRainSheets(workbook, gaugeIds);
  const doubtsOfAll = [...workbook.doubtsOfAll, ...settings.doubtsOfAll, ...found.doubtsOfAll];
  const joined = assembleProgramme({
    settings: settings.settings,
    tables: found.tables,
    rain: rain.byGauge,
    doubtsOfAll,
  });
  const located = locator(new Map([...settings.letters, ...found.letters, ...rain.letters]));
  const stray = otherSheets(workbook, found.tables.gauges?.usable === true ? gaugeIds : null);
  const ways = checkWays(found.tables, null);
  const ofRain = withoutNeedless(rain.problems, joined.facts);
  const ofTables = [settings.problems, found.problems, joined.problems, ways.problems].flat();
  const problems = [...workbook.problems, ...ofTables, ...ofRain, ...stray];
  const notUsed = [...settings.notUsed, ...found.notUsed, ...joined.notUsed, ...ways.notUsed, ...rain.notUsed];
  const tableRows = Object.values(found.tables).map(({ file, count }) => ({ file, rows: count }));
  const filed = [...tableRows, ...settings.files, ...rain.files];
  return {
    facts: {
      ...joined.facts,
      sites: joined.facts.sites.map((site) => doubtsLocated(site, located)),
    },
    problems: problems.map((problem) => ({ ...problem, place: located(problem.place) })),
    notUsed,
    files: filed.map(({ file, rows }) => ({ file, rows, used: usedRows(file, rows, notUsed) })),
  };
}
