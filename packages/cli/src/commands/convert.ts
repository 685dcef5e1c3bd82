import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { isWorkbook, olderFiles, tablesAsRead, WriteRefused, writeProgramme, writeWorkbook } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { countProblems, problemList } from '../print/problemList.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import type { FromData } from './folderOrData.ts';

const { convert, progress: progressWords, trouble } = spoken.commandLine;

export interface ConvertOptions extends FromData {
  readonly overwrite?: boolean;
}

/** Names of files that are no folder and no workbook we write: somebody who types one wants such a file. Ours. */
const otherFiles =
  /\.(?:xls|xlsm|xlsb|xltx|xlt|ods|fods|numbers|csv|tsv|txt|json|geojson|kml|kmz|dly|zip|gz|pdf|docx?|html?)[/\\]?$/i;

function refuse(problem: Problem): never {
  const { what, todo } = problemSentence(problem, spoken);
  throw new WrongUse(`${what} ${todo}`);
}

/** Is the way there wrong, so that nothing can be read at all? */
function isWholly({ code, severity }: Problem): boolean {
  return code.startsWith('folder.') || (code.startsWith('workbook.') && severity === 'blocker');
}

async function checkPaths(from: string, to: string): Promise<void> {
  if (from === '' || to === '') throw new WrongUse(trouble.folderUnnamed);
  if (resolve(from) === resolve(to)) throw new WrongUse(convert.onItself);
  const isFolder = (await stat(to).catch(() => null))?.isDirectory() === true;
  if (!isFolder && otherFiles.test(to)) throw new WrongUse(convert.onlyTo(to));
  const found = await stat(from).catch(() => null);
  if (found === null) throw new WrongUse(convert.notThere(from));
  if (found.isFile() && !(await isWorkbook(from))) throw new WrongUse(convert.notThere(from));
}

/** Writes a programme anew, every row as it stands: a folder as a workbook, a workbook as a folder, or either as its own kind. */
export async function convertCommand(
  from: string,
  to: string,
  { overwrite = false }: ConvertOptions,
  context: Context,
): Promise<ExitCode> {
  await checkPaths(from, to);
  const timer = setInterval(() => context.progress.at(() => progressWords.reading(context.shownAs ?? from)), 250);
  try {
    const { programme, told: found } = await tablesAsRead(from);
    const wrong = found.find(isWholly);
    if (wrong) refuse(wrong);
    const isBook = /\.xlsx$/i.test(to);
    const book = isBook ? await writeWorkbook(to, programme, { overwrite }) : { sheets: [], told: [] };
    const files = isBook ? [] : (await writeProgramme(to, programme, { overwrite })).files;
    const told = [...found, ...book.told, ...(isBook ? [] : await olderFiles(to, files))];
    const sheet = new Sheet(context.look);
    const rows = Object.values(programme.tables).reduce((sum, table) => sum + table.length, 0);
    const days = programme.rain.reduce((sum, gauge) => sum + gauge.rows.length, 0);
    sheet.line(
      isBook ? convert.book(to, book.sheets.length, rows, days) : convert.folder(to, files.length, rows, days),
    );
    if (told.length > 0) {
      sheet.heading(convert.told);
      problemList(sheet, told, true);
    }
    context.progress.done();
    await write(context.around.stdout, sheet.text());
    return countProblems(told).blocker > 0 ? exitCodes.blocker : exitCodes.done;
  } catch (error) {
    if (error instanceof WriteRefused) refuse(error.problem);
    throw error;
  } finally {
    clearInterval(timer);
  }
}
