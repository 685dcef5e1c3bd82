import type { SiteReport } from '../siteFigures.ts';

type Problem = SiteReport['problems'][number];

/**
 * What does a draft bring up that is not so as the site is saved? Tanks that share a level, a purpose nobody is served by: what
 * answers why a change does less than it seems to.
 *
 * @param saved - as the site is saved
 * @param drafted - with the draft
 * @returns what may change the verdict or keeps it from one, each once
 */
export function draftProblems(
  { problems: before }: Pick<SiteReport, 'problems'>,
  { problems: after }: Pick<SiteReport, 'problems'>,
): readonly Problem[] {
  const known = new Set(before.map(said));
  return after.filter((problem) => {
    const isNew = problem.severity !== 'note' && !known.has(said(problem));
    known.add(said(problem));
    return isNew;
  });
}

const said = ({ code, what }: Problem) => `${code} ${what}`;
