import { wearEnds } from '@eavewell/engine';
import { z } from 'zod';
import { day } from './parts.ts';

const spread = z
  .strictObject({ p10: z.number(), p50: z.number(), p90: z.number() })
  .describe('The tenth, the middle and the ninetieth of a hundred futures.');

const shares = Object.fromEntries(wearEnds.map((end) => [end, z.number()])) as Record<
  (typeof wearEnds)[number],
  z.ZodNumber
>;

/** When a set of cartridges is due. It has no verdict. */
export const wear = z
  .strictObject({
    serial: z.string().describe('Of the unit.'),
    partId: z.string().nullable(),
    finding: z.string().describe('In a few sentences.'),
    setSince: day.nullable().describe('The day the set was new; null where not known.'),
    unknownBy: z.string().nullable().describe('Why no date is given: the code of its problem; null where one is.'),
    endsOn: z
      .strictObject({ p10: day, p50: day, p90: day })
      .nullable()
      .describe('When it is due: the tenth, the middle and the ninetieth of a hundred futures.'),
    litres_L: spread.nullable().describe('Passed until then.'),
    passedSoFar_L: z.number().nullable().describe('In the middle future, until the day it is asked on.'),
    endsBy_fraction: z
      .strictObject(shares)
      .describe('Share of futures in which each comes first: rated litres, too little flow, age, failure at random.'),
    fouling_ratio: spread.describe('How fast its flow falls beside what its rating says: 1 as rated.'),
    readings_count: z.int(),
    futures_count: z.int(),
  })
  .meta({ id: 'wear' });
