import { normalQuantile, quantileReordering, seededDice, seedFor, uniformDraw } from '../../kernel/index.ts';
import { goldenStep_fraction, rangeDraws_count, shownQuantiles, silverStep_fraction } from './constants.ts';
import { yearlyBurden } from './yearlyBurden.ts';
import { type DrinkingGiven, yearOfDrinking } from './yearOfDrinking.ts';
import {
  infectedInYear_fraction,
  type SecondWater,
  type SparedByBoth,
  sourceDaysByYear,
  sparedByBoth,
} from './yearOfWaters.ts';

/** Germs in raw water as somebody states them: as a rule, and the ends of what is likely; nineteen in twenty lie over the low end, and under the high one. */
export interface RawRange {
  readonly low_per_L: number | null;
  readonly typical_per_L: number;
  readonly high_per_L: number | null;
}

/** Water a person drinks a day: as a rule, and what nineteen in twenty do not drink more than. */
export interface DrunkRange {
  readonly usual_L_per_day: number;
  readonly high_L_per_day: number;
}

/** The burden of disease of a year, when raw water and litres lie within what was stated. */
export interface BurdenRange {
  readonly middle_DALY_per_person_per_year: number;
  /** Nineteen in twenty draws are no worse: what is judged. */
  readonly judged_DALY_per_person_per_year: number;
}

/**
 * Which value lies so many standard deviations from the middle, by the logarithm, when middle and ends are stated? Each side of the middle by itself is lognormal through its own
 * end. An end that is not stated, or a low end of 0, lies as far off as the other; without either the middle stands alone. A middle of 0 with a high end: 0 below it, and on a straight line above.
 *
 * @param low - end that nineteen in twenty lie over [any unit], 0 or more, at most the middle; null: not known
 * @param middle - half lie under it [same unit], 0 or more
 * @param high - end that nineteen in twenty lie under [same unit], at least the middle; null: not known
 * @param deviations - standard deviations from the middle [number]
 * @returns the value [same unit]
 * @law the middle at 0, the ends at ±1.645; never falls with the deviations
 * @definition ours: docs/decisions/0225-range-of-raw-water.md
 * @example
 * valueWithin(1, 10, 1000, 0) // → 10
 * valueWithin(null, 10, null, 2) // → 10
 */
export function valueWithin(low: number | null, middle: number, high: number | null, deviations: number): number {
  const isRange = (low ?? 0) <= middle && (high ?? middle) >= middle && (low ?? 0) >= 0 && (high ?? 0) < Infinity;
  if (!isRange || !(middle >= 0)) throw new RangeError('valueWithin: needs 0 ≤ low ≤ middle ≤ high');
  const share = deviations / endDeviations;
  if (middle === 0) return share > 0 ? (high ?? 0) * share : 0;
  const down = low !== null && low > 0 ? middle / low : null;
  const up = high === null ? null : high / middle;
  const ratio = share > 0 ? (up ?? down ?? 1) : (down ?? up ?? 1);
  return middle * ratio ** share;
}

/** Where the ends lie: one in twenty beyond. */
const endDeviations = normalQuantile({
  below_fraction: shownQuantiles.judged_fraction,
  above_fraction: 1 - shownQuantiles.judged_fraction,
});

/**
 * How heavy is the burden of disease when raw water and litres are only known within limits? Draws of both, each for a whole year, that fill what may be evenly, so that
 * few do. The share of draws that is judged is the 95th of a hundred.
 *
 * @param given - as for yearOfDrinking, without raw water and litres
 * @param raw - germs in the raw water as a rule and at its ends [organisms/L]
 * @param drunk - litres a person drinks as a rule and at most [L/day]
 * @param seed - the seed [number], whole: the same whatever else changes
 * @param draws_count - how many draws [count], at least 20
 * @returns middle and judged burden [DALY/person/year]; null where there are no people
 * @law the same seed gives the same range; more log reduction never makes either worse
 * @source who-qmra-2016, chance in the chain (from memory)
 * @definition ours: docs/decisions/0225-range-of-raw-water.md
 */
export function burdenRange(
  given: Omit<DrinkingGiven, 'raw_per_L' | 'drunk_L_per_day'>,
  raw: RawRange,
  drunk: DrunkRange,
  seed: number,
  draws_count: number = rangeDraws_count,
): BurdenRange | null {
  const burdenOf = (raw_per_L: number, drunk_L_per_day: number) =>
    yearOfDrinking({ ...given, raw_per_L, drunk_L_per_day })?.burden_DALY_per_person_per_year ?? null;
  if (burdenOf(0, 0) === null) return null;
  const deviations = deviationsOf(seed, draws_count);
  const rawAt = (z: number) => valueWithin(raw.low_per_L, raw.typical_per_L, raw.high_per_L, z);
  const litresAt = (z: number) => valueWithin(null, drunk.usual_L_per_day, drunk.high_L_per_day, z);
  if (raw.typical_per_L === 0 || (given.dirtied?.added_per_L ?? 0) > 0) {
    const burdens = deviations.raw.map((z, draw) => burdenOf(rawAt(z), litresAt(deviations.drunk[draw]!))!);
    return rangeOf((fraction) => quantileReordering(burdens, placeOf(fraction, draws_count)));
  }
  // Germs and litres meet in their product alone, and more of it is never better: so its quantiles are those of the burden.
  const [ofRaw, ofLitres] = [stepsOf(rawAt), stepsOf(litresAt)];
  const logDoses = deviations.raw.map((z, draw) => ofRaw(z) + ofLitres(deviations.drunk[draw]!));
  const usual = raw.typical_per_L * drunk.usual_L_per_day;
  return rangeOf(
    (fraction) => burdenOf(usual * Math.exp(quantileReordering(logDoses, placeOf(fraction, draws_count))), 1)!,
  );
}

/**
 * How heavy is the burden of disease when two waters are drunk in turn? Each draw takes one year of the record with its days of the second water, as often one as another; doubt about the germs
 * of both leans the same way, so that a draw with many in the one has many in the other.
 *
 * @param given - as for yearOfDrinking, without raw water and litres
 * @param raw - germs in the first water as a rule and at its ends [organisms/L]
 * @param second - the same of the second [organisms/L], and on which days of each year it is drunk [days]
 * @param drunk - litres a person drinks as a rule and at most [L/day]
 * @param seed - the seed [number], whole: the same whatever else changes
 * @param draws_count - how many draws [count], at least 20
 * @returns middle and judged burden [DALY/person/year]; null where there are no people
 * @law more days of a water that is worse throughout its range never make either lower
 * @definition ours: docs/decisions/0238-days-of-the-second-source.md
 */
export function burdenRangeOfWaters(
  given: Omit<DrinkingGiven, 'raw_per_L' | 'drunk_L_per_day'>,
  raw: RawRange,
  second: SecondWater<RawRange>,
  drunk: DrunkRange,
  seed: number,
  draws_count: number = rangeDraws_count,
): BurdenRange | null {
  const spared = sparedInDraws(given, raw, second.raw, drunk, seed, draws_count);
  if (spared[0]!.length === 0) return null;
  const { year_fraction } = deviationsOf(seed, draws_count);
  const years = yearsInOrder(second.bodies);
  const burdens = Float64Array.from(spared, (groups, draw) => {
    const year = years[Math.floor(year_fraction[draw]! * years.length)]!;
    const infected = infectedInYear_fraction(groups, second.bodies, year);
    return yearlyBurden(infected, given.pathogen).burden_DALY_per_person_per_year;
  });
  return rangeOf((fraction) => quantileReordering(burdens, placeOf(fraction, draws_count)));
}

/** What each water by itself does to each group of people, draw by draw: it hangs on no day, so that it is kept for other days of the same waters. */
function sparedInDraws(
  given: Omit<DrinkingGiven, 'raw_per_L' | 'drunk_L_per_day'>,
  raw: RawRange,
  second: RawRange,
  drunk: DrunkRange,
  seed: number,
  draws_count: number,
): readonly (readonly SparedByBoth[])[] {
  const key = JSON.stringify([given, raw, second, drunk, seed, draws_count]);
  const known = keptSpared.get(key);
  if (known !== undefined) return known;
  const deviations = deviationsOf(seed, draws_count);
  const made = Array.from(deviations.raw, (z, draw) => {
    const raw_per_L = valueWithin(raw.low_per_L, raw.typical_per_L, raw.high_per_L, z);
    const drunk_L_per_day = valueWithin(null, drunk.usual_L_per_day, drunk.high_L_per_day, deviations.drunk[draw]!);
    const second_per_L = valueWithin(second.low_per_L, second.typical_per_L, second.high_per_L, z);
    return sparedByBoth({ ...given, raw_per_L, drunk_L_per_day }, second_per_L);
  });
  if (keptSpared.size >= mostKept_count) keptSpared.clear();
  keptSpared.set(key, made);
  return made;
}

/** The last ones made: three germs of a site whose tanks are changed again and again. */
const keptSpared = new Map<string, readonly (readonly SparedByBoth[])[]>();
const mostKept_count = 6;

/** The years of the record by their days of the second water, fewest first, so that draws that fill what may be evenly fill them evenly. */
function yearsInOrder(bodies: SecondWater<RawRange>['bodies']): readonly number[] {
  const days = sourceDaysByYear(bodies);
  return days.map((_, year) => year).sort((a, b) => days[a]! - days[b]!);
}

/** The logarithm of a value over its middle, by standard deviations: a straight line on either side. */
function stepsOf(valueAt: (deviations: number) => number): (deviations: number) => number {
  const [up, down] = [Math.log(valueAt(1) / valueAt(0)), Math.log(valueAt(0) / valueAt(-1))];
  return (deviations) => deviations * (deviations > 0 ? up : down);
}

function rangeOf(burdenAt: (fraction: number) => number): BurdenRange {
  return {
    middle_DALY_per_person_per_year: burdenAt(shownQuantiles.middle_fraction),
    judged_DALY_per_person_per_year: burdenAt(shownQuantiles.judged_fraction),
  };
}

/** Where among draws from the middles of equal slices so many lie below: half a slice is on either side of each. */
function placeOf(fraction: number, draws_count: number): number {
  return (draws_count * fraction - 1 / 2) / (draws_count - 1);
}

/** Standard deviations of raw water and of litres, draw by draw. */
interface Deviations {
  readonly raw: Float64Array;
  readonly drunk: Float64Array;
  /** Where among the years of a record, from 0 to under 1. */
  readonly year_fraction: Float64Array;
}

/** The last ones made: every germ of every site is drawn with the same. */
let kept: { readonly seed: number; readonly draws_count: number; readonly deviations: Deviations } | null = null;

/** Draws of two normal values that fill what may be evenly: the middle of each of equal slices, and beside it a value a golden step on from draw to draw, from a start of chance; and a third, by a step of its own, for years of a record. */
function deviationsOf(seed: number, draws_count: number): Deviations {
  if (kept?.seed === seed && kept.draws_count === draws_count) return kept.deviations;
  const dice = seededDice(seedFor(seed, 'rawWater'));
  const begin = uniformDraw(dice);
  const beginYear = uniformDraw(dice);
  const raw = new Float64Array(draws_count);
  const drunk = new Float64Array(draws_count);
  const year_fraction = new Float64Array(draws_count);
  for (let draw = 0; draw < draws_count; draw++) {
    raw[draw] = deviationsBelow((draw + 1 / 2) / draws_count);
    drunk[draw] = deviationsBelow((draw * goldenStep_fraction + begin) % 1);
    year_fraction[draw] = (draw * silverStep_fraction + beginYear) % 1;
  }
  const deviations: Deviations = { raw, drunk, year_fraction };
  kept = { seed, draws_count, deviations };
  return deviations;
}

function deviationsBelow(below_fraction: number): number {
  return normalQuantile({ below_fraction, above_fraction: 1 - below_fraction });
}
