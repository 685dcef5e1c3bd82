import { evenDraws, meanYear_days, quantileReordering, type WearEnd, wearEnds } from '../../kernel/index.ts';
import { type CartridgeRating, wornLitres_factor } from './cartridgeRating.ts';
import { earlyShare_fraction, firstLook_years, lateShare_fraction, stretch_days } from './constants.ts';
import { type DailyWear, type EndLimits, endLimits, firstEnd, type Stop, stopOf, type Wearing } from './firstEnd.ts';
import { foulingAtShare_ratio } from './foulingBelief.ts';
import { type SiteFouling, type SiteTurbidity, turbidityAt_NTU, turbidityOfThrow } from './siteFouling.ts';

/** Water that passes a set, day by day, in one future. */
export interface DaysAhead {
  /** From the tanks. */
  readonly roof_L: Float64Array;
  /** From the second source. */
  readonly secondSource_L: Float64Array;
}

/** What passed a set before the first day ahead, by the water it came from. */
export interface PassedSoFar {
  readonly roof_L: number;
  readonly secondSource_L: number;
  /** Days since it was put in. */
  readonly age_days: number;
}

/** What a set of cartridges meets in the days ahead. */
export interface FuturesGiven {
  readonly rating: CartridgeRating;
  readonly soFar: PassedSoFar;
  /** One future, so many days of it from the first one on: the same number is the same future, however many days are asked for. */
  readonly futureOf: (future: number, days: number) => DaysAhead;
  /** Temperature of the water by day ahead, 0 to 40; as many days are looked at. */
  readonly temperature_C: Float64Array;
  readonly turbidity: SiteTurbidity;
  readonly fouling: SiteFouling;
  /** How often a set fails by itself; 0: not reckoned with. */
  readonly failures_count_per_year: number;
  /** Days ahead on which it is known not to have failed yet. */
  readonly unbroken_days: number;
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
  readonly ends: readonly (WearEnd | null)[];
}

/**
 * How long may a set of cartridges last? Leads it through many futures. In each the water that passes is another, the turbidity lies somewhere in its range, the fouling
 * somewhere in what is believed of it, and the set may fail.
 *
 * @param given - the set with its rating, what passed it so far [L], the water of each future [L], temperature [C], turbidity [NTU], fouling [ratio], failures [count/year], how many futures and the seed
 * @returns the end of each future [day], the litres it passed [L], and why it ended
 * @law the same given give the same ends; more turbid water or more of it, and a higher chance to fail, never make the end of any future later, a later limit of age never earlier
 * @definition ours: docs/decisions/0209-futures-of-a-set.md
 */
export function wearFutures(given: FuturesGiven): WearFutures {
  const { rating, futures_count, temperature_C, soFar, unbroken_days, fouling } = given;
  const limits = endLimits(rating, temperature_C);
  const room = () => new Float64Array(stretch_days);
  const daily = { litres_L: room(), wornLitres_L: room(), load_L_NTU: room() };
  const [turbidities, foulings, failures] = evenDraws(futures_count, 3, given.seed);
  const end_days = new Float64Array(futures_count).fill(Infinity);
  const litres_L = new Float64Array(futures_count).fill(Infinity);
  const ends = new Array<WearEnd | null>(futures_count).fill(null);
  for (let future = 0; future < futures_count; future++) {
    const { stretch, up_fraction } = turbidityOfThrow(fouling, turbidities![future]!);
    const fouling_ratio = foulingAtShare_ratio(fouling.beliefs[stretch]!, foulings![future]!);
    const lasts_days = (-Math.log(failures![future]!) / given.failures_count_per_year) * meanYear_days;
    const stop = stopOf(rating.ageLimit_days - soFar.age_days, unbroken_days + lasts_days);
    const found = oneFuture(given, future, { up_fraction, fouling_ratio, stop, limits, daily });
    if (found === null) continue;
    end_days[future] = found.end_days;
    litres_L[future] = found.litres_L;
    ends[future] = found.end;
  }
  return { end_days, litres_L, ends };
}

/** How a set does in one future, but for its water. */
interface OneFuture {
  readonly up_fraction: number;
  readonly fouling_ratio: number;
  readonly stop: Stop;
  readonly limits: EndLimits;
  /** Room for a stretch of days, used again and again. */
  readonly daily: DailyWear;
}

/** One future to its end: first some years of it, the rest where no end came. Null where none comes in the days looked at. */
function oneFuture(
  given: FuturesGiven,
  future: number,
  { up_fraction, fouling_ratio, stop, limits, daily }: OneFuture,
) {
  const { rating, soFar, turbidity, temperature_C, futureOf } = given;
  const { source_NTU_range: source } = turbidity;
  const roof = wearOf(rating, turbidityAt_NTU(turbidity.roof_NTU_range, up_fraction));
  const second = wearOf(rating, source === null ? 0 : turbidityAt_NTU(source, up_fraction));
  const wearing: Wearing = {
    litres_L: soFar.roof_L + soFar.secondSource_L,
    wornLitres_L: soFar.roof_L * roof.worn + soFar.secondSource_L * second.worn,
    load_L_NTU: soFar.roof_L * roof.turbidity + soFar.secondSource_L * second.turbidity,
  };
  const most_days = Math.min(temperature_C.length, Math.floor(stop.stop_days) + 1);
  const first_days = Math.min(most_days, Math.ceil(firstLook_years * meanYear_days));
  let from = 0;
  for (const days of [first_days, most_days]) {
    const ahead = days > from ? futureOf(future, days) : null;
    // A stretch at a time: what comes after the end is not looked at.
    while (ahead !== null && from < days) {
      const to = Math.min(days, from + stretch_days);
      fill(daily, ahead, from, to, roof, second);
      const found = firstEnd(wearing, daily, from, to, limits, fouling_ratio, stop);
      if (found !== null) return { ...found, litres_L: wearing.litres_L };
      from = to;
    }
  }
  return null;
}

interface WaterWear {
  readonly turbidity: number;
  readonly worn: number;
}

const wearOf = (rating: CartridgeRating, turbidity: number): WaterWear => ({
  turbidity,
  worn: wornLitres_factor(turbidity, rating.ratedTurbidity_NTU),
});

/** Writes down what the days from `from` to before `to` bring. */
function fill(daily: DailyWear, ahead: DaysAhead, from: number, to: number, roof: WaterWear, second: WaterWear): void {
  const { litres_L, wornLitres_L, load_L_NTU } = daily;
  const { roof_L, secondSource_L } = ahead;
  for (let day = from; day < to; day++) {
    const ofRoof = roof_L[day]!;
    const ofSource = secondSource_L[day]!;
    litres_L[day - from] = ofRoof + ofSource;
    wornLitres_L[day - from] = ofRoof * roof.worn + ofSource * second.worn;
    load_L_NTU[day - from] = ofRoof * roof.turbidity + ofSource * second.turbidity;
  }
}

/** What many futures say of one set: the tenth, middle and ninetieth of a hundred. Null: later than the days looked at. */
export interface WearRange {
  /** Days from the first day ahead. */
  readonly early_days: number | null;
  readonly middle_days: number | null;
  readonly late_days: number | null;
  /** Litres passed at the end since the set was put in. */
  readonly few_L: number | null;
  readonly middle_L: number | null;
  readonly many_L: number | null;
  /** Share of futures by why they end. */
  readonly endsBy_fraction: Readonly<Record<WearEnd, number>>;
  /** Share of futures in which no end came in the days looked at: with the others it makes 1. */
  readonly endless_fraction: number;
}

/**
 * What do many futures say of the end of a set, in a few figures?
 *
 * @param futures - the end of each future [day], litres it passed [L], and why it ended
 * @returns P10, P50 and P90 of the end [day] and of the litres [L], null where they lie beyond the days looked at, and shares by end [fraction]
 * @law early ≤ middle ≤ late
 * @source hyndman-fan-1996, definition 7
 */
export function wearRange(futures: WearFutures): WearRange {
  const { end_days, litres_L, ends } = futures;
  const at = (values: Float64Array, share: number) => {
    const value = quantileReordering(Float64Array.from(values), share);
    return value === Infinity ? null : value;
  };
  const shareOf = (end: WearEnd | null) => ends.filter((one) => one === end).length / ends.length;
  return {
    early_days: at(end_days, earlyShare_fraction),
    middle_days: at(end_days, 1 / 2),
    late_days: at(end_days, lateShare_fraction),
    few_L: at(litres_L, earlyShare_fraction),
    middle_L: at(litres_L, 1 / 2),
    many_L: at(litres_L, lateShare_fraction),
    endsBy_fraction: Object.fromEntries(wearEnds.map((end) => [end, shareOf(end)])) as Record<WearEnd, number>,
    endless_fraction: shareOf(null),
  };
}
