import { isoDay, type SiteDesign, type SiteRemedies } from '@eavewell/engine';
import { findingOf } from '@eavewell/report';
import { spoken } from '../language.ts';
import { csvLine } from './csvLine.ts';

const columns = [
  'siteId',
  'name',
  'people',
  'gaugeId',
  'verdict',
  'goodYears',
  'judgedYears',
  'goodYearsNeeded',
  'dryDays_per_year',
  'dryDaysLow_per_year',
  'dryDaysHigh_per_year',
  'daysMet_fraction',
  'longestRun_days',
  'longestRunFrom',
  'tankVolume_L',
  'tankForTarget_L',
  'lacks',
  'judgedDemand_L_per_day',
  'otherDemand_L_per_day',
  'inflow_L_per_year',
  'firstServiceDay',
  'worstTanks',
  'tanksApart_count',
  'finding',
  'smallestRemedy',
  'smallestRemedyVerdict',
  'smallestRemedyCost_amount',
  'smallestRemedyCost_currency',
  'siteClass',
  'targetFrom',
  'targetDaysMet_fraction',
  'targetLongestDryRun_days',
  'targetGoodYears_fraction',
];

/** Under the scenario, where one is asked for. */
const scenarioColumns = ['scenarioVerdict', 'scenarioGoodYears', 'scenarioJudgedYears', 'scenarioDryDays_per_year'];

/** The first line of verdicts.csv. */
export function verdictsHead(withScenario: boolean): string {
  return csvLine(withScenario ? [...columns, ...scenarioColumns] : columns);
}

/** One site's line of verdicts.csv: empty where a figure is not known. */
export function verdictsLine(design: SiteDesign, remedies: SiteRemedies | null, under: SiteDesign | null): string {
  const smallest = remedies?.remedies[0] ?? null;
  // Where tanks are not joined, the figures are those of the one that is worst off.
  const f = design.storages[0];
  const run = f?.longestRun ?? null;
  return csvLine([
    design.siteId,
    design.name,
    design.people,
    design.gaugeId,
    design.verdict,
    f?.goodYears ?? null,
    f?.judgedYears ?? null,
    f?.goodYearsNeeded ?? null,
    rounded(f?.dryDays_per_year, 1),
    rounded(f?.dryDays_per_year_range.low, 1),
    rounded(f?.dryDays_per_year_range.high, 1),
    rounded(f?.daysMet_fraction, 4),
    // A site that never runs dry has a longest run of no days; one that is unknown has none that is known.
    f ? (run?.days ?? 0) : null,
    run && isoDay(run.from),
    rounded(f?.tankVolume_L, 0),
    // Rounded up: a litre less would not do.
    f?.tankForTarget_L == null ? null : Math.ceil(f.tankForTarget_L),
    f?.lacks ?? null,
    rounded(f?.judgedDemand_L_per_day, 1),
    rounded(f?.otherDemand_L_per_day, 1),
    rounded(f?.inflow_L_per_year, 0),
    design.firstService && isoDay(design.firstService.firstServiceDay),
    f?.tankIds.join(' ') ?? null,
    f ? design.storages.length : null,
    findingOf(design, spoken),
    smallest && spoken.remedies.remedy(smallest),
    smallest?.verdict ?? null,
    smallest?.cost.amount ?? null,
    smallest?.cost.currency ?? null,
    design.siteClass,
    design.targetFrom,
    design.target.daysMet_fraction,
    design.target.longestDryRun_days,
    design.target.goodYears_fraction,
    ...(under ? scenarioCells(under) : []),
  ]);
}

function scenarioCells({ verdict, storages: [storage] }: SiteDesign) {
  const { goodYears, judgedYears, dryDays_per_year } = storage ?? {};
  return [verdict, goodYears ?? null, judgedYears ?? null, rounded(dryDays_per_year, 1)];
}

/** A figure to so many decimals, as a person reads it; design.json has every digit. */
function rounded(value: number | undefined, decimals: number): number | null {
  return value === undefined ? null : Number(value.toFixed(decimals));
}
