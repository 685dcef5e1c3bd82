import { cupReasons, germBands, pathogens, samplePoints } from '@eavewell/engine';
import { z } from 'zod';
import { day, verdict } from './parts.ts';
import { cupSaid, unusableTest } from './safety.ts';

/** What a list of the whole programme tells of the cup of one site. */
export const siteCup = z
  .strictObject({
    verdict,
    mayDrink: z
      .enum(['yes', 'notShown', 'no'])
      .describe(
        'no: a sample after hand-over held E. coli, or treatment is known not to be enough. notShown: nothing proves it.',
      ),
    because: z.enum(cupReasons).describe('The first reason for it.'),
    ...cupSaid,
    unusable: z.array(unusableTest).describe('Samples that cannot be used as they were written down.'),
    worst: z
      .strictObject({
        pathogen: z.enum(pathogens),
        sourceName: z.string().nullable().describe('What that second source is called.'),
        secondSourceId: z
          .string()
          .nullable()
          .describe('The second source among its waters; null: water of roofs alone.'),
        sourceDays_per_year: z
          .number()
          .nullable()
          .describe('Days on which the second source is drunk; null where its water is taken as drunk every day.'),
        DALY_per_person_per_year: z.number(),
        DALYHigh_per_person_per_year: z.number(),
      })
      .nullable()
      .describe('The germ that does most harm; null where no risk could be worked.'),
    target_DALY_per_person_per_year: z.number(),
    last: z
      .strictObject({
        takenOn: day,
        point: z.enum(samplePoints),
        sign: z.enum(['less', 'equal', 'more']).nullable(),
        count_per_100mL: z.number().nullable(),
        band: z.enum(germBands).nullable(),
      })
      .nullable()
      .describe(
        'The last sample of tap or container that counts; null where there is none. No band is told as low of water that must not be drunk.',
      ),
    clean_count: z.int().describe('Samples without E. coli in a row since hand-over.'),
    setsUndated_count: z.int().describe('Sets of cartridges whose day cannot be told.'),
    sets: z
      .array(z.strictObject({ serial: z.string(), early: day, middle: day, late: day }))
      .describe(
        'When each set of cartridges is due, the soonest first: tenth, middle and ninetieth of a hundred futures.',
      ),
  })
  .meta({ id: 'siteCup' });

export type SiteCup = z.infer<typeof siteCup>;
