import { quantile, seededDice, uniformDraw } from '../../kernel/index.ts';
import { rangeDraws_count, shownQuantiles } from './constants.ts';
import { type DrinkingGiven, yearOfDrinking } from './yearOfDrinking.ts';

/** Germs in raw water as somebody states them: at best, as a rule, at worst. */
export interface RawRange {
  readonly low_per_L: number;
  readonly typical_per_L: number;
  readonly high_per_L: number;
}

/** Water a person drinks a day, from those who drink little to those who drink much. */
export interface DrunkRange {
  readonly low_L_per_day: number;
  readonly high_L_per_day: number;
}

/** The burden of disease of a year, when raw water and litres lie within what was stated. */
export interface BurdenRange {
  /** With typical raw water and litres half-way. */
  readonly typical_DALY_per_person_per_year: number;
  readonly middle_DALY_per_person_per_year: number;
  /** Nineteen in twenty draws are no worse: what is judged. */
  readonly judged_DALY_per_person_per_year: number;
}

/**
 * Which value of raw water does a given share of what may be lie under? A triangle on the logarithm from low to high with its peak at typical. A low of 0 has no logarithm:
 * then low is taken as far under typical as high is over it. A typical value of 0 too: a triangle on the value itself, falling from 0 to high.
 *
 * @param raw - germs at best, as a rule and at worst [organisms/L], 0 or more, not falling
 * @param below_fraction - share that lies under it [fraction], 0 to 1
 * @returns germs [organisms/L]
 * @law between low and high, and never falls with the share
 * @definition ours: docs/decisions/0225-range-of-raw-water.md
 */
export function rawWithin_per_L(raw: RawRange, below_fraction: number): number {
  const { low_per_L, typical_per_L, high_per_L } = raw;
  if (!(low_per_L >= 0 && typical_per_L >= low_per_L && high_per_L >= typical_per_L && high_per_L < Infinity))
    throw new RangeError('rawWithin_per_L: needs 0 ≤ low ≤ typical ≤ high');
  if (typical_per_L === 0) return high_per_L * triangle(0, 0, 1, below_fraction);
  const high = Math.log(high_per_L);
  const typical = Math.log(typical_per_L);
  const low = low_per_L > 0 ? Math.log(low_per_L) : typical - (high - typical);
  const drawn_per_L = Math.exp(triangle(low, typical, high, below_fraction));
  return Math.min(Math.max(drawn_per_L, low_per_L), high_per_L);
}

/** Quantile of a triangular distribution. */
function triangle(low: number, peak: number, high: number, below_fraction: number): number {
  if (!(high > low)) return high;
  const left_fraction = (peak - low) / (high - low);
  return below_fraction < left_fraction
    ? low + Math.sqrt(below_fraction * (high - low) * (peak - low))
    : high - Math.sqrt((1 - below_fraction) * (high - low) * (high - peak));
}

/**
 * How heavy is the burden of disease when raw water and litres are only known within limits? Draws of both, each for a whole year; raw water drawn from equal slices of what may
 * be, so that few draws do. The share of draws that is judged is the 95th of a hundred.
 *
 * @param given - as for yearOfDrinking, without raw water and litres
 * @param raw - germs in the raw water at best, as a rule, at worst [organisms/L]
 * @param drunk - litres a person drinks [L/day], low to high
 * @param seed - the seed [number], whole: the same for a site and germ whatever else changes
 * @param draws_count - how many draws [count], at least 1
 * @returns typical, middle and judged burden [DALY/person/year]; null where there are no people
 * @law the same seed gives the same range; more log reduction never makes any of the three worse
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
  const litres = (share: number) => drunk.low_L_per_day + share * (drunk.high_L_per_day - drunk.low_L_per_day);
  const typical = burdenOf(raw.typical_per_L, litres(1 / 2));
  if (typical === null) return null;
  const dice = seededDice(seed);
  const drawn = new Float64Array(draws_count);
  for (let draw = 0; draw < draws_count; draw++) {
    const below_fraction = (draw + uniformDraw(dice)) / draws_count;
    drawn[draw] = burdenOf(rawWithin_per_L(raw, below_fraction), litres(uniformDraw(dice)))!;
  }
  return {
    typical_DALY_per_person_per_year: typical,
    middle_DALY_per_person_per_year: quantile(drawn, shownQuantiles.middle_fraction),
    judged_DALY_per_person_per_year: quantile(drawn, shownQuantiles.judged_fraction),
  };
}
