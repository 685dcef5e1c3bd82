import { longest_years, roundingSlack_fraction, shortest_years } from './constants.ts';
import type { CostTiming } from './costItem.ts';
import { capitalRecovery } from './interest.ts';

/** What a thing that costs 1 takes a year, spread evenly over all years. */
export interface SpentPerYear {
  /** At the start, or every year. */
  readonly first_factor: number;
  /** Of its renewals. */
  readonly renewals_factor: number;
}

/**
 * What does a thing that costs 1 take a year, once all it is bought for is spread evenly over the years? Renewals fall on each end of a life before the last day; nothing is
 * left over at the end.
 *
 * @param kind - when it is paid for [text]
 * @param isBoughtFirst - is the first of what is renewed paid for at the start?
 * @param life_years - how long one lasts [year]; of what is not renewed it does not count
 * @param years - the years looked at [year], above 0
 * @param interest_fraction_per_year - interest [fraction/year]; 0: amounts are added as they are
 * @returns the parts a year [factor]
 * @law a level yearly amount takes itself
 * @source newnan-tables, present worth × capital recovery
 */
export function spentPerYear(
  { kind, isBoughtFirst }: { readonly kind: CostTiming['kind']; readonly isBoughtFirst: boolean },
  life_years: number,
  years: number,
  interest_fraction_per_year: number,
): SpentPerYear {
  if (kind === 'yearly') return { first_factor: 1, renewals_factor: 0 };
  const recovery = capitalRecovery(interest_fraction_per_year, years);
  if (kind === 'once') return { first_factor: recovery, renewals_factor: 0 };
  return {
    first_factor: isBoughtFirst ? recovery : 0,
    renewals_factor: recovery * renewalsWorth(life_years, years, interest_fraction_per_year),
  };
}

/**
 * How often is a thing renewed before the last day?
 *
 * @param life_years - how long one lasts [year]
 * @param years - the years looked at [year]
 * @returns renewals [count]
 * @definition ours: the renewal that would fall on the last day is none
 * @example
 * renewalsWithin(5, 20) // → 3
 * renewalsWithin(3, 10) // → 3
 * renewalsWithin(20, 20) // → 0
 */
export function renewalsWithin(life_years: number, years: number): number {
  const life = Math.min(Math.max(life_years, shortest_years), longest_years);
  return Math.max(0, Math.ceil((years / life) * (1 - roundingSlack_fraction)) - 1);
}

/** What all renewals of a thing that costs 1 are worth at the start: a geometric row. */
function renewalsWorth(life_years: number, years: number, interest: number): number {
  const count = renewalsWithin(life_years, years);
  if (count === 0 || interest === 0) return count;
  const life = Math.min(Math.max(life_years, shortest_years), longest_years);
  const perLife_log = -life * Math.log1p(interest);
  return (Math.exp(perLife_log) * Math.expm1(count * perLife_log)) / Math.expm1(perLife_log);
}
