import { z } from 'zod';
import { day, workingLine } from './parts.ts';
import { rolloutReport } from './rollout.ts';
import { planListed } from './rolloutSheet.ts';

const { shape } = rolloutReport;
const perhapsDay = day.nullable();

/** How a figure of a plan was reached. */
export const rolloutWorking = z.strictObject({
  stamp: z.string(),
  planId: z.string().nullable(),
  opens: z.string().describe('The code of the line that was asked for.'),
  said: z.array(z.string()).describe('Of why a village comes when it does: what it says in sentences; else none.'),
  working: z
    .array(workingLine)
    .describe('Days of the plan (`planDay`, `planTime`) are counted from its first; `said` has them by the calendar.'),
});
export type RolloutWorking = z.infer<typeof rolloutWorking>;

const known = z.number().nullable().describe('Null: not known.');
const tripGoes = z
  .strictObject({
    crew: z.string().describe('By name.'),
    leaves: perhapsDay.describe('Null: not within the days looked at.'),
    stops: z.array(z.string()).describe('Names of its sites, in their order.'),
  })
  .nullable()
  .describe('Null: it is not made.');

/** A plan that was found in place of another: what it changes of that one as it stands, before it is kept. */
const anew = z.strictObject({
  by: z.string().describe('Who asked for it.'),
  at: z.string().describe('When: of then are the tables it was found for.'),
  entered: z
    .array(z.strictObject({ at: z.string(), by: z.string(), said: z.string() }))
    .describe('What was entered since, the newest first, a few.'),
  entered_count: z.int(),
  isPlanChanged: z.boolean().describe('The plan itself was changed since: kept, what was found stands beside it.'),
  said: z.array(z.string()).describe('What happened did to waiting, end and money, and what the plan takes back.'),
  since: z
    .strictObject({
      waiting_personDays: z.number(),
      lastToldDay: perhapsDay.describe('The last hand-over that was told.'),
      cost: known.describe('Of the trips still to go, above what they cost before the changes.'),
      later_count: z.int(),
      sooner_count: z.int(),
      untold_count: z.int().describe('Sites of which no day was told: they are in no sum.'),
    })
    .describe('What happened did to the plan as it stands, against the days that were told.'),
  toldOtherwise: z
    .array(
      z.strictObject({
        ...{ siteId: z.string(), name: z.string(), people: z.int().nullable() },
        toldDay: perhapsDay.describe('The hand-over it was told; null: none within the days looked at.'),
        newDay: perhapsDay.describe(
          'Its hand-over under the plan that was found; null: none within the days looked at.',
        ),
        later_days: z.int().nullable().describe('Below 0: sooner; null: one of the days is none.'),
      }),
    )
    .describe(
      'Sites to be told another day than they were: later ones first, those of most people and days before others.',
    ),
  trips: z
    .array(
      z.strictObject({
        ...{ tripId: z.string(), kind: z.enum(['new', 'gone', 'moved']) },
        ...{ before: tripGoes, after: tripGoes },
        isSoon: z.boolean().describe('It leaves in the next days under one of the plans: people may be packing.'),
        said: z.string(),
      }),
    )
    .describe('Trips to another day, by another crew or to other sites: those that leave next first.'),
  broken: z
    .array(z.strictObject({ said: z.string(), isNew: z.boolean().describe('Not broken as the plan stands.') }))
    .describe('What does not hold under the plan that was found, what is new first.'),
});

/** Two plans side by side: what differs, for whom, what it costs. */
export const rolloutComparison = z.strictObject({
  people_count: z.int().describe('People of all sites that can be planned.'),
  servedA: shape.served,
  servedB: shape.served,
  anew: anew.nullable().describe('Null where both plans are kept.'),
  stamp: z.string(),
  a: planListed,
  b: planListed,
  said: z.array(z.string()).describe('The difference in sentences, the greatest first.'),
  finish_days: z.number().describe('b after a: above 0 later.'),
  waiting_personDays: z.number(),
  cost: z.number(),
  fuel_L: z.number(),
  trips_count: z.int(),
  sites: z.array(
    z.strictObject({
      siteId: z.string(),
      name: z.string(),
      people: z.int(),
      crewA: z.string().nullable(),
      crewB: z.string().nullable(),
      servedA: perhapsDay,
      servedB: perhapsDay,
      later_days: z.number().nullable(),
    }),
  ),
  byArea: z.array(
    z.strictObject({ area: z.string().nullable(), people: z.int(), meanA_days: z.number(), meanB_days: z.number() }),
  ),
});
export type RolloutComparison = z.infer<typeof rolloutComparison>;
