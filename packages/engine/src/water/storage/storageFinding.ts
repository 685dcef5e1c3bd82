import {
  type DayIndex,
  type DesignSettings,
  type EngineProblemCode,
  type JudgedRain,
  type SecondSourceFacts,
  type SecondSourceUse,
  type SizePoint,
  type StorageFinding,
  type Verdict,
  verdictOf,
  type WorkingLine,
} from '../../kernel/index.ts';
import { chosenTank } from './chosenTank.ts';
import type { Balance } from './dayByDay.ts';
import type { DrawnYears } from './resample.ts';
import { fromSecondSource } from './secondSource.ts';
import { type SizeCurve, sizeCurve, sizePoints, type TankSize } from './sizeCurve.ts';
import { daysMet_fraction, sizeDoubt, tankToHold_L } from './sizeDoubt.ts';
import { storageWorking } from './storageWorking.ts';

/** All that is needed to judge one body of water. */
export interface StorageCase {
  /** The tank, or the tanks joined at the foot, and who draw from them. */
  readonly tankIds: readonly string[];
  readonly people: number;
  readonly balance: Balance;
  readonly rain: JudgedRain;
  readonly tankVolume_L: number;
  /** Asked in a day, as the people room counts it. */
  readonly judgedDemand_L_per_day: number;
  readonly judgedDemandHighest_L_per_day: number;
  readonly otherDemand_L_per_day: number;
  /** Litres in a mean judged year, as the roof room counts them. */
  readonly inflow_L_per_year: number;
  readonly catalogue: readonly TankSize[];
  readonly settings: DesignSettings;
  readonly drawn: DrawnYears;
  readonly handOverDay: DayIndex | null;
  /** What covers the days of `balance.covered`; null where there is none. */
  readonly secondSource: SecondSourceFacts | null;
  /** An assumption about the site that keeps it from holding; null where there is none. */
  readonly cappedBy: EngineProblemCode | null;
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
  const doubt = sizeDoubt(curve, given, tankVolume_L, point.goodYears);
  const alone = given.secondSource === null ? null : withoutSource(given);
  // A second source never makes a verdict worse: with it a site is tight at best, without it it may hold.
  const holdsAlone = alone?.verdict === 'holds';
  const cappedBy = holdsAlone ? null : (given.cappedBy ?? (alone === null ? null : 'site.second_source'));
  const verdict = verdictOf(point.meetsTarget, doubt.meetsTarget && cappedBy === null);
  const source = given.secondSource === null ? null : sourceUse(given, given.secondSource, alone!);
  const chosenTankFound = chosenTank(balance, rain, curve, tankVolume_L, given.handOverDay);
  const finding: StorageFinding = {
    tankIds: given.tankIds,
    people: given.people,
    verdict,
    tankVolume_L,
    judgedDemand_L_per_day: given.judgedDemand_L_per_day,
    judgedDemandHighest_L_per_day: given.judgedDemandHighest_L_per_day,
    askedDays_per_year: curve.askedDays / curve.judgedYears,
    otherDemand_L_per_day: given.otherDemand_L_per_day,
    inflow_L_per_year: given.inflow_L_per_year,
    judgedYears: rain.judgedYears,
    goodYears: point.goodYears,
    goodYearsNeeded: curve.goodYearsNeeded,
    goodYears_fraction_range: doubt.goodYears_fraction,
    daysMet_fraction: daysMet_fraction(curve, point.dryDays_per_year),
    daysMet_fraction_range: doubt.daysMet_fraction,
    dryDays_per_year: point.dryDays_per_year,
    dryDays_per_year_range: doubt.dryDays_per_year,
    tankForDays_L: curve.tankForDays_L,
    tankForRuns_L: curve.tankForRuns_L,
    tankForTarget_L: curve.tankForTarget_L,
    tankToHold_L: verdict === 'holds' || given.cappedBy ? null : toHold(curve, given, alone),
    judgedAlone: point.meetsTarget ? null : judgedAlone(given),
    secondSource: source,
    cappedBy,
    lacks: point.meetsTarget ? null : curve.tankForTarget_L === null ? 'water' : 'tank',
    sizes,
    ...chosenTankFound,
    shortfall_L_per_year: Math.max(0, chosenTankFound.shortfall_L_per_year - (source?.given_L_per_year ?? 0)),
  };
  return { finding, working: storageWorking(finding, settings, curve.askedDays) };
}

/** A tank judged without its second source. */
interface Alone {
  readonly curve: SizeCurve;
  readonly given: StorageCase;
  readonly point: SizePoint;
  readonly verdict: Verdict;
}

function withoutSource(given: StorageCase): Alone {
  const { rain, tankVolume_L, settings } = given;
  const balance = { ...given.balance, covered: undefined };
  const curve = sizeCurve(balance, rain, settings.target, tankVolume_L);
  const point = sizePoints(curve, [{ partId: null, tankVolume_L }])[0]!;
  const own = { ...given, balance };
  const doubt = sizeDoubt(curve, own, tankVolume_L, point.goodYears);
  const verdict = verdictOf(point.meetsTarget, doubt.meetsTarget && given.cappedBy === null);
  return { curve, given: own, point, verdict };
}

/** The tank that would hold: with a second source, the one that would hold without it. */
function toHold(curve: SizeCurve, given: StorageCase, alone: Alone | null): number | null {
  return alone === null ? tankToHold_L(curve, given) : tankToHold_L(alone.curve, alone.given);
}

function sourceUse(
  { balance, rain, tankVolume_L }: StorageCase,
  { secondSourceId, name, kind }: SecondSourceFacts,
  alone: Alone,
): SecondSourceUse {
  const { days, given_L } = fromSecondSource(balance, tankVolume_L, rain.years);
  return {
    secondSourceId,
    name,
    kind,
    days_per_year: days / rain.judgedYears,
    given_L_per_year: given_L / rain.years.length,
    aloneVerdict: alone.verdict,
    aloneGoodYears: alone.point.goodYears,
    aloneDryDays_per_year: alone.point.dryDays_per_year,
  };
}

/** What this tank would do were nothing asked but the judged litres; null where nothing else is. */
function judgedAlone({ balance, rain, settings, tankVolume_L, otherDemand_L_per_day }: StorageCase): SizePoint | null {
  if (otherDemand_L_per_day === 0) return null;
  const alone = { ...balance, other_L: new Float64Array(balance.other_L.length) };
  const curve = sizeCurve(alone, rain, settings.target, tankVolume_L);
  return sizePoints(curve, [{ partId: null, tankVolume_L }])[0]!;
}
