import { type ProgrammeRead, readProgramme } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import type { Context } from './context.ts';

/** Reads a folder or a workbook. One that is not there, or is none, is wrong use; all else comes back as problems. */
export async function readFolder(folder: string, { progress, shownAs = folder }: Context): Promise<ProgrammeRead> {
  const { reading } = spoken.commandLine.progress;
  const timer = setInterval(() => progress.at(() => reading(shownAs)), 250);
  try {
    const read = await readProgramme(folder);
    const wrong = read.problems.find(
      ({ code, severity }) => code.startsWith('folder.') || (code.startsWith('workbook.') && severity === 'blocker'),
    );
    if (wrong) {
      const { what, todo } = problemSentence(wrong);
      throw new WrongUse(`${what} ${todo}`);
    }
    return read;
  } finally {
    clearInterval(timer);
  }
}
