import {
  type DryRun,
  type FirstService,
  isoDay,
  type Judged,
  type Problem,
  type SiteDesign,
  type SiteRemedies,
  type StorageFinding,
  type WearFinding,
  type WorkingLine,
} from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import { type Language, problemSentence, type StorageSaid, workingText } from '@eavewell/words';
import { type BesideSaid, besideInWords, besideSaid, type FoundBeside } from './besideSaid.ts';
import { drainageReport } from './drainageReport.ts';
import { headReport } from './headReport.ts';
import { problemReport } from './problemReport.ts';
import { siteRemediesReport } from './remediesReport.ts';
import { safetyReport } from './safetyReport.ts';
import { settlingReport } from './settlingReport.ts';
import { standsReport } from './standReport.ts';
import { treatmentReport } from './treatmentReport.ts';
import { wearReport } from './wearReport.ts';

/** What a site comes to, in words: the finding of its tank, or the first blocker that withholds it, and of the stations that are as badly off. */
export function findingSaid(
  design: {
    readonly problems: readonly Problem[];
    readonly storages: readonly StorageSaid[];
    readonly beside: BesideSaid;
  },
  language: Language,
): string {
  const blocker = design.problems.find((problem) => problem.severity === 'blocker');
  const ofTank = language.findings.site(design, blocker ? problemSentence(blocker, language).what : null);
  const beside = besideInWords(design.beside, language);
  if (beside === '') return ofTank;
  return design.beside.isFirst ? `${beside} ${ofTank}` : `${ofTank} ${beside}`;
}

/** The same of a whole design. */
export function findingOf(
  design: FoundBeside & { readonly problems: readonly Problem[]; readonly storages: readonly StorageSaid[] },
  language: Language,
): string {
  const { problems, storages } = design;
  return findingSaid({ problems, storages, beside: besideSaid(design) }, language);
}

/**
 * One site as the report has it, without its daily series.
 *
 * @param design - what it came to
 * @param remedies - what would mend it; null where it is neither short nor tight
 * @param language - the language of its sentences
 * @param wear - when its cartridges are due; null where that was not worked out
 * @returns the report; what wear tells and its working behind that of the stations
 * @definition ours
 */
export function siteReport(
  design: SiteDesign,
  remedies: SiteRemedies | null,
  language: Language,
  wear: Judged<readonly WearFinding[]> | null,
): SiteReport {
  return {
    siteId: design.siteId,
    name: design.name,
    people: design.people,
    design_people: design.design_people,
    gaugeId: design.gaugeId,
    siteClass: design.siteClass,
    target: { ...design.target },
    targetFrom: design.targetFrom,
    verdict: design.verdict,
    stations: { ...design.stations },
    finding: findingOf(design, language),
    storages: design.storages.map(storageReport),
    drainage: design.drainage && drainageReport(design.drainage, language),
    ...standsReport(design, language),
    settling: design.settling.map((one) => settlingReport(one, language)),
    head: design.head.map((one) => headReport(one, language)),
    treatment: design.treatment.map((one) => treatmentReport(one, language)),
    safety: design.safety && safetyReport(design.safety, language),
    wear: wear && (wear.finding ?? []).map((one) => wearReport(one, language)),
    firstService: design.firstService && firstServiceReport(design.firstService),
    remedies: remedies && siteRemediesReport(remedies, design, language),
    problems: [...design.problems, ...(wear?.problems ?? [])].map((problem) => problemReport(problem, language)),
    working: [...design.working, ...(wear?.working ?? [])].map((line) => workingReport(line, language)),
  };
}

function runReport(run: DryRun) {
  return { ...run, from: isoDay(run.from), to: isoDay(run.to) };
}

function firstServiceReport(first: FirstService): NonNullable<SiteReport['firstService']> {
  return {
    handOverDay: isoDay(first.handOverDay),
    wait_days: first.wait_days,
    wait_days_range: first.wait_days_range,
    firstServiceDay: isoDay(first.firstServiceDay),
  };
}

/** The finding field by field, so that a new field of the engine reaches the report only once the schema has it. */
function storageReport(f: StorageFinding): SiteReport['storages'][number] {
  return {
    tankIds: [...f.tankIds],
    people: f.people,
    verdict: f.verdict,
    order: f.order,
    ration: f.ration && { ...f.ration },
    rationedDays_per_year: f.rationedDays_per_year,
    unrationed: f.unrationed && { ...f.unrationed },
    noExactSize: f.noExactSize,
    catalogueForTarget_L: f.catalogueForTarget_L,
    catalogueToHold_L: f.catalogueToHold_L,
    tankVolume_L: f.tankVolume_L,
    judgedDemand_L_per_day: f.judgedDemand_L_per_day,
    judgedDemandHighest_L_per_day: f.judgedDemandHighest_L_per_day,
    askedDays_per_year: f.askedDays_per_year,
    otherDemand_L_per_day: f.otherDemand_L_per_day,
    inflow_L_per_year: f.inflow_L_per_year,
    judgedYears: f.judgedYears,
    goodYears: f.goodYears,
    goodYearsNeeded: f.goodYearsNeeded,
    goodYears_fraction_range: f.goodYears_fraction_range,
    comingGood_years_range: f.comingGood_years_range,
    daysMet_fraction: f.daysMet_fraction,
    daysMet_fraction_range: f.daysMet_fraction_range,
    dryDays_per_year: f.dryDays_per_year,
    dryDays_per_year_range: f.dryDays_per_year_range,
    shortfall_L_per_year: f.shortfall_L_per_year,
    otherShortDays_per_year: f.otherShortDays_per_year,
    tankForDays_L: f.tankForDays_L,
    tankForRuns_L: f.tankForRuns_L,
    tankForTarget_L: f.tankForTarget_L,
    tankToHold_L: f.tankToHold_L,
    judgedAlone: f.judgedAlone && { ...f.judgedAlone },
    secondSource: f.secondSource && { ...f.secondSource, days_by_year: [...f.secondSource.days_by_year] },
    cappedBy: f.cappedBy,
    lacks: f.lacks,
    longestRun: f.longestRun && runReport(f.longestRun),
    dryRuns: f.dryRuns.map(runReport),
    years: f.years.map((year) => ({ ...year, firstDay: isoDay(year.firstDay) })),
    sizes: f.sizes.map((size) => ({ ...size })),
    yieldBeforeSpill: { ...f.yieldBeforeSpill },
    firstService: f.firstService && firstServiceReport(f.firstService),
  };
}

/** A value that is a word, in words; nothing where it is a figure or a name. */
export function saidIn(value: unknown, language: Language): { readonly said?: string } {
  const said = typeof value === 'string' ? language.value(value) : null;
  return said === null ? {} : { said };
}

/** One line of a working, as the report has it. */
export function workingReport(line: WorkingLine, language: Language): SiteReport['working'][number] {
  const text = workingText(line, language);
  return {
    code: line.code,
    label: text.label,
    value: line.value,
    unit: line.unit,
    formula: text.formula,
    ...saidIn(line.value, language),
    inputs: line.inputs.map(({ from, ...input }, index) => ({
      ...input,
      ...(from === undefined ? {} : { from: from.map((cell) => ({ ...cell })) }),
      label: text.inputs[index]!.label,
      ...saidIn(input.value, language),
    })),
    source: line.source,
    sourceSaid: text.source,
  };
}
