import { measured, type RainRecord, unknownDay, type WaterYear } from '../../kernel/index.ts';
import { wetDayFrom_mm } from './constants.ts';

/**
 * How long was the longest run of days under 1 mm in each year? Counted within the year; a run that crosses from one year
 * into the next is cut there.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param years - the years, as offsets into the record
 * @param counting - `measured`: a filled day leaves its year without a figure; `filledToo`: it counts as it was filled
 * @returns the longest run of each year [day], 0 or more, in the order of the years; null where a day was not measured, or not even filled
 * @source etccdi, consecutive dry days; the cut at the year's end is ours
 */
export function longestDryRunByYear(
  record: RainRecord,
  years: readonly Pick<WaterYear, 'from' | 'to'>[],
  counting: 'measured' | 'filledToo' = 'measured',
): readonly (number | null)[] {
  return years.map(({ from, to }) => {
    let run = 0;
    let longest = 0;
    for (let day = from; day < to; day++) {
      const state = record.state[day]!;
      if (state === unknownDay || (state !== measured && counting === 'measured')) return null;
      run = record.rain_mm[day]! < wetDayFrom_mm ? run + 1 : 0;
      if (run > longest) longest = run;
    }
    return longest;
  });
}
