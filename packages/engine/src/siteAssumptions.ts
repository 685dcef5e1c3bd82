import { type EngineProblemCode, engineProblem, type Problem, type SiteFacts } from './kernel/index.ts';

/** A second source is told of wherever there is one: its water is not the roof's. */
export function leansOnSource({ siteId, secondSource }: SiteFacts): readonly Problem[] {
  if (secondSource === null) return [];
  const { name, kind } = secondSource;
  return [engineProblem('site.second_source', { file: 'sites.csv', column: 'secondSourceId', siteId }, { name, kind })];
}

/** A class that has no target of its own: the programme's stands for it, and that is said. */
export function classWithoutTarget({ siteId, siteClass, target }: SiteFacts): readonly Problem[] {
  if (siteClass === null || target !== null) return [];
  return [engineProblem('site.target_of_programme', { file: 'sites.csv', column: 'siteClass', siteId }, { siteClass })];
}

/** Problems of a gauge's rain that keep its sites from holding. */
export const cappingCodes: readonly EngineProblemCode[] = ['rain.made_up'];

/** The gravest assumption that is kinder than the facts may be: with one of these a site is `tight` at best. */
export function cappingAssumption(problems: readonly Problem[]): EngineProblemCode | null {
  const ofRain = cappingCodes.find((capping) => problems.some(({ code }) => code === capping));
  return ofRain ?? problems.find(isTooKind)?.code ?? null;
}

/** Does this problem stand for an assumption that may give more water, or fewer people, than there are? */
function isTooKind(problem: Problem): problem is Problem<EngineProblemCode> {
  if (problem.code === 'site.growth_not_used') return Number(problem.facts['growthFraction_per_year']) > 0;
  return problem.code === 'site.gutters_assumed' || problem.code === 'site.roof_very_large';
}
