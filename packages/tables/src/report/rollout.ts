import { z } from 'zod';
import { day, problem } from './parts.ts';
import { drinking, futures, howSure } from './rolloutFutures.ts';

/** Counts up when a reader written for the last form would no longer understand the document. */
export const rolloutSchemaVersion = 1;

const known = z.number().nullable().describe('Null: not known.');
const people = z.int();

const leg = z.strictObject({
  from: z.string().describe('Id of a place or site.'),
  to: z.string(),
  leaves: day.nullable().describe('Null: not told apart from the next leg.'),
  arrives: day.nullable(),
  hours_h: z.number(),
  stretches: z.array(
    z.strictObject({
      wayId: z.string(),
      from: z.string(),
      to: z.string(),
      mode: z.enum(['road', 'river', 'foot']),
      carrierId: z.string().nullable(),
      hours_h: z.number(),
      changeOver_h: z.number().describe('Spent before it on changing carriers.'),
    }),
  ),
  limit_kg: known.describe('The most that passes in one go; null: no limit.'),
  limitBy: z
    .strictObject({
      wayId: z.string(),
      way: z.string().describe('Its name, or its ends.'),
      mode: z.enum(['road', 'river', 'foot']),
      carrierId: z.string().nullable().describe('Null: porters.'),
      isOfWay: z.boolean().describe('The way itself states the limit; else it is that of what carries there.'),
    })
    .nullable()
    .describe('Where the limit comes from: the first way that lets no more pass; null: no limit.'),
  porters_count: z.number(),
  said: z.string(),
});

const stop = z.strictObject({
  siteId: z.string(),
  name: z.string(),
  people,
  arrives: day,
  starts: day,
  handOver: day,
  served: day
    .nullable()
    .describe(
      'The first day of service, if all goes as likely; null: when its tank fills after the hand-over is not known.',
    ),
  futures: futures.nullable().describe('First days of service of the futures drawn.'),
  isKitInPart: z.boolean().describe('Something of its kit could not be counted: its load is at least as told.'),
  isUnweighed: z.boolean().describe('A part of its kit has no mass: its load is at least as told.'),
  isUntreated: z.boolean().describe('No treatment unit is entered for it: its water is not shown to be fit to drink.'),
});

const trip = z.strictObject({
  tripId: z.string(),
  leaves: day,
  back: day,
  nights_count: z.int(),
  waitsFor: z.enum(['nothing', 'stock', 'way', 'carrier', 'notBefore', 'haul']),
  waited_days: z.number(),
  kg: z.number().describe('Parts, without fuel.'),
  loaded_kg: z.number().describe('Parts and fuel, what is known of them: what is held against the limit.'),
  litres: z.number(),
  cost: z.number(),
  fuel_L: z.number(),
  isLocked: z.boolean(),
  stops: z.array(stop),
  legs: z.array(leg),
  aboard: z
    .array(
      z.strictObject({
        siteId: z.string(),
        partId: z.string(),
        name: z.string(),
        count: z.number().describe('Pieces.'),
        each_count: z.number().describe('So many of the part are in one piece.'),
        mass_kg: known.describe('Of all of them.'),
        danger: z.enum(['chlorine', 'fuel']).nullable().describe('What never goes in one load.'),
      }),
    )
    .describe('In the order it is put in: for the last stop first.'),
  cautions: z
    .array(z.strictObject({ name: z.string(), said: z.string() }))
    .describe('What is told whenever its load is told; more of them where a leg goes on a river.'),
  said: z.string(),
});

const crew = z.strictObject({ crewId: z.string(), name: z.string(), trips: z.array(trip) });

/** Goods of a trip are brought from the store that fills its own. */
const haul = z.strictObject({
  haulId: z.string(),
  store: z.string(),
  from: z.string(),
  carrierId: z.string().nullable(),
  by: z.string().nullable().describe('What it is brought by, by name; null: nobody says.'),
  leaves: day,
  arrives: day.describe('The last of it is there.'),
  back: day.nullable().describe('Null: not within the days looked at.'),
  trips_count: z.int().describe('So often it goes there and back.'),
  kg: z.number().describe('Goods of all of them.'),
  fuel_L: z.number().describe('Of all of them, there and back.'),
  fuel_kg: z.number(),
  loaded_kg: z.number().describe('Goods and fuel of all of them.'),
  limit_kg: known.describe('Of one of them; null: no limit.'),
  left_kg: known.describe('What all of them take, less goods and fuel; below 0: over the limit; null: no limit.'),
  forTrip: z.string(),
  runs: z
    .array(
      z.strictObject({
        leaves: day,
        arrives: day,
        returns: day.nullable().describe('It leaves for home; null: it does not come back within the days looked at.'),
        back: day.nullable(),
      }),
    )
    .describe('Each of them, in the order they go.'),
});

const crewId = z.string().nullable();
const perhapsDay = day.nullable();

/** The plan a search went on from. `before` is what would come of it where nothing is changed. */
const replanned = z.strictObject({
  planId: z.string(),
  name: z.string(),
  done_count: z.int().describe('Trips that are back.'),
  underWay: z.array(z.strictObject({ tripId: z.string(), crewId: z.string(), back: day })),
  toGo_count: z.int().describe('Trips of it still to go.'),
  locked_count: z.int().describe('Of these, trips that stay as they are.'),
  overdue: z
    .array(z.string())
    .describe('Trips that should have left, or be back, and nobody has entered that they did.'),
  dropped: z
    .array(
      z.strictObject({ tripId: z.string(), siteId: z.string(), name: z.string(), reason: crewId, said: z.string() }),
    )
    .describe('Stops of it that are not planned any more.'),
  notPlaced: z.array(z.strictObject({ siteId: z.string(), name: z.string() })).describe('Sites it had no trip for.'),
  moved_count: z.int().describe('Sites of it that would be handed over on another day than was worked out last.'),
  later_count: z.int().describe('Of these, on a later day.'),
  said: z.array(z.string()),
  waiting_personDays: z.number().describe('After less before.'),
  finish_days: z.number(),
  cost: z.number(),
  fuel_L: z.number(),
  sites: z
    .array(
      z.strictObject({
        ...{ siteId: z.string(), name: z.string(), people, crewBefore: crewId, crewAfter: crewId },
        servedBefore: perhapsDay.describe('First day of service; null: not within the days looked at.'),
        servedAfter: perhapsDay,
        later_days: known.describe('Below 0: sooner; null where one of the two is not within the days looked at.'),
      }),
    )
    .describe('Sites with another first day of service or another crew, those with most person-days first.'),
  trips: z
    .array(
      z.strictObject({
        ...{ tripId: z.string(), kind: z.enum(['new', 'gone', 'moved']), crewBefore: crewId, crewAfter: crewId },
        ...{ leavesBefore: perhapsDay, leavesAfter: perhapsDay },
        hasOtherStops: z.boolean(),
        said: z.string(),
      }),
    )
    .describe('Trips to another day, by another crew or to other sites.'),
});

/** What `eavewell rollout --json` writes. */
export const rolloutReport = z
  .strictObject({
    eavewell: z.string().describe('Version of the program.'),
    schema: z.literal(rolloutSchemaVersion),
    programme: z.string(),
    day: day.describe('It was asked on.'),
    from: day.describe('The first day planned.'),
    seed: z.int(),
    tries_count: z.int(),
    currency: z.string().nullable(),
    sites_count: z.int().describe('Sites that are planned.'),
    people_count: z.int(),
    replanned: replanned.nullable().describe('Null where no kept plan is gone on from.'),
    leftOut: z.array(
      z.strictObject({
        siteId: z.string(),
        name: z.string(),
        people: people.nullable(),
        reason: z.string(),
        said: z.string(),
      }),
    ),
    finish: z.strictObject({
      likely: day.describe('The last hand-over, if all goes as likely.'),
      futures: futures.nullable(),
      ...howSure,
    }),
    drinking: drinking
      .extend({
        said: z.string().describe('Empty: no trip serves a site.'),
        provisos: z.array(z.string()).describe('Of which sites it says too much.'),
      })
      .describe('When all of its sites drink.'),
    waiting: z.strictObject({
      personDays: z.number().describe('People times days from the first day planned to the first day of service.'),
      weighted: z.number().describe('The same with priorities.'),
      mean_days: z.number().describe('For a person.'),
      longest: z.strictObject({ siteId: z.string(), name: z.string(), days: z.int() }).nullable(),
      byArea: z.array(z.strictObject({ area: z.string().nullable(), people, mean_days: z.number() })),
      bound: z
        .strictObject({
          name: z.string(),
          weighted: z.number(),
          gap_fraction: z.number().describe('How much more waiting than the best possible, at the most.'),
          said: z.string(),
          all: z.array(z.strictObject({ name: z.string(), weighted: z.number() })),
        })
        .nullable(),
    }),
    cost: z.number(),
    isCostAtLeast: z.boolean().describe('Something that costs is not known, and left out.'),
    fuel_L: z.number(),
    served: z.array(z.strictObject({ day, people })).describe('People who drink from a day on, if all goes as likely.'),
    servedByWeek: z
      .array(z.strictObject({ until: day, p10: people, p50: people, p90: people }))
      .describe('People who drink by the end of a week, of futures drawn; empty where none were.'),
    moneyByMonth: z.array(z.strictObject({ month: z.string(), amount: z.number() })),
    crews: z.array(crew),
    places: z.array(z.strictObject({ id: z.string(), name: z.string() })).describe('Names of the places of the ways.'),
    hauls: z.array(haul).describe('By the day they leave.'),
    stock: z.array(
      z.strictObject({
        store: z.string(),
        partId: z.string(),
        name: z.string(),
        points: z.array(z.strictObject({ day, in_count: z.number(), out_count: z.number(), left_count: z.number() })),
      }),
    ),
    broken: z.array(z.strictObject({ kind: z.string(), said: z.string() })),
    compared: z
      .array(
        z.strictObject({
          kind: z.enum(['asIs', 'crews', 'carriers', 'forwardStore', 'newStore']),
          of: z.string().nullable().describe('The carrier, or the place of the store.'),
          by_count: z.int().describe('So many more, or fewer.'),
          crewId: z.string().nullable().describe('The crew that loads at a store that is not there yet; else null.'),
          otherCrewId: z.string().nullable().describe('A second crew that loads there too; else null.'),
          setUp_amount: z
            .number()
            .nullable()
            .describe('What making that store costs, counted in the cost; null: not known, or no such store.'),
          crews_count: z.int(),
          leftOut_count: z.int().describe('Sites that no trip serves; they wait to the last day looked at.'),
          finish: day,
          weighted: z.number(),
          cost: z.number(),
          isBeaten: z
            .boolean()
            .describe('Another of these has no more waiting and costs no more, and less of one of them.'),
          said: z.string(),
        }),
      )
      .nullable()
      .describe('Null unless asked for.'),
    problems: z.array(problem),
  })
  .describe(
    'What eavewell rollout --json writes. The unit is the last part of a name; amounts are of the currency of the programme; null is "not known", never 0.',
  );

export type RolloutReport = z.infer<typeof rolloutReport>;
export type RolloutTripReport = z.infer<typeof trip>;
export type RolloutHaulReport = z.infer<typeof haul>;
export type RolloutLegReport = z.infer<typeof leg>;

/**
 * The JSON Schema of the report of the rollout, as docs/rollout.schema.json holds it.
 *
 * @returns JSON Schema, draft 2020-12 [text]
 * @definition ours
 */
export function rolloutSchemaText(): string {
  const schema = z.toJSONSchema(rolloutReport, { target: 'draft-2020-12', io: 'output' });
  return `${JSON.stringify({ title: 'Eavewell rollout', ...schema }, null, 2)}\n`;
}
