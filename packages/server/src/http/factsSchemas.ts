// long: every fact one site is judged by, a line each
import {
  dayOrders,
  gapFillings,
  groundClasses,
  gutterShapes,
  judgings,
  pipeLegs,
  pipeMaterials,
  roofCoatings,
  roofForms,
  roofMaterials,
  secondSourceKinds,
  tankRoles,
  wetDayAmountKinds,
  windExposures,
} from '@eavewell/engine';
import { z } from 'zod';
import { figure, known, place, text } from './factParts.ts';
import { kitFacts, kitFigures, kitSettings, rolloutSettings } from './kitSchemas.ts';
import { programmeId, version } from './schemaParts.ts';
import { safetyFacts, treatmentFacts, treatmentSettings, unitFigures } from './treatmentSchemas.ts';

const fact = z.union([figure, z.string(), z.array(z.string())]);
const fault = z.strictObject({
  code: z.string(),
  severity: z.enum(['blocker', 'warning', 'note']),
  place,
  facts: z.record(z.string(), fact),
});

const diverter = z.strictObject({
  firstFlush_mm: known,
  chamber_L: known,
  drainHole: z.enum(['open', 'blocked']),
  chamberBore_mm: known,
  drainHole_mm: known,
});
const roof = z.strictObject({
  roofId: z.string(),
  length_m: known,
  width_m: known,
  roofPlanArea_m2: known,
  material: z.enum(roofMaterials).nullable(),
  runoffFraction: known,
  gutteredFraction: known,
  tankId: text,
  diverter: diverter.nullable(),
  form: z.enum(roofForms).nullable(),
  pitch_deg: known,
  eaveHeight_m: known,
  wallAbove_m2: known,
  valleys_count: known,
  isFragile: z.boolean().nullable(),
  coating: z.enum(roofCoatings).nullable(),
  hasLead: z.boolean().nullable(),
  hasAsbestos: z.boolean().nullable(),
  isUnderTrees: z.boolean().nullable(),
});
const gutter = z.strictObject({
  gutterId: z.string(),
  roofId: z.string(),
  shape: z.enum(gutterShapes).nullable(),
  width_mm: known,
  depth_mm: known,
  length_m: known,
  fall_mm_per_m: known,
  outlet_mm: known,
  baseWidth_mm: known,
  outlets_count: known,
  runToOutlet_m: known,
  bends_count: known,
  outletGrate: z.enum(['open', 'grated']),
  isBuilt: z.boolean().optional(),
});
const downpipe = z.strictObject({
  downpipeId: z.string(),
  roofId: z.string(),
  bore_mm: known,
  length_m: known,
  isBuilt: z.boolean().optional(),
});
const tank = z.strictObject({
  tankId: z.string(),
  nominal_L: known,
  partVolume_L: known,
  outletHeight_m: known,
  overflowHeight_m: known,
  diameter_m: known,
  joinedTo: text,
  role: z.enum(tankRoles),
  peopleFraction: known,
  height_m: known,
  standHeight_m: known,
  partId: text,
  inletHeight_m: known,
  overflowBore_mm: known,
  overflows_count: known,
  overflowScreen: z.enum(['open', 'screened']),
  cells_count: known,
  emptyMass_kg: known,
  partMass_kg: known,
  standMass_kg: known,
  groundClass: z.enum(groundClasses).nullable(),
  pads_count: known,
  padSide_m: known,
  baseWidth_m: known,
  isFastened: z.boolean().nullable(),
  signedBy: text,
  signedOn: known,
  isBuilt: z.boolean().optional(),
});
const pipe = z.strictObject({
  pipeId: z.string(),
  tankId: text,
  leg: z.enum(pipeLegs),
  bore_mm: known,
  length_m: known,
  material: z.enum(pipeMaterials).nullable(),
  elbows_count: known,
  tees_count: known,
  valves_count: known,
  meters_count: known,
  otherLoss_k: known,
  isBuilt: z.boolean().optional(),
});
const target = z.strictObject({
  daysMet_fraction: figure,
  longestDryRun_days: figure,
  goodYears_fraction: figure,
});
const secondSource = z.strictObject({
  secondSourceId: z.string(),
  name: z.string(),
  kind: z.enum(secondSourceKinds),
  months: z.array(figure),
  turbidity_NTU: known,
});
const period = z.strictObject({
  from_dayOfYear: figure,
  to_dayOfYear: figure,
  presentFraction: figure,
  reason: text,
});
const purpose = z.strictObject({
  purpose: z.string(),
  litres_per_person_per_day: figure,
  judged: z.boolean(),
  months: z.array(figure).optional(),
});

const site = z
  .strictObject({
    siteId: z.string(),
    name: z.string(),
    latitude_deg: known,
    longitude_deg: known,
    siteClass: text,
    target: target.nullable(),
    people: known,
    peopleCountedOn: known,
    households_count: known,
    growthFraction_per_year: known,
    designYear: known,
    gaugeId: text,
    rainFactor: figure,
    handOverDay: known,
    roofs: z.array(roof),
    gutters: z.array(gutter),
    downpipes: z.array(downpipe),
    tanks: z.array(tank),
    pipes: z.array(pipe),
    taps_count: known,
    tapHeight_m: known,
    unitHeight_m: known,
    hasHandPump: z.boolean().nullable(),
    windSpeed_m_per_s: known,
    windExposure: z.enum(windExposures).nullable(),
    treatment: treatmentFacts,
    safety: safetyFacts,
    demand: z.array(purpose),
    ration: z.strictObject({ below_fraction: known, judged_fraction: known, other_fraction: known }).nullable(),
    presence: z.strictObject({ calendarId: z.string(), periods: z.array(period) }).nullable(),
    secondSource: secondSource.nullable(),
    nearSecondSource: secondSource.nullable(),
    doubts: z.array(place),
    doubtsBeside: z
      .strictObject({
        drainage: z.array(place),
        settling: z.array(place),
        stand: z.array(place),
        head: z.array(place),
        treatment: z.array(place),
        safety: z.array(place),
      })
      .describe('What puts one station of it in doubt.'),
  })
  .describe('Days are counted from 1 January 1970; null is "not known".');

const settings = z.strictObject({
  programme: z.string(),
  target,
  litres_per_person_per_day: figure,
  firstFlush_mm: figure,
  range_fraction: figure,
  draws: figure,
  seed: figure,
  missingDays_fraction: figure,
  leastYears: figure,
  waterYearStartMonth: known,
  gapFilling: z.enum(gapFillings),
  dayOrder: z.enum(dayOrders),
  designAfterHandOver_years: figure,
  growthFraction_per_year: known,
  people_per_household: known,
  madeYears: figure,
  wetDayAmounts: z.enum(wetDayAmountKinds),
  gaugeReach_km: figure,
  judgeDrainage: z.enum(judgings),
  judgeSettling: z.enum(judgings),
  judgeHead: z.enum(judgings),
  judgeStand: z.enum(judgings),
  stormReturnPeriod_years: figure,
  stormMargin_fraction: figure,
  fiveMinutesOfDay_fraction: known,
  fiveMinutesOfDaySource: text,
  waterTemperature_C: figure,
  settlingGrain_um: figure,
  settlingGrainDensity_kg_per_m3: figure,
  settledTarget_fraction: figure,
  roofSolids_g_per_m2_per_year: known,
  pumping_h_per_day: figure,
  tapFlow_L_per_min: figure,
  residualHead_m: figure,
  headMargin_m: figure,
  unitHead_m: known,
  windSpeed_m_per_s: known,
  windExposure: z.enum(windExposures),
  standMargin_fraction: figure,
  judgeTreatment: z.enum(judgings),
  judgeSafety: z.enum(judgings),
  ...treatmentSettings,
  ...kitSettings,
  ...rolloutSettings,
});

const normal = z.strictObject({
  month: figure,
  rain_mm: known,
  wetDays: known,
  source: text,
  yearFrom: known,
  yearTo: known,
});
const storm = z.strictObject({
  returnPeriod_years: figure,
  intensity_mm_per_h: figure,
  low_mm_per_h: known,
  high_mm_per_h: known,
  source: text,
});
const stormCoefficients = z.strictObject({
  lambda: figure,
  kappa: figure,
  theta_h: figure,
  eta: figure,
  leastPeriod_years: known,
  mostPeriod_years: known,
  source: text,
});
const gauge = z.strictObject({
  gaugeId: z.string(),
  name: z.string(),
  latitude_deg: known,
  longitude_deg: known,
  readingTime: text,
  normals: z.array(normal),
  storms: z.array(storm),
  stormCoefficients: stormCoefficients.nullable(),
  file: z.string(),
  readings: z
    .strictObject({
      of: z.string().describe('What the readings are called: others have another name.'),
      address: z.string().describe('Where they are.'),
    })
    .nullable()
    .describe('Null where only the place of the gauge counts.'),
});

export const siteFacts = z
  .strictObject({
    version: version.describe('The version of the programme now.'),
    designVersion: version.describe('The version these facts are of, and the design told elsewhere.'),
    site,
    faults: z.array(fault).describe('The faults of the tables behind its doubts.'),
    settings,
    parts: z.array(
      z.strictObject({
        partId: z.string(),
        kind: z.string(),
        name: z.string(),
        volume_L: known,
        length_m: known,
        mass_kg: known,
        shape: z.enum(gutterShapes).nullable(),
        topWidth_mm: known,
        baseWidth_mm: known,
        depth_mm: known,
        bore_mm: known,
        unit: unitFigures.nullable().describe('Null of all but treatment units.'),
        kit: kitFigures,
      }),
    ),
    prices: z.array(z.strictObject({ partId: z.string(), priceDate: figure, amount: figure, currency: z.string() })),
    kit: kitFacts,
    gauges: z
      .array(gauge)
      .describe(
        'Those its rain follows from: its own and its neighbours, or those within reach, or the nearest alone.',
      ),
    wantedGauges: z.array(z.string()).describe('Of those, the ones that are to be made ready.'),
  })
  .meta({ id: 'siteFacts' });

export const gaugeAsked = programmeId.extend({ gaugeId: z.string().min(1).max(64) });
export const readingsAsked = z.strictObject({
  of: z
    .string()
    .regex(/^[0-9a-f]{32}$/)
    .optional()
    .describe('What they were called; where they are others now, there are none. Left out: those of the last design.'),
});

const stretch = z.tuple([figure, figure, figure]);
export const gaugeReadings = z
  .strictObject({
    gaugeId: z.string(),
    days: z.array(stretch).describe('Days counted from 1 January 1970, by stretches: the first, how many, the step.'),
    rows: z.array(stretch).describe('The rows they stand in, likewise.'),
    rain_mm: z.array(known).describe('A reading each; null where the gauge was not read.'),
    short: z
      .strictObject({
        minutes: z.array(stretch).describe('Ends of intervals, minutes counted from 1 January 1970, by stretches.'),
        intervals: z.array(stretch).describe('How long each is, in minutes, likewise.'),
        rain_mm: z.array(figure).describe('Rain of each.'),
      })
      .describe('Rain of intervals shorter than a day, those in which it rained.'),
  })
  .meta({ id: 'gaugeReadings' });
