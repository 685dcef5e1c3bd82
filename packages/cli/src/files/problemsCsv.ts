import type { Problem } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { spoken } from '../language.ts';
import { csvLine } from './csvLine.ts';

const columns = ['severity', 'code', 'file', 'row', 'column', 'siteId', 'gaugeId', 'day', 'what', 'todo'];

/** Every problem, one to a line, with its sentence. */
export function problemsCsv(problems: readonly Problem[]): string {
  const lines = problems.map((problem) => {
    const { file, row, column, siteId, gaugeId, day } = problem.place;
    const { what, todo } = problemSentence(problem, spoken);
    const place = [file ?? null, row ?? null, column ?? null, siteId ?? null, gaugeId ?? null, day ?? null];
    return csvLine([problem.severity, problem.code, ...place, what, todo]);
  });
  return csvLine(columns) + lines.join('');
}
