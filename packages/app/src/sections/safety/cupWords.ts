import { type AppLanguage, type AppMessageKey, roundedDown, sourceOfRisk, waterOfRisk } from '@eavewell/words/app';
import type { components } from '../../api/apiTypes.ts';
import { type Cup, drinkOf, monthsTo, type SafetyTally, type SiteOfSafety } from './cups.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** A figure that is known so roughly is told by two of its digits. */
export const twoDigits = (value: number): number => Number(value.toPrecision(2));

/** The one sentence: at how many sites people must not drink, at how many nothing proves that they may, and the rest. */
export function tallyWords(
  { all, drink }: SafetyTally,
  { say }: Words,
): { readonly first: string; readonly rest: string } {
  const { no, notShown, yes, notJudged } = drink;
  const parts = [
    ...(no === 0 ? [] : [say('safety.tally_no', { count: no, all })]),
    ...(notShown === 0 ? [] : [say('safety.tally_notShown', { count: notShown, all })]),
    ...(yes === 0 ? [] : [say('safety.tally_yes', { count: yes, all })]),
    ...(notJudged < all ? [] : [say('safety.tally_notJudged', { count: notJudged, all })]),
  ];
  const [first = say('safety.tally_none'), ...rest] = parts;
  return { first, rest: rest.join(' ') };
}

type SafetyReport = NonNullable<components['schemas']['site']['safety']>;

/** Why it may be said on the page of a site: the short reason first, the others after it. Beside a tap nobody is told of tables and rows. */
export function reasonsOfReport(
  safety: SafetyReport,
  words: Words,
  on: 'screen' | 'paper' = 'screen',
): readonly [first: string, ...others: string[]] {
  const { risks, waterTests, reasons } = safety;
  const [worst] = risks;
  const of = (because: Cup['because'], notes: Cup['notes']) => {
    const cup = {
      ...safety,
      ...{ because, notes, sets: [], setsUndated_count: 0, unusable: waterTests.unusable },
      ...{ last: waterTests.last, clean_count: waterTests.clean_count },
      worst: worst === undefined ? null : { ...worst, ...sourceOfRisk(worst, safety) },
    };
    return reasonWords({ isJudged: true, cup }, words, on);
  };
  const [first = 'unknown', ...others] = reasons;
  return [of(first, safety.notes), ...others.map((one) => of(one, []))];
}

/** Why it may be said: a sentence. */
export function reasonWords(
  site: Pick<SiteOfSafety, 'isJudged' | 'cup'>,
  words: Words,
  on: 'screen' | 'paper' = 'screen',
): string {
  const { say, numbers } = words;
  const { cup } = site;
  if (cup === null) return say(site.isJudged ? 'safety.because_notJudged' : 'safety.because_notYet');
  if (on === 'paper' && (cup.because === 'withheld' || cup.because === 'sampleUnusable'))
    return say(`safety.because_${cup.because}_paper`);
  const { because, worst, last, target_DALY_per_person_per_year: target } = cup;
  const risk = (value: number) => numbers.quantity(twoDigits(value * 1e6), '');
  const rows = [...new Set(cup.withheldBy.map((at) => placeWords(at, words)))];
  const said = say(`safety.because_${because}`, {
    found: last === null ? '' : countWords(last, words),
    pathogen: worst?.pathogen ?? 'none',
    ...waterOfRisk(worst ?? { secondSourceId: null, sourceName: null, sourceDays_per_year: null }, words),
    risk: worst === null ? '' : risk(worst.DALY_per_person_per_year),
    high: worst === null ? '' : risk(worst.DALYHigh_per_person_per_year),
    target: risk(target),
    clean: cup.clean_count,
    count: because === 'unitFailed' ? cup.failedUnits.length : rows.length,
    units: cup.failedUnits.join(', '),
    rows: rows.join('; '),
    samples: cup.unusable.map(({ testId, at }) => `${testId} (${placeWords(at, words)})`).join('; '),
  });
  const notes = cup.mayDrink === 'yes' ? cup.notes.map((note) => say(`safety.note_${note}`)) : [];
  return [said, ...notes].join(' ');
}

/** The table that a file of a programme holds. */
export const tableOf = (file: string): string => file.replace(/\.[^.]+$/, '');

/** Where a row stands that is to be mended: the table by the name it has in the forms. */
function placeWords({ file = '', row }: Cup['withheldBy'][number], { say }: Pick<Words, 'say'>): string {
  return say('safety.row_at', { file: tableWords(file, say), row: row === undefined ? 'none' : String(row) });
}

function tableWords(file: string, say: Words['say']): string {
  try {
    return say(`tableNames.${tableOf(file)}` as AppMessageKey);
  } catch {
    return file;
  }
}

type Counted = Pick<NonNullable<Cup['last']>, 'sign' | 'count_per_100mL'>;

/** What was counted: "fewer than 1 in 100 mL", "23 in 100 mL". A bound from below is rounded down. */
export function countWords(
  { sign, count_per_100mL: count }: Counted,
  { say, numbers }: Words,
  isUnread = false,
): string {
  if (sign === null || count === null) return say(isUnread ? 'safety.not_read' : 'safety.not_looked_for');
  const told = sign === 'more' ? roundedDown(count) : twoDigits(count);
  return say('safety.count', { sign, count: numbers.quantity(told, 'per_100mL') });
}

/** The last sample with its band, where and when; or that none was taken since hand-over. */
export function lastWords({ cup }: { readonly cup: Pick<Cup, 'last'> | null }, words: Words): string {
  const { say, numbers } = words;
  if (cup === null) return '';
  if (cup.last === null) return say('safety.no_sample');
  const { takenOn, point, band } = cup.last;
  return say('safety.last_sample', {
    found: countWords(cup.last, words),
    band: band === null ? '' : say(`safety.band_${band}`),
    point: say(`safety.point_${point}`),
    day: numbers.date(takenOn),
  });
}

/** Why a sample is to be taken: all reasons; nothing where none is wanted. */
export function needsWords({ cup }: Pick<SiteOfSafety, 'cup'>, { say }: Words): string {
  if (cup === null || cup.needsTest.length === 0) return '';
  return say('safety.needs', { needs: cup.needsTest.map((need) => say(`safety.needs_${need}`)).join('; ') });
}

/** The month of a day, with its year. */
export const monthWords = (day: string, { say, numbers }: Words): string =>
  say('safety.month_year', { month: numbers.quantity(Number(day.slice(5, 7)), 'month'), year: day.slice(0, 4) });

/** When a set is due, in months from today; one is overdue once half its futures have ended, as the engine has it. */
export function dueWords({ early, middle, late }: Cup['sets'][number], today: string, words: Words): string {
  const { say } = words;
  const [from, to] = [monthsTo(early, today), monthsTo(late, today)];
  if (middle < today) return say('safety.overdue_since', { since: monthWords(middle, words) });
  return from === to ? say('safety.due_about', { months: to }) : say('safety.due_between', { from, to });
}

/** What a row says first, to be read aloud. */
export const leadWords = (site: SiteOfSafety, { say }: Pick<Words, 'say'>): string =>
  say(`safety.drink_${drinkOf(site)}`);
