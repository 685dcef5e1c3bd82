import {
  type DayIndex,
  type DesignSettings,
  type FirstService,
  type JudgedRain,
  jeffreysRange,
  type SizePoint,
  type StorageFinding,
  verdictOf,
  type WorkingLine,
} from '../../kernel/index.ts';
import { criticalVolumes } from './allSizes.ts';
import { listedRuns_count } from './constants.ts';
import { dryDaysAt, goodYearsAt, goodYearsNeeded, judgedDays, tankForDays, tankForRuns, yearNeeds } from './curve.ts';
import { type Balance, dayByDay, judgedRules } from './dayByDay.ts';
import { dryRuns } from './dryRuns.ts';
import { firstServiceDay } from './firstService.ts';
import { type DrawnYears, resampledDryDays } from './resample.ts';
import { storageWorking } from './storageWorking.ts';

/** A tank the catalogue offers. */
export interface TankSize {
  readonly partId: string | null;
  readonly tankVolume_L: number;
}

/** All that is needed to judge one site's storage. */
export interface StorageCase {
  readonly balance: Balance;
  readonly rain: JudgedRain;
  readonly tankVolume_L: number;
  /** Litres in a mean judged year, as the roof room counts them. */
  readonly inflow_L_per_year: number;
  readonly catalogue: readonly TankSize[];
  readonly settings: DesignSettings;
  readonly drawn: DrawnYears;
  readonly handOverDay: DayIndex | null;
}

/**
 * Will the tank carry the people through the dry spells, and how sure are we? Every tank size at once gives the dry days,
 * the good years and the smallest tank that would do; the years drawn again give the range.
 *
 * @param given - balance by day [L], rain with its water years, tank and catalogue volumes [L], settings, drawn years
 * @returns the finding: volumes [L], days a year [day/year], years [year], shares [fraction], and its working
 * @law the order of the catalogue changes nothing
 * @definition ours: docs/methods/storage.md, target, range and verdict
 */
export function storageFinding(given: StorageCase): {
  readonly finding: StorageFinding;
  readonly working: readonly WorkingLine[];
} {
  const { balance, rain, tankVolume_L, settings, drawn } = given;
  const { target } = settings;
  const years = rain.years;
  const critical_L = criticalVolumes(balance, { ...judgedRules, order: 'drawFirst' });
  const needs = yearNeeds(critical_L, years, target.longestDryRun_days);
  const needed = goodYearsNeeded(rain.judgedYears, target.goodYears_fraction);
  const days = judgedDays(years);
  const meets = (volume_L: number): SizePoint => {
    const dry = dryDaysAt(critical_L, years, volume_L);
    const goodYears = goodYearsAt(needs, volume_L);
    return {
      tankVolume_L: volume_L,
      partId: null,
      dryDays_per_year: dry / rain.judgedYears,
      goodYears,
      meetsTarget: goodYears >= needed && isShareMet(days - dry, days, target.daysMet_fraction),
    };
  };
  const point = meets(tankVolume_L);
  const dryDays = dryDaysAt(critical_L, years, tankVolume_L);
  const spread = resampledDryDays(balance, years, tankVolume_L, drawn, settings.range_fraction);
  const goodRange = jeffreysRange(point.goodYears, rain.judgedYears, settings.range_fraction);
  const holdsAtWorstEnd =
    goodRange.low >= target.goodYears_fraction &&
    isShareMet(spread.daysMet_fraction.low, 1, target.daysMet_fraction) &&
    rain.judgedYears >= settings.leastYears;
  const tankForDays_L = tankForDays(critical_L, years, target.daysMet_fraction);
  const tankForRuns_L = tankForRuns(needs, target.goodYears_fraction);
  const tankForTarget_L =
    tankForDays_L === null || tankForRuns_L === null ? null : Math.max(tankForDays_L, tankForRuns_L);
  const ends = atChosenTank(given, critical_L);
  const finding: StorageFinding = {
    verdict: verdictOf(point.meetsTarget, holdsAtWorstEnd),
    tankVolume_L,
    ...meanDemand(balance),
    inflow_L_per_year: given.inflow_L_per_year,
    judgedYears: rain.judgedYears,
    goodYears: point.goodYears,
    goodYearsNeeded: needed,
    goodYears_fraction_range: goodRange,
    daysMet_fraction: 1 - dryDays / days,
    daysMet_fraction_range: spread.daysMet_fraction,
    dryDays_per_year: point.dryDays_per_year,
    dryDays_per_year_range: spread.dryDays_per_year,
    tankForDays_L,
    tankForRuns_L,
    tankForTarget_L,
    lacks: point.meetsTarget ? null : tankForTarget_L === null ? 'water' : 'tank',
    sizes: sizePoints(given, meets),
    ...ends,
  };
  return { finding, working: storageWorking(finding, { settings, dryDays, days }) };
}

/** What is told day by day of the chosen tank: its runs, its years, the generous end and the first day of service. */
function atChosenTank(given: StorageCase, critical_L: Float64Array) {
  const { balance, rain, tankVolume_L, handOverDay, settings } = given;
  const firstDay = rain.record.firstDay;
  const dry = new Uint8Array(critical_L.length);
  for (let day = 0; day < dry.length; day++) dry[day] = critical_L[day]! > tankVolume_L ? 1 : 0;
  const spells = dryRuns(dry, rain.years, firstDay);
  const run = dayByDay(balance, tankVolume_L, judgedRules);
  const generous = dayByDay(balance, tankVolume_L, { ...judgedRules, order: 'ybs' });
  const generousRuns = dryRuns(generous.dry, rain.years, firstDay);
  const judged = rain.years.map((year) => year.judged);
  const isGood = (longest_days: number, index: number) =>
    judged[index] === true && longest_days <= settings.target.longestDryRun_days;
  return {
    shortfall_L_per_year: (total(balance.judged_L) - run.judgedTaken_L) / rain.years.length,
    longestRun: spells.runs[0] ?? null,
    dryRuns: spells.runs.slice(0, listedRuns_count),
    years: rain.years.map((year, index) => ({
      waterYear: year.label,
      judged: year.judged,
      dryDays: countDry(dry, year.from, year.to),
      longestRun_days: spells.longestByYear_days[index]!,
      filledDays: year.missing_days,
    })),
    yieldBeforeSpill: {
      dryDays_per_year:
        rain.years.reduce((sum, year) => sum + (year.judged ? countDry(generous.dry, year.from, year.to) : 0), 0) /
        rain.judgedYears,
      goodYears: generousRuns.longestByYear_days.filter(isGood).length,
    },
    firstService: handOverDay === null ? null : firstServiceDay(balance, firstDay, tankVolume_L, handOverDay),
  } satisfies Partial<StorageFinding> & { firstService: FirstService | null };
}

function sizePoints(given: StorageCase, meets: (volume_L: number) => SizePoint): SizePoint[] {
  const chosen = given.catalogue.some((size) => size.tankVolume_L === given.tankVolume_L);
  const all = chosen ? given.catalogue : [...given.catalogue, { partId: null, tankVolume_L: given.tankVolume_L }];
  return all
    .map((size) => ({ ...meets(size.tankVolume_L), partId: size.partId }))
    .sort((a, b) => a.tankVolume_L - b.tankVolume_L || String(a.partId).localeCompare(String(b.partId)));
}

function meanDemand(balance: Balance) {
  const days = balance.judged_L.length;
  return {
    judgedDemand_L_per_day: total(balance.judged_L) / days,
    otherDemand_L_per_day: total(balance.other_L) / days,
  };
}

/** Is the share reached, against the last bit of rounding? */
function isShareMet(part: number, whole: number, wanted_fraction: number): boolean {
  return part >= whole * wanted_fraction - 1e-9;
}

function countDry(dry: Uint8Array, from: number, to: number): number {
  let count = 0;
  for (let day = from; day < to; day++) count += dry[day]!;
  return count;
}

function total(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum;
}
