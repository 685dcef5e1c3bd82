import { groupKinds, gutterShapes, secondSourceKinds, standGates, stations } from '@eavewell/engine';
import { z } from 'zod';
import { day, verdict } from './parts.ts';

const where = {
  tankId: z
    .string()
    .nullable()
    .describe('The first tank of those it is made to; null where all tanks of the site are one.'),
};
const catalogueTank = {
  ...where,
  partId: z.string(),
  volume_L: z.number(),
  mass_kg: z.number().nullable().describe('As the catalogue has it.'),
};

const change = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('secondTank'), ...catalogueTank }),
  z.strictObject({ kind: z.literal('largerTank'), ...catalogueTank }),
  z.strictObject({ kind: z.literal('gutter'), ...where, gutteredFraction: z.number() }),
  z.strictObject({ kind: z.literal('firstFlush'), ...where, firstFlush_mm: z.number() }),
  z.strictObject({
    kind: z.literal('largerGutter'),
    gutterIds: z.array(z.string()),
    partId: z.string(),
    shape: z.enum(gutterShapes),
    topWidth_mm: z.number(),
    baseWidth_mm: z.number().nullable(),
    depth_mm: z.number(),
  }),
  z.strictObject({
    kind: z.literal('outlet'),
    gutterIds: z.array(z.string()),
    partId: z.string(),
    outlet_mm: z.number().nullable().describe('All their outlets get this bore; null: those there stay.'),
    added_count: z.int().describe('How many more each gutter gets.'),
  }),
  z.strictObject({
    kind: z.literal('downpipe'),
    roofId: z.string(),
    downpipeIds: z.array(z.string()).describe('Those that are replaced.'),
    added_count: z.int(),
    partId: z.string(),
    bore_mm: z.number(),
  }),
  z.strictObject({ kind: z.literal('overflow'), tankId: z.string(), partId: z.string(), bore_mm: z.number() }),
  z.strictObject({
    kind: z.literal('pipe'),
    pipeIds: z.array(z.string()),
    partId: z.string(),
    bore_mm: z.number(),
  }),
  z.strictObject({
    kind: z.literal('secondSource'),
    secondSourceId: z.string(),
    name: z.string(),
    sourceKind: z.enum(secondSourceKinds),
  }),
  z.strictObject({
    kind: z.literal('people'),
    carried_people: z.int().describe('Those of the design year who stay.'),
    others_people: z.int().describe('Those who drink at a site of their own.'),
  }),
  z.strictObject({
    kind: z.literal('litres'),
    judged_L_per_person_per_day: z.number().describe('What is left of the judged purposes.'),
    isJudgedCut: z.boolean().describe('False: only the other purposes are dropped.'),
  }),
]);

const cost = z
  .strictObject({
    amount: z.number().nullable().describe('Null where a price is missing; 0 where nothing is bought.'),
    currency: z.string().nullable(),
    reason: z
      .enum([
        'noPart',
        'noPrice',
        'onlyLaterPrices',
        'roofLengthUnknown',
        'runLengthUnknown',
        'pieceLengthUnknown',
        'rateMissing',
        'otherSite',
        'secondSource',
      ])
      .nullable(),
    bought: z.array(
      z.strictObject({
        partId: z.string(),
        pieces_count: z.int(),
        amount: z.number().describe('Of one.'),
        currency: z.string(),
        priceDate: day,
      }),
    ),
  })
  .describe('Of the parts alone: downpipes that are not named, brackets, stands, carrying and work are not in it.');

const remedy = z
  .strictObject({
    changes: z.array(change).describe('One, or two together, and the gutters and pipes they take.'),
    about: z.string().describe('The changes in words.'),
    verdict,
    promiseCut_count: z.int().describe('0: what was promised is kept; else the step down, the mildest 1.'),
    tankVolume_L: z.number().describe('Of all tanks together.'),
    dryDays_per_year: z.number().describe('Of the tank that is then worst off.'),
    goodYears: z.int(),
    sourceDays_per_year: z
      .number()
      .nullable()
      .describe('Days of water from the second source it declares; null where it declares none.'),
    cost,
    besides: z.array(z.enum(stations)).describe('Stations that do not hold with it and are not in its verdict.'),
    standGate: z.enum(standGates).describe('May the tanks then be filled and handed over?'),
  })
  .meta({ id: 'remedy' });

const reason = z.enum([
  ...(['assumed', 'growth', 'roofSize', 'madeRain', 'record', 'noTanks', 'tank', 'water', 'apart'] as const),
  ...(['drainage', 'head', 'settling', 'stand', 'treatment', 'safety', 'facts'] as const),
]);

const peopleCarried = z
  .strictObject({
    verdict: z.enum(['holds', 'tight']).describe('What the site is with so many.'),
    carried_people: z.int(),
    others_people: z.int(),
  })
  .describe(
    'The most people of the design year it carries as it stands, where more than half would have to go; else null.',
  );

/** What would mend one site. */
export const siteRemedies = z.strictObject({
  ranked: z.array(remedy).describe('The first is the smallest change that mends it.'),
  notMended: reason.nullable().describe('Why none makes it hold; null where one does.'),
  besides: z.array(z.enum(stations)).describe('Stations that stay short, tight or unknown whatever is changed.'),
  said: z.array(z.string()).describe('What has to be known of the stations left out, each in a sentence.'),
  peopleCarried: peopleCarried.nullable(),
  leaveIt: z
    .strictObject({
      tankIds: z.array(z.string()).nullable().describe('Where it is told of some of the tanks; null: of all.'),
      waterYear: z.int(),
      dryDays: z.int(),
      longestRun_days: z.int(),
      longestRunFrom: day.nullable().describe('Its first day; null: no day is dry, or the rain is made up.'),
      ofMadeYears: z
        .int()
        .nullable()
        .describe('The worst of so many judged years of made-up rain; null: measured rain.'),
      shortfall_L: z.number(),
    })
    .nullable()
    .describe('The worst judged year, if it is left as it is.'),
});

const together = {
  sites: z.int(),
  people: z.int().describe('Of the sites whose people are known.'),
  withoutPeople_count: z.int(),
  costs: z.array(z.strictObject({ amount: z.number(), currency: z.string() })),
  withoutCost_count: z.int().describe('Sites whose cost is not known; they are in no sum.'),
};

const looked = z.strictObject(together).describe('Sites that are short or tight.');
const group = { kinds: z.array(z.enum(groupKinds)), verdict, isPromiseCut: z.boolean(), ...together };
const pricesOn = day.nullable().describe('Prices are the latest on or before this day; null where there are none.');

/** What would mend the programme. */
export const programmeRemedies = z
  .strictObject({
    pricesOn,
    looked,
    mended: z.strictObject(together).describe('Those that would hold.'),
    groups: z.array(z.strictObject(group)),
    notMended: z.array(z.strictObject({ reason, siteIds: z.array(z.string()) })),
  })
  .describe('Each site by its smallest remedy.')
  .meta({ id: 'remedies' });

const costsInWords = z.string();

/** The same as a table people read. */
export const remediesInWords = z.strictObject({
  pricesOn,
  looked,
  mended: z.strictObject({ ...together, costsInWords }).describe('Those that would hold.'),
  groups: z.array(
    z.strictObject({ ...group, about: z.string().describe('The kinds of change in words.'), costsInWords }),
  ),
  notMended: z.array(z.strictObject({ reason, sentence: z.string(), siteIds: z.array(z.string()) })),
});

export type RemediesInWords = z.infer<typeof remediesInWords>;
