import type { Measure } from './building.ts';

export const measured = (value: number): Measure => ({ value, how: 'measured' });
export const madeFrom = (value: number): Measure => ({ value, how: 'madeFrom' });
export const usual = (value: number): Measure => ({ value, how: 'usual' });

/** A count of things: as told, where it is one or more; else as usual. */
export function countedOr(value: number | null, usual_count: number, most: number): Measure {
  return value !== null && value >= 1 ? measured(Math.min(most, Math.round(value))) : usual(usual_count);
}

/** As measured where it was and can be drawn; else its usual size. */
export function measuredOr(value: number | null | undefined, usual_value: number, least = 0): Measure {
  if (value === null || value === undefined || !(value >= least) || value === Infinity) return usual(usual_value);
  return measured(value);
}
