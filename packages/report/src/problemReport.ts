import type { Problem } from '@eavewell/engine';
import type { ProblemReport } from '@eavewell/tables';
import { type Language, problemSentence } from '@eavewell/words';

/** A problem as the report has it: as data, with its sentence. */
export function problemReport(problem: Problem, language: Language): ProblemReport {
  const { code, severity, place, facts } = problem;
  const copied: ProblemReport['facts'] = {};
  for (const [name, value] of Object.entries(facts)) copied[name] = typeof value === 'object' ? [...value] : value;
  return { code, severity, place: { ...place }, facts: copied, ...problemSentence(problem, language) };
}
