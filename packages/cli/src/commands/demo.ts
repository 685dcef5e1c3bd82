import { demoProgramme } from '@eavewell/demo';
import { WriteRefused, writeProgramme } from '@eavewell/formats';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';

const { demo, progress: progressWords, trouble } = spoken.commandLine;

/** Sites of a demo that states no number. */
const defaultSites = 60;

export interface DemoOptions {
  readonly sites?: number;
  readonly seed?: number;
  readonly clean?: boolean;
}

/** Makes an invented programme in a new folder, and says what to try next. */
export async function demoCommand(folder: string, options: DemoOptions, context: Context): Promise<ExitCode> {
  if (folder === '') throw new WrongUse(trouble.folderUnnamed);
  const programme = demoProgramme({ ...options, sites: options.sites ?? defaultSites });
  context.progress.at(() => progressWords.making(folder));
  try {
    await writeProgramme(folder, programme);
  } catch (error) {
    if (!(error instanceof WriteRefused)) throw error;
    const isFile = error.problem.code === 'folder.not_a_folder';
    throw new WrongUse(isFile ? demo.notAFolder(folder) : demo.notEmpty(folder));
  }
  context.progress.done();
  const sheet = new Sheet(context.look);
  sheet.line(demo.made(options.sites ?? defaultSites, programme.gauges_count, folder));
  sheet.line(demo.faults(programme.planted.length));
  sheet.line(demo.next);
  sheet.line(`eavewell check ${folder}`, 2);
  sheet.line(`eavewell design ${folder}`, 2);
  await write(context.around.stdout, sheet.text());
  return exitCodes.done;
}
