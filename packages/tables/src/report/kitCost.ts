import { costHeads } from '@eavewell/engine';
import { z } from 'zod';
import { day } from './parts.ts';

const known = z.number().nullable().describe('Null: not known.');

/** Why an amount is not known. */
const reason = z.enum([
  'noPart',
  'noPrice',
  'onlyLaterPrices',
  'rateMissing',
  'amountUnknown',
  'lifeUnknown',
  'countUnknown',
  'peopleUnknown',
  'interestUnknown',
  'notStated',
]);

const spread = z
  .strictObject({ p10: z.number(), p50: z.number(), p90: z.number() })
  .describe('The tenth, the middle and the ninetieth of a hundred throws.');

const head = z.strictObject({
  head: z.enum(costHeads),
  name: z.string(),
  perYear_amount: known.describe('Null where anything of it is not known.'),
  known_amount: z.number().describe('Of what is known.'),
  least_amount: z.number(),
  most_amount: z.number(),
  reasons: z.array(z.strictObject({ reason, said: z.string() })).describe('Why it is not known.'),
});

const yearly = z.strictObject({ perYear_amount: z.number(), served_people: known });

const swing = z
  .strictObject({
    inputId: z.string(),
    name: z.string(),
    low: yearly.describe('With this input at its low end, all others likely.'),
    high: yearly,
  })
  .describe('What one input alone moves.');

/** Whole-life cost: amounts in one currency at the prices of one day. */
export const wholeLifeCost = z.strictObject({
  finding: z.string().describe('In a few sentences.'),
  currency: z.string(),
  day: day.describe('Whose prices count.'),
  years_count: z.int(),
  heads: z.array(head).describe('They add up to what is known a year.'),
  isAtLeast: z.boolean().describe('Something is not known, so that every sum is at least so much.'),
  total_amount: z.number().describe('In all years, without interest.'),
  presentValue_amount: known,
  perYear_amount: z.number(),
  perYearSpread_amount: spread,
  served_people: known.describe('With working service, in the mean of the years.'),
  perPersonYear_amount: known,
  perPersonYearSpread_amount: spread.nullable(),
  design_people: known,
  perDesignPerson_amount: known,
  swings: z.array(swing).describe('The widest first.'),
});

const beside = z.strictObject({
  perPersonYear_amount: known,
  missing: z.array(z.string()).describe('What is not stated or cannot be; empty where there is a cost.'),
});

/** What the whole programme costs, and what stands beside it. */
export const programmeCost = z.strictObject({
  all: wholeLifeCost.nullable().describe('Of every site that has a cost; null where none has.'),
  ofServed: wholeLifeCost.nullable().describe('Of the sites whose people with working service are known.'),
  sites_count: z.int(),
  unknown_count: z.int().describe('Sites without a cost: they are in no sum.'),
  ofServed_count: z.int(),
  boughtWater: beside,
  boiling: beside,
  pipedScheme: beside,
});

/** Whole-life cost, as the report has it. */
export type WholeLifeCostReport = z.infer<typeof wholeLifeCost>;
export type ProgrammeCostReport = z.infer<typeof programmeCost>;
