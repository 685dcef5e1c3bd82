import type { AppLanguage } from '@eavewell/words/app';
import type { SiteReport } from './siteFigures.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/**
 * What can the record not tell? Made up, filled, few years, from other places: said beside the verdict, and what it leaves
 * unseen in any case.
 *
 * @param report - the site as judged, with its working
 * @param words - the language of the page
 * @returns sentences; none where the site has no rain that could be judged
 */
export function recordSaid({ working, storages }: Pick<SiteReport, 'working' | 'storages'>, words: Words) {
  const { say, numbers } = words;
  const lineOf = (code: string) => working.find((line) => line.code === code);
  const years = lineOf('rain.years');
  const judged = storages[0]?.judgedYears;
  if (years === undefined || judged === undefined) return [];
  const given = (name: string) => years.inputs.find((input) => input.name === name)?.value;
  const whole = Number(given('wholeYears') ?? judged);
  if (lineOf('rain.made') !== undefined) return [say('water.record_made', { years: judged })];
  const filled = Number(lineOf('rain.filled')?.value ?? 0);
  const near = working.filter((line) => line.code === 'rain.byDistance').length;
  return [
    say('water.record_years', {
      years: judged,
      from: String(given('firstDay') ?? '').slice(0, 4),
      to: String(given('lastDay') ?? '').slice(0, 4),
    }),
    ...(near > 0 ? [say('water.record_near', { gauges: near })] : []),
    ...(whole > judged ? [say('water.record_left_out', { years: whole - judged })] : []),
    ...(filled > 0 ? [say('water.record_filled', { days: numbers.quantity(filled, 'day') })] : []),
    say('water.record_unseen', { judged, years: numbers.given(evenChance_years(judged), '') }),
  ];
}

/**
 * How rare is a drought that a record of so many years holds as likely as not, years not leaning on each other? (1 − 1/T)^n = ½.
 */
function evenChance_years(judgedYears: number): number {
  return Math.round(1 / (1 - 0.5 ** (1 / judgedYears)));
}
