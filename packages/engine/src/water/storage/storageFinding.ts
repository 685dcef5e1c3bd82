import type { DayIndex, DesignSettings, JudgedRain, StorageFinding, WorkingLine } from '../../kernel/index.ts';
import { chosenTank } from './chosenTank.ts';
import type { Balance } from './dayByDay.ts';
import type { DrawnYears } from './resample.ts';
import { sizeCurve, sizePoints, type TankSize } from './sizeCurve.ts';
import { storageWorking } from './storageWorking.ts';
import { daysMetShare, tankVerdict } from './tankVerdicts.ts';

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
  const { balance, rain, tankVolume_L, settings, drawn } = given;
  const curve = sizeCurve(balance, rain, settings.target, tankVolume_L);
  const chosen = given.catalogue.some((size) => size.tankVolume_L === tankVolume_L);
  const sizes = sizePoints(curve, chosen ? given.catalogue : [...given.catalogue, { partId: null, tankVolume_L }]);
  const point = sizes.find((size) => size.tankVolume_L === tankVolume_L)!;
  const judged = tankVerdict({ balance, rain, curve, settings, drawn }, point);
  const finding: StorageFinding = {
    verdict: judged.verdict,
    tankVolume_L,
    judgedDemand_L_per_day: given.judgedDemand_L_per_day,
    otherDemand_L_per_day: given.otherDemand_L_per_day,
    inflow_L_per_year: given.inflow_L_per_year,
    judgedYears: rain.judgedYears,
    goodYears: point.goodYears,
    goodYearsNeeded: curve.goodYearsNeeded,
    goodYears_fraction_range: judged.goodYears_fraction_range,
    daysMet_fraction: daysMetShare(curve, point.dryDays_per_year),
    daysMet_fraction_range: judged.daysMet_fraction_range,
    dryDays_per_year: point.dryDays_per_year,
    dryDays_per_year_range: judged.dryDays_per_year_range,
    tankForDays_L: curve.tankForDays_L,
    tankForRuns_L: curve.tankForRuns_L,
    tankForTarget_L: curve.tankForTarget_L,
    lacks: point.meetsTarget ? null : curve.tankForTarget_L === null ? 'water' : 'tank',
    sizes,
    ...chosenTank(balance, rain, curve, tankVolume_L, given.handOverDay),
  };
  return { finding, working: storageWorking(finding, settings, curve.judgedDays) };
}
