import { above, date, id, months, quantity, required, text, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

export const closures = defineTable({
  name: 'closures',
  about: 'When ways cannot be gone, or only slower: months of every year, or days from one date to another.',
  key: ['closureId'],
  foreignKeys: [{ fields: ['wayId'], table: 'ways', tableFields: ['wayId'] }],
  usedBy: ['Rollout'],
  optional: true,
  columns: {
    closureId: required(id('The id of the closure.')),
    wayId: id('The way it closes.', 'all ways of the area'),
    weatherArea: id('The area whose ways it closes.', 'the one way'),
    months: months('The months of every year, by number.', 'from one date to another'),
    from: date('The first day.', '1950-01-01', '2150-12-31'),
    to: date('The last day.', '1950-01-01', '2150-12-31'),
    isToGuessed: yesNo('Is the last day a guess, on which to look again?', 'no'),
    slower_factor: quantity('ratio', 'Hours take so many times as long.', {
      hard: above(0, 100),
      emptyMeans: 'closed',
    }),
    reason: text('Why, for people.'),
  },
});
