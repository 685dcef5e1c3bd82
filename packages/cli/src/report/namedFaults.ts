import type { Place, Problem, SiteDesign } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { spoken } from '../language.ts';

/**
 * Says which fault keeps a site from a verdict, in the words of the fault itself.
 *
 * @param problems - what reading found
 * @returns a function that gives a site's design with the fault beside the doubt: facts `fault` and `todo` [text]
 * @definition ours
 */
export function faultNamer(problems: readonly Problem[]): (design: SiteDesign) => SiteDesign {
  const blockers = new Map<string, Problem>();
  for (const problem of problems) {
    const key = keyOf(problem.place);
    if (problem.severity === 'blocker' && !blockers.has(key)) blockers.set(key, problem);
  }
  const named = (problem: Problem): Problem => {
    const fault = problem.code === 'site.facts_in_doubt' ? blockers.get(keyOf(problem.place)) : undefined;
    if (!fault) return problem;
    const { what, todo } = problemSentence(fault, spoken);
    return { ...problem, facts: { ...problem.facts, fault: what, todo } };
  };
  return (design) => ({ ...design, problems: design.problems.map(named) });
}

/** Where a fault stands, whatever it is told of. */
function keyOf({ file, row, column }: Place): string {
  return JSON.stringify([file, row, column].map((part) => part ?? null));
}
