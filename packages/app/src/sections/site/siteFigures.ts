import type { AppLanguage } from '@eavewell/words/app';
import type { components } from '../../api/apiTypes.ts';

export type SiteReport = components['schemas']['site'];
type Storage = SiteReport['storages'][number];
type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** One figure of a station: value, likely range, target, and the line of the working that it opens. */
export interface Figure {
  readonly code: string;
  /** The gutter, the roof, the tank it is of, where a working has a line for each. */
  readonly of?: string;
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

/** What names the line of a working that a figure opens: its code, and whose it is. */
export const workingOf = ({ code, of }: Pick<Figure, 'code' | 'of'>): string =>
  of === undefined ? code : `${code} ${of}`;

/**
 * Which line of a working is meant?
 *
 * @param lines - the working
 * @param opened - as `workingOf` names it
 * @returns its place; that of the first line of its code where none is of that part; -1 where there is none
 */
export function lineMeant(lines: readonly SiteReport['working'][number][], opened: string): number {
  const [code = '', ...rest] = opened.split(' ');
  const of = rest.join(' ');
  const exact = lines.findIndex((line) => line.code === code && line.inputs.some(({ value }) => String(value) === of));
  return exact >= 0 ? exact : lines.findIndex((line) => line.code === code);
}
