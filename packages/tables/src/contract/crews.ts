import { above, currency, date, from, id, quantity, required, text, weekdays, whole, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

const [firstDay, lastDay] = ['1950-01-01', '2150-12-31'] as const;

export const crews = defineTable({
  name: 'crews',
  about: 'Who fits the systems: where a crew is based, when it works and what it can do.',
  key: ['crewId'],
  foreignKeys: [{ fields: ['store'], table: 'places', tableFields: ['placeId'] }],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    crewId: required(id('The id of the crew.')),
    name: required(text('What the crew is called.')),
    base: required(id('The place or site where it starts and to which it comes back.')),
    store: id('The store where it loads.', 'its base'),
    people: required(whole('count', 'How many people it is.', { hard: from(1, 500), usual: from(2, 15) })),
    skills: text('What it can do, as ids with a semicolon between: masonry;roofWork.'),
    calendarId: id('The calendar of its free days.', 'none'),
    restDays: weekdays('Days of the week on which it rests.', 'none'),
    work_h_per_day: quantity('h/day', 'Hours it works and travels on a day.', {
      hard: above(0, 24),
      usual: from(4, 12),
      emptyMeans: '8',
    }),
    mostDaysAway: whole('day', 'It is away no longer than this.', {
      hard: from(1, 366),
      usual: from(2, 40),
      emptyMeans: 'as long as it takes',
    }),
    maySleepAtSites: yesNo('May it sleep at the sites?', 'yes'),
    from: date('The first day it is there.', firstDay, lastDay),
    to: date('The last day it is there.', firstDay, lastDay),
    pace_factor: quantity('ratio', 'The same work takes it so many times the usual days.', {
      hard: above(0, 20),
      usual: from(0.5, 2),
      emptyMeans: '1',
    }),
    turnaround_days: whole('day', 'Working days at its base between two trips.', {
      hard: from(0, 366),
      usual: from(0, 10),
      emptyMeans: '0',
    }),
    cost_per_day: quantity('currency/day', 'What a day of the crew away from its base costs.', { hard: from(0, 1e9) }),
    currency: currency('The currency.'),
    priceDate: date('The day its cost was stated.', firstDay, lastDay),
    porters: whole('count', 'Porters it can hire at the most.', { hard: from(0, 1000), emptyMeans: '0' }),
  },
});

export const crewCarriers = defineTable({
  name: 'crewCarriers',
  about: 'With what a crew travels: a carrier for each kind of way it goes. Crews that name one carrier share it.',
  key: ['crewId', 'carrierId'],
  foreignKeys: [
    { fields: ['crewId'], table: 'crews', tableFields: ['crewId'] },
    { fields: ['carrierId'], table: 'carriers', tableFields: ['carrierId'] },
  ],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    crewId: required(id('The crew.')),
    carrierId: required(id('The carrier.')),
  },
});

export const workCalendars = defineTable({
  name: 'workCalendars',
  about: 'Days on which crews do not work, or work though they would rest: feasts, elections, harvests.',
  key: ['calendarId', 'from'],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    calendarId: required(id('The id of the calendar; a crew names one.')),
    from: required(date('The first day.', firstDay, lastDay)),
    to: required(date('The last day.', firstDay, lastDay)),
    works: required(yesNo('Is there work on these days?')),
    reason: text('Why, for people.'),
  },
});
