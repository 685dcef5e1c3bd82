import type {
  DownpipeFacts,
  GutterFacts,
  GutterShape,
  PipeFacts,
  RoofFacts,
  TankFacts,
  WindExposure,
} from './buildingFacts.ts';
import type { DayIndex } from './days.ts';
import { type KitFacts, type KitFigures, noKitFigures } from './kitFacts.ts';
import type { Place } from './problems.ts';
import type { RolloutFacts } from './rolloutFacts.ts';
import { noSafety, type SiteSafetyFacts } from './safetyFacts.ts';
import type { DesignSettings, Target } from './settings.ts';
import { noTreatment, type SiteTreatmentFacts, type UnitFigures } from './treatmentFacts.ts';

/** Water wanted for one purpose. The judged purposes are served first and decide the verdict. */
export interface DemandPurpose {
  readonly purpose: string;
  readonly litres_per_person_per_day: number;
  readonly judged: boolean;
  /** Months it is wanted in, each a month from 1 to 12; left out: every month. */
  readonly months?: readonly number[];
}

/** A stretch of the year in which not everyone is there, or more than usual are. */
export interface PresencePeriod {
  /** First and last calendar day, 1 to 365, in a year without 29 February; the last may come before the first: over the year's end. */
  readonly from_dayOfYear: number;
  readonly to_dayOfYear: number;
  /** Share of the people who are there, 0 to 3. */
  readonly presentFraction: number;
  readonly reason: string | null;
}

/** Who is there when: a calendar that sites may share. On days without a period everyone is there. */
export interface PresenceCalendar {
  readonly calendarId: string;
  /** No two overlap. */
  readonly periods: readonly PresencePeriod[];
}

/** What a second source may be. */
export const secondSourceKinds = ['river', 'spring', 'well', 'pond', 'vendor'] as const;
export type SecondSourceKind = (typeof secondSourceKinds)[number];

/** Other water people fall back on when the tank is empty. */
export interface SecondSourceFacts {
  readonly secondSourceId: string;
  readonly name: string;
  readonly kind: SecondSourceKind;
  /** Months it gives water in, each a month from 1 to 12. */
  readonly months: readonly number[];
  readonly turbidity_NTU: number | null;
}

/** What is given while less than a mark is in the tank in the morning. */
export interface Ration {
  /** The mark, as a share of the usable volume. */
  readonly below_fraction: number;
  /** Share of the judged litres that is still given. */
  readonly judged_fraction: number;
  /** Share of the other litres that is still given. */
  readonly other_fraction: number;
}

/** A ration as stated: null is an empty cell. */
export type RationFacts = { readonly [K in keyof Ration]: number | null };

/** All the engine is told of one site. */
export interface SiteFacts {
  readonly siteId: string;
  readonly name: string;
  /** WGS 84, north and east positive; null where not known. */
  readonly latitude_deg: number | null;
  readonly longitude_deg: number | null;
  /** What sort of site it is, in the programme's own words; null where that is not said. */
  readonly siteClass: string | null;
  /** The target of its class; null where the programme's stands for it. */
  readonly target: Target | null;
  readonly people: number | null;
  /** The day they were counted, for growth. */
  readonly peopleCountedOn: DayIndex | null;
  readonly households_count: number | null;
  /** What the people become more by in a year, as a share; under 0 they become fewer. Null: as the settings say. */
  readonly growthFraction_per_year: number | null;
  /** The year whose people it is designed for; null: so many years after hand-over. */
  readonly designYear: number | null;
  /** The gauge given for the site; null: the gauges within reach of its position. */
  readonly gaugeId: string | null;
  /** What the gauge's rain is multiplied by for this site. */
  readonly rainFactor: number;
  readonly handOverDay: DayIndex | null;
  readonly roofs: readonly RoofFacts[];
  /** Gutters and downpipes, each of one of the roofs; empty where none was measured. */
  readonly gutters: readonly GutterFacts[];
  readonly downpipes: readonly DownpipeFacts[];
  readonly tanks: readonly TankFacts[];
  /** From the tanks to the treatment unit and from there to the taps; empty where none was measured. */
  readonly pipes: readonly PipeFacts[];
  readonly taps_count: number | null;
  /** From the ground to the mouth of the taps, and to the inlet of the treatment unit. */
  readonly tapHeight_m: number | null;
  readonly unitHeight_m: number | null;
  /** Does the treatment unit have a hand pump? Null: not said. */
  readonly hasHandPump: boolean | null;
  /** The wind a stand is held against; null: as the settings say. */
  readonly windSpeed_m_per_s: number | null;
  readonly windExposure: WindExposure | null;
  /** The site's own purposes, or the programme's where it has none; empty where neither is given. */
  readonly demand: readonly DemandPurpose[];
  /** Null where nothing is said of rationing. */
  readonly ration: RationFacts | null;
  /** Who is there when; null: everyone, all the year. */
  readonly presence: PresenceCalendar | null;
  /** What people fall back on when the tank is empty; null: nothing. */
  readonly secondSource: SecondSourceFacts | null;
  /** Other water near by that they could fall back on and do not yet; null: none is known. */
  readonly nearSecondSource: SecondSourceFacts | null;
  readonly treatment: SiteTreatmentFacts;
  readonly safety: SiteSafetyFacts;
  /** Rows about this site that could not be used: while there is one, no verdict is given. */
  readonly doubts: readonly Place[];
  /** Rows and cells that could not be used and one station alone is judged by: while there is one, that station is unknown. */
  readonly doubtsBeside: Readonly<
    Record<'drainage' | 'settling' | 'stand' | 'head' | 'treatment' | 'safety', readonly Place[]>
  >;
}

/** One reading as it came, before any check. `row` is where it stands in its file. */
export interface RainReading {
  readonly day: DayIndex;
  /** Null where the gauge was not read. */
  readonly rain_mm: number | null;
  readonly row: number;
}

/** What a calendar month usually brings at a gauge, as a table of normals has it; null where it is not known. */
export interface GaugeNormal {
  readonly month: number;
  readonly rain_mm: number | null;
  /** Days of 1 mm or more. */
  readonly wetDays: number | null;
  /** Who says so. */
  readonly source: string | null;
  readonly yearFrom: number | null;
  readonly yearTo: number | null;
}

/** How hard it rains for five minutes once in so many years, as someone states it. */
export interface StormFacts {
  readonly returnPeriod_years: number;
  readonly intensity_mm_per_h: number;
  /** Its range, where one is stated. */
  readonly low_mm_per_h: number | null;
  readonly high_mm_per_h: number | null;
  /** Who says so, and where. */
  readonly source: string | null;
}

/** A coefficient set of intensity by duration d [h] and return period T [year]: i = lambda · T^kappa / (d + theta)^eta [mm/h]. */
export interface StormCoefficients {
  readonly lambda: number;
  readonly kappa: number;
  readonly theta_h: number;
  readonly eta: number;
  /** The return periods it is made for. */
  readonly leastPeriod_years: number | null;
  readonly mostPeriod_years: number | null;
  readonly source: string | null;
}

/** Rain of one short interval; intervals without rain have no reading. */
export interface ShortReading {
  readonly day: DayIndex;
  /** The end of the interval, minutes after midnight. */
  readonly minuteOfDay: number;
  readonly interval_min: number;
  readonly rain_mm: number;
}

/** All the engine is told of one gauge. */
export interface GaugeFacts {
  readonly gaugeId: string;
  readonly name: string;
  /** WGS 84, north and east positive; null where not known: a gauge without a position is nobody's neighbour. */
  readonly latitude_deg: number | null;
  readonly longitude_deg: number | null;
  /** Local time of reading, `HH:MM`, or null. Before noon, a reading is the rain of the day before. */
  readonly readingTime: string | null;
  readonly readings: readonly RainReading[];
  /** At most one for each month, in any order; empty where the programme has none. */
  readonly normals: readonly GaugeNormal[];
  readonly storms: readonly StormFacts[];
  readonly stormCoefficients: StormCoefficients | null;
  /** Rain of less than a day, in the order of time. */
  readonly shortRain: readonly ShortReading[];
  /** The file the readings came from, for the places of problems. */
  readonly file: string;
}

/** A part of the catalogue. */
export interface PartFacts {
  readonly partId: string;
  readonly kind: string;
  readonly name: string;
  /** Usable volume, for a tank. */
  readonly volume_L: number | null;
  /** Longest side: of a gutter, the length of one piece. */
  readonly length_m: number | null;
  readonly mass_kg: number | null;
  /** In section, inside, of a gutter. */
  readonly shape: GutterShape | null;
  readonly topWidth_mm: number | null;
  readonly baseWidth_mm: number | null;
  readonly depth_mm: number | null;
  /** Inside diameter, of a pipe, an outlet or an overflow. */
  readonly bore_mm: number | null;
  /** Of a treatment unit; null of all else. */
  readonly unit: UnitFigures | null;
  readonly kit: KitFigures;
}

/** What a part cost on a day. */
export interface PriceFacts {
  readonly partId: string;
  readonly priceDate: DayIndex;
  readonly amount: number;
  readonly currency: string;
}

/** All the engine is told: what a folder of tables comes to. */
export interface ProgrammeFacts {
  readonly settings: DesignSettings;
  readonly sites: readonly SiteFacts[];
  readonly gauges: readonly GaugeFacts[];
  readonly parts: readonly PartFacts[];
  readonly prices: readonly PriceFacts[];
  readonly kit: KitFacts;
  readonly rollout: RolloutFacts;
}

/** What is told of a site of which nothing was measured but what is judged by the rain. */
export const unmeasuredSite = {
  gutters: [],
  downpipes: [],
  pipes: [],
  taps_count: null,
  tapHeight_m: null,
  unitHeight_m: null,
  hasHandPump: null,
  windSpeed_m_per_s: null,
  windExposure: null,
  treatment: noTreatment,
  safety: noSafety,
  doubtsBeside: { drainage: [], settling: [], stand: [], head: [], treatment: [], safety: [] },
} as const satisfies Partial<SiteFacts>;

/** Of a gauge of which nobody says how hard it rains. */
export const noStorms = { storms: [], stormCoefficients: null, shortRain: [] } as const satisfies Partial<GaugeFacts>;

/** Of a part of which no size is known. */
export const unmeasuredPart = {
  volume_L: null,
  length_m: null,
  mass_kg: null,
  shape: null,
  topWidth_mm: null,
  baseWidth_mm: null,
  depth_mm: null,
  bore_mm: null,
  unit: null,
  kit: noKitFigures,
} as const satisfies Omit<PartFacts, 'partId' | 'kind' | 'name'>;
