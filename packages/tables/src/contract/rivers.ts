import { date, from, id, quantity, required } from './columns.ts';
import { defineTable } from './table.ts';

export const riverLevels = defineTable({
  name: 'riverLevels',
  about: 'What gauges in rivers read, day by day. Five years or more tell in which weeks a river is open.',
  key: ['riverGaugeId', 'day'],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    riverGaugeId: required(id('The gauge.')),
    day: required(date('The day it was read.', '1850-01-01', '2150-12-31')),
    level_m: required(quantity('m', 'The level, in metres above the zero of the gauge.', { hard: from(-100, 9000) })),
  },
});

export const wayLevels = defineTable({
  name: 'wayLevels',
  about: 'Between which levels of its river a carrier goes a way.',
  key: ['wayId', 'carrierId'],
  foreignKeys: [
    { fields: ['wayId'], table: 'ways', tableFields: ['wayId'] },
    { fields: ['carrierId'], table: 'carriers', tableFields: ['carrierId'] },
  ],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    wayId: required(id('The way.')),
    carrierId: required(id('The carrier.')),
    least_m: quantity('m', 'Below this level it does not go.', { hard: from(-100, 9000), emptyMeans: 'never too low' }),
    greatest_m: quantity('m', 'Above this level it does not go.', {
      hard: from(-100, 9000),
      emptyMeans: 'never too high',
    }),
  },
});
