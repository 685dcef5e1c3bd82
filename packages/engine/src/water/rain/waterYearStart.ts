import { calendarDay, type DayIndex, dayIndexOf, type RainRecord } from '../../kernel/index.ts';
import { type DrySpell, drySpells } from './drySpells.ts';

/** The whole water years of a record that start in one month: the first and the last boundary, as day indexes. */
export interface WholeYears {
  readonly firstYear: number;
  readonly years: number;
}

/**
 * How many whole years starting in this month does a record hold?
 *
 * @param record - the record's first day [day] and its days
 * @param month - the month the year starts in [month], 1 to 12
 * @returns firstYear: calendar year [year] the first of them starts in; years: how many [year], 0 or more
 * @definition ours: a whole water year has its first and its last day in the record
 */
export function wholeWaterYears(record: Pick<RainRecord, 'firstDay' | 'rain_mm'>, month: number): WholeYears {
  const end = record.firstDay + record.rain_mm.length;
  const begins = calendarDay(record.firstDay).year;
  const firstYear = dayIndexOf(begins, month, 1) >= record.firstDay ? begins : begins + 1;
  const ends = calendarDay(end).year;
  const lastYear = dayIndexOf(ends, month, 1) <= end ? ends : ends - 1;
  return { firstYear, years: Math.max(0, lastYear - firstYear) };
}

/**
 * In which month should the water year start? The one that least splits dry spells: over the first days of the month
 * inside the record, the mean length of the dry spell that holds both that day and the day before. A month without one
 * whole year does not stand; of the others none has more than one whole year less than another. Ties go to more whole
 * years, then to the month nearest January.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @returns the month [month], 1 to 12; 1 where the record holds no whole year
 * @law depends on the record only
 * @definition ours
 */
export function waterYearStart(record: RainRecord): number {
  const spells = drySpells(record);
  const months = Array.from({ length: 12 }, (_, i) => {
    const month = i + 1;
    const { years } = wholeWaterYears(record, month);
    return { month, years, split_days: meanSplit(record, spells, month), fromJanuary: Math.min(i, 12 - i) };
  });
  const standing = months.filter(({ years }) => years > 0);
  standing.sort(
    (a, b) => a.split_days - b.split_days || b.years - a.years || a.fromJanuary - b.fromJanuary || a.month - b.month,
  );
  return standing[0]?.month ?? 1;
}

/** Mean length of the spells cut by the month's first days inside the record [day]; 0 where none is inside. */
function meanSplit(record: RainRecord, spells: readonly DrySpell[], month: number): number {
  const lastDay = record.firstDay + record.rain_mm.length - 1;
  let year = calendarDay(record.firstDay + 1).year;
  let boundary: DayIndex = dayIndexOf(year, month, 1);
  let boundaries = 0;
  let split_days = 0;
  let next = 0;
  for (; boundary <= lastDay; boundary = dayIndexOf(++year, month, 1)) {
    if (boundary <= record.firstDay) continue;
    boundaries++;
    while (next < spells.length && spells[next]!.to < boundary) next++;
    const spell = spells[next];
    if (spell && spell.from < boundary) split_days += spell.days;
  }
  return boundaries === 0 ? 0 : split_days / boundaries;
}
