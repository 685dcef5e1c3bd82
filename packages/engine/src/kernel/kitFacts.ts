import type { DayIndex } from './days.ts';

/** How a part is counted. */
export const countedIns = ['piece', 'm', 'kg', 'L'] as const;
export type CountedIn = (typeof countedIns)[number];

/** What must be kept away from other things on the way. */
export const dangers = ['chlorine', 'fuel'] as const;
export type Danger = (typeof dangers)[number];

/** What the catalogue says of a part beyond its sizes: how it is bought, kept and carried. Null is "not known", never zero. */
export interface KitFigures {
  readonly countedIn: CountedIn;
  /** Second and third side, packed; the longest is `length_m`. */
  readonly width_m: number | null;
  readonly height_m: number | null;
  /** Room it takes, packed, where that is stated and not its three sides. */
  readonly bulk_L: number | null;
  readonly packSize_count: number | null;
  /** So many pieces one of it travels in, each with its share of mass and room. */
  readonly pieces_count: number | null;
  readonly supplier: string | null;
  readonly leadTime_days: number | null;
  readonly isFragile: boolean | null;
  readonly danger: Danger | null;
  readonly stock_count: number | null;
  readonly stockCountedOn: DayIndex | null;
  readonly life_years: number | null;
  /** The file of its picture. */
  readonly picture: string | null;
}

/** Of a part of which nothing is said but what it is. */
export const noKitFigures: KitFigures = {
  countedIn: 'piece',
  width_m: null,
  height_m: null,
  bulk_L: null,
  packSize_count: null,
  pieces_count: null,
  supplier: null,
  leadTime_days: null,
  isFragile: null,
  danger: null,
  stock_count: null,
  stockCountedOn: null,
  life_years: null,
  picture: null,
};

/** What a rule of the kit counts. A metre of a part that comes in bars is cut from whole bars. */
export const countedBys = [
  'site',
  'person',
  'household',
  'roof',
  'gutter',
  'gutterMetre',
  'gutterOutlet',
  'gutterBend',
  'gutterJoint',
  'downpipe',
  'downpipeMetre',
  'diverter',
  'tank',
  'settlingTank',
  'overflow',
  'stand',
  'standPad',
  'pipe',
  'pipeMetre',
  'pipeJoint',
  'elbow',
  'tee',
  'valve',
  'meter',
  'tap',
  'unit',
  'cartridgeSet',
  'cartridge',
] as const;
export type CountedBy = (typeof countedBys)[number];

export const kitRoundings = ['up', 'nearest', 'none'] as const;
export type KitRounding = (typeof kitRoundings)[number];

/** What of a site, or of the thing that is counted, a condition looks at. Of a thing: only those that meet it are counted. */
export const conditionFields = [
  'siteClass',
  'handPump',
  'people',
  'roofMaterial',
  'gutterShape',
  'gutterWidth_mm',
  'downpipeBore_mm',
  'tankVolume_L',
  'tankPart',
  'standHeight_m',
  'pipeLeg',
  'pipeBore_mm',
  'unitPart',
] as const;
export type ConditionField = (typeof conditionFields)[number];

export const conditionTests = ['is', 'isNot', 'atLeast', 'atMost'] as const;
export type ConditionTest = (typeof conditionTests)[number];

export interface KitCondition {
  readonly field: ConditionField;
  readonly test: ConditionTest;
  readonly value: string;
}

/** So many of a part for each of something. */
export interface KitRule {
  readonly ruleId: string;
  readonly partId: string;
  readonly countedBy: CountedBy;
  /** Parts, or metres of a part sold by the metre, for each. */
  readonly each_count: number;
  readonly rounding: KitRounding;
  readonly spare_fraction: number;
  readonly leastSpare_count: number;
  /** All must be met. */
  readonly conditions: readonly KitCondition[];
}

export const carrierModes = ['person', 'twoPeople', 'boat', 'truck', 'pallet', 'shippingContainer'] as const;
export type CarrierMode = (typeof carrierModes)[number];

/** What carries kit. Every limit is the programme's own; null is "not stated". */
export interface Carrier {
  readonly carrierId: string;
  readonly name: string;
  readonly mode: CarrierMode;
  readonly limit_kg: number | null;
  readonly limit_L: number | null;
  readonly longest_m: number | null;
  /** Share of its room that can be filled. */
  readonly stowage_fraction: number;
  readonly carriers_count: number;
  /** From end to end. */
  readonly length_m: number | null;
  /** At its limit. */
  readonly freeboard_cm: number | null;
  /** With nothing aboard but its crew. */
  readonly freeboardEmpty_cm: number | null;
  readonly leastFreeboard_cm: number | null;
  readonly limitSetBy: string | null;
  readonly limitSetOn: DayIndex | null;
}

/** Two parts that never travel in one load. */
export interface PartsApart {
  readonly partId: string;
  readonly otherPartId: string;
}

/** What a unit of a currency was worth in the programme's currency. */
export interface CurrencyRate {
  readonly currency: string;
  readonly day: DayIndex;
  readonly perUnit: number;
  readonly source: string | null;
}

/** From this day on `factor` old units are one new. */
export interface Redenomination {
  readonly currency: string;
  readonly newCurrency: string;
  readonly day: DayIndex;
  readonly factor: number;
  readonly source: string | null;
}

/** The heads of the cost of water over its life (WASHCost). */
export const costHeads = [
  'capExHardware',
  'capExSoftware',
  'opEx',
  'capManEx',
  'directSupport',
  'indirectSupport',
  'costOfCapital',
] as const;
export type CostHead = (typeof costHeads)[number];

/** What a cost is paid for. */
export const costPers = ['site', 'year', 'person', 'personYear'] as const;
export type CostPer = (typeof costPers)[number];

/** Something that is spent beside parts. */
export interface CostFacts {
  readonly costId: string;
  /** Null: each site. */
  readonly siteId: string | null;
  readonly head: CostHead;
  readonly what: string;
  readonly amount: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly currency: string;
  readonly priceDate: DayIndex;
  readonly per: CostPer;
  readonly life_years: number | null;
  readonly source: string | null;
}

/** What a programme says of kits, carrying and money. */
export interface KitFacts {
  readonly rules: readonly KitRule[];
  readonly carriers: readonly Carrier[];
  readonly keptApart: readonly PartsApart[];
  readonly rates: readonly CurrencyRate[];
  readonly redenominations: readonly Redenomination[];
  readonly costs: readonly CostFacts[];
}

/** Of a programme that says nothing of them. */
export const noKit: KitFacts = {
  rules: [],
  carriers: [],
  keptApart: [],
  rates: [],
  redenominations: [],
  costs: [],
};

/** The settings of kits and costs. Amounts are of the programme's currency; null is "not stated". */
export interface KitSettings {
  /** The currency all costs are told in; null: that of the latest price. */
  readonly currency: string | null;
  /** What prices change by in a year after their own day; null: they stand. */
  readonly priceChange_fraction_per_year: number | null;
  /** A rate older than this, at the day of the price, is told of. */
  readonly oldRate_days: number;
  /** What money costs in a year, and what prices rise by. */
  readonly interest_fraction_per_year: number | null;
  readonly inflation_fraction_per_year: number | null;
  /** Over how many years costs are told. */
  readonly costYears: number;
  /** What a cut takes of a bar. */
  readonly cutWaste_mm: number;
  /** Share of the time, and of the people, for whom the service works: likely, low, high. */
  readonly workingService_fraction: number | null;
  readonly workingServiceLow_fraction: number | null;
  readonly workingServiceHigh_fraction: number | null;
  /** What people buy and boil today. */
  readonly boughtWater_L_per_person_per_day: number | null;
  readonly boughtWater_amount_per_L: number | null;
  readonly boiledWater_L_per_person_per_day: number | null;
  readonly fuel_amount_per_kg: number | null;
  readonly fuelHeat_MJ_per_kg: number | null;
  readonly stoveEfficiency_fraction: number | null;
  /** A piped scheme instead: what it costs a person to build, for how long it serves, and what it costs in a year. */
  readonly pipedScheme_amount_per_person: number | null;
  readonly pipedScheme_years: number | null;
  readonly pipedScheme_amount_per_person_per_year: number | null;
}

/** 400 days, 15 years and a cut of 3 mm (a saw's width, common practice, no source) are ours. */
export const defaultKitSettings: KitSettings = {
  currency: null,
  priceChange_fraction_per_year: null,
  oldRate_days: 400,
  interest_fraction_per_year: null,
  inflation_fraction_per_year: null,
  costYears: 15,
  cutWaste_mm: 3,
  workingService_fraction: null,
  workingServiceLow_fraction: null,
  workingServiceHigh_fraction: null,
  boughtWater_L_per_person_per_day: null,
  boughtWater_amount_per_L: null,
  boiledWater_L_per_person_per_day: null,
  fuel_amount_per_kg: null,
  fuelHeat_MJ_per_kg: null,
  stoveEfficiency_fraction: null,
  pipedScheme_amount_per_person: null,
  pipedScheme_years: null,
  pipedScheme_amount_per_person_per_year: null,
};
