import type { Place, Problem, SiteDesign } from '@eavewell/engine';
import { type Language, problemSentence } from '@eavewell/words';

/** The first blocker at a place; null where there is none. */
export type FaultAt = (place: Place) => Problem | null;

/**
 * Which fault stands at a place?
 *
 * @param problems - what reading found
 * @returns a function that gives the first blocker at a place; null where there is none
 * @definition ours
 */
export function faultFinder(problems: readonly Problem[]): FaultAt {
  const blockers = new Map<string, Problem>();
  for (const problem of problems) {
    const key = keyOf(problem.place);
    if (problem.severity === 'blocker' && !blockers.has(key)) blockers.set(key, problem);
  }
  return (place) => blockers.get(keyOf(place)) ?? null;
}

/**
 * Says which fault keeps a site from a verdict, in the words of the fault itself.
 *
 * @param faultAt - the fault at a place
 * @param language - the language of its words
 * @returns a function that gives a site's design with the fault beside the doubt: facts `fault` and `todo` [text]
 * @definition ours
 */
export function faultNamer(faultAt: FaultAt, language: Language): (design: SiteDesign) => SiteDesign {
  return (design) => ({
    ...design,
    problems: design.problems.map((problem) => withFault(problem, faultAt, language)),
  });
}

/** A doubt with the fault behind it in words; any other problem as it is. */
export function withFault(problem: Problem, faultAt: FaultAt, language: Language): Problem {
  const fault = problem.code === 'site.facts_in_doubt' ? faultAt(problem.place) : null;
  if (!fault) return problem;
  const { what, todo } = problemSentence(fault, language);
  return { ...problem, facts: { ...problem.facts, fault: what, todo } };
}

/** Where a fault stands, whatever it is told of. */
function keyOf({ file, row, column }: Place): string {
  return JSON.stringify([file, row, column].map((part) => part ?? null));
}
