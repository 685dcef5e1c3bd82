import { fraction, from, id, monthDay, required, text } from './columns.ts';
import { defineTable } from './table.ts';

export const presence = defineTable({
  name: 'presence',
  about:
    'Calendars of who is there when: school terms, harvests, festivals. A site names one in sites.csv, and several may share one. On days without a row everyone is there.',
  key: ['calendarId', 'from'],
  usedBy: ['Water'],
  optional: true,
  columns: {
    calendarId: required(id('The id of the calendar.')),
    from: required(monthDay('The first day of the period.')),
    to: required(monthDay('The last day of the period; before the first: the period runs over the year’s end.')),
    presentFraction: required(
      fraction('Share of the people who are there; over 1 where guests come.', {
        hard: from(0, 3),
        usual: from(0, 1.5),
      }),
    ),
    reason: text('Why, for people.'),
  },
});
