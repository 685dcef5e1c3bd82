import {
  type DayIndex,
  type DesignSettings,
  type EngineProblemCode,
  type JudgedRain,
  type Ration,
  type SecondSourceFacts,
  type SecondSourceUse,
  type SizePoint,
  type StorageFinding,
  type Verdict,
  verdictOf,
  type WorkingLine,
} from '../../kernel/index.ts';
import { chosenTank } from './chosenTank.ts';
import { type Balance, dayByDay, type RunRules } from './dayByDay.ts';
import { balanceUnder, rulesOf } from './dayRules.ts';
import type { DrawnYears } from './drawYears.ts';
import { fromSecondSource } from './secondSource.ts';
import type { SizeCurve, TankSize } from './sizeCurve.ts';
import { type DoubtCase, daysMet_fraction, type SizeDoubt, sizeDoubt, tankToHold_L } from './sizeDoubt.ts';
import { type SizeReader, sizeReader } from './sizeReader.ts';
import type { SizedTank } from './storageCurve.ts';
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
  /** What is given while the tank is low; null where nothing is rationed. */
  readonly ration: Ration | null;
}

/** What is found of one body of water. */
export interface StorageFound {
  readonly finding: StorageFinding;
  readonly working: readonly WorkingLine[];
  /** Its tank as the sizes of the finding were asked of it, for what else is asked of sizes. */
  readonly sized: SizedTank;
}

/**
 * Will the tank carry the people through the dry spells, and how sure are we? Every tank size at once gives the dry days,
 * the good years and the smallest tank that would do; the years drawn again give the range.
 *
 * @param given - balance by day [L], rain with its water years, tank and catalogue volumes [L], settings, drawn years
 * @returns the finding: volumes [L], days a year [day/year], years [year], shares [fraction], its working, and its tank for other questions about sizes
 * @law the order of the catalogue changes nothing
 * @definition ours: docs/methods/storage.md, target, range and verdict
 */
// long: every field of a finding is set in one place
export function storageFinding(given: StorageCase): StorageFound {
  const { rain, tankVolume_L, settings, ration } = given;
  const rules = rulesOf(settings.dayOrder, ration);
  const balance = balanceUnder(given.balance, rules);
  const doubted = { ...given, balance, rules };
  const reader = sizeReader(doubted, tankVolume_L, given.cappedBy);
  const curve = reader.curveAt(tankVolume_L);
  const chosen = given.catalogue.some((size) => size.tankVolume_L === tankVolume_L);
  const point = reader.pointsAt([{ partId: null, tankVolume_L }])[0]!;
  const doubt = sizeDoubt(curve, doubted, tankVolume_L, point.goodYears);
  const alone = given.secondSource === null ? null : withoutSource(given);
  // What covers the dry days of this tank covers those of any, even of none: sizes are asked for without it.
  const sized = alone ?? { reader, curve, doubted, doubt };
  const sizes = sized.reader.pointsAt(chosen ? given.catalogue : [...given.catalogue, { partId: null, tankVolume_L }]);
  // A second source never makes a verdict worse, and never makes one that is sure: without it the site may hold.
  const holdsAlone = alone?.verdict === 'holds';
  const cappedBy = given.cappedBy ?? (alone?.verdict === 'short' ? 'site.second_source' : null);
  const isSure = alone === null ? doubt.meetsTarget && cappedBy === null : holdsAlone;
  const verdict = verdictOf(point.meetsTarget, isSure);
  const source = given.secondSource === null ? null : sourceUse(given, given.secondSource, alone!, rules);
  const unrationed = ration === null ? null : pointOf(given, given.balance, null);
  const chosenFound = chosenTank(given.balance, rain, curve, tankVolume_L, given.handOverDay, rules);
  const finding: StorageFinding = {
    tankIds: given.tankIds,
    people: given.people,
    verdict,
    order: rules.order,
    ration,
    rationedDays_per_year: ration && rationedDays(balance, rain, tankVolume_L, rules) / rain.judgedYears,
    unrationed,
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
    comingGood_years_range: doubt.comingGood_years,
    daysMet_fraction: daysMet_fraction(curve, point.dryDays_per_year),
    daysMet_fraction_range: doubt.daysMet_fraction,
    dryDays_per_year: point.dryDays_per_year,
    dryDays_per_year_range: doubt.dryDays_per_year,
    ...smallestTanks(sized, given, verdict, sizes),
    judgedAlone: point.meetsTarget || given.otherDemand_L_per_day === 0 ? null : judgedAlone(given),
    secondSource: source,
    cappedBy,
    lacks: point.meetsTarget ? null : unrationed?.meetsTarget ? 'ration' : sized.reader.hasTank() ? 'tank' : 'water',
    sizes,
    ...chosenFound,
    shortfall_L_per_year: Math.max(0, chosenFound.shortfall_L_per_year - (source?.given_L_per_year ?? 0)),
  };
  return {
    finding,
    working: storageWorking(finding, settings, curve.askedDays),
    sized: { curve: sized.curve, doubted: sized.doubted, isExact: sized.reader.isExact },
  };
}

/** A tank as it is judged. */
interface Judged {
  readonly reader: SizeReader;
  readonly curve: SizeCurve;
  readonly doubted: DoubtCase;
  readonly doubt: SizeDoubt;
}

/** A tank judged without its second source. */
interface Alone extends Judged {
  readonly point: SizePoint;
  readonly verdict: Verdict;
}

function withoutSource(given: StorageCase): Alone {
  const { tankVolume_L, settings, ration, cappedBy } = given;
  const rules = rulesOf(settings.dayOrder, ration);
  const doubted = { ...given, balance: balanceUnder({ ...given.balance, covered: undefined }, rules), rules };
  const reader = sizeReader(doubted, tankVolume_L, cappedBy);
  const curve = reader.curveAt(tankVolume_L);
  const point = reader.pointsAt([{ partId: null, tankVolume_L }])[0]!;
  const doubt = sizeDoubt(curve, doubted, tankVolume_L, point.goodYears);
  const verdict = verdictOf(point.meetsTarget, doubt.meetsTarget && cappedBy === null);
  return { reader, curve, doubted, doubt, point, verdict };
}

function sourceUse(
  { balance, rain, tankVolume_L }: StorageCase,
  { secondSourceId, name, kind }: SecondSourceFacts,
  alone: Alone,
  rules: RunRules,
): SecondSourceUse {
  const { days, days_by_year, given_L } = fromSecondSource(balance, tankVolume_L, rain.years, rules);
  return {
    secondSourceId,
    name,
    kind,
    days_per_year: days / rain.judgedYears,
    days_by_year,
    given_L_per_year: given_L / rain.judgedYears,
    aloneVerdict: alone.verdict,
    aloneGoodYears: alone.point.goodYears,
    aloneDryDays_per_year: alone.point.dryDays_per_year,
  };
}

/** Days of the judged years on which the ration held something back. */
function rationedDays(balance: Balance, { years }: JudgedRain, tankVolume_L: number, rules: RunRules): number {
  const { rationed } = dayByDay(balance, tankVolume_L, rules, true).series!;
  let days = 0;
  for (const { from, to, judged } of years) if (judged) for (let day = from; day < to; day++) days += rationed[day]!;
  return days;
}

/**
 * The smallest tanks that would do: to the litre where every size is known, else of the catalogue. With a second source, those
 * that would do without it.
 */
function smallestTanks(sized: Judged, given: StorageCase, verdict: Verdict, sizes: readonly SizePoint[]) {
  const { tankForDays_L, tankForRuns_L, tankForTarget_L } = sized.curve;
  const { tankVolume_L, cappedBy, catalogue, ration } = given;
  const { reader, doubted, doubt } = sized;
  const isSought = verdict !== 'holds' && cappedBy === null;
  const exact = { tankForDays_L, tankForRuns_L, tankForTarget_L, tankToHold_L: null };
  if (reader.isExact)
    return {
      ...exact,
      noExactSize: null,
      catalogueForTarget_L: null,
      catalogueToHold_L: null,
      tankToHold_L: isSought ? tankToHold_L(sized.curve, doubted, { tankVolume_L, doubt }) : null,
    };
  const first = isSought ? reader.verdictsAt(catalogue).find((one) => one.verdict === 'holds') : undefined;
  return {
    ...exact,
    noExactSize: ration === null ? ('order' as const) : ('ration' as const),
    catalogueForTarget_L: sizes.find((size) => size.meetsTarget)?.tankVolume_L ?? null,
    catalogueToHold_L: first?.point.tankVolume_L ?? null,
  };
}

/** What this tank would do were nothing asked but the judged litres. */
function judgedAlone(given: StorageCase): SizePoint {
  const other_L = new Float64Array(given.balance.other_L.length);
  return pointOf(given, { ...given.balance, other_L }, given.ration);
}

/** What this tank does on another balance or by another ration. */
function pointOf(given: StorageCase, whole: Balance, ration: Ration | null): SizePoint {
  const { rain, tankVolume_L, settings, drawn } = given;
  const rules = rulesOf(settings.dayOrder, ration);
  const reader = sizeReader({ balance: balanceUnder(whole, rules), rain, settings, drawn, rules }, tankVolume_L, null);
  return reader.pointsAt([{ partId: null, tankVolume_L }])[0]!;
}
