import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { assembleProgramme, folderTableNames, folderTables, idForm, nearest, tableProblem } from '@eavewell/tables';
import { checkDatapackage } from './checkDatapackage.ts';
import { nothingRead, type ProgrammeRead, usedRows } from './programmeRead.ts';
import type { RainFileRead } from './rainFileRead.ts';
import { readRainFile } from './readRainFile.ts';
import { readSettingsFile } from './readSettingsFile.ts';
import { readTables } from './readTables.ts';
import { isWorkbook } from './workbook/isWorkbook.ts';
import { readWorkbookProgramme } from './workbook/readWorkbook.ts';
import { notUsedFile } from './writeNotUsed.ts';

/** The names in the folder, or why it cannot be read. */
async function entriesOf(folder: string): Promise<readonly string[] | Problem> {
  const place = { file: folder };
  const facts = { value: folder, expected: 'a folder of tables' };
  try {
    if (!(await stat(folder)).isDirectory()) return tableProblem('folder.not_a_folder', place, facts);
    return (await readdir(folder)).sort();
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code ?? 'unknown';
    if (reason === 'ENOENT' || reason === 'ENOTDIR') return tableProblem('folder.missing', place, facts);
    return tableProblem('folder.unreadable', place, { ...facts, reason });
  }
}

const expectedNames = [
  ...folderTableNames.map((name): string => folderTables[name].file),
  'rain',
  'settings.json',
  'datapackage.json',
  notUsedFile,
];

function unknownFiles(entries: readonly string[]): readonly Problem[] {
  return entries
    .filter((name) => !name.startsWith('.') && !expectedNames.includes(name))
    .map((name) => tableProblem('file.unknown', { file: name }, { value: name, expected: expectedNames }));
}

const rainFileEnd = /\.(?:csv|dly)$/;

/** Files of rain that no gauge asks for. */
async function strayRain(folder: string, gaugeIds: ReadonlySet<string>): Promise<readonly Problem[]> {
  let names: readonly string[];
  try {
    names = (await readdir(join(folder, 'rain'))).sort();
  } catch {
    return []; // no such folder: the gauges' own files are named as missing
  }
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

async function readRainFiles(folder: string, gaugeIds: Iterable<string>) {
  const rain = new Map<string, RainFileRead>();
  for (const gaugeId of gaugeIds) rain.set(gaugeId, await readRainFile(folder, gaugeId));
  return rain;
}

/**
 * What does a programme come to, in a folder of tables or in one workbook? Every fault is a problem with its place, and none stops the rest: what can be used is in
 * the facts, what cannot is listed, and a site whose rows could not all be used is in doubt.
 *
 * @param folder - the programme folder, or a workbook [text]
 * @returns the facts, every problem, all that was not used, and how much of each file was
 * @problem folder.missing - no such folder; and the other codes of tableProblems
 * @law never throws for what stands in the folder; never opens a file outside it
 * @definition ours: docs/tables.md
 */
export async function readProgramme(folder: string): Promise<ProgrammeRead> {
  if (await isWorkbook(folder)) return readWorkbookProgramme(folder);
  const entries = await entriesOf(folder);
  if (!('length' in entries)) return nothingRead(entries);
  const settings = await readSettingsFile(folder);
  const found = await readTables(folder, entries);
  const gaugeIds = new Set((found.tables.gauges?.rows ?? []).map(({ values }) => values.gaugeId!));
  const rain = await readRainFiles(folder, gaugeIds);
  const doubtsOfAll = [...settings.doubtsOfAll, ...found.doubtsOfAll];
  const joined = assembleProgramme({ settings: settings.settings, tables: found.tables, rain, doubtsOfAll });
  const rainReads = [...rain.values()];
  const notUsed = [found.notUsed, joined.notUsed, ...rainReads.map((read) => read.notUsed)].flat();
  const stray = found.tables.gauges?.usable === true ? await strayRain(folder, gaugeIds) : [];
  const problems = [
    settings.problems,
    found.problems,
    joined.problems,
    ...rainReads.map((read) => read.problems),
    stray,
    unknownFiles(entries),
    await checkDatapackage(folder),
  ].flat();
  const tableNotUsed = [...found.notUsed, ...joined.notUsed];
  const files = [
    ...found.files.map(({ file, rows }) => ({ file, rows, used: usedRows(file, rows, tableNotUsed) })),
    ...rainReads.map(({ file, rows, notUsed: left }) => ({ file, rows, used: usedRows(file, rows, left) })),
  ];
  return { facts: joined.facts, problems, notUsed, files };
}
