import { measured, type StorageSeries, type WaterYear } from '../../kernel/index.ts';

/** Dry days of the judged years, and those of them whose own rain was not measured. */
export interface FilledDryDays {
  readonly dryDays: number;
  readonly filledDryDays: number;
}

/**
 * How much do a site's dry days rest on rain that nobody measured?
 *
 * @param series - the site's daily series
 * @param years - the years, as offsets into the series
 * @returns dry days of the judged years [day], and how many of them have filled rain [day]
 * @law the filled ones are never more than all
 * @definition ours
 */
export function filledDryDays(
  series: Pick<StorageSeries, 'dry' | 'state'>,
  years: readonly Pick<WaterYear, 'from' | 'to' | 'judged'>[],
): FilledDryDays {
  let dryDays = 0;
  let filled = 0;
  for (const { from, to, judged } of years) {
    if (!judged) continue;
    for (let day = from; day < to; day++) {
      if (series.dry[day] !== 1) continue;
      dryDays++;
      if (series.state[day] !== measured) filled++;
    }
  }
  return { dryDays, filledDryDays: filled };
}
