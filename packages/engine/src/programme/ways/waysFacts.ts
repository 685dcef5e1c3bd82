import type {
  Carrier,
  CarrierTravel,
  DayIndex,
  LegLimit,
  Period,
  PlaceFacts,
  Problem,
  RiverLevel,
  Travel,
  WayClosure,
  WayFacts,
  WayLevel,
  WayMode,
} from '../../kernel/index.ts';

/** What the ways are known by. */
export interface WaysAsked {
  readonly places: readonly PlaceFacts[];
  /** Ids of all sites: a way may end at one. */
  readonly siteIds: readonly string[];
  readonly ways: readonly WayFacts[];
  readonly closures: readonly WayClosure[];
  readonly riverLevels: readonly RiverLevel[];
  readonly wayLevels: readonly WayLevel[];
  readonly carriers: readonly Carrier[];
  readonly travel: readonly CarrierTravel[];
  /** Areas that sites name beside those of the ways; left out: none. */
  readonly siteAreas?: readonly string[];
  readonly firstDay: DayIndex;
  readonly horizon_days: number;
  readonly settings: WaySettings;
}

export interface WaySettings {
  /** What changing carriers takes, where the place says nothing. */
  readonly changeOver_h: number;
  /** What a porter carries, where no carrier of people says so. */
  readonly porterLoad_kg: number;
  /** A week in which a carrier could go on a smaller share of days counts as closed. */
  readonly openChance_fraction: number;
}

/** What travels: carriers, and porters for what is gone on foot. */
export interface Party {
  /** Whose: names of crews, for what is told. */
  readonly partyId: string;
  readonly carrierIds: readonly string[];
  readonly porters_count: number;
  /** Its boats may be out so many hours of a day, from the morning on; left out: all. */
  readonly riverDay_h?: number;
}

/** What must come to a stop in one go: its own kit. */
export interface StopLoad {
  readonly kg: number;
  readonly litres: number;
  readonly longest_m: number;
}

/** A node of the tables: where it hangs on the ways, and what must come there; null: nothing. */
export interface WayStop {
  readonly stopId: string;
  readonly place: string;
  readonly load: StopLoad | null;
}

/** A way whose ends are known. */
export interface NetworkWay {
  readonly way: WayFacts;
  /** Nodes of the network. */
  readonly from: number;
  readonly to: number;
}

/** Why a way cannot be gone, or only slower, on some days. */
export interface WayCause {
  /** A closure's id, or the gauge whose levels close it. */
  readonly causeId: string;
  readonly kind: 'closure' | 'levels';
  readonly reason: string | null;
  /** Places in `ways`. */
  readonly ways_positions: readonly number[];
  /** The carriers it stops, for each of its ways; null: all. */
  readonly carrierIds: readonly string[] | null;
  /** Hours are multiplied by it; Infinity: closed. */
  readonly slower_factor: number;
  /** 1 on days on which it holds, from `firstDay` on. */
  readonly holdsOn_days: Uint8Array;
}

/** The network, looked through. */
export interface ReadyWays {
  readonly asked: WaysAsked;
  readonly nodeIds: readonly string[];
  readonly nodeOf: ReadonlyMap<string, number>;
  readonly ways: readonly NetworkWay[];
  /** By node. */
  readonly changeOver_h: Float64Array;
  /** 1: one may sleep there, by node. Whether at a site is said of crews. */
  readonly maySleep_count: Uint8Array;
  readonly causes: readonly WayCause[];
  readonly areaIds: readonly string[];
  readonly problems: readonly Problem[];
}

/** The ways as the causes that hold leave them. */
export interface WayState {
  /** Places in `causes`, in order. */
  readonly causes_positions: readonly number[];
}

/** Days of one state. */
export interface StatePeriod extends Period {
  readonly state: WayState;
}

/** One leg that a party goes which goes nowhere else, such as a haul from store to store. */
export interface SingleLeg {
  readonly party: Party;
  readonly from: WayStop;
  readonly to: WayStop;
}

/** The best ways between stops. */
export interface WaysFound {
  readonly periods: readonly Period[];
  /** What holds in each of the periods, for `explainedWay`. */
  readonly states: readonly WayState[];
  /** As the parties. */
  readonly travels: readonly Travel[];
  /** As the single legs asked for, each by period. */
  readonly single: readonly (readonly (ExplainedWay | NoWay)[])[];
  readonly problems: readonly Problem[];
}

/** One stretch of a way, as it is gone. */
export interface ExplainedStretch {
  readonly wayId: string;
  readonly name: string | null;
  readonly mode: WayMode;
  /** Null: on foot, by no carrier of the tables. */
  readonly carrierId: string | null;
  readonly from: string;
  readonly to: string;
  /** Changing to its carrier, before it. */
  readonly changeOver_h: number;
  readonly hours_h: number;
  readonly length_km: number | null;
  /** What its hours are multiplied by, and why. */
  readonly slower_factor: number;
  readonly slowerBy: readonly string[];
  /** May one sleep where it begins? */
  readonly maySleep: boolean;
  readonly fuel_L: number;
  readonly limit: LegLimit;
}

/** A way from one stop to another, stretch by stretch. */
export interface ExplainedWay {
  readonly stretches: readonly ExplainedStretch[];
  readonly landBefore_h: number;
  /** With what is waited at landings, where it takes more than a day. */
  readonly river_h: number;
  readonly landAfter_h: number;
  readonly cost_amount: number;
  readonly fuel_L: number;
  readonly limit: LegLimit;
  /** The ways that let the least through; null: nothing bounds it. */
  readonly boundBy: {
    readonly kg: string | null;
    readonly litres: string | null;
    readonly longest: string | null;
    readonly porters: string | null;
  };
  /** Can the load that must come there pass? */
  readonly carriesLoad: boolean;
}

/** Why there is no way. */
export interface NoWay {
  readonly stretches: null;
  /** `closed`: there is one in other periods; `none`: nor in any, for these carriers; `unknownStop`: a stop is none of the network's. */
  readonly reason: 'closed' | 'none' | 'unknownStop';
  /** What holds in the period and closes ways: ids of closures and gauges. */
  readonly closedBy: readonly string[];
}
