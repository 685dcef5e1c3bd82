import { type MonthFlow, type MonthTotals, monthFlows } from './monthTotals.ts';
import { readCurve, type WaterCurve } from './waterCurve.ts';
import type { YearsInput } from './yearsChart.ts';

/** What the title of the curve can say. */
export interface CurveFacts {
  readonly dryDays_per_year: number | null;
  readonly goodYears: number | null;
  readonly meetsDays: boolean | null;
  readonly meetsRuns: boolean | null;
  readonly tankForDays_L: number | null;
  readonly tankForRuns_L: number | null;
  readonly tankToHold_L: number | null;
  /** Smallest of the catalogue's that meets the target; null where none does. */
  readonly catalogueForTarget_L: number | null;
  readonly isExact: boolean;
}

/**
 * What does the curve say of this tank?
 *
 * @param curve - every size
 * @param tankVolume_L - the tank [L]
 * @returns dry days [day/year] and good years [year] at it, whether each half of the target is met, and the smallest sizes [L]
 * @definition `readCurve` against the targets
 */
export function curveFacts(curve: WaterCurve, tankVolume_L: number): CurveFacts {
  const { dryDays_per_year, goodYears } = readCurve(curve, tankVolume_L);
  return {
    dryDays_per_year,
    goodYears,
    meetsDays: dryDays_per_year === null ? null : dryDays_per_year <= curve.daysAllowed_per_year + 1e-9,
    meetsRuns: goodYears === null ? null : goodYears >= curve.goodYearsNeeded,
    tankForDays_L: curve.tankForDays_L,
    tankForRuns_L: curve.tankForRuns_L,
    tankToHold_L: curve.tankToHold_L,
    catalogueForTarget_L: curve.sizes.find((size) => size.partId !== null && size.meetsTarget)?.tankVolume_L ?? null,
    isExact: curve.isExact,
  };
}

/** What the title of the years can say. */
export interface YearsFacts {
  readonly judgedYears: number;
  readonly goodYears: number;
  readonly yearsWithoutDryDay: number;
  /** Dry days of the years that are not judged [day]. */
  readonly notJudgedDryDays: number;
  readonly worst: { readonly waterYear: number; readonly dryDays: number } | null;
  readonly dryDays_per_year: number;
  readonly likely: { readonly low: number; readonly high: number };
}

/**
 * What do the years say?
 *
 * @param input - what was found of the record, and the target's run [day]
 * @returns counts of judged years [year], the worst of them [day], mean and range [day/year]
 * @definition counts over the judged years
 */
export function yearsFacts({
  finding,
  longestDryRun_days,
}: Pick<YearsInput, 'finding' | 'longestDryRun_days'>): YearsFacts {
  const judged = finding.years.filter((year) => year.judged);
  const worst = [...judged].sort((a, b) => b.dryDays - a.dryDays || a.waterYear - b.waterYear)[0];
  return {
    judgedYears: judged.length,
    goodYears: judged.filter((year) => year.longestRun_days <= longestDryRun_days).length,
    yearsWithoutDryDay: judged.filter((year) => year.dryDays === 0).length,
    notJudgedDryDays: finding.years.reduce((sum, year) => sum + (year.judged ? 0 : year.dryDays), 0),
    worst: worst && worst.dryDays > 0 ? { waterYear: worst.waterYear, dryDays: worst.dryDays } : null,
    dryDays_per_year: finding.dryDays_per_year,
    likely: finding.dryDays_per_year_range,
  };
}

/** What the title of the months can say. */
export interface MonthsFacts {
  /** Litres of a mean year. */
  readonly ofYear_L: Readonly<Record<MonthFlow, number>>;
  /** The month of the calendar with most short, and with most spilled; null where nothing is. */
  readonly shortest: number | null;
  readonly mostSpilled: number | null;
  /** Months that spill although others are short. */
  readonly spillsWhileShort: boolean;
}

/**
 * What do the months say?
 *
 * @param totals - litres by month
 * @returns litres of a mean year [L] and the months that stand out, 1 to 12
 * @definition greatest mean
 */
export function monthsFacts({ months, means }: MonthTotals): MonthsFacts {
  const sum = (flow: MonthFlow) => means[flow].reduce((total, one) => total + one.mean_L, 0);
  const ofYear_L = Object.fromEntries(monthFlows.map((flow) => [flow, sum(flow)])) as unknown as Record<
    MonthFlow,
    number
  >;
  const most = (flow: MonthFlow) => {
    const list = means[flow].map((one) => one.mean_L);
    const greatest = Math.max(0, ...list);
    return greatest > 0 ? (months[list.indexOf(greatest)] ?? null) : null;
  };
  return {
    ofYear_L,
    shortest: most('short'),
    mostSpilled: most('spilled'),
    spillsWhileShort: ofYear_L.short > 0 && ofYear_L.spilled > 0,
  };
}
