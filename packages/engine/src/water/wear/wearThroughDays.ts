import type { WearEnd } from '../../kernel/index.ts';
import { type CartridgeRating, growthOfLoad, wornLitres_factor } from './cartridgeRating.ts';
import { type DailyWear, endLimits, firstEnd, stopOf, type Worn } from './firstEnd.ts';

/** Water of one kind that passes a set, day by day. */
export interface PassingWater {
  readonly litres_L: Float64Array;
  readonly turbidity_NTU: Float64Array;
}

/** A set as it stands on the first day. */
export interface SetSoFar extends Worn {
  /** Days since it was put in. */
  readonly age_days: number;
}

/** What becomes of a set. */
export interface WearFound extends Worn {
  /** Days from the first day on to its end, with the part of the last one; null where it outlasts the days given. */
  readonly end_days: number | null;
  readonly end: WearEnd | null;
  /** Resistance at its end, or after the days given, against a clean set; null where turbidity or flow is not rated. */
  readonly resistance_ratio: number | null;
}

/** A set that was just put in. */
export const newSet: SetSoFar = { litres_L: 0, wornLitres_L: 0, load_L_NTU: 0, age_days: 0 };

/**
 * How long does a set last in one future, known day by day? To the first of four ends: rated litres are worn; it passes less than the lowest flow at the site's
 * pressure in the water of the day; its years are over; it breaks.
 *
 * @param rating - the set: rated litres [L] and turbidity [NTU], flows [L/h], pressures [kPa], limit of age [day]
 * @param waters - the waters that pass it, each with its litres [L] and turbidity [NTU] by day, arrays of one length, values 0 or more
 * @param temperature_C - temperature of the water by day [C], 0 to 40, of the same length
 * @param fouling_ratio - how fast it clogs at this site against its rating [factor], above 0
 * @param soFar - the set on the first day: litres, worn litres [L], load [L·NTU], age [day]
 * @param failure_days - days from the first day on after which it breaks [day]; Infinity where it does not
 * @returns days to its end [day] or null, which end, litres passed in all [L], worn litres [L], load [L·NTU], resistance at the end [ratio] or null
 * @law more turbid water, more litres of it, faster fouling and colder water never make the end later; a later limit of age never makes it earlier
 * @definition ours: docs/decisions/0207-what-wears-a-cartridge.md
 */
export function wearThroughDays(
  rating: CartridgeRating,
  waters: readonly PassingWater[],
  temperature_C: Float64Array,
  fouling_ratio: number,
  soFar: SetSoFar = newSet,
  failure_days = Infinity,
): WearFound {
  const days = temperature_C.length;
  const daily = dailyWear(rating, waters, days);
  const { age_days, ...worn } = soFar;
  const wearing = { ...worn };
  const stop = stopOf(rating.ageLimit_days - age_days, failure_days);
  const found = firstEnd(wearing, daily, 0, days, endLimits(rating, temperature_C), fouling_ratio, stop);
  return {
    ...wearing,
    end_days: found?.end_days ?? null,
    end: found?.end ?? null,
    resistance_ratio: resistance_ratio(rating, wearing.load_L_NTU, fouling_ratio),
  };
}

/**
 * How many times its clean resistance does a set have after so much load?
 *
 * @param rating - the set: rated litres [L] and turbidity [NTU], clean and lowest flow [L/h]
 * @param load_L_NTU - litres times their turbidity, added up [L·NTU], 0 or more
 * @param fouling_ratio - how fast it clogs at this site against its rating [factor], above 0
 * @returns resistance ÷ clean resistance [ratio], 1 or more; null where turbidity or flow is not rated
 * @law at a fouling of 1 rated litres at the rated turbidity bring the clean flow to the lowest
 * @definition ours: docs/decisions/0207-what-wears-a-cartridge.md
 * @example
 * resistance_ratio({ ratedLitres_L: 100, ratedTurbidity_NTU: 5, ageLimit_days: Infinity, flow: { cleanFlow_L_per_h: 300, lowestFlow_L_per_h: 100, ratedPressure_kPa: 50, workingPressure_kPa: 50 } }, 500, 1) // → 3
 */
export function resistance_ratio(rating: CartridgeRating, load_L_NTU: number, fouling_ratio: number): number | null {
  const growth = growthOfLoad(rating);
  return growth === null ? null : 1 + fouling_ratio * growth * load_L_NTU;
}

function dailyWear(rating: CartridgeRating, waters: readonly PassingWater[], days: number): DailyWear {
  const daily = {
    litres_L: new Float64Array(days),
    wornLitres_L: new Float64Array(days),
    load_L_NTU: new Float64Array(days),
  };
  for (const { litres_L, turbidity_NTU } of waters)
    for (let day = 0; day < days; day++) {
      const [litres, turbidity] = [litres_L[day]!, turbidity_NTU[day]!];
      daily.litres_L[day]! += litres;
      daily.wornLitres_L[day]! += litres * wornLitres_factor(turbidity, rating.ratedTurbidity_NTU);
      daily.load_L_NTU[day]! += litres * turbidity;
    }
  return daily;
}
