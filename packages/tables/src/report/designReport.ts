import { dayOrders, gapFillings, judgings, wetDayAmountKinds, windExposures } from '@eavewell/engine';
import { z } from 'zod';
import { day, notUsed, problem, target, verdict } from './parts.ts';
import { programmeRemedies } from './remedies.ts';
import { siteReport } from './site.ts';
import { storm } from './storm.ts';

/** Counts up when a reader written for the last form would no longer understand the document. */
export const designSchemaVersion = 2;

const settings = z.strictObject({
  programme: z.string(),
  target,
  litres_per_person_per_day: z.number(),
  firstFlush_mm: z.number(),
  range_fraction: z.number(),
  draws: z.int(),
  seed: z.int(),
  missingDays_fraction: z.number(),
  leastYears: z.int(),
  waterYearStartMonth: z.int().nullable(),
  gapFilling: z.enum(gapFillings),
  dayOrder: z.enum(dayOrders),
  designAfterHandOver_years: z.int(),
  growthFraction_per_year: z.number().nullable(),
  people_per_household: z.number().nullable(),
  madeYears: z.int(),
  wetDayAmounts: z.enum(wetDayAmountKinds),
  gaugeReach_km: z.number(),
  judgeDrainage: z.enum(judgings),
  judgeSettling: z.enum(judgings),
  judgeHead: z.enum(judgings),
  judgeStand: z.enum(judgings),
  stormReturnPeriod_years: z.number(),
  stormMargin_fraction: z.number(),
  fiveMinutesOfDay_fraction: z.number().nullable(),
  fiveMinutesOfDaySource: z.string().nullable(),
  waterTemperature_C: z.number(),
  settlingGrain_um: z.number(),
  settlingGrainDensity_kg_per_m3: z.number(),
  settledTarget_fraction: z.number(),
  roofSolids_g_per_m2_per_year: z.number().nullable(),
  pumping_h_per_day: z.number(),
  tapFlow_L_per_min: z.number(),
  residualHead_m: z.number(),
  headMargin_m: z.number(),
  unitHead_m: z.number().nullable(),
  windSpeed_m_per_s: z.number().nullable(),
  windExposure: z.enum(windExposures),
  standMargin_fraction: z.number(),
  judgeTreatment: z.enum(judgings),
  judgeSafety: z.enum(judgings),
  peakShare_fraction: z.number(),
  waitLimit_min: z.number(),
  treatmentMargin_fraction: z.number(),
  roofTurbidity_NTU: z.number().nullable(),
  roofTurbidityHigh_NTU: z.number().nullable(),
  settledTurbidity_fraction: z.number(),
  foulingSpread_fraction: z.number(),
  flowReadingError_fraction: z.number(),
  cartridgeFailures_per_year: z.number().nullable(),
  futures: z.int(),
  healthTarget_DALY_per_person_per_year: z.number(),
  litresDrunk_L_per_person_per_day: z.number(),
  litresDrunkHigh_L_per_person_per_day: z.number(),
  skipping_fraction: z.number().nullable(),
  daysOff_per_year: z.number().nullable(),
  recontamination_fraction: z.number().nullable(),
  leak_fraction: z.number(),
  sampleAge_days: z.int(),
  susceptibleToRotavirus_fraction: z.number(),
  currency: z.string().nullable().describe('The currency costs are told in; null: that of the latest price.'),
  priceChange_fraction_per_year: z.number().nullable(),
  oldRate_days: z.number(),
  interest_fraction_per_year: z.number().nullable(),
  inflation_fraction_per_year: z.number().nullable(),
  costYears: z.int(),
  cutWaste_mm: z.number(),
  workingService_fraction: z.number().nullable(),
  workingServiceLow_fraction: z.number().nullable(),
  workingServiceHigh_fraction: z.number().nullable(),
  boughtWater_L_per_person_per_day: z.number().nullable(),
  boughtWater_amount_per_L: z.number().nullable(),
  boiledWater_L_per_person_per_day: z.number().nullable(),
  fuel_amount_per_kg: z.number().nullable(),
  fuelHeat_MJ_per_kg: z.number().nullable(),
  stoveEfficiency_fraction: z.number().nullable(),
  pipedScheme_amount_per_person: z.number().nullable(),
  pipedScheme_years: z.number().nullable(),
  pipedScheme_amount_per_person_per_year: z.number().nullable(),
  rolloutStart: z.int().nullable().describe('Days from 1 January 1970; null: the day it is asked on.'),
  rolloutHorizon_days: z.int(),
  installLow_days: z.number(),
  installLikely_days: z.number(),
  installHigh_days: z.number(),
  learning_fraction: z.number(),
  riverEnds_h: z.number(),
  fuelPrice_per_L: z.number().nullable(),
  porterLoad_kg: z.number(),
  changeOver_h: z.number(),
  openChance_fraction: z.number(),
  closedRain_mm: z.number().nullable(),
  mustHold: z.boolean(),
  mainStore: z.string().nullable(),
});

const gaugeRain = z.strictObject({
  firstDay: day,
  lastDay: day,
  waterYearStartMonth: z.int(),
  judgedYears: z.int(),
  years: z.array(z.strictObject({ waterYear: z.int(), judged: z.boolean(), missing_days: z.int() })),
  filledDays: z.int(),
  neighbourDays: z.int().describe('Of the filled days, those filled from neighbouring gauges.'),
  madeDays: z.int().describe('Days of made-up rain: all or none. Its years are counted from 1, not by the calendar.'),
  cutDays: z.int().describe('Days at both ends that make no whole water year.'),
  meanAnnualRain_mm: z.number(),
  longestRainlessRun_days: z.int().describe('Longest run of days under 1 mm in the judged years.'),
});

/** One gauge. */
export const gaugeReport = z
  .strictObject({
    gaugeId: z.string(),
    name: z.string(),
    rain: gaugeRain.nullable().describe('Null where the record cannot carry a verdict.'),
    storm: storm.nullable().describe('How hard it rains for five minutes; null where that is not known.'),
    problems: z.array(problem),
  })
  .meta({ id: 'gauge' });

const counts = z.strictObject({ short: z.int(), unknown: z.int(), tight: z.int(), holds: z.int() });

const scenario = z
  .strictObject({
    asked: z.strictObject({
      wetDays_fraction: z.number(),
      wetDayRain_fraction: z.number(),
      lastYears: z.int().nullable(),
    }),
    present: counts.describe('Sites by verdict as they are.'),
    under: counts.describe('Sites by verdict under the scenario.'),
    changed: z.array(z.strictObject({ siteId: z.string(), verdict, under: verdict })),
  })
  .describe('Only where a scenario is asked for: a question put to the rain of the past, not a forecast.');

/** What `eavewell design --json` writes, once and for all readers. */
export const designReport = z
  .strictObject({
    eavewell: z.string().describe('Version of the program.'),
    schema: z.literal(designSchemaVersion),
    programme: z.strictObject({
      name: z.string(),
      sites: z.int(),
      people: z.int().describe('Of the sites whose people are known.'),
      sitesWithoutPeople: z.int(),
    }),
    settings,
    gauges: z.array(gaugeReport),
    sites: z.array(siteReport),
    remedies: programmeRemedies,
    scenario: scenario.optional(),
    problems: z.array(problem).describe('What was found in the folder.'),
    notUsed: z.array(notUsed),
  })
  .describe(
    'What eavewell design --json writes. The unit is the last part of a name; a share ends in fraction and goes from 0 to 1; null is "not known", never 0.',
  );

export type DesignReport = z.infer<typeof designReport>;
export type SiteReport = z.infer<typeof siteReport>;
export type GaugeReport = z.infer<typeof gaugeReport>;
export type ProblemReport = z.infer<typeof problem>;

/**
 * The JSON Schema of the report, as docs/design.schema.json holds it.
 *
 * @returns JSON Schema, draft 2020-12 [text]
 * @definition ours
 */
export function designSchemaText(): string {
  const schema = z.toJSONSchema(designReport, { target: 'draft-2020-12', io: 'output' });
  return `${JSON.stringify({ title: 'Eavewell design', ...schema }, null, 2)}\n`;
}
