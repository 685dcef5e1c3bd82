import { conditionFields, conditionTests, countedBys, kitRoundings } from '@eavewell/engine';
import { choice, from, id, quantity, required, text, whole } from './columns.ts';
import { defineTable } from './table.ts';

const ofPart = (field: string) => ({ fields: [field], table: 'parts', tableFields: ['partId'] }) as const;

export const kitRules = defineTable({
  name: 'kitRules',
  about: 'Which parts a site needs for what there is of it: so many of a part for each gutter, tank, tap and so on.',
  key: ['ruleId'],
  foreignKeys: [ofPart('partId')],
  usedBy: ['Kit'],
  optional: true,
  columns: {
    ruleId: required(id('The id of the rule.')),
    partId: required(id('The part that is needed.')),
    countedBy: required(choice(countedBys, 'What it is counted by.')),
    each_count: required(
      quantity('count', 'How many for each of these; of a part sold by the metre, metres.', { hard: from(0, 100000) }),
    ),
    rounding: choice(kitRoundings, 'How a count that is not whole becomes one.', 'up'),
    spare_fraction: quantity('fraction', 'Spares that go along, as a share.', {
      hard: from(0, 10),
      usual: from(0, 0.5),
    }),
    leastSpare_count: whole('count', 'No fewer spares than this, where any of it is needed.', {
      hard: from(0, 100000),
    }),
  },
});

export const kitConditions = defineTable({
  name: 'kitConditions',
  about: 'Where a rule of the kit holds: all rows of one rule must be met. A rule without rows always holds.',
  key: ['ruleId', 'field', 'test', 'value'],
  foreignKeys: [{ fields: ['ruleId'], table: 'kitRules', tableFields: ['ruleId'] }],
  usedBy: ['Kit'],
  optional: true,
  columns: {
    ruleId: required(id('The rule.')),
    field: required(choice(conditionFields, 'What is looked at.')),
    test: required(choice(conditionTests, 'How it is compared.')),
    value: required(text('With what: a number, yes or no, or one of the words of that column.')),
  },
});

export const keptApart = defineTable({
  name: 'keptApart',
  about: 'Parts that never travel in one load, beside chlorine and fuel, which never do.',
  key: ['partId', 'otherPartId'],
  foreignKeys: [ofPart('partId'), ofPart('otherPartId')],
  usedBy: ['Kit'],
  optional: true,
  columns: {
    partId: required(id('The one part.')),
    otherPartId: required(id('The other.')),
  },
});
