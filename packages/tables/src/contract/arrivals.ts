import { date, from, id, quantity, required } from './columns.ts';
import { defineTable } from './table.ts';

const late = { hard: from(0, 3660), usual: from(0, 180) };

export const arrivals = defineTable({
  name: 'arrivals',
  about:
    'Goods on their way to a store, and by how much they may be late. What is there already is the stock of the table parts.',
  key: ['arrivalId'],
  foreignKeys: [
    { fields: ['store'], table: 'places', tableFields: ['placeId'] },
    { fields: ['partId'], table: 'parts', tableFields: ['partId'] },
  ],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    arrivalId: required(id('The id of the arrival.')),
    store: required(id('The place they come to.')),
    partId: required(id('The part.')),
    quantity: required(
      quantity('count', 'How many come; of a part sold by the metre, metres.', { hard: from(0, 1e9) }),
    ),
    dueOn: required(date('The day they are due.', '1950-01-01', '2150-12-31')),
    slipLow_days: quantity('day', 'Late by so much at the least.', { ...late, emptyMeans: 'as likely' }),
    slipLikely_days: quantity('day', 'Late by so much most likely.', { ...late, emptyMeans: '0' }),
    slipHigh_days: quantity('day', 'Late by so much at the most.', { ...late, emptyMeans: 'as likely' }),
  },
});
