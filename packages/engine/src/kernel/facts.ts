import type { DayIndex } from './days.ts';
import type { Place } from './problems.ts';

/** Roof coverings whose runoff fraction and cautions the roof room knows. */
export const roofMaterials = ['corrugatedMetal', 'tile', 'concrete', 'fibreCement', 'shingle', 'thatch'] as const;
export type RoofMaterial = (typeof roofMaterials)[number];

/** How a roof is built: two slopes to a ridge, one slope, a slope to each of four eaves, or none to speak of. */
export const roofForms = ['gable', 'oneSlope', 'hip', 'flat'] as const;
export type RoofForm = (typeof roofForms)[number];

/** A first-flush diverter: its depth on the plan roof or its chamber, and whether its drain hole still runs. */
export interface DiverterFacts {
  readonly firstFlush_mm: number | null;
  readonly chamber_L: number | null;
  readonly drainHole: 'open' | 'blocked';
  /** Inside diameter of the pipe its chamber is made of. */
  readonly chamberBore_mm: number | null;
  /** Diameter of the hole its chamber empties by. */
  readonly drainHole_mm: number | null;
}

/** A roof as surveyed. Null is "not known", never zero. */
export interface RoofFacts {
  readonly roofId: string;
  readonly length_m: number | null;
  readonly width_m: number | null;
  readonly roofPlanArea_m2: number | null;
  readonly material: RoofMaterial | null;
  readonly runoffFraction: number | null;
  /** Share of the plan area that drains to a gutter which leads to the tank. */
  readonly gutteredFraction: number | null;
  /** The tank its gutter leads to; may be null where all the site's tanks are one body of water. */
  readonly tankId: string | null;
  readonly diverter: DiverterFacts | null;
  readonly form: RoofForm | null;
  /** Slope against the level. */
  readonly pitch_deg: number | null;
  /** From the ground to the line of the gutter. */
  readonly eaveHeight_m: number | null;
}

/** The shapes a gutter may have in section; `cutPipe` is a pipe cut in half along its length. */
export const gutterShapes = ['halfRound', 'rectangular', 'trapezoidal', 'cutPipe'] as const;
export type GutterShape = (typeof gutterShapes)[number];

/** A gutter as surveyed: one run of it along an eave. Null is "not known", never zero. */
export interface GutterFacts {
  readonly gutterId: string;
  readonly roofId: string;
  readonly shape: GutterShape | null;
  /** Across its top, inside. */
  readonly width_mm: number | null;
  readonly depth_mm: number | null;
  readonly length_m: number | null;
  /** How much it falls toward its outlet on one metre of its length; 0: it is level. */
  readonly fall_mm_per_m: number | null;
  /** Diameter of the hole its water leaves by. */
  readonly outlet_mm: number | null;
}

/** A pipe that takes the water of a roof's gutters down, as surveyed. */
export interface DownpipeFacts {
  readonly downpipeId: string;
  readonly roofId: string;
  /** Inside diameter. */
  readonly bore_mm: number | null;
  readonly length_m: number | null;
}

/** What a tank is for: water is stored in it, or clears in it first. */
export const tankRoles = ['storage', 'settling'] as const;
export type TankRole = (typeof tankRoles)[number];

/** A tank as surveyed. Heights are above the tank's own floor. */
export interface TankFacts {
  readonly tankId: string;
  readonly nominal_L: number | null;
  /** The volume its catalogue part has, where one is named and known. */
  readonly partVolume_L: number | null;
  readonly outletHeight_m: number | null;
  readonly overflowHeight_m: number | null;
  readonly diameter_m: number | null;
  /** The tank it is joined to at the foot, so that both share one level. */
  readonly joinedTo: string | null;
  readonly role: TankRole;
  /** Share of the site's people who draw from it and the tanks joined to it; null where not said. */
  readonly peopleFraction: number | null;
  /** Outside, from its foot to the top of its wall. */
  readonly height_m: number | null;
  /** From the ground to the tank's foot; 0: it stands on the ground. */
  readonly standHeight_m: number | null;
}

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

/** `drawFirst`: people draw in the morning, then rain comes in, then the rest spills. `yas` and `ybs`: yield after and before spill. */
export const dayOrders = ['drawFirst', 'yas', 'ybs'] as const;
export type DayOrder = (typeof dayOrders)[number];

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
  /** Rows about this site that could not be used: while there is one, no verdict is given. */
  readonly doubts: readonly Place[];
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
}

/** What a part cost on a day. */
export interface PriceFacts {
  readonly partId: string;
  readonly priceDate: DayIndex;
  readonly amount: number;
  readonly currency: string;
}

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

/** The programme's settings. Every default stands in `defaultSettings`. */
export interface DesignSettings {
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
}

/**
 * The settings a programme has until it states its own. Sources: target, range, seed, shares, least years and years to the design year are ours
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
};

/** All the engine is told: what a folder of tables comes to. */
export interface ProgrammeFacts {
  readonly settings: DesignSettings;
  readonly sites: readonly SiteFacts[];
  readonly gauges: readonly GaugeFacts[];
  readonly parts: readonly PartFacts[];
  readonly prices: readonly PriceFacts[];
}
