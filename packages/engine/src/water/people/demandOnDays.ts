import { type DayIndex, daysOfPlainYear } from '../../kernel/index.ts';

/**
 * How many litres are asked on each day of a record? Each day asks what its calendar day does; 29 February asks what
 * 28 February does.
 *
 * @param byDay_L - litres by calendar day from 1 January on [L], 365 of them
 * @param firstDay - the record's first day [day]
 * @param count - its days [day], whole
 * @returns litres by day of the record [L]
 * @law the same calendar days ask the same litres in every year
 * @definition ours: growth never runs along the past record
 * @example
 * demandOnDays_L(new Float64Array(365).fill(5), 0, 2) // → Float64Array.of(5, 5)
 */
export function demandOnDays_L(byDay_L: Float64Array, firstDay: DayIndex, count: number): Float64Array {
  const asked_L = new Float64Array(count);
  const first = byDay_L[0]!;
  if (byDay_L.every((litres) => litres === first)) return asked_L.fill(first);
  const days = daysOfPlainYear(firstDay, count);
  for (let i = 0; i < count; i++) asked_L[i] = byDay_L[days[i]! - 1]!;
  return asked_L;
}
