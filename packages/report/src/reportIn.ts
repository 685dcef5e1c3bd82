import type { Place, Problem, WorkingCode } from '@eavewell/engine';
import type { DesignReport, ProblemReport, SiteReport } from '@eavewell/tables';
import { type Language, problemSentence } from '@eavewell/words';
import { besideSaid } from './besideSaid.ts';
import { drainageIn } from './drainageReport.ts';
import { type FaultAt, faultFinder, withFault } from './namedFaults.ts';
import { safetyIn } from './safetyReport.ts';
import { findingSaid, saidIn } from './siteReport.ts';
import { standsIn } from './standReport.ts';
import { stormIn } from './stormReport.ts';
import { treatmentIn } from './treatmentReport.ts';
import { wearIn } from './wearReport.ts';

/** A reported problem as the problem it was. */
function problemOf({ code, severity, place, facts }: ProblemReport): Problem {
  const known = Object.entries(place).filter(([, part]) => part !== undefined);
  return { code, severity, place: Object.fromEntries(known) as Place, facts };
}

/** A reported problem said again in a language; the fault behind a doubt with it. */
export function problemIn(reported: ProblemReport, language: Language, faultAt: FaultAt): ProblemReport {
  const problem = withFault(problemOf(reported), faultAt, language);
  return { ...reported, facts: { ...problem.facts } as ProblemReport['facts'], ...problemSentence(problem, language) };
}

/**
 * The faults of a report, by their places.
 *
 * @param problems - what was reported of the tables
 * @returns a function that gives the first blocker at a place; null where there is none
 * @definition ours
 */
export const reportedFaults = (problems: readonly ProblemReport[]): FaultAt => faultFinder(problems.map(problemOf));

/** A reported site with its sentences said again in a language. No figure changes. */
export function siteReportIn(site: SiteReport, language: Language, faultAt: FaultAt): SiteReport {
  const problems = site.problems.map((problem) => problemIn(problem, language, faultAt));
  return {
    ...site,
    finding: findingSaid(
      { storages: site.storages, problems: problems.map(problemOf), beside: besideSaid(site) },
      language,
    ),
    drainage: site.drainage && drainageIn(site.drainage, language),
    ...standsIn(site, language),
    settling: site.settling.map((one) => ({ ...one, finding: language.findings.settling(one) })),
    head: site.head.map((one) => ({ ...one, finding: language.findings.head(one) })),
    treatment: site.treatment.map((one) => treatmentIn(one, language)),
    safety: site.safety && safetyIn(site.safety, language),
    wear: site.wear?.map((one) => wearIn(one, language)) ?? null,
    remedies: site.remedies && {
      ...site.remedies,
      said: [...language.remedies.beside({ ...site.remedies, remedies: site.remedies.ranked }, site)],
      ranked: site.remedies.ranked.map((one) => ({ ...one, about: language.remedies.remedy(one) })),
    },
    problems,
    working: site.working.map((line) => ({
      ...line,
      ...language.working[line.code as WorkingCode],
      ...saidIn(line.value, language),
      inputs: line.inputs.map((input) => ({
        ...input,
        label: language.input(input.name),
        ...saidIn(input.value, language),
      })),
      sourceSaid: language.source(line.source),
    })),
  };
}

/** What a report says beside its sites, said again in a language. No figure changes. */
export function restIn<T extends Pick<DesignReport, 'gauges' | 'problems'>>(rest: T, language: Language): T {
  const faultAt = reportedFaults(rest.problems);
  const said = (problems: readonly ProblemReport[]) => problems.map((one) => problemIn(one, language, faultAt));
  return {
    ...rest,
    gauges: rest.gauges.map((gauge) => ({
      ...gauge,
      storm: gauge.storm && stormIn(gauge.storm, gauge.gaugeId, language),
      problems: said(gauge.problems),
    })),
    problems: said(rest.problems),
  };
}
