import type { Problem } from '@eavewell/engine';
import type { ProblemReport } from '@eavewell/tables';
import { problemSentence } from '@eavewell/words';
import { problemReport } from './problemReport.ts';
import type { SheetTold } from './rolloutSheetTold.ts';

/** Names that stand in a sentence, so that it can be read. Ours. */
const named_most = 4;

/** A problem as the page has it: its facts as they are, its sentence with names of sites and parts, of many the first alone. */
export function problemOfSheet({ nameOf, facts, language }: SheetTold, problem: Problem): ProblemReport {
  const parts = new Map(facts.parts.map(({ partId, name }) => [partId, name]));
  const named = (value: Problem['facts'][string]): Problem['facts'][string] => {
    if (!Array.isArray(value)) return value;
    const names = value.map((id) => nameOf.get(id) ?? parts.get(id) ?? id);
    const more = names.length - named_most;
    if (more <= 0) return names;
    return [...names.slice(0, named_most), language.say('rolloutAnswers.andMore', { count: more })];
  };
  const spoken = Object.fromEntries(Object.entries(problem.facts).map(([name, value]) => [name, named(value)]));
  return { ...problemReport(problem, language), ...problemSentence({ ...problem, facts: spoken }, language) };
}
