import { z } from 'zod';
import { day, problem } from './parts.ts';
import { rolloutReport } from './rollout.ts';
import { candidate, proviso } from './rolloutCandidate.ts';
import { drinking } from './rolloutFutures.ts';

const { shape } = rolloutReport;
const aTrip = shape.crews.element.shape.trips.element.shape;
const aStop = aTrip.stops.element.shape;
const perhapsDay = day.nullable();

/** A kept plan, as a list of them has it. */
export const planListed = z.strictObject({
  planId: z.string(),
  name: z.string(),
  from: perhapsDay,
  isInForce: z.boolean(),
  timedAt: z.string().nullable(),
  note: z.string().nullable(),
  trips_count: z.int(),
  sites_count: z.int(),
});

const stop = z.strictObject({
  ...aStop,
  arrives: perhapsDay.describe('Null of a trip that left: what happened is known by day alone.'),
  starts: perhapsDay,
  handOver: perhapsDay.describe('Of a trip that left the day that was entered, or none yet.'),
  served: perhapsDay,
  kept: perhapsDay.describe('The hand-over as it was when the plan was worked out last; null: never.'),
  isHandedOver: z.boolean(),
  isWayUp: z.boolean().describe('False: the site is not done in this trip; what is broken says why.'),
});

const ofPlanned = z.number().nullable().describe('Null: of a trip that left, it is not worked out any more.');

const tripOfSheet = z.strictObject({
  tripId: z.string(),
  state: z.enum(['done', 'underWay', 'planned']),
  order: z.number(),
  notBefore: perhapsDay,
  isLocked: z.boolean(),
  leaves: day,
  back: day,
  nights_count: z.int(),
  waitsFor: aTrip.waitsFor,
  waited_days: z.number(),
  ...{ kg: ofPlanned, loaded_kg: ofPlanned, litres: ofPlanned, cost: ofPlanned, fuel_L: ofPlanned },
  stops: z.array(stop),
  legs: z.array(
    z.strictObject({
      from: z.string(),
      to: z.string(),
      leaves: perhapsDay,
      arrives: perhapsDay,
      hours_h: z.number(),
      wayIds: z.array(z.string()),
    }),
  ),
  broken: z.array(z.strictObject({ kind: z.string(), siteId: z.string().nullable(), said: z.string() })),
  isTight: z.boolean().describe('A few days later a way it goes is closed, or a site is handed over too late.'),
  tightSaid: z.string().nullable(),
  overdueSaid: z
    .string()
    .nullable()
    .describe('When it should have left, and when it can; null where it is not overdue, or has left.'),
  isOverdue: z.boolean().describe('It should have left, or be back, by today, and nobody has entered that it did.'),
  said: z.string(),
});

const crewOfSheet = z.strictObject({
  crewId: z.string(),
  name: z.string(),
  people: z.int(),
  base: z.string(),
  store: z.string(),
  goesBy: z.string().describe('What it travels by, in words.'),
  from: perhapsDay.describe('The first day it is free for a trip of this plan.'),
  trips: z.array(tripOfSheet).describe('In the order they go: those that left first.'),
});

/** A way, or ways that close together, under which the crews' weeks hang. */
const strip = z.strictObject({
  stripId: z.string(),
  name: z.string(),
  mode: z.enum(['road', 'river', 'foot']),
  wayIds: z.array(z.string()),
  spans: z
    .array(
      z.strictObject({
        from: day,
        to: day,
        isToGuessed: z.boolean().describe('It opens after the last day if a guess is right: nobody knows the day.'),
        kind: z.enum(['closed', 'slower', 'tooLow', 'tooHigh']),
        said: z.string(),
      }),
    )
    .describe('Days on which the plan does not go it, or goes it slower; both days included. Past ones too.'),
  weeks: z
    .array(z.strictObject({ from: day, closed_fraction: z.number() }))
    .describe('Share of the years of the gauge in which that week was closed; empty where no level was read.'),
});

/** What the page of the rollout shows of one plan. */
export const rolloutSheet = z
  .strictObject({
    programme: z.string(),
    version: z.int().describe('Of the facts it was made from.'),
    stamp: z.string().describe('Of the facts and the day: what is asked by it is of the same state.'),
    day: day.describe('Today.'),
    from: day.describe('The first day that is planned anew: today, or the start of the plan.'),
    until: day.describe('The last day that is drawn.'),
    currency: z.string().nullable(),
    plans: z.array(planListed),
    planId: z
      .string()
      .nullable()
      .describe('The plan that is shown: the one asked for, else in force, else the newest; null: there is none.'),
    changedSince: z
      .strictObject({
        at: z.string(),
        changes: z
          .array(z.strictObject({ at: z.string(), by: z.string(), said: z.string() }))
          .describe('The newest first, a few.'),
        changes_count: z.int(),
        moved_count: z.int().describe('Sites whose hand-over is another day than when it was worked out last.'),
        later_count: z.int(),
        later: z
          .array(
            z.strictObject({
              siteId: z.string(),
              name: z.string(),
              people: z.int().nullable(),
              was: day,
              now: perhapsDay.describe('Null: it is not handed over within the days looked at, or in no trip.'),
              later_days: z.int().nullable(),
              why: z.string().nullable().describe('Why it is in no trip any more; null: it is in one.'),
            }),
          )
          .describe('Sites handed over later than worked out: first those in no trip, then those none serves.'),
        said: z.string(),
      })
      .nullable()
      .describe('What changed in the tables since the days of the plan were worked out last; null: nothing.'),
    sentence: z.string().describe('When all drink, as likely as not and nine times in ten.'),
    rest: z.string().describe('How far from the best plan possible, and what else is worth one line.'),
    provisos: z.array(proviso).describe('Sites of which the sentence says nothing or too much: the gravest first.'),
    sites_count: z.int(),
    people_count: z.int(),
    finish: drinking.nullable().describe('When all of its sites drink.'),
    futures: z.enum(['none', 'beingDrawn', 'there']),
    waiting: shape.waiting.nullable(),
    cost: z.number(),
    isCostAtLeast: z.boolean(),
    fuel_L: z.number(),
    served: shape.served,
    servedBefore_people: z
      .int()
      .describe('People who drink already, but for those whom trips of this plan handed over: they are in `served`.'),
    servedByWeek: shape.servedByWeek,
    moneyByMonth: shape.moneyByMonth,
    crews: z.array(crewOfSheet),
    crewsLeftOut: z.array(z.string()),
    strips: z.array(strip),
    hauls: shape.hauls,
    stock: shape.stock,
    places: z.array(
      z.strictObject({
        placeId: z.string(),
        name: z.string(),
        kind: z.string().nullable(),
        latitude_deg: z.number().nullable(),
        longitude_deg: z.number().nullable(),
      }),
    ),
    ways: z.array(
      z.strictObject({
        wayId: z.string(),
        name: z.string().nullable(),
        mode: z.enum(['road', 'river', 'foot']),
        from: z.string(),
        to: z.string(),
        line_deg: z.array(z.array(z.number())).nullable().describe('Longitude and latitude; null: straight.'),
      }),
    ),
    candidates: z.array(candidate).describe('Every site that is not handed over: planned or not, and why.'),
    broken: z.array(
      z.strictObject({
        kind: z.string(),
        tripId: z.string().nullable(),
        siteId: z.string().nullable(),
        said: z.string(),
      }),
    ),
    problems: z.array(problem),
  })
  .describe(
    'What the page of the rollout shows of one plan. The unit is the last part of a name; null is "not known", never 0.',
  );

export type RolloutSheet = z.infer<typeof rolloutSheet>;
export type SheetTrip = z.infer<typeof tripOfSheet>;
export type SheetStop = z.infer<typeof stop>;
export type SheetCrew = z.infer<typeof crewOfSheet>;
export type SheetStrip = z.infer<typeof strip>;
export type SheetCandidate = z.infer<typeof candidate>;

const carrier = z.strictObject({
  carrierId: z.string(),
  name: z.string(),
  mode: z.string(),
  limit_kg: z.number().nullable(),
  leastFreeboard_m: z.number().nullable(),
  freeboard_m: z.number().nullable().describe('At its limit.'),
  freeboardEmpty_m: z.number().nullable().describe('With its crew and nothing else aboard.'),
  length_m: z.number().nullable(),
  limitSetBy: z.string().nullable(),
});

/** One trip in full: the manifest, the legs, what is aboard, cautions. */
export const rolloutTrip = z.strictObject({
  stamp: z.string(),
  programme: z.string(),
  planId: z.string(),
  ...{ plan: z.string(), isInForce: z.boolean() },
  crew: crewOfSheet.omit({ trips: true }),
  ...{ trip: tripOfSheet, legs: aTrip.legs },
  aboard: z
    .array(
      z.strictObject({
        ...aTrip.aboard.element.shape,
        longest_m: z.number().nullable(),
        lift_people: z.int().nullable().describe('People it takes to lift one; null: its mass is not known.'),
        isPresumed: z
          .boolean()
          .describe('Nobody states a stock or an arrival of it: it is planned as if it lay there.'),
      }),
    )
    .describe('In the order it is put in: for the last stop first.'),
  carriers: z.array(carrier),
  hauls: z
    .array(
      z.strictObject({
        ...shape.hauls.element.shape,
        carrier: carrier.nullable(),
        legs: aTrip.legs.describe('Each run there and back, in the order they are gone.'),
      }),
    )
    .describe('What is brought to its store for it before it leaves.'),
  places: z
    .array(z.strictObject({ placeId: z.string(), name: z.string() }))
    .describe('Names of the places and sites its legs go by.'),
  crew_kg: z.number().nullable().describe('The people of the crew with what they carry; null: not known.'),
  fuel_kg: z.number().nullable(),
  cautions: aTrip.cautions,
  days: z
    .array(
      z.strictObject({
        day,
        said: z.array(z.string()).describe('What the crew does that day, in order.'),
        sleeps: z.string().nullable().describe('Where it spends the night; null: at its base.'),
        night: z.string().optional().describe('What is said of a night that is spent at no place.'),
        isAfloat: z.boolean().optional().describe('Is a way by river gone that day? Left out: not known.'),
        isRest: z.boolean().optional().describe('Does the crew rest that day? Left out: it works, or nobody knows.'),
        siteIds: z.array(z.string()),
      }),
    )
    .describe('The itinerary, day by day.'),
});
export type RolloutTripAnswer = z.infer<typeof rolloutTrip>;
