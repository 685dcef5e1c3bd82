import { type DayIndex, madeDay, type StorageSeries, type WaterYear } from '../kernel/index.ts';

/** What a dry year brings where nothing is changed: the worst judged year of the record. */
export interface LeaveIt {
  /** The tanks it is told of, where the site has several bodies of water; else null. */
  readonly tankIds: readonly string[] | null;
  readonly waterYear: number;
  readonly dryDays: number;
  /** Longest run of dry days that reaches into the year. */
  readonly longestRun_days: number;
  /** The first day of that run; null where no day is dry. On made-up rain no day of the calendar. */
  readonly longestRunFrom: DayIndex | null;
  /** Of how many judged years it is the worst, where the rain is made up and its years are none of the calendar; else null. */
  readonly ofMadeYears: number | null;
  /** Judged litres short in that year. */
  readonly shortfall_L: number;
}

/** A year at the present tank, as the storage finding has it. */
interface YearFound {
  readonly waterYear: number;
  readonly judged: boolean;
  readonly dryDays: number;
  readonly longestRun_days: number;
}

/**
 * What will a dry year bring if all is left as it is? The judged year with the most dry days; of equal ones that with the
 * longest run, then the later.
 *
 * @param years - the record's years at the present tank: dryDays [day], longestRun_days [day]
 * @param series - the present tank day by day from firstDay, judgedAsked_L, judgedTaken_L and secondSource_L [L], dry and state
 * @param rain - the gauge's water years
 * @param tankIds - the tanks it is told of [text]; null where the site has no others
 * @returns the year, its dry days [day], longest run [day], its first day, and judged litres short [L]; null where no year was judged
 * @definition litres short = asked − taken − from the second source, summed over the days of the year
 */
export function worstYear(
  years: readonly YearFound[],
  series: Pick<StorageSeries, 'firstDay' | 'judgedAsked_L' | 'judgedTaken_L' | 'secondSource_L' | 'dry' | 'state'>,
  rain: { readonly years: readonly WaterYear[] },
  tankIds: readonly string[] | null,
): LeaveIt | null {
  let worst = -1;
  for (const [index, year] of years.entries()) {
    if (!year.judged) continue;
    const before = years[worst];
    if (
      before === undefined ||
      year.dryDays > before.dryDays ||
      (year.dryDays === before.dryDays && year.longestRun_days >= before.longestRun_days)
    )
      worst = index;
  }
  const found = years[worst];
  const span = rain.years[worst];
  if (found === undefined || span === undefined) return null;
  let shortfall_L = 0;
  for (let day = span.from; day < span.to; day++)
    shortfall_L += series.judgedAsked_L[day]! - series.judgedTaken_L[day]! - series.secondSource_L[day]!;
  const { waterYear, dryDays, longestRun_days } = found;
  const from = runFrom(series.dry, span);
  const longestRunFrom = from === null ? null : series.firstDay + from;
  const isMade = series.state[span.from] === madeDay;
  const ofMadeYears = isMade ? years.filter((year) => year.judged).length : null;
  return { tankIds, waterYear, dryDays, longestRun_days, longestRunFrom, ofMadeYears, shortfall_L };
}

/** Where the longest run reached within the year begins, days before it included; of equal ones the first. */
function runFrom(dry: Uint8Array, { from, to }: WaterYear): number | null {
  let start = from;
  while (start > 0 && dry[start - 1] === 1) start--;
  let longest: { readonly from: number; readonly days: number } | null = null;
  for (let day = from; day < to; day++) {
    if (dry[day] === 0) start = day + 1;
    else if (longest === null || day + 1 - start > longest.days) longest = { from: start, days: day + 1 - start };
  }
  return longest?.from ?? null;
}
