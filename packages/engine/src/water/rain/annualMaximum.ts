import { measured, type RainRecord, type WaterYear } from '../../kernel/index.ts';

/**
 * What was the most rain in one day of each year?
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param years - the years, as offsets into the record
 * @returns the largest day's rain of each year [mm], 0 or more, in the order of the years; null where a day was not measured
 * @source etccdi, maximum 1-day rain; null for an incomplete year is ours
 */
export function annualMaximum_mm(
  record: RainRecord,
  years: readonly Pick<WaterYear, 'from' | 'to'>[],
): readonly (number | null)[] {
  return years.map(({ from, to }) => {
    let most = 0;
    for (let day = from; day < to; day++) {
      if (record.state[day] !== measured) return null;
      if (record.rain_mm[day]! > most) most = record.rain_mm[day]!;
    }
    return most;
  });
}
