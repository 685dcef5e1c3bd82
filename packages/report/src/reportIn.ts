import type { Place, Problem, WorkingCode } from '@eavewell/engine';
import type { ProblemReport, SiteReport } from '@eavewell/tables';
import { type Language, problemSentence } from '@eavewell/words';
import { findingOf } from './siteReport.ts';

/** A reported problem as the problem it was. */
function problemOf({ code, severity, place, facts }: ProblemReport): Problem {
  const known = Object.entries(place).filter(([, part]) => part !== undefined);
  return { code, severity, place: Object.fromEntries(known) as Place, facts };
}

/** A reported problem with its sentence said again in a language. */
export const problemIn = (problem: ProblemReport, language: Language): ProblemReport => ({
  ...problem,
  ...problemSentence(problemOf(problem), language),
});

/** What a reported site comes to, in a language. */
const findingIn = (site: SiteReport, language: Language): string =>
  findingOf({ storages: site.storages, problems: site.problems.map(problemOf) }, language);

/** A reported site with its sentences said again in a language. No figure changes. */
export function siteReportIn(site: SiteReport, language: Language): SiteReport {
  return {
    ...site,
    finding: findingIn(site, language),
    remedies: site.remedies && {
      ...site.remedies,
      ranked: site.remedies.ranked.map((one) => ({ ...one, about: language.remedies.remedy(one) })),
    },
    problems: site.problems.map((problem) => problemIn(problem, language)),
    working: site.working.map((line) => ({
      ...line,
      ...language.working[line.code as WorkingCode],
      inputs: line.inputs.map((input) => ({ ...input, label: language.input(input.name) })),
    })),
  };
}
