import { secondsInHour_s } from './constants.ts';

/**
 * How much water does a storm bring off a roof? Every drop runs off at once: 1 mm on 1 m² is 1 L.
 *
 * @param area_m2 - effective area of the roof [m2], 0 or more
 * @param intensity_mm_per_h - rain of the hardest five minutes [mm/h], 0 or more
 * @returns flow [L/s]
 * @source sri-lanka-sheet, first block; msma-2011, chapter 4
 * @example
 * stormFlow_L_per_s(180, 100) // → 5
 */
export function stormFlow_L_per_s(area_m2: number, intensity_mm_per_h: number): number {
  return (area_m2 * intensity_mm_per_h) / secondsInHour_s;
}

/**
 * Which rain brings just this flow off a roof?
 *
 * @param area_m2 - effective area of the roof [m2], above 0
 * @param flow_L_per_s - flow [L/s], 0 or more
 * @returns rain [mm/h]
 * @law stormFlow_L_per_s of it is the flow
 * @definition stormFlow_L_per_s, solved for the rain
 * @example
 * stormCarried_mm_per_h(180, 5) // → 100
 */
export function stormCarried_mm_per_h(area_m2: number, flow_L_per_s: number): number {
  return (flow_L_per_s * secondsInHour_s) / area_m2;
}
