import {
  type DayIndex,
  type DesignSettings,
  type JudgedRain,
  jeffreysRange,
  type StorageFinding,
  verdictOf,
  type WorkingLine,
} from '../../kernel/index.ts';
import { chosenTank } from './chosenTank.ts';
import type { Balance } from './dayByDay.ts';
import { type DrawnYears, resampledDryDays } from './resample.ts';
import { isShareMet, sizeCurve, sizePoints, type TankSize } from './sizeCurve.ts';
import { storageWorking } from './storageWorking.ts';

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
  const curve = sizeCurve(balance, rain, target, tankVolume_L);
  const chosen = given.catalogue.some((size) => size.tankVolume_L === tankVolume_L);
  const sizes = sizePoints(curve, chosen ? given.catalogue : [...given.catalogue, { partId: null, tankVolume_L }]);
  const point = sizes.find((size) => size.tankVolume_L === tankVolume_L)!;
  const spread = resampledDryDays(balance, rain.years, tankVolume_L, given.drawn, settings.range_fraction);
  // The share of days is the same figure told the other way round.
  const share = (dryDays_per_year: number) => 1 - (dryDays_per_year * rain.judgedYears) / curve.judgedDays;
  const daysMet = { low: share(spread.high), high: share(spread.low) };
  const goodYears_fraction_range = jeffreysRange(point.goodYears, rain.judgedYears, settings.range_fraction);
  const meetsAtWorstEnd =
    goodYears_fraction_range.low >= target.goodYears_fraction &&
    isShareMet(daysMet.low, 1, target.daysMet_fraction) &&
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
    daysMet_fraction: share(point.dryDays_per_year),
    daysMet_fraction_range: daysMet,
    dryDays_per_year: point.dryDays_per_year,
    dryDays_per_year_range: spread,
    tankForDays_L: curve.tankForDays_L,
    tankForRuns_L: curve.tankForRuns_L,
    tankForTarget_L: curve.tankForTarget_L,
    lacks: point.meetsTarget ? null : curve.tankForTarget_L === null ? 'water' : 'tank',
    sizes,
    ...chosenTank(balance, rain, curve, tankVolume_L, given.handOverDay),
  };
  return { finding, working: storageWorking(finding, settings, curve.judgedDays) };
}
