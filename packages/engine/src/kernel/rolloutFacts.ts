import type { DayIndex } from './days.ts';

/** How a way is gone. */
export const wayModes = ['road', 'river', 'foot'] as const;
export type WayMode = (typeof wayModes)[number];

/** What a place may be. A site is no place of this table: it stands among the sites. */
export const placeKinds = ['store', 'roadhead', 'landing', 'base', 'other'] as const;
export type PlaceKind = (typeof placeKinds)[number];

/** Where kit and crews start, change over, sleep or are kept. */
export interface PlaceFacts {
  readonly placeId: string;
  readonly name: string;
  readonly kind: PlaceKind | null;
  readonly latitude_deg: number | null;
  readonly longitude_deg: number | null;
  /** What changing from one carrier to another takes there [h]; null: as the settings say. */
  readonly changeOver_h: number | null;
  /** May a crew sleep there? */
  readonly maySleep: boolean;
  /** The store that fills this one by haul trips (a forward store), and with what; null: goods come here themselves. */
  readonly filledFrom: string | null;
  readonly filledBy: string | null;
  /** What making a store of it costs once [currency of the programme]; null: not known. */
  readonly setUp_amount: number | null;
}

/** A stretch of road, river or footpath between two places or sites, gone in both directions. */
export interface WayFacts {
  readonly wayId: string;
  readonly name: string | null;
  readonly from: string;
  readonly to: string;
  readonly mode: WayMode;
  readonly length_km: number | null;
  /** From `from` to `to`, and back (against the stream); null: by the length and the carrier's speed. */
  readonly there_h: number | null;
  readonly back_h: number | null;
  /** The most that passes in one go, beyond what the carrier takes; null: as the carrier. */
  readonly limit_kg: number | null;
  readonly limit_L: number | null;
  readonly longest_m: number | null;
  /** Porters it takes at the least (a fall to be carried round, a footpath). */
  readonly porters_count: number;
  /** Fuel beyond what the carrier says; null: as the carrier. */
  readonly fuel_L_per_km: number | null;
  /** Ways and sites of one area share their weather. */
  readonly weatherArea: string | null;
  readonly riverGaugeId: string | null;
}

/** Days on which ways cannot be gone, or only slower. */
export interface WayClosure {
  readonly closureId: string;
  /** One way, or all of an area; not both null. */
  readonly wayId: string | null;
  readonly weatherArea: string | null;
  /** Months of every year, 1 to 12; empty: from and to. */
  readonly months: readonly number[];
  readonly from: DayIndex | null;
  readonly to: DayIndex | null;
  /** Is the last day a guess? Left out: no. */
  readonly isToGuessed?: boolean;
  /** Hours are multiplied by it; null: closed. */
  readonly slower_factor: number | null;
  readonly reason: string | null;
}

/** What a gauge in a river read. */
export interface RiverLevel {
  readonly riverGaugeId: string;
  readonly day: DayIndex;
  readonly level_m: number;
}

/** Between which levels a carrier goes a way. */
export interface WayLevel {
  readonly wayId: string;
  readonly carrierId: string;
  readonly least_m: number | null;
  readonly greatest_m: number | null;
}

/** What a carrier takes on the road beyond its limits (Carrier of kitFacts). Costs in the programme's currency; null: not known. */
export interface CarrierTravel {
  readonly carrierId: string;
  readonly speed_km_per_h: number | null;
  readonly fuel_L_per_km: number | null;
  readonly cost_per_day: number | null;
}

/** Days on which a crew does not work, or does though it would rest. */
export interface CalendarDays {
  readonly calendarId: string;
  readonly from: DayIndex;
  readonly to: DayIndex;
  readonly works: boolean;
  readonly reason: string | null;
}

export interface CrewFacts {
  readonly crewId: string;
  readonly name: string;
  readonly base: string;
  /** Where it loads; its base where nothing is said. */
  readonly store: string;
  readonly people_count: number;
  readonly skills: readonly string[];
  readonly calendarId: string | null;
  /** Days of the week it rests: 0 Sunday to 6 Saturday. */
  readonly restDays: readonly number[];
  readonly work_h_per_day: number;
  /** Null: as long as it takes. */
  readonly mostDaysAway: number | null;
  readonly maySleepAtSites: boolean;
  readonly from: DayIndex | null;
  readonly to: DayIndex | null;
  /** It takes so many times the usual days for the same work. */
  readonly pace_factor: number;
  /** Days at the base between two trips. */
  readonly turnaround_days: number;
  readonly cost_per_day: number | null;
  /** Porters it can hire at the most. */
  readonly porters_count: number;
  readonly carrierIds: readonly string[];
}

/** Goods that come to a store. A day of the past: they are there. */
export interface StockArrival {
  readonly arrivalId: string;
  readonly store: string;
  readonly partId: string;
  readonly quantity_count: number;
  readonly dueOn: DayIndex;
  /** By how much it may be late (low, likely, high) [day]. */
  readonly slip_days: DaysAsked;
}

/** Carriers that go with nobody for some days: broken, lent, laid up. */
export interface CarrierAway {
  readonly awayId: string;
  readonly carrierId: string;
  readonly carriers_count: number;
  readonly from: DayIndex;
  /** Null: until it is said that they are back. */
  readonly to: DayIndex | null;
  readonly reason: string | null;
}

/** A plan that is kept. Its trips and stops stand beside. */
export interface PlanFacts {
  readonly planId: string;
  readonly name: string;
  readonly from: DayIndex | null;
  readonly isInForce: boolean;
  /** When its days were worked out last: an instant of ISO 8601; null: never. */
  readonly timedAt: string | null;
  readonly note: string | null;
  /** In no order; `order` says which goes first. */
  readonly trips: readonly PlanTripFacts[];
}

export interface PlanTripFacts {
  readonly tripId: string;
  readonly crewId: string;
  readonly order: number;
  readonly notBefore: DayIndex | null;
  readonly isLocked: boolean;
  /** As worked out last; null: never. */
  readonly leaves: DayIndex | null;
  readonly back: DayIndex | null;
  /** What happened: null until it has. A trip that left and is not back is under way. */
  readonly leftOn: DayIndex | null;
  readonly backOn: DayIndex | null;
  readonly stops: readonly PlanStopFacts[];
}

/** In no order; `order` says which comes first. */
export interface PlanStopFacts {
  readonly siteId: string;
  readonly order: number;
  readonly handOver: DayIndex | null;
}

/** Low, likely and high. */
export interface DaysAsked {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** What the rollout asks of a site beside its kit. */
export interface SiteWork {
  readonly siteId: string;
  /** Where it hangs on the ways; the site itself where nothing is said. */
  readonly place: string;
  readonly readyFrom: DayIndex | null;
  readonly finishBy: DayIndex | null;
  /** Months in which work may be done, 1 to 12; empty: all. */
  readonly workMonths: readonly number[];
  /** Its people count so many times. */
  readonly priority_factor: number;
  readonly priorityReason: string | null;
  readonly agreedOn: DayIndex | null;
  /** Crew days; null: as the settings say. */
  readonly install_days: DaysAsked | null;
  /** A skill its crew must have. */
  readonly skill: string | null;
  /** Ways and sites of one area share their weather. */
  readonly weatherArea: string | null;
  /** The area people know it by, for what is told of areas. */
  readonly area: string | null;
}

/** Of a site that states nothing of all that; its place is the site itself. */
export const plainWork = {
  readyFrom: null,
  finishBy: null,
  workMonths: [],
  priority_factor: 1,
  priorityReason: null,
  agreedOn: null,
  install_days: null,
  skill: null,
  weatherArea: null,
  area: null,
} as const satisfies Omit<SiteWork, 'siteId' | 'place'>;

/** Everything of the tables that the rollout is planned from. */
export interface RolloutFacts {
  readonly places: readonly PlaceFacts[];
  readonly ways: readonly WayFacts[];
  readonly closures: readonly WayClosure[];
  readonly riverLevels: readonly RiverLevel[];
  readonly wayLevels: readonly WayLevel[];
  readonly travel: readonly CarrierTravel[];
  readonly crews: readonly CrewFacts[];
  readonly calendars: readonly CalendarDays[];
  readonly arrivals: readonly StockArrival[];
  readonly carriersAway: readonly CarrierAway[];
  readonly plans: readonly PlanFacts[];
  /** Of every site of the table, in its order; none where the facts were not joined from tables. */
  readonly work: readonly SiteWork[];
}

export const noRollout: RolloutFacts = {
  places: [],
  ways: [],
  closures: [],
  riverLevels: [],
  wayLevels: [],
  travel: [],
  crews: [],
  calendars: [],
  arrivals: [],
  carriersAway: [],
  plans: [],
  work: [],
};
