import type { WindExposure } from './buildingFacts.ts';
import { defaultKitSettings, type KitSettings } from './kitFacts.ts';
import { defaultRolloutSettings, type RolloutSettings } from './rolloutSettings.ts';

/** `drawFirst`: people draw in the morning, then rain comes in, then the rest spills. `yas` and `ybs`: yield after and before spill. */
export const dayOrders = ['drawFirst', 'yas', 'ybs'] as const;
export type DayOrder = (typeof dayOrders)[number];

/** What "enough water" means here. */
export interface Target {
  /** Judged litres wholly met on at least this share of days. */
  readonly daysMet_fraction: number;
  /** No dry run longer than this … */
  readonly longestDryRun_days: number;
  /** … in at least this share of years. */
  readonly goodYears_fraction: number;
}

/** What a gap is filled from first. Days that the neighbours cannot fill take the same days of other years. */
export const gapFillings = ['otherYears', 'normalRatio', 'inverseDistance'] as const;
export type GapFilling = (typeof gapFillings)[number];

/** How the rain of wet days is spread where a record's months are fitted. */
export const wetDayAmountKinds = ['gamma', 'mixedExponential'] as const;
export type WetDayAmountKind = (typeof wetDayAmountKinds)[number];

/** Which sites a station is judged at: those where something of it was measured, all, or none. */
export const judgings = ['whereMeasured', 'always', 'never'] as const;
export type Judging = (typeof judgings)[number];

/** The programme's settings. Every default stands in `defaultSettings`. */
export interface DesignSettings extends KitSettings, RolloutSettings {
  readonly programme: string;
  readonly target: Target;
  readonly litres_per_person_per_day: number;
  readonly firstFlush_mm: number;
  /** How much of the doubt a range holds. */
  readonly range_fraction: number;
  /** How often the record is drawn again. */
  readonly draws: number;
  readonly seed: number;
  /** A water year with a larger share of its days unknown is not judged. */
  readonly missingDays_fraction: number;
  /** Fewer judged years never hold. */
  readonly leastYears: number;
  /** 1–12, or null: the month that least splits dry spells. */
  readonly waterYearStartMonth: number | null;
  readonly gapFilling: GapFilling;
  /** The order of each day by which sites are judged. */
  readonly dayOrder: DayOrder;
  /** A site is designed for the people of so many years after its hand-over, where it names no year. */
  readonly designAfterHandOver_years: number;
  /** Growth of people where a site states none; null: none is reckoned with. */
  readonly growthFraction_per_year: number | null;
  /** For sites whose households were counted and not their people; null: such people are not known. */
  readonly people_per_household: number | null;
  /** How many years of rain are made up where a gauge has normals and no record. */
  readonly madeYears: number;
  readonly wetDayAmounts: WetDayAmountKind;
  /** How far from a site without a gauge of its own a gauge may be. */
  readonly gaugeReach_km: number;
  readonly judgeDrainage: Judging;
  readonly judgeSettling: Judging;
  readonly judgeHead: Judging;
  readonly judgeStand: Judging;
  readonly judgeTreatment: Judging;
  readonly judgeSafety: Judging;
  /** How seldom the storm is that gutters and overflows are to carry. */
  readonly stormReturnPeriod_years: number;
  /** What a storm's flow may be more by, where no range of it is stated. */
  readonly stormMargin_fraction: number;
  /** Share of the wettest day's rain that falls in its wettest five minutes, and who says so; null: no storm is made from daily rain. */
  readonly fiveMinutesOfDay_fraction: number | null;
  readonly fiveMinutesOfDaySource: string | null;
  readonly waterTemperature_C: number;
  /** The grain that is to settle, how heavy it is, and what share of it. */
  readonly settlingGrain_um: number;
  readonly settlingGrainDensity_kg_per_m3: number;
  readonly settledTarget_fraction: number;
  /** Solids a roof sheds in a year; null: not known. */
  readonly roofSolids_g_per_m2_per_year: number | null;
  /** Hours of a day in which people pump. */
  readonly pumping_h_per_day: number;
  readonly tapFlow_L_per_min: number;
  /** Head wanted at an open tap, and what it may be less by. */
  readonly residualHead_m: number;
  readonly headMargin_m: number;
  /** Head the treatment unit takes at the flow of its taps; null: not known. */
  readonly unitHead_m: number | null;
  /** The wind stands are held against; null: not known. */
  readonly windSpeed_m_per_s: number | null;
  readonly windExposure: WindExposure;
  /** What loads and wind may be more by. */
  readonly standMargin_fraction: number;
  /** Share of a day's litres that is fetched in its busiest hour, morning and evening each. */
  readonly peakShare_fraction: number;
  /** The last in line is to wait no longer than this. */
  readonly waitLimit_min: number;
  /** What may be asked of a treatment unit beyond the day that asks for most. */
  readonly treatmentMargin_fraction: number;
  /** Turbidity of roof water in the tank, usual and at the worse end; null: not known. */
  readonly roofTurbidity_NTU: number | null;
  readonly roofTurbidityHigh_NTU: number | null;
  /** Share of the turbidity that settles before the unit. */
  readonly settledTurbidity_fraction: number;
  /** How far the fall of a site's flow may lie from what the rating says, as the spread of its logarithm, and how far a reading may be out. */
  readonly foulingSpread_fraction: number;
  readonly flowReadingError_fraction: number;
  /** How often a set fails by itself; null: not reckoned with. */
  readonly cartridgeFailures_per_year: number | null;
  /** How many futures of a set are run. */
  readonly futures: number;
  /** Years of healthy life lost to drinking water that the programme accepts. */
  readonly healthTarget_DALY_per_person_per_year: number;
  /** Water drunk unboiled, usual and at the worse end. */
  readonly litresDrunk_L_per_person_per_day: number;
  readonly litresDrunkHigh_L_per_person_per_day: number;
  /** Share of the people who drink untreated water, and days of a year on which nobody's is treated; null: not known. */
  readonly skipping_fraction: number | null;
  readonly daysOff_per_year: number | null;
  /** Share of the raw water's germs that come back into a container; null: not reckoned with. */
  readonly recontamination_fraction: number | null;
  /** Share of the flow of one leaking cartridge that goes through unfiltered. */
  readonly leak_fraction: number;
  /** The longest time since a clean sample that a verdict of fit may rest on. */
  readonly sampleAge_days: number;
  /** Share of the people who can fall ill of rotavirus. */
  readonly susceptibleToRotavirus_fraction: number;
}

/**
 * The settings a programme has until it states its own. Storm every 20 years: NCC 2019 vol. 2 part 3.5.3, eaves gutters;
 * 30 minutes in line: Sphere 2018; the target of health, a litre a day and the susceptible share: WHO, guidelines 4th ed., from memory; peaks, spreads, margins, leak and the age of a sample are ours;
 * 7.5 L a minute a tap: Sphere 2018; 1 m left at a tap is from memory; grain, margins and hours of pumping are ours. Sources: target, range, seed, shares, least years and years to the design year are ours
 * (docs/decisions); 7.5 L a person a day is the lower end of Sphere 2018's basic survival range, water supply standard
 * 2.1; first flush 0.5 mm is MSMA 2011 ch. 6 (from memory), inside the Texas manual's 0.41–0.81 mm.
 */
export const defaultSettings: DesignSettings = {
  programme: 'Programme without a name',
  target: { daysMet_fraction: 0.95, longestDryRun_days: 7, goodYears_fraction: 0.8 },
  litres_per_person_per_day: 7.5,
  firstFlush_mm: 0.5,
  range_fraction: 0.9,
  draws: 1000,
  seed: 1,
  missingDays_fraction: 0.1,
  leastYears: 10,
  waterYearStartMonth: null,
  gapFilling: 'otherYears',
  dayOrder: 'drawFirst',
  designAfterHandOver_years: 5,
  growthFraction_per_year: null,
  people_per_household: null,
  madeYears: 100,
  wetDayAmounts: 'gamma',
  gaugeReach_km: 50,
  judgeDrainage: 'whereMeasured',
  judgeSettling: 'whereMeasured',
  judgeHead: 'whereMeasured',
  judgeStand: 'whereMeasured',
  stormReturnPeriod_years: 20,
  stormMargin_fraction: 0.1,
  fiveMinutesOfDay_fraction: null,
  fiveMinutesOfDaySource: null,
  waterTemperature_C: 20,
  settlingGrain_um: 20,
  settlingGrainDensity_kg_per_m3: 2650,
  settledTarget_fraction: 0.5,
  roofSolids_g_per_m2_per_year: null,
  pumping_h_per_day: 8,
  tapFlow_L_per_min: 7.5,
  residualHead_m: 1,
  headMargin_m: 0.5,
  unitHead_m: null,
  windSpeed_m_per_s: null,
  windExposure: 'openGround',
  standMargin_fraction: 0.1,
  judgeTreatment: 'whereMeasured',
  judgeSafety: 'whereMeasured',
  peakShare_fraction: 0.4,
  waitLimit_min: 30,
  treatmentMargin_fraction: 0.2,
  roofTurbidity_NTU: null,
  roofTurbidityHigh_NTU: null,
  settledTurbidity_fraction: 0,
  foulingSpread_fraction: 0.5,
  flowReadingError_fraction: 0.1,
  cartridgeFailures_per_year: null,
  futures: 200,
  healthTarget_DALY_per_person_per_year: 1e-6,
  litresDrunk_L_per_person_per_day: 1,
  litresDrunkHigh_L_per_person_per_day: 2,
  skipping_fraction: null,
  daysOff_per_year: null,
  recontamination_fraction: null,
  leak_fraction: 0.01,
  sampleAge_days: 400,
  susceptibleToRotavirus_fraction: 0.06,
  ...defaultKitSettings,
  ...defaultRolloutSettings,
};
