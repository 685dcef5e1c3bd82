import type { DayIndex } from './days.ts';
import type { Place } from './problems.ts';
import type { StatedReductions } from './treatmentFacts.ts';

/** The germs that stand for their class. */
export const pathogens = ['campylobacter', 'rotavirus', 'cryptosporidium'] as const;
export type Pathogen = (typeof pathogens)[number];

/** How many of a germ are in a litre of water before any treatment, as measured or stated. */
export interface RawWater {
  /** Null: the water of roofs; else the second source it is of. */
  readonly secondSourceId: string | null;
  readonly pathogen: Pathogen;
  readonly typical_per_L: number;
  readonly low_per_L: number | null;
  readonly high_per_L: number | null;
  readonly source: string | null;
}

/** What else stands between the roof and the cup, beside the treatment unit and chlorine. */
export const barrierKinds = [
  'firstFlush',
  'settling',
  'storageTime',
  'filter',
  'ultraviolet',
  'boiling',
  'other',
] as const;
export type BarrierKind = (typeof barrierKinds)[number];

/** A barrier as stated. */
export interface BarrierFacts {
  readonly barrierId: string;
  readonly kind: BarrierKind;
  readonly reductions: StatedReductions;
  /** Share of the people whose water passes it; null: everybody's. */
  readonly used_fraction: number | null;
}

/** Where a sample was taken: the water of the tank, of the tap, of a container at home, or of a second source. */
export const samplePoints = ['tank', 'tap', 'container', 'secondSource'] as const;
export type SamplePoint = (typeof samplePoints)[number];

/** How a portion is read: tubes or wells that turn or do not, plates whose colonies are counted. */
export const portionKinds = ['tubes', 'plates'] as const;
export type PortionKind = (typeof portionKinds)[number];

/** Portions of one volume of a sample. */
export interface TestPortion {
  readonly kind: PortionKind;
  readonly volume_mL: number;
  /** How many tubes, or plates that could be counted. */
  readonly portions_count: number;
  /** Of tubes: how many turned. Null of plates. */
  readonly positive_count: number | null;
  /** Of plates: colonies on all of them. Null of tubes. */
  readonly colonies_count: number | null;
  /** Of plates: how many had too many to count, and from how many on that is said. */
  readonly uncountable_count: number;
  readonly uncountableFrom_count: number | null;
}

/** A sample and what was found in it. */
export interface WaterTest {
  readonly testId: string;
  readonly takenOn: DayIndex;
  readonly point: SamplePoint;
  /** E. coli; empty where none was looked for, or no portion could be used. */
  readonly portions: readonly TestPortion[];
  readonly turbidity_NTU: number | null;
  readonly freeChlorine_mg_per_L: number | null;
  readonly pH: number | null;
  readonly waterTemperature_C: number | null;
  readonly laboratory: string | null;
}

/** Why a sample cannot be used: its row could not be read, its day is still to come, or what was found in it cannot be reckoned with. */
export const unusableTestReasons = ['unread', 'dayToCome', 'portions'] as const;
export type UnusableTestReason = (typeof unusableTestReasons)[number];

/** A sample that cannot be used as it was written down. It is told of, so that nothing that was found is lost. */
export interface UnusableTest {
  readonly testId: string;
  readonly because: UnusableTestReason;
  /** The row that is to be mended. */
  readonly at: Place;
  /** Null where it could not be read. */
  readonly point: SamplePoint | null;
  /** Those of its portions that could be read. */
  readonly portions: readonly TestPortion[];
}

/** What somebody found who walked the site with a list of questions. */
export interface InspectionFacts {
  readonly inspectedOn: DayIndex;
  /** How many risks were found, of so many that were asked about. */
  readonly risks_count: number;
  readonly questions_count: number;
  readonly by: string | null;
}

/** What chlorine is made of. */
export const chlorineProducts = ['bleach', 'calciumHypochlorite', 'chlorinatedLime', 'tablets', 'other'] as const;
export type ChlorineProduct = (typeof chlorineProducts)[number];

/** How a site's water is chlorinated. */
export interface ChlorinationFacts {
  readonly product: ChlorineProduct | null;
  /** Share of it that is active chlorine. */
  readonly active_fraction: number | null;
  readonly stock_g_per_L: number | null;
  readonly dose_mg_per_L: number | null;
  /** After the contact time. */
  readonly residual_mg_per_L: number | null;
  readonly contact_min: number | null;
  /** Share of the contact time that the quickest water has; null: as of a tank without walls. */
  readonly baffling_fraction: number | null;
  readonly pH: number | null;
  readonly waterTemperature_C: number | null;
  /** Of what is dosed at once. */
  readonly batch_L: number | null;
}

/** All that is told of how safe a site's water is. */
export interface SiteSafetyFacts {
  /** The site's own, or the programme's where it has none. */
  readonly rawWater: readonly RawWater[];
  readonly barriers: readonly BarrierFacts[];
  /** In the order of their days. */
  readonly tests: readonly WaterTest[];
  readonly unusableTests: readonly UnusableTest[];
  readonly inspections: readonly InspectionFacts[];
  readonly chlorination: ChlorinationFacts | null;
  /** Share of the people who drink untreated water; null: as the settings say. */
  readonly skipping_fraction: number | null;
  /** Days of a year on which the water of everybody goes untreated; null: as the settings say. */
  readonly daysOff_per_year: number | null;
  /** Above the sea, for boiling. */
  readonly altitude_m: number | null;
}

/** Of a site where nothing is told of how safe its water is. */
export const noSafety = {
  rawWater: [],
  barriers: [],
  tests: [],
  unusableTests: [],
  inspections: [],
  chlorination: null,
  skipping_fraction: null,
  daysOff_per_year: null,
  altitude_m: null,
} as const satisfies SiteSafetyFacts;
