import { join } from 'node:path';
import type { Place, Problem } from '@eavewell/engine';
import { notUsedFile, writeNotUsed } from '@eavewell/formats';
import type { NotUsed } from '@eavewell/tables';
import { problemSentence } from '@eavewell/words';
import { spoken } from '../language.ts';
import { problemsCsv } from './problemsCsv.ts';
import { writeWhole } from './wholeFile.ts';

function keyOf(at: Place | NotUsed, code: string): string {
  return JSON.stringify([at.file, at.row, at.column ?? null, code]);
}

/** Writes problems.csv and not-used.csv; gives their paths. The reasons in the second are the sentences of the first. */
export async function writeProblemFiles(
  folder: string,
  problems: readonly Problem[],
  notUsed: readonly NotUsed[],
): Promise<readonly string[]> {
  const paths = [join(folder, 'problems.csv'), join(folder, notUsedFile)] as const;
  await writeWhole(paths[0], problemsCsv(problems));
  // A row that was left out is listed without a column, though its problem may name the cell at fault.
  const wholeRow = ({ file, row }: Place): Place => ({
    ...(file === undefined ? {} : { file }),
    ...(row === undefined ? {} : { row }),
  });
  const found = new Map(problems.map((problem) => [keyOf(wholeRow(problem.place), problem.code), problem]));
  for (const problem of problems) found.set(keyOf(problem.place, problem.code), problem);
  await writeNotUsed(paths[1], notUsed, (listed) => {
    const problem = found.get(keyOf(listed, listed.code));
    return problem ? problemSentence(problem, spoken).what : listed.code;
  });
  return paths;
}
