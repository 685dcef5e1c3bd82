import { rolloutComparison, rolloutSheet, rolloutTrip, rolloutWorking } from '@eavewell/tables';
import { z } from 'zod';
import { programmeId } from './schemaParts.ts';

const planId = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/);

export const sheetAnswer = rolloutSheet;
export const tripAnswer = rolloutTrip;
export const comparisonAnswer = rolloutComparison;
export const workingAnswer = rolloutWorking;

/** Which plan; left out: the one in force, else the newest. */
export const planAsked = z.strictObject({ plan: planId.optional() });
export const tripAsked = programmeId.extend({ tripId: planId });
export const crewAsked = programmeId.extend({ crewId: planId });
/** Which figure; `drinks` and `why` need a site, `area` has none for sites of none, `stock` needs a store, a part and a day, `differs` what and a plan beside. */
export const workingAsked = planAsked.extend({
  figure: z.enum(['finish', 'drinks', 'why', 'waiting', 'bound', 'cost', 'stock', 'area', 'differs']),
  beside: planId.optional().describe('A plan it is set beside: both are timed from what has happened of that one.'),
  area: z.string().max(200).optional(),
  differs: z.enum(['finish', 'waiting', 'cost', 'fuel', 'trips']).optional(),
  site: z.string().max(200).optional(),
  store: z.string().max(200).optional(),
  part: z.string().max(200).optional(),
  day: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .optional(),
});
export const plansAsked = z.strictObject({ a: planId, b: planId });

/** What a search for a plan is asked. */
export const searchAsked = z.strictObject({
  by: z.string().min(1).max(200).describe('Who asks.'),
  from: planId
    .nullable()
    .describe('The plan to go on from: its trips that left and those that are locked stay. Null: from nothing.'),
  into: planId
    .nullable()
    .describe('The plan that is made anew in place, one step that can be taken back. Null: a plan beside the others.'),
  isHeld: z
    .boolean()
    .optional()
    .describe(
      'What is found in place of a plan is held until somebody keeps it or leaves it, and is gone on with where it is searched for again. Left out: it is kept at once.',
    ),
  name: z.string().min(1).max(200).nullable().describe('What a new plan is called; null: by the day and hour.'),
  seconds: z.number().min(0.2).max(600).describe('How long is searched [s].'),
  seed: z.int().min(0).max(4_294_967_295),
  onlyCrews: z
    .array(planId)
    .nullable()
    .describe('Only the trips of these crews may change: the others are taken as locked. Null: all.'),
  keepTrips: z
    .array(planId)
    .optional()
    .describe('Trips of the plan to go on from that stay as they are, as if they were locked. Left out: none.'),
});
export const searchBegun = z.strictObject({ taskId: z.string() });

/** How the search gets on: told as events of kind `rollout`, and asked for by who comes later. */
export const searchState = z.strictObject({
  taskId: z.string().nullable().describe('Null: none runs.'),
  done_fraction: z.number(),
  waiting: z.number().nullable(),
  bound: z.number().nullable(),
  gap_fraction: z.number().nullable(),
  planId: z.string().nullable().describe('The plan that was made last, once it is kept.'),
  problem: z.string().nullable().describe('Why none was made, in words.'),
  found: z
    .array(
      z.strictObject({
        into: z.string().describe('The plan it would take the place of.'),
        planId: z.string().describe('What it is asked by, side by side with that plan; it is in no table.'),
        by: z.string(),
        at: z.string().describe('When it was begun to be searched for.'),
        entered_count: z.int().describe('Changes since, of what a plan is reckoned from.'),
        isPlanChanged: z.boolean().describe('The plan itself was changed since: kept, it stands beside it.'),
      }),
    )
    .describe('Plans that were found and are not kept: they are looked at first.'),
});

/** A plan that was found, by the plan it would take the place of. */
export const foundAsked = programmeId.extend({ into: planId });
export const keepFoundAsked = z.strictObject({
  by: z.string().min(1).max(200).describe('Who keeps it.'),
  at: z.string().describe('When it was begun to be searched for: another one that was found since is not kept unseen.'),
});
export const foundKept = z.strictObject({
  planId: z.string().describe('The plan it is now.'),
  isInPlace: z.boolean().describe('False: the plan was changed meanwhile, and it stands beside it.'),
});

const packed = z.record(z.string(), z.unknown()).describe('As the evaluator of the page reads it.');

/** A plan as numbers. */
export const numbersAnswer = z.strictObject({
  stamp: z.string(),
  planId: z.string().nullable(),
  plan: z
    .strictObject({
      trips: z.array(
        z.array(z.strictObject({ stops: z.array(z.int()), notBefore: z.number(), isLocked: z.boolean() })),
      ),
    })
    .describe('Trips by crew, as the crews of the numbers; stops are places among its jobs.'),
  tripIds: z.array(z.array(z.string())),
  numbers: packed,
});
export const legsAnswer = z.strictObject({ stamp: z.string(), legs: packed });

/** Legs for the evaluator in the browser: of pairs of nodes, for one crew or more. */
export const legsAsked = z.strictObject({
  stamp: z.string(),
  pairs: z.array(z.strictObject({ travel: z.int().min(0), from: z.int().min(0), to: z.int().min(0) })).max(20_000),
});
