import { dayOnClock, type Problem, problemsOf, type ReadyProgramme, readyProgramme } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import type { NotUsed } from '@eavewell/tables';
import { type ExitCode, exitCodes } from '../exitCodes.ts';
import { writeProblemFiles } from '../files/problemFiles.ts';
import { spoken } from '../language.ts';
import { gaugeLines } from '../print/gaugeLines.ts';
import { countProblems, problemList } from '../print/problemList.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import type { FromData } from './folderOrData.ts';
import { makeOutFolder } from './outFolder.ts';
import { readFolder } from './readFolder.ts';

const { check, design, headings } = spoken.commandLine;

export interface CheckOptions extends FromData {
  readonly out?: string;
  readonly all?: boolean;
}

/** Reads a programme and says what is wrong in it, where, and what to do. */
export async function checkCommand(folder: string, options: CheckOptions, context: Context): Promise<ExitCode> {
  if (options.out !== undefined) await makeOutFolder(options.out);
  const read = await readFolder(folder, context);
  const ready = readyProgramme(read.facts, { today: dayOnClock(new Date()) });
  const problems = problemsOfFolder(read, ready);
  context.progress.done();
  const sheet = new Sheet(context.look);
  sheet.heading(read.facts.settings.programme);
  filesSection(sheet, read);
  gaugeLines(sheet, read.facts, ready);
  problemsSection(sheet, problems, options.all === true);
  notUsedSection(sheet, read.notUsed, options.out !== undefined);
  const written = options.out === undefined ? [] : await writeProblemFiles(options.out, problems, read.notUsed);
  for (const path of written) sheet.line(design.written(path), 0, 2);
  await write(context.around.stdout, sheet.text());
  return countProblems(problems).blocker > 0 ? exitCodes.blocker : exitCodes.done;
}

/** What reading found, what the gauges' records show, and what is missing or assumed at the sites. */
function problemsOfFolder({ facts, problems }: ProgrammeRead, ready: ReadyProgramme): readonly Problem[] {
  const ofGauges = [...ready.gauges.values()].flatMap((gauge) => gauge.problems);
  return [...problems, ...ofGauges, ...facts.sites.flatMap((site) => problemsOf(site, ready))];
}

/** The files and how much of each was used; the rain files together. */
function filesSection(sheet: Sheet, read: ProgrammeRead): void {
  sheet.heading(headings.read);
  const rain = read.files.filter(({ file }) => file.startsWith('rain/'));
  const rows = read.files
    .filter((file) => !rain.includes(file))
    .map(({ file, rows, used }) => [file, check.rowsUsed(used, rows)]);
  if (rain.length > 0) {
    const used = rain.reduce((sum, file) => sum + file.used, 0);
    const all = rain.reduce((sum, file) => sum + file.rows, 0);
    rows.push([check.manyRainFiles(rain.length), check.rowsUsed(used, all)]);
  }
  sheet.table(
    [
      { head: '', align: 'left' },
      { head: '', align: 'right' },
    ],
    rows,
  );
}

function problemsSection(sheet: Sheet, problems: readonly Problem[], all: boolean): void {
  sheet.heading(headings.problems);
  const { blocker, warning, note } = countProblems(problems);
  if (problems.length === 0) sheet.line(check.nothingWrong, 2);
  else sheet.line(check.counted(blocker, warning, note), 2);
  problemList(sheet, problems, all);
}

function notUsedSection(sheet: Sheet, notUsed: readonly NotUsed[], isWritten: boolean): void {
  sheet.blank();
  if (notUsed.length === 0) return;
  const wholeRows = notUsed.filter((one) => one.column === undefined).length;
  sheet.heading(headings.notUsed);
  sheet.line(check.notUsed(wholeRows, notUsed.length - wholeRows), 2);
  if (!isWritten) sheet.line(check.writeThem, 2);
  sheet.blank();
}
