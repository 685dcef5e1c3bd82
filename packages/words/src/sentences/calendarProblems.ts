import type { TableProblemCode } from '@eavewell/tables';
import { quoted, type Sentences, says, saysOrMeant } from './telling.ts';

/** Classes of site, calendars of presence and days of the year. */
export const calendarSentences = {
  'link.unknown_calendar': (t) => saysOrMeant(t, 'link.unknown_calendar', { value: quoted(t) }),
  'link.unknown_second_source': (t) => saysOrMeant(t, 'link.unknown_second_source', { value: quoted(t) }),
  'link.unknown_near_source': (t) => saysOrMeant(t, 'link.unknown_near_source', { value: quoted(t) }),
  'link.near_source_in_use': (t) => says(t, 'link.near_source_in_use', { value: quoted(t) }),
  'link.periods_overlap': (t) => says(t, 'link.periods_overlap', { other: t.text('other'), value: quoted(t) }),
  'link.class_unused': (t) => saysOrMeant(t, 'link.class_unused', { value: quoted(t) }),
  'cell.not_a_month_day': (t) => saysOrMeant(t, 'cell.not_a_month_day', { value: quoted(t) }),
  'cell.not_weekdays': (t) => saysOrMeant(t, 'cell.not_weekdays', { value: quoted(t) }),
  'cell.not_months': (t) => says(t, 'cell.not_months', { value: quoted(t) }),
} satisfies Partial<Sentences<TableProblemCode>>;
