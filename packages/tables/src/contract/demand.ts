import { from, id, months, quantity, required, yesNo } from './columns.ts';
import { defineTable } from './table.ts';

export const demand = defineTable({
  name: 'demand',
  about:
    'Water wanted, by purpose. Rows without a siteId are the whole programme’s and serve every site that has no row of its own.',
  key: ['siteId', 'purpose'],
  foreignKeys: [{ fields: ['siteId'], table: 'sites', tableFields: ['siteId'] }],
  usedBy: ['Water'],
  optional: true,
  columns: {
    siteId: id('The site that wants it.', 'the whole programme'),
    purpose: required(id('What the water is for.')),
    litres_per_person_per_day: required(
      quantity('L/person/day', 'Litres wanted for one person on one day.', {
        hard: from(0, 500),
        usual: from(0.5, 60),
      }),
    ),
    judged: required(yesNo('Is this purpose served first, and does it decide the verdict?')),
    months: months('The months it is wanted in, by number: 6 to 9, or 6;7;8.', 'every month'),
  },
});
