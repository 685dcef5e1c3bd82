import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import {
  assembleProgramme,
  checkWays,
  columnsFile,
  folderTableNames,
  folderTables,
  idForm,
  lengthsOfLines,
  nearest,
  tableProblem,
  wayLinesFile,
} from '@eavewell/tables';
import { checkDatapackage } from './checkDatapackage.ts';
import { readColumnsFile } from './columnsSaved.ts';
import { entriesOf } from './folderEntries.ts';
import { keepFiles } from './keepFiles.ts';
import { nothingRead, type ProgrammeRead, usedRows } from './programmeRead.ts';
import type { RainFileRead } from './rainFileRead.ts';
import { type RainAsked, readRainFile } from './readRainFile.ts';
import { readSettingsFile } from './readSettingsFile.ts';
import { readTables } from './readTables.ts';
import { readWayLines } from './wayLines.ts';
import { isWorkbook } from './workbook/isWorkbook.ts';
import { openWorkbook } from './workbook/openWorkbook.ts';
import { readWorkbookProgramme } from './workbook/readWorkbook.ts';
import { isProblem } from './workbook/sheets.ts';
import { notUsedFile } from './writeNotUsed.ts';

/** What is asked of the reader. */
export interface ReadOptions {
  /** Keep the files of a folder as they stood, so that nothing is lost when it is written again. Takes their size in memory. */
  readonly keep?: boolean;
  /** Tables of rain larger than this are streamed [byte]. */
  readonly streamedFrom_bytes?: number;
  /** How much of a streamed file is held at a time [byte]. */
  readonly piece_bytes?: number;
}

/**
 * Why can this folder or workbook not be read at all?
 *
 * @param folder - the programme folder, or a workbook [text]
 * @returns the problem; null where it can be read
 * @problem folder.missing - no such folder; folder.not_a_folder, folder.unreadable
 * @definition ours
 */
export async function folderProblem(folder: string): Promise<Problem | null> {
  if (await isWorkbook(folder)) {
    const opened = await openWorkbook(folder);
    return isProblem(opened) ? opened : null;
  }
  const entries = await entriesOf(folder);
  return 'length' in entries ? null : entries;
}

const expectedNames = [
  ...folderTableNames.map((name): string => folderTables[name].file),
  wayLinesFile,
  'rain',
  'settings.json',
  'datapackage.json',
  columnsFile,
  notUsedFile,
];

function unknownFiles(entries: readonly string[]): readonly Problem[] {
  return entries
    .filter((name) => !name.startsWith('.') && !expectedNames.includes(name))
    .map((name) => tableProblem('file.unknown', { file: name }, { value: name, expected: expectedNames }));
}

const rainFileEnd = /\.(?:csv|dly)$/;

/** The names in the folder `rain`; none where there is no such folder: the gauges' own files are named as missing. */
async function rainEntriesOf(folder: string): Promise<readonly string[]> {
  try {
    return (await readdir(join(folder, 'rain'))).sort();
  } catch {
    return [];
  }
}

/** Files of rain that no gauge asks for. */
function strayRain(names: readonly string[], gaugeIds: ReadonlySet<string>): readonly Problem[] {
  const problems: Problem[] = [];
  for (const name of names.filter((entry) => !entry.startsWith('.'))) {
    const gaugeId = name.replace(rainFileEnd, '');
    const isRain = rainFileEnd.test(name);
    if (gaugeIds.has(gaugeId) && isRain) continue;
    const file = `rain/${name}`;
    if (isRain && idForm.test(gaugeId)) {
      const facts = { value: file, expected: 'a gauge of gauges.csv', likely: nearest(gaugeId, gaugeIds) ?? '' };
      problems.push(tableProblem('rainFile.without_gauge', { file, gaugeId }, facts));
    } else
      problems.push(
        tableProblem('file.unknown', { file }, { value: file, expected: '<gaugeId>.csv or <gaugeId>.dly' }),
      );
  }
  return problems;
}

function withoutMissingFile(read: RainFileRead): RainFileRead {
  return { ...read, problems: read.problems.filter(({ code }) => code !== 'rainFile.missing') };
}

function isThere({ problems }: RainFileRead): boolean {
  return !problems.some(({ code }) => code === 'rainFile.missing');
}

async function readRainFiles(folder: string, gaugeIds: Iterable<string>, asked: RainAsked) {
  const rain = new Map<string, RainFileRead>();
  for (const gaugeId of gaugeIds) rain.set(gaugeId, await readRainFile(folder, gaugeId, asked));
  return rain;
}

/**
 * What does a programme come to, in a folder of tables or in one workbook? Every fault is a problem with its place, and none stops the rest: what can be used is in
 * the facts, what cannot is listed, and a site whose rows could not all be used is in doubt.
 *
 * @param folder - the programme folder, or a workbook [text]
 * @param options - `keep`: keep the files as they stood
 * @returns the facts, every problem, all that was not used, and how much of each file was
 * @problem folder.missing - no such folder; and the other codes of tableProblems
 * @law never throws for what stands in the folder; never opens a file outside it
 * @definition ours: docs/tables.md
 */
export async function readProgramme(folder: string, options: ReadOptions = {}): Promise<ProgrammeRead> {
  if (await isWorkbook(folder)) return readWorkbookProgramme(folder);
  const entries = await entriesOf(folder);
  if (!('length' in entries)) return nothingRead(entries);
  const settings = await readSettingsFile(folder);
  const columns = await readColumnsFile(folder);
  const { matchings } = columns;
  const found = await readTables(folder, entries, matchings);
  const gaugeIds = new Set((found.tables.gauges?.rows ?? []).map(({ values }) => values.gaugeId!));
  const rainEntries = await rainEntriesOf(folder);
  const rain = await readRainFiles(folder, gaugeIds, { ...options, matchings, entries, rainEntries });
  const doubtsOfAll = [...settings.doubtsOfAll, ...columns.doubtsOfAll, ...found.doubtsOfAll];
  const wayLines = await readWayLines(folder);
  const wayLengths_km = lengthsOfLines(wayLines.lines ?? []);
  const joined = assembleProgramme({
    ...{ settings: settings.settings, tables: found.tables, rain, doubtsOfAll, wayLengths_km },
  });
  const ways = checkWays(found.tables, wayLines.lines);
  // A gauge with normals may do without a file of readings: the engine says what its rain is made from.
  const hasNormals = new Set(
    joined.facts.gauges.flatMap(({ gaugeId, normals }) => (normals.length > 0 ? [gaugeId] : [])),
  );
  const rainReads = [...rain].map(([gaugeId, read]) => (hasNormals.has(gaugeId) ? withoutMissingFile(read) : read));
  const tableNotUsed = [...found.notUsed, ...joined.notUsed, ...ways.notUsed];
  const problems = [
    settings.problems,
    columns.problems,
    found.problems,
    joined.problems,
    wayLines.problems,
    ways.problems,
    ...rainReads.map((read) => read.problems),
    found.tables.gauges?.usable === true ? strayRain(rainEntries, gaugeIds) : [],
    unknownFiles(entries),
    await checkDatapackage(folder),
  ].flat();
  const files = [
    ...found.files.map(({ file, rows }) => ({ file, rows, used: usedRows(file, rows, tableNotUsed) })),
    ...[...rain.values()].filter(isThere).map(({ file, rows, notUsed, unlistedRows }) => {
      return { file, rows, used: usedRows(file, rows, notUsed) - unlistedRows };
    }),
  ];
  return {
    facts: joined.facts,
    problems,
    notUsed: [...tableNotUsed, ...rainReads.flatMap((read) => read.notUsed)],
    files,
    ...(options.keep === true ? { kept: await keepFiles(folder, rainEntries, settings, matchings) } : {}),
  };
}
