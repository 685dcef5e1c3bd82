import { type Balance, daysOf } from './dayByDay.ts';
import { netOf } from './dayRules.ts';
import type { PoolYear } from './drawYears.ts';

/**
 * The days of a year that may be drawn: as they were, or with all their rain multiplied. Where the balance is the net of another,
 * the rain is multiplied before it serves the day's demand.
 */
export function poolDays(balance: Balance, { year, inflowFactor }: PoolYear): Balance {
  if (inflowFactor === 1) return daysOf(balance, year.from, year.to);
  const days = daysOf(balance.whole ?? balance, year.from, year.to);
  const changed = { ...days, inflow_L: days.inflow_L.map((inflow) => inflow * inflowFactor) };
  return balance.whole === undefined ? changed : netOf(changed);
}
