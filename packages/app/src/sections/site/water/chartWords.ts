import type { CurveWords, MonthsWords, RasterWords, TraceWords, YearsWords } from '@eavewell/drawing';
import type { AppLanguage } from '@eavewell/words/app';

/** The words of all charts, in the language of the page. */
export interface ChartWords {
  readonly trace: TraceWords;
  readonly raster: RasterWords;
  readonly curve: CurveWords;
  readonly years: YearsWords;
  readonly months: MonthsWords;
}

/** The name of a month, 1 to 12, in the language of the page. */
export function monthName(
  { say, code }: Pick<AppLanguage, 'say' | 'code'>,
  month: number,
  style: 'long' | 'short' | 'narrow',
): string {
  const form = new Intl.DateTimeFormat(code, { month: style, timeZone: 'UTC' });
  return say('water.month', { name: form.format(new Date(Date.UTC(2001, month - 1, 1))) });
}

/**
 * The words the charts are lettered with.
 *
 * @param language - the language of the page
 */
// long: a list of words
export function chartWords(language: Pick<AppLanguage, 'say' | 'numbers' | 'code'>): ChartWords {
  const { say, numbers } = language;
  const { litres, days, date } = numbers;
  const count = (value: number) => numbers.fixed(value, 0);
  const dayAt = (day: number, content_L: number, isDry: boolean) =>
    say(isDry ? 'water.day_dry' : 'water.day_level', { day: date(day), litres: litres(content_L) });
  const month = (one: number, isNarrow: boolean) => monthName(language, one, isNarrow ? 'narrow' : 'short');
  const doubts = {
    filled: say('water.days_filled'),
    unknown: say('water.days_unknown'),
    made: say('water.days_made'),
  };
  return {
    trace: {
      litres,
      empty: say('water.empty'),
      days,
      from: (day) => say('water.from_day', { day: date(day) }),
      runsOver: (limit) => say('water.runs_over', { days: days(limit) }),
      year: String,
      month: (one, year) => (year === null ? month(one, false) : `${month(one, false)} ${year}`),
      notJudged: say('water.not_judged'),
      ...doubts,
      rain: (most_mm) => say('water.rain_strip', { most: numbers.quantity(most_mm, 'mm') }),
      day: dayAt,
    },
    raster: {
      year: String,
      month,
      days,
      longestRun: (isNarrow) => say(isNarrow ? 'water.longest_run_narrow' : 'water.longest_run'),
      dry: say('water.dry'),
      low: say('water.low'),
      full: say('water.full'),
      ...doubts,
      thinRows: say('water.thin_rows'),
      day: dayAt,
    },
    curve: {
      dryDays: say('water.dry_days_a_year'),
      goodYears: (years, limit) => say('water.years_without_run', { years, days: days(limit) }),
      goodYearsNarrow: (years) => say('water.years_good_narrow', { years }),
      daysTarget: (value) => say('water.target_days', { days: numbers.fixed(value, 1) }),
      yearsTarget: (good, all) => say('water.target_years', { years: numbers.ofYears(good, all) }),
      daysAt: (value) => numbers.quantity(value, 'day'),
      yearsAt: (good) => numbers.years(good),
      count,
      size: count,
      litres,
      toHold: (value) => say('water.to_hold', { litres: numbers.tankLitres(value) }),
      axis: say('water.size_axis'),
      beyond: (value) =>
        Number.isFinite(value) ? say('water.beyond', { litres: numbers.tankLitres(value) }) : say('water.no_tank'),
      pointsOnly: say('water.points_only'),
      at: (value, dryDays, good) =>
        [
          litres(value),
          dryDays === null ? null : numbers.dryDaysAYear(dryDays),
          good === null ? null : say('water.years_good', { years: numbers.years(good) }),
        ]
          .filter((one) => one !== null)
          .join(', '),
    },
    years: {
      year: String,
      count,
      days,
      head: say('water.dry_days_of_year'),
      key: (limit, hasOthers) => say(hasOthers ? 'water.years_key_both' : 'water.years_key', { days: days(limit) }),
      target: (value) => say('water.target_days', { days: numbers.fixed(value, 1) }),
      mean: (value) => say('water.mean_days', { days: numbers.fixed(value, 1) }),
      likely: (low, high) => numbers.likely({ low, high }),
      coming: say('water.coming_years'),
      yearAt: (year, dry, run, isJudged) =>
        say(isJudged ? 'water.year_at' : 'water.year_at_not_judged', {
          year: String(year),
          days: days(dry),
          run: days(run),
        }),
    },
    months: {
      month,
      flow: (flow) => say(`water.flow_${flow}`),
      litres,
      ofYear: (_, value) => say('water.flow_of_year', { litres: litres(value) }),
      range: say('water.months_range'),
      at: (one, year, value) =>
        say('water.month_at', { month: monthName(language, one, 'long'), year: String(year), litres: litres(value) }),
    },
  };
}
