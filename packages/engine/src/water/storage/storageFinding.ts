import {
  type DayIndex,
  type DesignSettings,
  type JudgedRain,
  jeffreysRange,
  type SizePoint,
  type StorageFinding,
  verdictOf,
  type WorkingLine,
} from '../../kernel/index.ts';
import { chosenTank } from './chosenTank.ts';
import type { Balance } from './dayByDay.ts';
import { type DrawnYears, resampledDryDays } from './resample.ts';
import { isShareMet, type SizeCurve, sizeCurve, sizePoint } from './sizeCurve.ts';
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
  /** Asked in a day, as the people room counts it. */
  readonly judgedDemand_L_per_day: number;
  readonly otherDemand_L_per_day: number;
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
  const { balance, rain, tankVolume_L, settings } = given;
  const { target } = settings;
  const curve = sizeCurve(balance, rain, target);
  const point = sizePoint(curve, tankVolume_L, null);
  const dryDays = Math.round(point.dryDays_per_year * rain.judgedYears);
  const spread = resampledDryDays(balance, rain.years, tankVolume_L, given.drawn, settings.range_fraction);
  const goodYears_fraction_range = jeffreysRange(point.goodYears, rain.judgedYears, settings.range_fraction);
  const meetsAtWorstEnd =
    goodYears_fraction_range.low >= target.goodYears_fraction &&
    isShareMet(spread.daysMet_fraction.low, 1, target.daysMet_fraction) &&
    rain.judgedYears >= settings.leastYears;
  const finding: StorageFinding = {
    verdict: verdictOf(point.meetsTarget, meetsAtWorstEnd),
    tankVolume_L,
    judgedDemand_L_per_day: given.judgedDemand_L_per_day,
    otherDemand_L_per_day: given.otherDemand_L_per_day,
    inflow_L_per_year: given.inflow_L_per_year,
    judgedYears: rain.judgedYears,
    goodYears: point.goodYears,
    goodYearsNeeded: curve.goodYearsNeeded,
    goodYears_fraction_range,
    daysMet_fraction: 1 - dryDays / curve.judgedDays,
    daysMet_fraction_range: spread.daysMet_fraction,
    dryDays_per_year: point.dryDays_per_year,
    dryDays_per_year_range: spread.dryDays_per_year,
    tankForDays_L: curve.tankForDays_L,
    tankForRuns_L: curve.tankForRuns_L,
    tankForTarget_L: curve.tankForTarget_L,
    lacks: point.meetsTarget ? null : curve.tankForTarget_L === null ? 'water' : 'tank',
    sizes: sizePoints(curve, given),
    ...chosenTank(balance, rain, curve, tankVolume_L, given.handOverDay),
  };
  return { finding, working: storageWorking(finding, { settings, dryDays, days: curve.judgedDays }) };
}

/** The catalogue's tanks and the chosen one, by size. */
function sizePoints(curve: SizeCurve, given: StorageCase): SizePoint[] {
  const { catalogue, tankVolume_L } = given;
  const chosen = catalogue.some((size) => size.tankVolume_L === tankVolume_L);
  const sizes = chosen ? catalogue : [...catalogue, { partId: null, tankVolume_L }];
  return sizes
    .map((size) => sizePoint(curve, size.tankVolume_L, size.partId))
    .sort((a, b) => a.tankVolume_L - b.tankVolume_L || (String(a.partId) < String(b.partId) ? -1 : 1));
}
