import {
  carrierModes,
  conditionFields,
  conditionTests,
  costHeads,
  costPers,
  countedBys,
  countedIns,
  dangers,
  kitRoundings,
} from '@eavewell/engine';
import { z } from 'zod';
import { figure, known, text } from './factParts.ts';

/** How a part is bought, kept and carried. */
export const kitFigures = z.strictObject({
  countedIn: z.enum(countedIns),
  width_m: known,
  height_m: known,
  bulk_L: known,
  packSize_count: known,
  pieces_count: known,
  supplier: text,
  leadTime_days: known,
  isFragile: z.boolean().nullable(),
  danger: z.enum(dangers).nullable(),
  stock_count: known,
  stockCountedOn: known,
  life_years: known,
  picture: text,
});

/** The settings of kits and costs. */
export const kitSettings = {
  currency: text,
  priceChange_fraction_per_year: known,
  oldRate_days: figure,
  interest_fraction_per_year: known,
  inflation_fraction_per_year: known,
  costYears: figure,
  cutWaste_mm: figure,
  workingService_fraction: known,
  workingServiceLow_fraction: known,
  workingServiceHigh_fraction: known,
  boughtWater_L_per_person_per_day: known,
  boughtWater_amount_per_L: known,
  boiledWater_L_per_person_per_day: known,
  fuel_amount_per_kg: known,
  fuelHeat_MJ_per_kg: known,
  stoveEfficiency_fraction: known,
  pipedScheme_amount_per_person: known,
  pipedScheme_years: known,
  pipedScheme_amount_per_person_per_year: known,
};

/** The settings of the rollout. */
export const rolloutSettings = {
  rolloutStart: known,
  rolloutHorizon_days: figure,
  installLow_days: figure,
  installLikely_days: figure,
  installHigh_days: figure,
  learning_fraction: figure,
  riverEnds_h: figure,
  fuelPrice_per_L: known,
  porterLoad_kg: figure,
  changeOver_h: figure,
  openChance_fraction: figure,
  closedRain_mm: known,
  mustHold: z.boolean(),
  mainStore: text,
};

const condition = z.strictObject({ field: z.enum(conditionFields), test: z.enum(conditionTests), value: z.string() });
const rule = z.strictObject({
  ruleId: z.string(),
  partId: z.string(),
  countedBy: z.enum(countedBys),
  each_count: figure,
  rounding: z.enum(kitRoundings),
  spare_fraction: figure,
  leastSpare_count: figure,
  conditions: z.array(condition),
});
const carrier = z.strictObject({
  carrierId: z.string(),
  name: z.string(),
  mode: z.enum(carrierModes),
  limit_kg: known,
  limit_L: known,
  longest_m: known,
  stowage_fraction: figure,
  carriers_count: figure,
  freeboard_cm: known,
  length_m: known,
  freeboardEmpty_cm: known,
  leastFreeboard_cm: known,
  limitSetBy: text,
  limitSetOn: known,
});
const rate = z.strictObject({ currency: z.string(), day: figure, perUnit: figure, source: text });
const redenomination = z.strictObject({
  currency: z.string(),
  newCurrency: z.string(),
  day: figure,
  factor: figure,
  source: text,
});
const cost = z.strictObject({
  costId: z.string(),
  siteId: text,
  head: z.enum(costHeads),
  what: z.string(),
  amount: figure,
  low: known,
  high: known,
  currency: z.string(),
  priceDate: figure,
  per: z.enum(costPers),
  life_years: known,
  source: text,
});

/** What a programme says of kits, carrying and money. */
export const kitFacts = z.strictObject({
  rules: z.array(rule),
  carriers: z.array(carrier),
  keptApart: z.array(z.strictObject({ partId: z.string(), otherPartId: z.string() })),
  rates: z.array(rate),
  redenominations: z.array(redenomination),
  costs: z.array(cost),
});
