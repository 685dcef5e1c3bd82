import type { DayIndex } from './days.ts';

/** What says how much of the germs a barrier takes out: a challenge test of this very product, a credit of a health authority, or nothing. */
export const reductionEvidences = ['challengeTest', 'credited', 'none'] as const;
export type ReductionEvidence = (typeof reductionEvidences)[number];

/** The three classes of germs log reductions are stated for. */
export const germClasses = ['bacteria', 'viruses', 'protozoa'] as const;
export type GermClass = (typeof germClasses)[number];

/** How many tenfold steps a barrier takes out, as stated; null where that is not known. */
export interface StatedReductions {
  readonly bacteria_log10: number | null;
  readonly viruses_log10: number | null;
  readonly protozoa_log10: number | null;
  readonly evidence: ReductionEvidence | null;
  /** Who says so, and where. */
  readonly source: string | null;
}

/** A treatment unit as the catalogue has it: a set of cartridges in parallel, and the pump on it. All its figures are of the set when it is clean. */
export interface UnitFigures {
  readonly cartridges_count: number | null;
  /** Of all its cartridges. */
  readonly membraneArea_m2: number | null;
  /** Through a square metre, clean, at 20 °C. */
  readonly permeability_L_per_m2_h_bar: number | null;
  /** Of all its cartridges, clean, at the rated pressure and 20 °C. */
  readonly ratedFlow_L_per_h: number | null;
  readonly ratedPressure_kPa: number | null;
  readonly highestPressure_kPa: number | null;
  readonly pore_nm: number | null;
  /** Litres a set is rated for. */
  readonly ratedLitres_L: number | null;
  /** The turbidity those litres are rated at, and the highest it may be given. */
  readonly ratedTurbidity_NTU: number | null;
  readonly highestTurbidity_NTU: number | null;
  /** A set is changed after so long, whatever it passed. */
  readonly lifeLimit_years: number | null;
  /** Below this flow, at the rated pressure and 20 °C, it is changed. */
  readonly lowestFlow_L_per_h: number | null;
  /** Share of the treated litres that goes back through it to clean it, and how long that takes each day. */
  readonly backwash_fraction: number | null;
  readonly backwash_min_per_day: number | null;
  /** The piston of its hand pump. */
  readonly pistonBore_mm: number | null;
  readonly pistonStroke_mm: number | null;
  /** How many times longer the way of the hand is than that of the piston. */
  readonly lever_ratio: number | null;
  readonly reductions: StatedReductions;
}

/** A treatment unit at a site. */
export interface TreatmentUnitFacts {
  readonly serial: string;
  readonly partId: string | null;
  /** Those of its part; null where the part is not known. */
  readonly figures: UnitFigures | null;
  readonly installedOn: DayIndex | null;
  readonly removedOn: DayIndex | null;
}

/** A cartridge in a unit. */
export interface CartridgeFacts {
  readonly serial: string;
  /** The unit it is in; may be null where the site has one alone. */
  readonly unitSerial: string | null;
  readonly partId: string | null;
  readonly batch: string | null;
  readonly installedOn: DayIndex | null;
  readonly removedOn: DayIndex | null;
  readonly reason: string | null;
}

/** The flow through a unit as somebody measured it. */
export interface FlowReading {
  /** Null where the site has one unit alone. */
  readonly unitSerial: string | null;
  readonly readOn: DayIndex;
  readonly flow_L_per_h: number;
  readonly pressure_kPa: number | null;
  readonly waterTemperature_C: number | null;
  /** Passed since the set was new, by a meter. */
  readonly passed_L: number | null;
}

/** A test with air under pressure: how fast it falls. */
export interface PressureTest {
  readonly unitSerial: string | null;
  readonly testedOn: DayIndex;
  readonly pressure_kPa: number;
  readonly fall_kPa_per_min: number;
  /** Air under pressure while it falls. */
  readonly airVolume_L: number | null;
}

/** All that is told of a site's treatment. */
export interface SiteTreatmentFacts {
  readonly units: readonly TreatmentUnitFacts[];
  readonly cartridges: readonly CartridgeFacts[];
  /** In the order of their days. */
  readonly flowReadings: readonly FlowReading[];
  readonly pressureTests: readonly PressureTest[];
}

/** Of a site where nothing is told of its treatment. */
export const noTreatment = {
  units: [],
  cartridges: [],
  flowReadings: [],
  pressureTests: [],
} as const satisfies SiteTreatmentFacts;

/** Of a unit of which no figure is known. */
export const unmeasuredUnit = {
  cartridges_count: null,
  membraneArea_m2: null,
  permeability_L_per_m2_h_bar: null,
  ratedFlow_L_per_h: null,
  ratedPressure_kPa: null,
  highestPressure_kPa: null,
  pore_nm: null,
  ratedLitres_L: null,
  ratedTurbidity_NTU: null,
  highestTurbidity_NTU: null,
  lifeLimit_years: null,
  lowestFlow_L_per_h: null,
  backwash_fraction: null,
  backwash_min_per_day: null,
  pistonBore_mm: null,
  pistonStroke_mm: null,
  lever_ratio: null,
  reductions: { bacteria_log10: null, viruses_log10: null, protozoa_log10: null, evidence: null, source: null },
} as const satisfies UnitFigures;

/**
 * How much more is asked of the tanks of a site because part of what is treated goes back through the units to clean them? The mean of the shares of its units, which treat alike much.
 *
 * @param units - the site's units with their figures, backwash as a share of the litres treated for people [fraction]
 * @returns litres that go back ÷ litres people ask [fraction]; 0 where there is no unit or none says
 * @definition ours: docs/decisions/0211-backwash-is-asked-of-the-tank.md
 * @example
 * backwashShare_fraction([]) // → 0
 */
export function backwashShare_fraction(units: readonly TreatmentUnitFacts[]): number {
  const inUse = units.filter(({ removedOn }) => removedOn === null);
  const shares = inUse.map(({ figures }) => figures?.backwash_fraction ?? 0);
  const usable = shares.map((share) => (share > 0 && share <= 1 ? share : 0));
  return usable.length === 0 ? 0 : usable.reduce((sum, share) => sum + share, 0) / usable.length;
}
