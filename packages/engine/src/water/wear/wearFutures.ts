import { meanYear_days, quantileReordering } from '../../kernel/index.ts';
import { type CartridgeRating, wornLitres_factor } from './cartridgeRating.ts';
import { earlyShare_fraction, lateShare_fraction } from './constants.ts';
import type { YearAhead } from './daysAhead.ts';
import { evenDraws } from './evenDraws.ts';
import { type DailyWear, type EndFound, endLimits, firstEnd, type SetEnd, stopOf, type Wearing } from './firstEnd.ts';
import { type SiteTurbidity, type SiteWear, turbidityAt_NTU, turbidityOfThrow } from './siteWear.ts';
import { addUnitLitres, type TankAhead, type UnitLitres } from './unitLitres.ts';
import { wearAtShare_factor } from './wearBelief.ts';

/** A year of the record that may come again at one tank. */
export interface YearToCome {
  readonly inflow_L: Float64Array;
  /** What its inflow is multiplied by; 1 for a year as it was. */
  readonly inflowFactor: number;
}

/** A tank with the years that may come. */
export interface TankToCome extends TankAhead {
  /** The years drawn from, the same years in the same order at every tank of a site. */
  readonly pool: readonly YearToCome[];
}

/** Which years come in which future: rows of `length` years, a row a future, as positions in the pool. */
export interface YearsToCome {
  readonly draws: number;
  readonly length: number;
  readonly positions: Uint16Array;
}

/** What passed a set since it was put in, by the water it came from. */
export interface PassedSoFar {
  readonly tank_L: number;
  readonly source_L: number;
  readonly age_days: number;
}

/** What a set of cartridges meets in the days ahead. */
export interface FuturesGiven {
  readonly rating: CartridgeRating;
  readonly soFar: PassedSoFar;
  /** Every tank whose water passes the set. */
  readonly tanks: readonly TankToCome[];
  readonly years: YearsToCome;
  /** The water years the days ahead lie in; they say how far ahead is looked. */
  readonly ahead: readonly YearAhead[];
  /** Temperature of the water, by day ahead, 0 to 40. */
  readonly temperature_C: Float64Array;
  readonly turbidity: SiteTurbidity;
  readonly wear: SiteWear;
  /** How often a set fails, at random. */
  readonly failures_count_per_year: number;
  readonly futures_count: number;
  readonly seed: number;
}

/** The ends of a set in many futures. */
export interface WearFutures {
  /** Days from the first day ahead to the end, a future each; Infinity where none came in the days looked at. */
  readonly end_days: Float64Array;
  /** Litres passed until then since the set was put in; Infinity where no end came. */
  readonly litres_L: Float64Array;
  /** Why each ended; null where none came. */
  readonly ends: readonly (SetEnd | null)[];
}

/**
 * How long may a set of cartridges last? Leads it through many futures. In each, years of the record come again as they were drawn, the turbidity lies somewhere in its
 * range, the wear somewhere in what is believed of it, and the set may break; the balance of the tanks runs forward day by day.
 *
 * @param given - the set with its rating, what passed it so far, tanks, years drawn, days ahead, temperature [C], turbidity [NTU], wear, failures [count/year], how many futures and the seed
 * @returns the end of each future [day], the litres it passed [L], and why it ended
 * @law the same given give the same ends; more turbid water or more of it, and a higher chance to fail, never make the end of any future later, a later calendar limit never earlier
 * @definition ours: docs/decisions/0209-futures-of-a-set.md
 */
export function wearFutures(given: FuturesGiven): WearFutures {
  const { rating, ahead, futures_count, temperature_C } = given;
  const limits = endLimits(rating, temperature_C);
  const buffers = buffersFor(ahead);
  const draws = evenDraws(futures_count, 3, given.seed);
  const end_days = new Float64Array(futures_count).fill(Infinity);
  const litres_L = new Float64Array(futures_count).fill(Infinity);
  const ends = new Array<SetEnd | null>(futures_count).fill(null);
  for (let future = 0; future < futures_count; future++) {
    const [turbidityThrow, wearThrow, failureThrow] = draws.map((row) => row[future]!) as [number, number, number];
    const { stretch, up_fraction } = turbidityOfThrow(given.wear, turbidityThrow);
    const wear = wearAtShare_factor(given.wear.beliefs[stretch]!, wearThrow);
    const failure_days = (-Math.log(failureThrow) / given.failures_count_per_year) * meanYear_days;
    const stop = stopOf(rating.calendarLimit_days - given.soFar.age_days, failure_days);
    const found = oneFuture(given, future, up_fraction, buffers, (wearing, daily, from, to) =>
      firstEnd(wearing, daily, from, to, limits, wear, stop),
    );
    if (found === null) continue;
    end_days[future] = found.end_days;
    litres_L[future] = found.litres_L;
    ends[future] = found.end;
  }
  return { end_days, litres_L, ends };
}

interface Buffers {
  readonly passed: UnitLitres;
  readonly daily: DailyWear;
}

/** Room for the longest stretch of days ahead, used again and again. */
function buffersFor(ahead: readonly YearAhead[]): Buffers {
  const days = ahead.reduce((most, { from, to }) => Math.max(most, to - from), 0);
  const room = () => new Float64Array(days);
  return {
    passed: { tank_L: room(), source_L: room() },
    daily: { litres_L: room(), wornLitres_L: room(), load_L_NTU: room() },
  };
}

/** What ends a set within a stretch of days, given how worn it is and what they bring. */
type EndIn = (wearing: Wearing, daily: DailyWear, from: number, to: number) => EndFound | null;

/** One future, water year by water year. */
function oneFuture(given: FuturesGiven, future: number, up_fraction: number, buffers: Buffers, endIn: EndIn) {
  const { rating, soFar, tanks, years, turbidity } = given;
  const { passed, daily } = buffers;
  const tank_NTU = turbidityAt_NTU(turbidity.tank_NTU_range, up_fraction);
  const { source_NTU_range: source } = turbidity;
  const source_NTU = source === null ? 0 : turbidityAt_NTU(source, up_fraction);
  const tankWorn = wornLitres_factor(tank_NTU, rating.ratedTurbidity_NTU);
  const sourceWorn = wornLitres_factor(source_NTU, rating.ratedTurbidity_NTU);
  const wearing: Wearing = {
    litres_L: soFar.tank_L + soFar.source_L,
    wornLitres_L: soFar.tank_L * tankWorn + soFar.source_L * sourceWorn,
    load_L_NTU: soFar.tank_L * tank_NTU + soFar.source_L * source_NTU,
  };
  const contents = tanks.map(({ content_L }) => content_L);
  const row = (future % years.draws) * years.length;
  for (const [year, { from, to, skipped_days }] of given.ahead.entries()) {
    passed.tank_L.fill(0);
    passed.source_L.fill(0);
    const position = years.positions[row + (year % years.length)]!;
    for (const [place, tank] of tanks.entries()) {
      const { inflow_L, inflowFactor } = tank.pool[position]!;
      contents[place] = addUnitLitres(
        tank,
        contents[place]!,
        { inflow_L, inflowFactor, skipped_days },
        from,
        to,
        passed,
      );
    }
    for (let at = 0; at < to - from; at++) {
      const [fromTank, fromSource] = [passed.tank_L[at]!, passed.source_L[at]!];
      daily.litres_L[at] = fromTank + fromSource;
      daily.wornLitres_L[at] = fromTank * tankWorn + fromSource * sourceWorn;
      daily.load_L_NTU[at] = fromTank * tank_NTU + fromSource * source_NTU;
    }
    const found = endIn(wearing, daily, from, to);
    if (found !== null) return { ...found, litres_L: wearing.litres_L };
  }
  return null;
}

/** What many futures say of one set. Null: later than the days looked at. */
export interface WearRange {
  /** Nine futures of ten end after it, half of them, one in ten: days from the first day ahead. */
  readonly early_days: number | null;
  readonly middle_days: number | null;
  readonly late_days: number | null;
  /** Litres passed at the end since the set was put in, in the same shares. */
  readonly few_L: number | null;
  readonly middle_L: number | null;
  readonly many_L: number | null;
  /** Share of futures by why they end; `none`: none came in the days looked at. Their sum is 1. */
  readonly share_fraction: Readonly<Record<SetEnd | 'none', number>>;
}

/**
 * What do many futures say of the end of a set, in a few figures?
 *
 * @param futures - the end of each future [day], litres it passed [L], and why it ended
 * @returns P10, P50 and P90 of the end [day] and of the litres [L], null where they lie beyond the days looked at, and shares by end [fraction]
 * @law early ≤ middle ≤ late
 * @source hyndman-fan-1996, definition 7
 */
export function wearRange({ end_days, litres_L, ends }: WearFutures): WearRange {
  const at = (values: Float64Array, share: number) => {
    const value = quantileReordering(Float64Array.from(values), share);
    return value === Infinity ? null : value;
  };
  const shareOf = (end: SetEnd | null) => ends.filter((one) => one === end).length / ends.length;
  return {
    early_days: at(end_days, earlyShare_fraction),
    middle_days: at(end_days, 1 / 2),
    late_days: at(end_days, lateShare_fraction),
    few_L: at(litres_L, earlyShare_fraction),
    middle_L: at(litres_L, 1 / 2),
    many_L: at(litres_L, lateShare_fraction),
    share_fraction: {
      litres: shareOf('litres'),
      flow: shareOf('flow'),
      calendar: shareOf('calendar'),
      failure: shareOf('failure'),
      none: shareOf(null),
    },
  };
}
