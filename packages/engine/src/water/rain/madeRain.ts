import { calendarDay, type DayIndex, dayIndexOf, seededDice, seedFor, uniformDraw } from '../../kernel/index.ts';
import type { RainMonth } from './rainMonths.ts';
import { type WetChain, wetShare } from './wetChain.ts';
import { drawAmount_mm } from './wetDayAmounts.ts';

/** Rain nobody measured, day by day. It is no record, so that it can never be judged as one. */
export interface MadeRain {
  readonly firstDay: DayIndex;
  /** Rain by day [mm]. */
  readonly rain_mm: Float64Array;
}

/** What made-up rain is made for. */
export interface MadeRainOrder {
  /** Whose seed it has: a gauge's or a site's id. */
  readonly name: string;
  readonly seed: number;
  readonly firstYear: number;
  readonly years: number;
}

/**
 * How might rain fall over years that nobody measured? Day by day: wet or dry by the chance of the day's month after the day
 * before, and on a wet day an amount drawn for the month. It keeps the months' means and the usual spells, and understates
 * how much years differ: a verdict that rests on it may be tight at best.
 *
 * @param months - twelve months, January first: chances [fraction] and amounts [mm]
 * @param order - name, seed [number], first calendar year [year], and how many years [year], 1 or more
 * @returns whole calendar years of rain by day [mm]
 * @law the same order gives the same rain; more years only add to the end
 * @source richardson-1981, rain by a chain of two states (from memory)
 */
export function madeRain(months: readonly RainMonth[], order: MadeRainOrder): MadeRain {
  const { name, seed, firstYear, years } = order;
  if (months.length !== 12 || !(Number.isInteger(years) && years >= 1)) {
    throw new RangeError('madeRain: needs twelve months and whole years, 1 or more');
  }
  const dice = seededDice(seedFor(seed, `made rain ${name}`));
  const firstDay = dayIndexOf(firstYear, 1, 1);
  const rain_mm = new Float64Array(dayIndexOf(firstYear + years, 1, 1) - firstDay);
  let wet = uniformDraw(dice) < wetShare(months[0]!.chain);
  for (let at = 0; at < rain_mm.length; at++) {
    const month = months[calendarDay(firstDay + at).month - 1]!;
    wet = uniformDraw(dice) < chanceAfter(month.chain, wet);
    if (wet) rain_mm[at] = drawAmount_mm(month.amounts, dice);
  }
  return { firstDay, rain_mm };
}

function chanceAfter(chain: WetChain, wet: boolean): number {
  return wet ? chain.wetAfterWet_fraction : chain.wetAfterDry_fraction;
}
