import type { CostTiming } from './costItem.ts';
import { type Doubtful, throwsOf } from './doubtful.ts';
import { spentPerYear } from './spending.ts';

/** Throws of all figures of one analysis, each made once and kept: sites that share a price share its throws. */
export interface CostThrows {
  readonly draws: number;
  /** Of a figure, in its own unit. */
  readonly valuesOf: (figure: Doubtful) => Float64Array;
  /** What a thing that costs 1 takes a year, throw by throw. */
  readonly spentOf: (timing: CostTiming) => Float64Array;
}

/** What the throws of an analysis rest on. */
export interface CostThrowsGiven {
  readonly draws: number;
  readonly seed: number;
  readonly years_count: number;
  /** In money that keeps its worth [fraction/year]; null: amounts are added as they are. */
  readonly interest: Doubtful | null;
}

/**
 * Makes a store of throws for one analysis, to be used for all its sites.
 *
 * @param given - how many throws, the seed, the years [year] and the interest [fraction/year]
 * @returns the store
 * @definition ours: docs/decisions/0257-throws-and-swings.md
 */
export function costThrows({ draws, seed, years_count, interest }: CostThrowsGiven): CostThrows {
  const values = new Map<string, Float64Array>();
  const spent = new Map<string, Float64Array>();
  const valuesOf = (figure: Doubtful) => kept(values, keyOf(figure), () => throwsOf(figure, draws, seed));
  const none = new Float64Array(draws);
  const spentOf = (timing: CostTiming) =>
    kept(spent, keyOfTiming(timing), () => {
      const interests = interest === null ? none : valuesOf(interest);
      const lives = timing.kind === 'renewed' && timing.life_years !== null ? valuesOf(timing.life_years) : null;
      return interests.map((rate, draw) => spentInAll(timing, lives?.[draw] ?? null, years_count, rate));
    });
  return { draws, valuesOf, spentOf };
}

/**
 * What does a thing that costs 1 take a year, renewals and all? Where its life is not known, what is known of it.
 *
 * @param timing - when it is paid for
 * @param life_years - how long one lasts [year]; null: not known or never renewed
 * @param years - the years looked at [year]
 * @param interest_fraction_per_year - interest [fraction/year]
 * @returns the part a year [factor]
 * @definition ours: first and renewals of spentPerYear
 */
export function spentInAll(
  timing: CostTiming,
  life_years: number | null,
  years: number,
  interest_fraction_per_year: number,
): number {
  const isBoughtFirst = timing.kind !== 'renewed' || timing.isBoughtFirst;
  const found = spentPerYear(
    { kind: timing.kind, isBoughtFirst },
    life_years ?? years,
    years,
    interest_fraction_per_year,
  );
  return found.first_factor + found.renewals_factor;
}

function kept(store: Map<string, Float64Array>, key: string, make: () => Float64Array): Float64Array {
  const found = store.get(key) ?? make();
  store.set(key, found);
  return found;
}

function keyOf({ inputId, low, likely, high, ends }: Doubtful): string {
  return [inputId, low, likely, high, ends].join('\u0000');
}

function keyOfTiming(timing: CostTiming): string {
  if (timing.kind !== 'renewed') return timing.kind;
  return `${timing.isBoughtFirst} ${timing.life_years === null ? '' : keyOf(timing.life_years)}`;
}
