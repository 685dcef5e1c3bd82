import type { AppLanguage } from '@eavewell/words/app';
import type { components } from '../../api/apiTypes.ts';

export type SiteReport = components['schemas']['site'];
type Storage = SiteReport['storages'][number];
type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** One figure of a station: value, likely range, target, and the line of the working that it opens. */
export interface Figure {
  readonly code: string;
  readonly value: string;
  readonly likely: string;
  readonly target: string;
}

/** The figures by which a tank is judged. */
export function storageFigures(storage: Storage, target: SiteReport['target'], words: Words): readonly Figure[] {
  const { say, numbers } = words;
  const share = numbers.percent(target.daysMet_fraction);
  return [
    {
      code: 'storage.goodYears',
      value: say('site.good_years', { years: numbers.ofYears(storage.goodYears, storage.judgedYears) }),
      likely: numbers.likelyNextYears(storage.comingGood_years_range, storage.judgedYears),
      target: say('site.at_least', { amount: numbers.quantity(storage.goodYearsNeeded, 'count') }),
    },
    {
      code: 'storage.dryDays',
      value: numbers.dryDaysAYear(storage.dryDays_per_year),
      likely: numbers.likely(storage.dryDays_per_year_range),
      target: say('site.days_target', { share }),
    },
    {
      code: 'storage.goodYears',
      value: longestWords(storage.longestRun, words),
      likely: '',
      target: say('site.run_target', {
        days: numbers.days(target.longestDryRun_days),
        share: numbers.percent(target.goodYears_fraction),
      }),
    },
  ];
}

function longestWords(run: Storage['longestRun'], { say, numbers }: Words): string {
  if (run === null) return say('site.no_dry_run');
  return say('site.longest_from', { days: numbers.days(run.days), day: numbers.date(run.from) });
}

/** Where a problem stands, in words; nothing where it is of the site as a whole. */
export function placeWords(place: components['schemas']['problem']['place'], say: Words['say']): string {
  const { file, row, column } = place;
  if (file === undefined) return '';
  if (row === undefined) return file;
  return column === undefined
    ? say('site.problem_row', { file, row: String(row) })
    : say('site.problem_cell', { file, row: String(row), column });
}
