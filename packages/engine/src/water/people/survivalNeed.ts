import type { Range } from '../../kernel/index.ts';
import { survivalNeeds } from './constants.ts';

/**
 * How much water does a person need in a day to survive? The sums of the low and of the high ends over drinking, hygiene
 * and cooking.
 *
 * @returns low and high [L/person/day]
 * @source sphere-2018, water supply standard 2.1, simplified basic survival needs
 * @example
 * survivalNeed_L_per_person_per_day() // → { low: 7.5, high: 15 }
 */
export function survivalNeed_L_per_person_per_day(): Range {
  let low = 0;
  let high = 0;
  for (const need of survivalNeeds) {
    low += need.low_L_per_person_per_day;
    high += need.high_L_per_person_per_day;
  }
  return { low, high };
}
