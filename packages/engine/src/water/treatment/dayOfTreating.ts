import { min_per_h } from '../../kernel/index.ts';

/** What backwash takes of what is treated and of the time. */
export interface Backwash {
  /** Litres that go back through the membranes ÷ litres people get, 0 or more. */
  readonly backwash_fraction: number;
  /** Time of a day it takes, in which nothing is treated. */
  readonly backwash_min_per_day: number;
}

/**
 * How many hours a day are needed to treat so many litres for people?
 *
 * @param litres_L_per_day - litres that people are to get [L/day], 0 or more
 * @param flow_L_per_min - flow through the unit [L/min], 0 or more
 * @param backwash - share of the litres [fraction] and time of a day [min/day] that backwash takes
 * @returns hours a day [h/day], more than 24 where a day is not enough; 0 where nothing is asked; Infinity without a flow
 * @law never falls with the litres or the backwash, never rises with the flow
 * @definition litres × (1 + share) ÷ flow + time of backwash
 */
export function hoursNeeded_h_per_day(litres_L_per_day: number, flow_L_per_min: number, backwash: Backwash): number {
  if (litres_L_per_day <= 0) return 0;
  const useful_L_per_min = usefulFlow_L_per_min(flow_L_per_min, backwash);
  if (useful_L_per_min <= 0) return Infinity;
  return (litres_L_per_day / useful_L_per_min + backwash.backwash_min_per_day) / min_per_h;
}

/**
 * How many litres can people get in the hours they pump?
 *
 * @param hours_h_per_day - hours of pumping, backwash among them [h/day], 0 or more
 * @param flow_L_per_min - flow through the unit [L/min], 0 or more
 * @param backwash - share of the litres [fraction] and time of a day [min/day] that backwash takes
 * @returns litres for people [L/day]
 * @law never falls with hours or flow, never rises with backwash
 * @definition flow ÷ (1 + share) × (hours − time of backwash)
 */
export function litresPossible_L_per_day(hours_h_per_day: number, flow_L_per_min: number, backwash: Backwash): number {
  const treating_min = Math.max(0, hours_h_per_day * min_per_h - backwash.backwash_min_per_day);
  return usefulFlow_L_per_min(flow_L_per_min, backwash) * treating_min;
}

/**
 * How many litres go through the unit so that people get so many?
 *
 * @param litres_L_per_day - litres that people get [L/day], 0 or more
 * @param backwash_fraction - litres that go back through the membranes ÷ litres people get [fraction], 0 or more
 * @returns litres treated [L/day]
 * @definition litres × (1 + share): docs/decisions/0211-backwash-is-asked-of-the-tank.md
 * @example
 * treatedLitres_L_per_day(1000, 0.1) // → 1100
 */
export function treatedLitres_L_per_day(litres_L_per_day: number, backwash_fraction: number): number {
  return litres_L_per_day * (1 + backwash_fraction);
}

/**
 * How much membrane do so many litres a day want at a flux that is kept up?
 *
 * @param litres_L_per_day - litres treated [L/day], 0 or more
 * @param flux_L_per_m2_per_h - flux that is kept up [L/m2/h], above 0
 * @param hours_h_per_day - hours a day that water goes through [h/day], above 0
 * @returns area [m2]
 * @definition litres ÷ (flux × hours)
 * @example
 * membraneArea_m2(960, 4, 24) // → 10
 */
export function membraneArea_m2(
  litres_L_per_day: number,
  flux_L_per_m2_per_h: number,
  hours_h_per_day: number,
): number {
  return litres_L_per_day / (flux_L_per_m2_per_h * hours_h_per_day);
}

/** What is left of a flow for people once backwash has had its share. */
function usefulFlow_L_per_min(flow_L_per_min: number, { backwash_fraction }: Backwash): number {
  return flow_L_per_min / (1 + backwash_fraction);
}
