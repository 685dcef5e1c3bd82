import type { Measure } from './building.ts';

export const measured = (value: number): Measure => ({ value, how: 'measured' });
export const madeFrom = (value: number): Measure => ({ value, how: 'madeFrom' });
export const usual = (value: number): Measure => ({ value, how: 'usual' });

/** As measured where it was and can be drawn; else its usual size. */
export function measuredOr(value: number | null | undefined, usual_value: number, least = 0): Measure {
  if (value === null || value === undefined || !(value >= least) || value === Infinity) return usual(usual_value);
  return measured(value);
}
