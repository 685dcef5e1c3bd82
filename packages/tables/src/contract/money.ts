import { costHeads, costPers } from '@eavewell/engine';
import { above, choice, currency, date, from, id, quantity, required, text } from './columns.ts';
import { defineTable } from './table.ts';

const day = (about: string) => date(about, '1950-01-01', '2150-12-31');

export const rates = defineTable({
  name: 'rates',
  about: "What other currencies were worth in the programme's, each with its day and who says so.",
  key: ['currency', 'day'],
  usedBy: ['Kit'],
  optional: true,
  columns: {
    currency: required(currency('The other currency.')),
    day: required(day('The day of the rate.')),
    perUnit: required(
      quantity('currency', "How much of the programme's currency one unit of it is worth.", { hard: above(0, 1e12) }),
    ),
    source: text('Who says so.'),
  },
});

export const redenominations = defineTable({
  name: 'redenominations',
  about: 'Days on which a currency dropped zeros or was given another name.',
  key: ['currency', 'day'],
  usedBy: ['Kit'],
  optional: true,
  columns: {
    currency: required(currency('The old currency.')),
    newCurrency: required(currency('The new one; it may have the same letters.')),
    day: required(day('The first day of the new one.')),
    factor: required(quantity('number', 'How many old units make one new.', { hard: above(0, 1e12) })),
    source: text('Who says so.'),
  },
});

export const costs = defineTable({
  name: 'costs',
  about: 'What is spent beside parts: carrying, wages, training, visits, upkeep.',
  key: ['costId'],
  foreignKeys: [{ fields: ['siteId'], table: 'sites', tableFields: ['siteId'] }],
  usedBy: ['Kit'],
  optional: true,
  columns: {
    costId: required(id('The id of the cost.')),
    siteId: id('The site it is of.', 'each site'),
    head: required(choice(costHeads, 'The head it comes under.')),
    what: required(text('What it is for.')),
    amount: required(quantity('currency', 'How much, most likely.', { hard: from(0, 1e12) })),
    low: quantity('currency', 'How little it may be.', { hard: from(0, 1e12) }),
    high: quantity('currency', 'How much it may be.', { hard: from(0, 1e12) }),
    currency: required(currency('The currency.')),
    priceDate: required(day('The day it was stated.')),
    per: required(choice(costPers, 'What it is paid for: once a site, once a year, once a person, a person a year.')),
    life_years: quantity('year', 'For how long it serves, where it is paid once.', {
      hard: above(0, 200),
      usual: from(1, 50),
    }),
    source: text('Who says so.'),
  },
});
