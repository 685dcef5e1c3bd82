import type { MeasureLimits } from './measureEntry.ts';

/**
 * Where does a measure stand once it was dragged? At the next whole step, within its limits. A hand that trembles, less than half
 * a step, changes nothing.
 *
 * @param from - where it stood
 * @param moved - by how much it was dragged, in its own unit
 * @param limits - step, least and most
 */
export function draggedTo(from: number, moved: number, limits: MeasureLimits): number {
  return Math.abs(moved) < limits.step / 2 ? from : nextStep(from + moved, limits);
}

/**
 * The nearest whole step within the limits.
 *
 * @param wanted - a value between two steps
 * @param limits - step, least and most
 */
export function nextStep(wanted: number, { least, most, step }: MeasureLimits): number {
  const stepped = Math.round(wanted / step) * step;
  return Number(Math.min(most, Math.max(least, stepped)).toFixed(6));
}
