import { dayOrders, secondSourceKinds } from '@eavewell/engine';
import { z } from 'zod';
import { drainage } from './drainage.ts';
import { head } from './head.ts';
import { day, problem, range, stationVerdict, target, verdict, workingLine } from './parts.ts';
import { siteRemedies } from './remedies.ts';
import { safety } from './safety.ts';
import { settling } from './settling.ts';
import { standsOfSite } from './stand.ts';
import { treatment } from './treatment.ts';
import { wear } from './wear.ts';

const dryRun = z
  .strictObject({ from: day, to: day, days: z.int(), waterYear: z.int() })
  .describe('An unbroken run of dry days, counted for the water year of its last day.');

const waterYear = z.strictObject({
  waterYear: z.int().describe('The calendar year it ends in.'),
  firstDay: day,
  judged: z.boolean(),
  dryDays: z.int(),
  longestRun_days: z.int(),
  filledDays: z.int().describe('Days that were not measured.'),
});

const size = z.strictObject({
  tankVolume_L: z.number(),
  partId: z.string().nullable(),
  dryDays_per_year: z.number(),
  goodYears: z.int(),
  meetsTarget: z.boolean(),
});

const firstService = z
  .strictObject({
    handOverDay: day,
    wait_days: z.number(),
    wait_days_range: range.describe('The middle eight years in ten.'),
    firstServiceDay: day,
  })
  .describe('When a tank that is handed over empty first serves: the median over the years of the record.');

const tankIds = z.array(z.string()).describe('A tank, or tanks joined at the foot.');

const secondSource = z
  .strictObject({
    secondSourceId: z.string(),
    name: z.string(),
    kind: z.enum(secondSourceKinds),
    days_per_year: z.number().describe('Days on which judged litres come from it; they are not dry.'),
    days_by_year: z.array(z.int()).describe('The same of each judged year of the record.'),
    given_L_per_year: z.number(),
    aloneVerdict: verdict,
    aloneGoodYears: z.int(),
    aloneDryDays_per_year: z.number(),
  })
  .describe('What the tank leaves to the second source, and what it would do without it.');

/** What the storage station found of one body of water. */
export const storage = z
  .strictObject({
    tankIds,
    people: z.number().describe('Who draw from it.'),
    verdict,
    order: z.enum(dayOrders).describe('The order of each day.'),
    ration: z
      .strictObject({ below_fraction: z.number(), judged_fraction: z.number(), other_fraction: z.number() })
      .nullable()
      .describe('What is given while less than the mark is in the tank; null: all that is asked.'),
    rationedDays_per_year: z
      .number()
      .nullable()
      .describe('Days on which the ration was in force; those that cut the judged litres are dry days too.'),
    unrationed: size.nullable().describe('This tank with nothing rationed; null where nothing is.'),
    noExactSize: z
      .enum(['order', 'ration'])
      .nullable()
      .describe('Why no exact smallest tank is known: each size was run on its own. Null where every size is known.'),
    catalogueForTarget_L: z
      .number()
      .nullable()
      .describe('Smallest of sizes that meets the target, where no exact size is known; without the second source.'),
    catalogueToHold_L: z
      .number()
      .nullable()
      .describe('Smallest of the catalogue that holds, where no exact size is known; without the second source.'),
    tankVolume_L: z.number(),
    judgedDemand_L_per_day: z.number().describe('Mean over the days of the year.'),
    judgedDemandHighest_L_per_day: z.number().describe('Of the day that asks for most.'),
    askedDays_per_year: z.number().describe('Days on which judged litres are asked, in a mean judged year.'),
    otherDemand_L_per_day: z.number(),
    inflow_L_per_year: z.number(),
    judgedYears: z.int(),
    goodYears: z.int(),
    goodYearsNeeded: z.int(),
    goodYears_fraction_range: range,
    comingGood_years_range: range.describe('Good years among as many coming years as were judged.'),
    daysMet_fraction: z.number(),
    daysMet_fraction_range: range,
    dryDays_per_year: z.number(),
    dryDays_per_year_range: range,
    shortfall_L_per_year: z.number().describe('Judged litres short in a mean year.'),
    otherShortDays_per_year: z.number().describe('Days on which other purposes were short, in a mean year.'),
    tankForDays_L: z
      .number()
      .nullable()
      .describe(
        'Smallest tank for the share of days, without the second source; null: no tank would do, or noExactSize.',
      ),
    tankForRuns_L: z
      .number()
      .nullable()
      .describe('Smallest tank for the dry runs, without the second source; null: no tank would do, or noExactSize.'),
    tankForTarget_L: z
      .number()
      .nullable()
      .describe('Smallest tank for both, without the second source; null: no tank would do, or noExactSize.'),
    tankToHold_L: z
      .number()
      .nullable()
      .describe('Smallest tank that would hold, without the second source; null: this one does, or none would.'),
    judgedAlone: size.nullable().describe('This tank with nothing asked but the judged litres, where it is short.'),
    secondSource: secondSource.nullable(),
    cappedBy: z.string().nullable().describe('The assumption that keeps it from holding: the code of its problem.'),
    lacks: z
      .enum(['tank', 'water', 'ration'])
      .nullable()
      .describe('What keeps it short, the second source left out; null where it meets the target.'),
    longestRun: dryRun.nullable(),
    dryRuns: z.array(dryRun).describe('Longest first, at most ten.'),
    years: z.array(waterYear),
    sizes: z.array(size).describe("The catalogue's tanks and this one, by size, without the second source."),
    yieldBeforeSpill: z
      .strictObject({ dryDays_per_year: z.number(), goodYears: z.int() })
      .describe('The generous end: rain is let in before people draw.'),
    firstService: firstService.nullable(),
  })
  .meta({ id: 'storage' });

const daily = z.array(z.number());

/** Day by day at the chosen tank. */
export const series = z
  .strictObject({
    tankIds,
    firstDay: day,
    rain_mm: daily.describe("At the site: the gauge's rain times the site's rain factor."),
    known: z
      .array(z.enum(['measured', 'filled', 'neighbours', 'made', 'unknown']))
      .describe('filled: from other years. neighbours: filled from neighbouring gauges. made: made up from normals.'),
    inflow_L: daily,
    judgedAsked_L: daily.describe('Asked for the judged purposes.'),
    content_L: daily.describe('At the end of the day.'),
    judgedTaken_L: daily,
    otherTaken_L: daily,
    spill_L: daily,
    secondSource_L: daily.describe('Judged litres from the second source.'),
    dry: z.array(z.boolean()),
  })
  .describe('Only with --series.')
  .meta({ id: 'series' });

/** What a site would come to under the scenario asked for. */
const siteUnder = z
  .strictObject({
    verdict,
    finding: z.string(),
    judgedYears: z.int().nullable(),
    goodYears: z.int().nullable(),
    dryDays_per_year: z.number().nullable(),
    longestRun_days: z.int().nullable(),
    tankForTarget_L: z.number().nullable().describe('Smallest tank for the target, without the second source.'),
  })
  .describe('Only where a scenario is asked for. Null: not known.');

/** One site, roof to cup. */
export const siteReport = z
  .strictObject({
    siteId: z.string(),
    name: z.string(),
    people: z.int().nullable().describe('As counted, or made from the households.'),
    design_people: z.int().nullable().describe('In the design year: those it is judged for.'),
    gaugeId: z.string().nullable(),
    siteClass: z.string().nullable(),
    target: target.describe('What it was judged by.'),
    targetFrom: z.enum(['programme', 'class']).describe('Whose target that is.'),
    verdict,
    stations: z.strictObject({
      roof: stationVerdict,
      gutter: stationVerdict,
      settling: stationVerdict,
      storage: stationVerdict,
      stand: stationVerdict,
      treatmentUnit: stationVerdict,
      tap: stationVerdict,
      cup: stationVerdict,
    }),
    finding: z.string().describe('The finding in a sentence or two.'),
    storages: z
      .array(storage)
      .describe(
        'One for each body of water people draw from, the worst first; none where facts are missing: the blockers say which.',
      ),
    drainage: drainage.nullable().describe('Null where gutters and pipes are not judged.'),
    ...standsOfSite,
    settling: z.array(settling).describe('One for each settling tank that is judged.'),
    head: z.array(head).describe('The way to the taps, one for each body of water that is judged.'),
    treatment: z.array(treatment).describe('Whether the treatment keeps up, one for each unit that is judged.'),
    safety: safety.nullable().describe('Whether its water is fit to drink; null where that is not judged.'),
    wear: z
      .array(wear)
      .nullable()
      .describe('When the cartridges are due, one for each unit in use; null: not worked out.'),
    firstService: firstService.nullable().describe('Of the tank that serves last; null where one never does.'),
    remedies: siteRemedies.nullable().describe('Null where the site is neither short nor tight.'),
    problems: z.array(problem),
    working: z.array(workingLine),
    scenario: siteUnder.optional(),
    series: z.array(series).optional().describe('One for each body of water; none where facts are missing.'),
  })
  .meta({ id: 'site' });
