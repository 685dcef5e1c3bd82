import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

const quoted = (t: Told): string => `"${t.text('value')}"`;

/** "Did you mean …?" where there is a likely one, before the other advice. */
const meant = (t: Told, otherwise: string): string => {
  const likely = t.has('likely') ? t.text('likely') : '(empty)';
  return likely === '(empty)' ? otherwise : `Did you mean ${likely}? ${otherwise}`;
};

/** Classes of site, calendars of presence and days of the year. */
export const calendarSentences = {
  'link.unknown_calendar': (t) =>
    say(`There is no calendar ${quoted(t)}.`, meant(t, 'Correct the id, or add its periods to presence.csv.')),
  'link.unknown_second_source': (t) =>
    say(`There is no second source ${quoted(t)}.`, meant(t, 'Correct the id, or add it to secondSources.csv.')),
  'link.unknown_near_source': (t) =>
    say(
      `There is no second source ${quoted(t)} near by.`,
      meant(t, 'Correct the id, or add it to secondSources.csv. Until then it is not looked at among the remedies.'),
    ),
  'link.near_source_in_use': (t) =>
    say(
      `The source ${quoted(t)} is named as near by and as in use.`,
      'Leave nearSecondSource empty where people drink from it already. It is taken as in use.',
    ),
  'link.periods_overlap': (t) =>
    say(
      `The period overlaps with that of row ${t.text('other')} in the calendar ${quoted(t)}.`,
      'Correct the days, so that each day stands in one period. Until then its sites have no verdict.',
    ),
  'link.class_unused': (t) =>
    say(`No site is of the class ${quoted(t)}.`, meant(t, 'Its target was not used; write the class in sites.csv.')),
  'cell.not_a_month_day': (t) =>
    say(
      `${quoted(t)} is not a day of the year.`,
      meant(t, 'Write month-day, as 06-15. Spreadsheets make dates of such cells: set the column to text first.'),
    ),
  'cell.not_months': (t) =>
    say(
      `${quoted(t)} does not say which months.`,
      'Write them by number, as 6 to 9 or 6;7;8. Spreadsheets make a date of 6-9.',
    ),
} satisfies Partial<Readonly<Record<TableProblemCode, (told: Told) => ProblemSentence>>>;
