import { carrierModes, costHeads, countedBys, countedIns, loadCautions } from '@eavewell/engine';
import { designReport } from '@eavewell/tables';
import { z } from 'zod';
import { problem, version } from './schemaParts.ts';

const amount = z.number();
const perhaps = z.number().nullable();
const count = z.number();
const day = z.string().describe('Year-month-day.');
const spread = z.strictObject({ p10: amount, p50: amount, p90: amount });

/** What a page asks of the kit of a programme. */
export const kitAsked = z.strictObject({
  sites: z
    .string()
    .max(4000)
    .optional()
    .describe('The sites of a trip by their ids, in the order they are come to, with commas.'),
  neededOn: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .optional()
    .describe('The day all is needed on.'),
});
/** In which language a pack is to be. */
export const packAsked = z.strictObject({
  language: z
    .string()
    .regex(/^[A-Za-z-]{2,12}$/)
    .optional(),
});

const problems = z.array(problem);
const working = z.array(designReport.shape.sites.element.shape.working.element);

const yearly = z.strictObject({ perYear_amount: amount, served_people: perhaps, perPersonYear_amount: perhaps });
const cost = z.strictObject({
  currency: z.string(),
  day: day.describe('Prices are of this day.'),
  years_count: count,
  isAtLeast: z.boolean().describe('Something is not known, so that every sum is at least so much.'),
  heads: z.array(
    z.strictObject({
      head: z.enum(costHeads),
      perYear_amount: perhaps,
      known_amount: amount,
      least_amount: amount,
      most_amount: amount,
      reasons: z.array(z.string()),
    }),
  ),
  perYear_amount: amount,
  perYearSpread_amount: spread,
  total_amount: amount,
  presentValue_amount: perhaps,
  served_people: perhaps.describe('With working service, in the mean of the years.'),
  perPersonYear_amount: perhaps.describe('For each person and year of working service.'),
  perPersonYearSpread_amount: spread.nullable(),
  design_people: perhaps,
  perDesignPerson_amount: perhaps,
  swings: z.array(z.strictObject({ inputId: z.string(), what: z.string().nullable(), low: yearly, high: yearly })),
});
const besideOne = z.strictObject({ perPersonYear_amount: perhaps, missing: z.array(z.string()), working });
const beside = z.strictObject({ boughtWater: besideOne, boiling: besideOne, pipedScheme: besideOne });

const carrier = z.strictObject({
  carrierId: z.string(),
  name: z.string(),
  mode: z.enum(carrierModes),
  limit_kg: perhaps,
  longest_m: perhaps,
  freeboard_cm: perhaps,
  freeboardEmpty_cm: perhaps,
  leastFreeboard_cm: perhaps,
  limitSetBy: z.string().nullable(),
});

const pieces = z.strictObject({ partId: z.string(), name: z.string(), each_count: count, count });
const left = pieces.extend({ over_kg: perhaps, over_L: perhaps, over_m: perhaps });
const carried = z.strictObject({
  carrierId: z.string(),
  name: z.string(),
  mode: z.enum(carrierModes),
  limit_kg: perhaps.describe('Of a load of several pieces; null: nobody stated it, and there is no load.'),
  longest_m: perhaps,
  loads: z.array(
    z.strictObject({
      carriedBy: z.enum(['one', 'two', 'carrier']),
      mass_kg: amount,
      bulk_L: perhaps,
      longest_m: perhaps,
      isFragile: z.boolean(),
      pieces: z.array(pieces),
    }),
  ),
  leastLoads_count: perhaps,
  isLeast: z.boolean(),
  cannotCarry: z.array(left),
  noMass: z.array(pieces),
  cautions: z.array(z.enum(loadCautions)),
  problems,
});

const siteOfKits = z.strictObject({
  siteId: z.string(),
  name: z.string().nullable(),
  people: perhaps,
  isBuilt: z.boolean(),
  handOver: day.nullable(),
  parts_count: count,
  problems_count: count,
  mass_kg: amount,
  noMass_count: count.describe('Pieces whose mass nobody states: the mass is at least so much.'),
  loads: z.array(z.strictObject({ carrierId: z.string(), loads_count: perhaps, left_count: count })),
  kitsIn: z.array(z.strictObject({ carrierId: z.string(), kits_count: perhaps })),
  cost: z
    .strictObject({
      perPersonYear_amount: perhaps,
      spread_amount: z.strictObject({ p10: amount, p90: amount }).nullable(),
      perYear_amount: amount,
      isAtLeast: z.boolean(),
    })
    .nullable(),
});

/** The kit of a programme, or of a trip. */
export const programmeKitAnswer = z
  .strictObject({
    version,
    designVersion: version.nullable().describe('The design whose wear the costs take; null: none yet.'),
    currency: z.string().nullable(),
    pricesOn: day.nullable(),
    today: day,
    neededOn: day.nullable(),
    carriers: z.array(carrier),
    sites: z.array(siteOfKits),
    chosen: z.array(z.string()).nullable().describe('The sites of the trip; null: all.'),
    unknownSites: z.array(z.string()).describe('Asked for, and not there.'),
    sites_count: count,
    built_count: count,
    lines: z.array(
      z.strictObject({
        partId: z.string(),
        name: z.string(),
        kind: z.string(),
        countedIn: z.enum(countedIns),
        total_count: perhaps,
        spare_count: perhaps,
        isAtLeast: z.boolean(),
        inStock_count: perhaps,
        short_count: perhaps,
        packSize_count: count,
        packs_count: perhaps,
        bought_count: perhaps,
        supplier: z.string().nullable(),
        orderBy: day.nullable(),
        isLate: z.boolean().nullable(),
        late_days: perhaps,
        price: z.strictObject({ amount, currency: z.string() }).nullable(),
        reason: z.string().nullable(),
        amount: perhaps,
      }),
    ),
    suppliers: z.array(
      z.strictObject({
        supplier: z.string().nullable(),
        partIds: z.array(z.string()),
        sums: z.array(z.strictObject({ currency: z.string(), amount })),
        unpriced: z.array(z.string()),
        orderBy: day.nullable(),
      }),
    ),
    problems,
    cost: cost.nullable(),
    // Of the sites whose people with working water are known.
    costServed: cost.nullable(),
    costServed_count: count,
    costSites_count: count,
    costUnknown_count: count,
    beside,
    trip: z
      .strictObject({
        mass_kg: amount,
        noMass_count: count,
        carried: z.array(
          carried.extend({
            stowed: z
              .array(
                pieces.extend({
                  siteId: z.string(),
                  mass_kg: perhaps,
                  isFragile: z.boolean(),
                  rules: z.array(z.string()),
                }),
              )
              .describe('In the order it is put in; what the carrier cannot take is left out.'),
          }),
        ),
      })
      .nullable(),
  })
  .meta({ id: 'programmeKit' });

const cuts = z.strictObject({
  bar_m: perhaps,
  bars_count: count,
  bound_count: count,
  joints_count: count,
  bars: z.array(
    z.strictObject({
      bars_count: count,
      offcut_m: amount,
      cuts: z.array(z.strictObject({ runId: z.string(), length_m: amount })),
    }),
  ),
});

/** The kit, the loads and the cost of one site. */
export const siteKitAnswer = z
  .strictObject({
    version,
    designVersion: version.nullable(),
    siteId: z.string(),
    name: z.string().nullable(),
    people: perhaps,
    isBuilt: z.boolean(),
    handOver: day.nullable(),
    currency: z.string().nullable(),
    pricesOn: day.nullable(),
    lines: z.array(
      z.strictObject({
        partId: z.string(),
        name: z.string(),
        kind: z.string(),
        countedIn: z.enum(countedIns),
        needed_count: perhaps,
        spare_count: perhaps,
        total_count: perhaps,
        isAtLeast: z.boolean(),
        from: z.enum(['rule', 'named']),
        ruleIds: z.array(z.string()),
        countedBy: z.array(z.enum(countedBys)),
        price: z.strictObject({ amount, currency: z.string() }).nullable(),
        cuts: cuts.nullable(),
        working,
      }),
    ),
    mass_kg: amount,
    noMass_count: count,
    carriers: z.array(carrier),
    carried: z.array(carried),
    kitsIn: z.array(
      z.strictObject({
        carrierId: z.string(),
        name: z.string(),
        mode: z.enum(carrierModes),
        kits_count: perhaps,
        limitedBy: z.enum(['mass', 'bulk', 'longest', 'keptApart']).nullable(),
      }),
    ),
    problems,
    cost: cost.nullable(),
    costWorking: working,
    costProblems: problems,
    beside,
  })
  .meta({ id: 'siteKit' });
