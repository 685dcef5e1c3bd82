import { type JudgedRain, type RainRecord, unknownDay, type WaterYear } from '../../kernel/index.ts';
import { wetDayFrom_mm } from './constants.ts';
import { longestDryRunByYear } from './longestDryRunByYear.ts';

/** The rain of one year; null where a day of it is not known. */
export interface YearFacts {
  readonly rain_mm: number | null;
  /** Days of 1 mm or more. */
  readonly wetDays: number | null;
}

/**
 * How much rain and how many wet days had each year? Filled and made-up days count as they are.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param years - the years, as offsets into the record
 * @returns rain [mm] and days of 1 mm or more [day] of each year, in their order; null where a day is unknown
 * @source etccdi, total rain and days of 1 mm or more; filled days are ours
 */
export function yearFacts(record: RainRecord, years: readonly Pick<WaterYear, 'from' | 'to'>[]): readonly YearFacts[] {
  return years.map(({ from, to }) => {
    let [sum_mm, wet] = [0, 0];
    for (let day = from; day < to; day++) {
      if (record.state[day] === unknownDay) return { rain_mm: null, wetDays: null };
      sum_mm += record.rain_mm[day]!;
      if (record.rain_mm[day]! >= wetDayFrom_mm) wet++;
    }
    return { rain_mm: sum_mm, wetDays: wet };
  });
}

/** What the judged years of some rain have in common, and how much they differ. */
export interface YearMoments {
  readonly meanRain_mm: number;
  /** Standard deviation of a year's rain; null for one year. */
  readonly sdRain_mm: number | null;
  readonly meanWetDays: number;
  /** Mean over the years of the longest run of days under 1 mm. */
  readonly meanLongestDryRun_days: number;
  readonly longestDryRun_days: number;
}

/**
 * What are the judged years of this rain like? To hold made-up rain beside a record.
 *
 * @param rain - rain ready for the balance
 * @returns mean and standard deviation of a year's rain [mm], wet days [day], mean and greatest longest dry run of a year [day]; runs are cut at the year's end
 * @definition ours; the deviation is that of a sample
 */
export function yearMoments(rain: JudgedRain): YearMoments {
  const judged = rain.years.filter((year) => year.judged);
  const facts = yearFacts(rain.record, judged);
  const runs = longestDryRunByYear(rain.record, judged, 'filledToo').map((run) => run ?? 0);
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const depths = facts.map(({ rain_mm }) => rain_mm ?? 0);
  const meanRain_mm = mean(depths);
  const squares = depths.reduce((sum, one) => sum + (one - meanRain_mm) ** 2, 0);
  return {
    meanRain_mm,
    sdRain_mm: depths.length < 2 ? null : Math.sqrt(squares / (depths.length - 1)),
    meanWetDays: mean(facts.map(({ wetDays }) => wetDays ?? 0)),
    meanLongestDryRun_days: mean(runs),
    longestDryRun_days: Math.max(...runs),
  };
}
