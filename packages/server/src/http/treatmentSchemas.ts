import {
  barrierKinds,
  chlorineProducts,
  pathogens,
  portionKinds,
  reductionEvidences,
  samplePoints,
  unusableTestReasons,
} from '@eavewell/engine';
import { z } from 'zod';
import { figure, known, place, text } from './factParts.ts';

const reductions = z.strictObject({
  bacteria_log10: known,
  viruses_log10: known,
  protozoa_log10: known,
  evidence: z.enum(reductionEvidences).nullable(),
  source: text,
});

/** The figures of a treatment unit of the catalogue. */
export const unitFigures = z
  .strictObject({
    cartridges_count: known,
    membraneArea_m2: known,
    permeability_L_per_m2_h_bar: known,
    ratedFlow_L_per_h: known,
    ratedPressure_kPa: known,
    highestPressure_kPa: known,
    pore_nm: known,
    ratedLitres_L: known,
    ratedTurbidity_NTU: known,
    highestTurbidity_NTU: known,
    lifeLimit_years: known,
    lowestFlow_L_per_h: known,
    backwash_fraction: known,
    backwash_min_per_day: known,
    pistonBore_mm: known,
    pistonStroke_mm: known,
    lever_ratio: known,
    reductions,
  })
  .describe('All of a clean set.');

const unit = z.strictObject({
  serial: z.string(),
  partId: text,
  figures: unitFigures.nullable(),
  installedOn: known,
  removedOn: known,
});
const cartridge = z.strictObject({
  serial: z.string(),
  unitSerial: text,
  partId: text,
  batch: text,
  installedOn: known,
  removedOn: known,
  reason: text,
});
const flowReading = z.strictObject({
  unitSerial: text,
  readOn: figure,
  flow_L_per_h: figure,
  pressure_kPa: known,
  waterTemperature_C: known,
  passed_L: known,
});
const pressureTest = z.strictObject({
  unitSerial: text,
  testedOn: figure,
  pressure_kPa: figure,
  fall_kPa_per_min: figure,
  airVolume_L: known,
});

/** What is told of a site's treatment. */
export const treatmentFacts = z.strictObject({
  units: z.array(unit),
  cartridges: z.array(cartridge),
  flowReadings: z.array(flowReading),
  pressureTests: z.array(pressureTest),
});

const rawWater = z.strictObject({
  secondSourceId: text,
  pathogen: z.enum(pathogens),
  typical_per_L: figure,
  low_per_L: known,
  high_per_L: known,
  source: text,
});
const barrier = z.strictObject({
  barrierId: z.string(),
  kind: z.enum(barrierKinds),
  reductions,
  used_fraction: known,
});
const portion = z.strictObject({
  kind: z.enum(portionKinds),
  volume_mL: figure,
  portions_count: figure,
  positive_count: known,
  colonies_count: known,
  uncountable_count: figure,
  uncountableFrom_count: known,
});
const waterTest = z.strictObject({
  testId: z.string(),
  takenOn: figure,
  point: z.enum(samplePoints),
  portions: z.array(portion),
  turbidity_NTU: known,
  freeChlorine_mg_per_L: known,
  pH: known,
  waterTemperature_C: known,
  laboratory: text,
});
const unusableTest = z.strictObject({
  testId: z.string(),
  because: z.enum(unusableTestReasons),
  at: place,
  point: z.enum(samplePoints).nullable(),
  portions: z.array(portion),
});
const inspection = z.strictObject({ inspectedOn: figure, risks_count: figure, questions_count: figure, by: text });
const chlorination = z.strictObject({
  product: z.enum(chlorineProducts).nullable(),
  active_fraction: known,
  stock_g_per_L: known,
  dose_mg_per_L: known,
  residual_mg_per_L: known,
  contact_min: known,
  baffling_fraction: known,
  pH: known,
  waterTemperature_C: known,
  batch_L: known,
});

/** What is told of how safe a site's water is. */
export const safetyFacts = z.strictObject({
  rawWater: z.array(rawWater),
  barriers: z.array(barrier),
  tests: z.array(waterTest),
  unusableTests: z.array(unusableTest),
  inspections: z.array(inspection),
  chlorination: chlorination.nullable(),
  skipping_fraction: known,
  daysOff_per_year: known,
  altitude_m: known,
});

/** What treatment, wear and safety are judged by, of the settings. */
export const treatmentSettings = {
  peakShare_fraction: figure,
  waitLimit_min: figure,
  treatmentMargin_fraction: figure,
  roofTurbidity_NTU: known,
  roofTurbidityHigh_NTU: known,
  settledTurbidity_fraction: figure,
  foulingSpread_fraction: figure,
  flowReadingError_fraction: figure,
  cartridgeFailures_per_year: known,
  futures: figure,
  healthTarget_DALY_per_person_per_year: figure,
  litresDrunk_L_per_person_per_day: figure,
  litresDrunkHigh_L_per_person_per_day: figure,
  skipping_fraction: known,
  daysOff_per_year: known,
  recontamination_fraction: known,
  leak_fraction: figure,
  sampleAge_days: figure,
  susceptibleToRotavirus_fraction: figure,
};
