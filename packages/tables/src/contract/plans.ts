import { date, from, id, quantity, required, text, whole, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

const [firstDay, lastDay] = ['1950-01-01', '2150-12-31'] as const;

export const plans = defineTable({
  name: 'plans',
  about: 'Plans of the rollout that are kept: who goes where, in which order. One of them is in force.',
  key: ['planId'],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    planId: required(id('The id of the plan.')),
    name: required(text('What the plan is called.')),
    from: date('The first day it plans.', firstDay, lastDay),
    isInForce: yesNo('Is it the plan that is followed?', 'no'),
    timedAt: text('When its days were worked out last: an instant of ISO 8601, in UTC.'),
    note: text('What is to be known of it.'),
  },
});

export const planTrips = defineTable({
  name: 'planTrips',
  about: 'The trips of kept plans. Who leaves when follows from the order; what happened is entered and never moves.',
  key: ['planId', 'tripId'],
  foreignKeys: [
    { fields: ['planId'], table: 'plans', tableFields: ['planId'] },
    { fields: ['crewId'], table: 'crews', tableFields: ['crewId'] },
  ],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    planId: required(id('The plan.')),
    tripId: required(id('The id of the trip in its plan.')),
    crewId: required(id('The crew that goes.')),
    order: required(
      quantity('count', 'Its place among the trips of its crew: the least goes first.', { hard: from(-1e6, 1e6) }),
    ),
    notBefore: date('It leaves no earlier than this day.', firstDay, lastDay),
    isLocked: yesNo('Is it left as it is when the plan is made anew?', 'no'),
    leaves: date('The day it leaves, as worked out last.', firstDay, lastDay),
    back: date('The day it is back, as worked out last.', firstDay, lastDay),
    leftOn: date('The day it left: entered, once it has.', firstDay, lastDay),
    backOn: date('The day it came back: entered, once it has.', firstDay, lastDay),
  },
});

export const planStops = defineTable({
  name: 'planStops',
  about: 'The sites of the trips of kept plans: each site once in a plan.',
  key: ['planId', 'siteId'],
  foreignKeys: [
    { fields: ['planId'], table: 'plans', tableFields: ['planId'] },
    { fields: ['siteId'], table: 'sites', tableFields: ['siteId'] },
    { fields: ['planId', 'tripId'], table: 'planTrips', tableFields: ['planId', 'tripId'] },
  ],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    planId: required(id('The plan.')),
    siteId: required(id('The site.')),
    tripId: required(id('The trip that goes there.')),
    order: required(quantity('count', 'Its place in the trip: the least comes first.', { hard: from(-1e6, 1e6) })),
    handOver: date('The day it is handed over, as worked out last.', firstDay, lastDay),
  },
});

export const carriersAway = defineTable({
  name: 'carriersAway',
  about: 'Carriers that are broken, lent or laid up: for those days they go with nobody.',
  key: ['awayId'],
  foreignKeys: [{ fields: ['carrierId'], table: 'carriers', tableFields: ['carrierId'] }],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    awayId: required(id('The id of the absence.')),
    carrierId: required(id('The carrier.')),
    count: whole('count', 'How many of them.', { hard: from(1, 1e6), emptyMeans: '1' }),
    from: required(date('The first day without.', firstDay, lastDay)),
    to: date('The last day without.', firstDay, lastDay),
    reason: text('Why, for people.'),
  },
});
