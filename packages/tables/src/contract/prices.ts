import { currency, date, from, id, quantity, required } from './columns.ts';
import { defineTable } from './table.ts';

export const prices = defineTable({
  name: 'prices',
  about: 'What parts cost, each price with its day.',
  key: ['partId', 'priceDate'],
  foreignKeys: [{ fields: ['partId'], table: 'parts', tableFields: ['partId'] }],
  usedBy: ['Kit'],
  optional: true,
  columns: {
    partId: required(id('The part it is the price of.')),
    priceDate: required(date('The day the price was given.', '1950-01-01', '2150-12-31')),
    amount: required(quantity('currency', 'Price of one, in the currency beside it.', { hard: from(0, 1e12) })),
    currency: required(currency('The currency.')),
  },
});
