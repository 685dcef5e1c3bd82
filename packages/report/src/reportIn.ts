import type { Place, Problem, WorkingCode } from '@eavewell/engine';
import type { DesignReport, ProblemReport, SiteReport } from '@eavewell/tables';
import { type Language, problemSentence } from '@eavewell/words';
import { findingOf } from './siteReport.ts';

/** A reported problem as the problem it was. */
function problemOf({ code, severity, place, facts }: ProblemReport): Problem {
  const known = Object.entries(place).filter(([, part]) => part !== undefined);
  return { code, severity, place: Object.fromEntries(known) as Place, facts };
}

const problemIn = (problem: ProblemReport, language: Language): ProblemReport => ({
  ...problem,
  ...problemSentence(problemOf(problem), language),
});

/** What a reported site comes to, in a language. */
export const findingIn = (site: SiteReport, language: Language): string =>
  findingOf({ storages: site.storages, problems: site.problems.map(problemOf) }, language);

/** The smallest change that would mend a reported site, in a language; null where none is known. */
export function remedyIn(site: SiteReport, language: Language): string | null {
  const smallest = site.remedies?.ranked[0];
  return smallest ? language.remedies.remedy(smallest) : null;
}

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

/** A whole report with its sentences said again in a language. No figure changes. */
export function designReportIn(report: DesignReport, language: Language): DesignReport {
  return {
    ...report,
    gauges: report.gauges.map((gauge) => ({
      ...gauge,
      problems: gauge.problems.map((problem) => problemIn(problem, language)),
    })),
    sites: report.sites.map((site) => siteReportIn(site, language)),
    problems: report.problems.map((problem) => problemIn(problem, language)),
  };
}
