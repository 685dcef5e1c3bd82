import { countedIns } from '@eavewell/engine';
import { z } from 'zod';
import { programmeCost, wholeLifeCost } from './kitCost.ts';
import { carrierLoads, kitsCarried, loadCounts, stowed } from './kitLoads.ts';
import { day, problem, workingLine } from './parts.ts';

/** Counts up when a reader written for the last form would no longer understand the document. */
export const kitSchemaVersion = 1;

const known = z.number().nullable().describe('Null: not known.');
const countedIn = z.enum(countedIns).describe('What its counts are in.');

const bar = z.strictObject({
  bars_count: z.int().describe('Bars that are cut alike.'),
  cuts: z.array(z.strictObject({ runId: z.string(), length_m: z.number() })),
  offcut_m: z.number().describe('What is left of each.'),
  said: z.string(),
});

const siteLine = z.strictObject({
  partId: z.string(),
  name: z.string(),
  kind: z.string(),
  countedIn,
  needed_count: known.describe('Before it is rounded.'),
  spare_count: known,
  total_count: known,
  isAtLeast: z.boolean().describe('There is more that nobody could count.'),
  from: z.enum(['rule', 'named']),
  ruleIds: z.array(z.string()),
  cuts: z
    .strictObject({
      bars_count: z.int(),
      leastBars_count: z.int().describe('No way takes fewer.'),
      joints_count: z.int(),
      bars: z.array(bar),
    })
    .nullable()
    .describe('How bars are cut; null where none are.'),
});

const site = z.strictObject({
  siteId: z.string(),
  name: z.string(),
  isBuilt: z.boolean().describe('It was handed over, and nothing is wanted.'),
  lines: z.array(siteLine),
  loadCounts: z.array(loadCounts).describe('By carrier.'),
  loads: z.array(carrierLoads).nullable().describe('Null unless the site or a carrier was asked for.'),
  cost: wholeLifeCost.nullable().describe('Over its whole life; null where no currency is stated.'),
  problems: z.array(problem),
  working: z.array(workingLine).nullable().describe('Null unless the site was asked for.'),
});

const line = z.strictObject({
  partId: z.string(),
  name: z.string(),
  kind: z.string(),
  countedIn,
  total_count: known,
  spare_count: known,
  isAtLeast: z.boolean().describe('There is more that nobody could count.'),
  sites_count: z.int().describe('Sites that take some.'),
  inStock_count: known,
  short_count: known.describe('Needed and not on hand.'),
  packSize_count: z.number(),
  packs_count: known.describe('Whole packs that cover what is short.'),
  bought_count: known.describe('Pieces in them.'),
  supplier: z.string().nullable(),
  orderBy: day.nullable().describe('The last day to order.'),
  isLate: z.boolean().nullable(),
  late_days: known,
  price: z.strictObject({ amount: z.number(), currency: z.string() }).nullable().describe('Of one.'),
  noPrice: z.string().nullable().describe('Why there is no price, in words.'),
  amount: known.describe('Of all that is bought, in the currency of its price.'),
});

const order = z.strictObject({
  supplier: z.string().nullable().describe('Null: nobody says who sells these.'),
  partIds: z.array(z.string()),
  sums: z.array(z.strictObject({ currency: z.string(), amount: z.number() })),
  unpriced: z.array(z.string()).describe('Parts whose amount is not known: the sums are at least so much.'),
  orderBy: day.nullable(),
});

const trip = z.strictObject({
  stops: z.array(z.string()).describe('Sites in the order they are come to.'),
  carriers: z.array(
    z.strictObject({
      loads: carrierLoads,
      stowed: z
        .array(stowed)
        .describe(
          'What it can take in the order it is put in, in each load: for the last stop first, what is fragile last.',
        ),
    }),
  ),
});

/** What `eavewell kit --json` writes. */
export const kitReport = z
  .strictObject({
    eavewell: z.string().describe('Version of the program.'),
    schema: z.literal(kitSchemaVersion),
    programme: z.string(),
    day: day.describe('It was asked on.'),
    neededOn: day.nullable(),
    asked: z.strictObject({ sites: z.array(z.string()).nullable(), carrier: z.string().nullable() }),
    rules_count: z.int().describe('Rules of the kit; 0: only what the design names is counted.'),
    built_count: z.int().describe('Sites that are handed over.'),
    lines: z.array(line).describe('Parts of all these sites together.'),
    suppliers: z.array(order),
    kitsCarried: z.array(kitsCarried),
    trip: trip.nullable().describe('Null unless several sites were asked for.'),
    sites: z.array(site),
    cost: programmeCost,
    problems: z.array(problem).describe('Of rules, orders, prices and rates.'),
  })
  .describe(
    'What eavewell kit --json writes. The unit is the last part of a name; an amount is of the currency beside it; null is "not known", never 0.',
  );

export type KitReport = z.infer<typeof kitReport>;
export type SiteKitReport = z.infer<typeof site>;
export type SiteKitLineReport = z.infer<typeof siteLine>;
export type KitLineReport = z.infer<typeof line>;

/**
 * The JSON Schema of the report of kits, as docs/kit.schema.json holds it.
 *
 * @returns JSON Schema, draft 2020-12 [text]
 * @definition ours
 */
export function kitSchemaText(): string {
  const schema = z.toJSONSchema(kitReport, { target: 'draft-2020-12', io: 'output' });
  return `${JSON.stringify({ title: 'Eavewell kit', ...schema }, null, 2)}\n`;
}
