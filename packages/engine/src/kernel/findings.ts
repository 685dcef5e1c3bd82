import type { DayIndex } from './days.ts';
import type { DrainageFinding } from './drainageFindings.ts';
import type { EngineProblemCode } from './engineProblems.ts';
import type { Ration, SecondSourceKind } from './facts.ts';
import type { HeadFinding } from './headFindings.ts';
import type { HeaviestPiece, SiteCaution } from './liftingFindings.ts';
import type { Problem } from './problems.ts';
import type { JudgedRain } from './rainRecord.ts';
import type { Range } from './range.ts';
import type { SafetyFinding } from './safetyFindings.ts';
import type { DayOrder, Target } from './settings.ts';
import type { SettlingFinding } from './settlingFindings.ts';
import type { StandFinding, StandGate } from './standFindings.ts';
import type { DesignStorm, RainByIntensity, StormTold } from './stormFindings.ts';
import type { TreatmentFinding } from './treatmentFindings.ts';
import type { StationVerdict, Verdict } from './verdicts.ts';
import type { WorkingLine } from './working.ts';

/** An unbroken run of dry days. */
export interface DryRun {
  readonly from: DayIndex;
  readonly to: DayIndex;
  readonly days: number;
  /** Label of the water year its last day is in. */
  readonly waterYear: number;
}

/** One water year at the chosen tank. */
export interface YearAtTank {
  readonly waterYear: number;
  readonly firstDay: DayIndex;
  readonly judged: boolean;
  readonly dryDays: number;
  /** The longest dry run reached within the year, days before it included. */
  readonly longestRun_days: number;
  readonly filledDays: number;
}

/** One size of tank on the exact curve. */
export interface SizePoint {
  readonly tankVolume_L: number;
  readonly partId: string | null;
  readonly dryDays_per_year: number;
  readonly goodYears: number;
  readonly meetsTarget: boolean;
}

/** What a tank leaves to its second source, and what it would do without it. */
export interface SecondSourceUse {
  readonly secondSourceId: string;
  readonly name: string;
  readonly kind: SecondSourceKind;
  /** Days in a mean judged year on which judged litres come from it, wholly or in part. */
  readonly days_per_year: number;
  /** The same of each judged year of the record, in their order. */
  readonly days_by_year: readonly number[];
  /** Judged litres from it in a mean year of the record, years not judged among them. */
  readonly given_L_per_year: number;
  readonly aloneVerdict: Verdict;
  readonly aloneGoodYears: number;
  readonly aloneDryDays_per_year: number;
}

/** What the storage station found of one body of water: a tank, or tanks joined at the foot. Lists of days are of the judged record, its years as labelled. */
export interface StorageFinding {
  /** The tank, or the tanks joined at the foot, by their letters. */
  readonly tankIds: readonly string[];
  /** Who draw from it: the site's people × their share. */
  readonly people: number;
  readonly verdict: Verdict;
  readonly order: DayOrder;
  /** Null where nothing is rationed, and then the two fields after it are. */
  readonly ration: Ration | null;
  /** Days on which the ration was in force, in a mean year of the record; those that cut the judged litres are dry days too. */
  readonly rationedDays_per_year: number | null;
  /** This tank with nothing rationed. */
  readonly unrationed: SizePoint | null;
  readonly tankVolume_L: number;
  /** Means over the days of the year, and what the day with most of all asks for. */
  readonly judgedDemand_L_per_day: number;
  readonly judgedDemandHighest_L_per_day: number;
  /** Days on which judged litres are asked, in a mean judged year. */
  readonly askedDays_per_year: number;
  readonly otherDemand_L_per_day: number;
  readonly inflow_L_per_year: number;
  readonly judgedYears: number;
  readonly goodYears: number;
  readonly goodYearsNeeded: number;
  readonly goodYears_fraction_range: Range;
  /** Good ones among as many coming years as were judged. */
  readonly comingGood_years_range: Range;
  readonly daysMet_fraction: number;
  readonly daysMet_fraction_range: Range;
  readonly dryDays_per_year: number;
  readonly dryDays_per_year_range: Range;
  /** Judged litres short in a mean judged year. */
  readonly shortfall_L_per_year: number;
  /** Days on which the other purposes were not wholly met, in a mean judged year. */
  readonly otherShortDays_per_year: number;
  /** Why the smallest tanks are not known to the litre: the rules look at how full the tank is. Null where they are. */
  readonly noExactSize: 'order' | 'ration' | null;
  /** Smallest of `sizes` that meets the target and that holds, where no exact size is known; null where none does, or it is. Without the second source. */
  readonly catalogueForTarget_L: number | null;
  readonly catalogueToHold_L: number | null;
  /** Smallest tank for each half of the target and for both; null where no tank would do or `noExactSize` says why it is not known. Without the second source. */
  readonly tankForDays_L: number | null;
  readonly tankForRuns_L: number | null;
  readonly tankForTarget_L: number | null;
  /** Smallest tank that would hold, to about a fiftieth; null where this one holds or none would. Without the second source. */
  readonly tankToHold_L: number | null;
  /** This tank with nothing asked but the judged litres; null where nothing else is asked or the target is met. */
  readonly judgedAlone: SizePoint | null;
  /** Null where the site has none. Days it covers are not dry. */
  readonly secondSource: SecondSourceUse | null;
  /** The assumption that keeps it from holding, whatever the figures say: the code of its problem; null where there is none. */
  readonly cappedBy: EngineProblemCode | null;
  /** What keeps it short, the second source left out: too small a tank, too little water for any tank, or the ration itself. Null where it meets the target. */
  readonly lacks: 'tank' | 'water' | 'ration' | null;
  readonly longestRun: DryRun | null;
  /** Longest dry runs first, at most ten. */
  readonly dryRuns: readonly DryRun[];
  readonly years: readonly YearAtTank[];
  /** The catalogue's tanks and the chosen one, by size, without the second source. */
  readonly sizes: readonly SizePoint[];
  /** The generous end: rain is let in before people draw. */
  readonly yieldBeforeSpill: { readonly dryDays_per_year: number; readonly goodYears: number };
  /** Days from an empty tank to the first day of service, from the site's hand-over day; null where none is set or it never serves. */
  readonly firstService: FirstService | null;
}

/** When a tank that starts empty first serves: the median over hand-overs in the judged years, and the middle eight in ten. */
export interface FirstService {
  readonly handOverDay: DayIndex;
  readonly wait_days: number;
  readonly wait_days_range: Range;
  readonly firstServiceDay: DayIndex;
}

/**
 * Days from a hand-over to the first day of service as each year of a record would have them: `wait_days[day * years_count + year]`, the first year `firstYear`, days of a leap
 * year (29 February the sixtieth). From `neverServes_days` on they are no waits.
 */
export interface WaitsByYear {
  readonly firstYear: number;
  readonly years_count: number;
  readonly wait_days: Uint16Array;
}

/** In the place of a wait: it never serves. */
export const neverServes_days = 65_534;
/** In the place of a wait: the year is not judged, or the record does not reach so far. */
export const notJudged_days = 65_535;

/** Every station of the water's path, in its order; the cup is where it is fit to drink or not. */
export const stations = ['roof', 'gutter', 'settling', 'storage', 'stand', 'treatmentUnit', 'tap', 'cup'] as const;
export type Station = (typeof stations)[number];

/** Daily series at the chosen tank, drawFirst, for the trace and the raster. Arrays are as long as the judged record. */
export interface StorageSeries {
  /** The tank, or the tanks joined at the foot, by their letters. */
  readonly tankIds: readonly string[];
  readonly firstDay: DayIndex;
  readonly rain_mm: Float64Array;
  readonly inflow_L: Float64Array;
  /** Asked for the judged purposes. */
  readonly judgedAsked_L: Float64Array;
  /** At the end of the day. */
  readonly content_L: Float64Array;
  readonly judgedTaken_L: Float64Array;
  readonly otherTaken_L: Float64Array;
  readonly spill_L: Float64Array;
  /** Judged litres missing in the tank that come from the second source. */
  readonly secondSource_L: Float64Array;
  /** 1 on a dry day. */
  readonly dry: Uint8Array;
  /** `measured`, `unknownDay`, `filledDay`, `neighbourDay` or `madeDay`. */
  readonly state: Uint8Array;
}

/** One site, roof to cup. */
export interface SiteDesign {
  readonly siteId: string;
  readonly name: string;
  /** As counted, or made from the households. */
  readonly people: number | null;
  /** In the design year: those it is judged for. */
  readonly design_people: number | null;
  readonly gaugeId: string | null;
  readonly siteClass: string | null;
  /** What it was judged by, and whose target that is. */
  readonly target: Target;
  readonly targetFrom: 'programme' | 'class';
  readonly verdict: Verdict;
  readonly stations: Readonly<Record<Station, StationVerdict>>;
  /** One for each body of water people draw from, the worst first. Empty where facts were missing: the blockers among `problems` say which. */
  readonly storages: readonly StorageFinding[];
  /** The storm its gutters are held against; null where none is known. */
  readonly storm: DesignStorm | null;
  /** Gutters to overflow; null where the station is not judged. */
  readonly drainage: DrainageFinding | null;
  /** One for each settling tank that is judged, the worst first. */
  readonly settling: readonly SettlingFinding[];
  /** One for each body of water whose way to the taps is judged, the worst first. */
  readonly head: readonly HeadFinding[];
  /** One for each tank whose stand or ground is judged, the worst first. */
  readonly stands: readonly StandFinding[];
  /** One for each treatment unit that is judged, the worst first. */
  readonly treatment: readonly TreatmentFinding[];
  /** Is its water fit to drink? Null where that is not judged. */
  readonly safety: SafetyFinding | null;
  /** May its tanks be filled and handed over? Apart from every verdict. */
  readonly standGate: StandGate;
  /** Which cautions its work asks for; shown wherever its results are. */
  readonly cautions: readonly SiteCaution[];
  /** What is heaviest to carry there; null where no part of the catalogue has a mass. */
  readonly heaviestPiece: HeaviestPiece | null;
  /** When everybody is served: that of the tank that serves last. Null where no hand-over day is set or a tank never serves. */
  readonly firstService: FirstService | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** What one gauge gave to the rain of a site without a gauge of its own. */
export interface GaugeShare {
  readonly gaugeId: string;
  readonly distance_km: number;
  /** Mean of its weight over the days. */
  readonly weight_fraction: number;
}

/** One gauge, checked and made ready for every site that uses it. `rain` is null where the record cannot carry a verdict. */
export interface GaugeFinding {
  readonly gaugeId: string;
  readonly name: string;
  readonly rain: JudgedRain | null;
  readonly problems: readonly Problem[];
  /** For a site without a gauge of its own: the gauges within reach, nearest first. Empty for a gauge. */
  readonly byDistance: readonly GaugeShare[];
  /** How hard it rains there, by its own rows or by those of the nearest gauge within reach; null where that is not known. */
  readonly storm: DesignStorm | null;
  readonly stormTold: StormTold;
  /** How its rain, or that of the gauge its storm is of, falls by intensity; null where no short intervals tell. */
  readonly rainByIntensity: RainByIntensity | null;
}
