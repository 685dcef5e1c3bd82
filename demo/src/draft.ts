/** A row of a table, as formats writes it. */
export type Row = Readonly<Record<string, string | number | boolean | null>>;

/** A reading as the rain file has it; null where the observer left the cell empty, text where it was written wrong. */
export interface MadeReading {
  readonly date: string;
  readonly rain_mm: number | null | string;
}

/** The tables every demo has. */
export type DemoTable = 'sites' | 'roofs' | 'diverters' | 'tanks' | 'demand' | 'gauges' | 'parts' | 'prices';

/** The tables a demo has where a site makes use of them. */
export type LaterTable =
  | 'normals'
  | 'targets'
  | 'presence'
  | 'secondSources'
  | 'places'
  | 'ways'
  | 'closures'
  | 'riverLevels'
  | 'wayLevels'
  | 'crews'
  | 'crewCarriers'
  | 'workCalendars'
  | 'arrivals'
  | 'carriersAway'
  | 'plans'
  | 'planTrips'
  | 'planStops'
  | 'gutters'
  | 'downpipes'
  | 'pipes'
  | 'storms'
  | 'stormCoefficients'
  | 'shortRain'
  | 'rates'
  | 'redenominations'
  | 'costs'
  | 'kitRules'
  | 'kitConditions'
  | 'keptApart'
  | 'carriers'
  | 'treatmentUnits'
  | 'cartridges'
  | 'flowReadings'
  | 'pressureTests'
  | 'rawWater'
  | 'waterTests'
  | 'testPortions'
  | 'inspections'
  | 'chlorination';

/** A programme while it is being made. */
export interface DraftProgramme {
  settings: Record<string, unknown>;
  tables: Record<DemoTable, readonly Row[]> & Partial<Record<LaterTable, readonly Row[]>>;
  rain: { gaugeId: string; rows: MadeReading[] }[];
  rawFiles: { path: string; text: string }[];
}

/** A fault planted on purpose: where it stands, which problem must be found there, and what was done. */
export interface PlantedFault {
  readonly file: string;
  /** As a spreadsheet counts: the header is row 1. */
  readonly row: number;
  /** Empty where the whole row is at fault. */
  readonly column: string;
  readonly code: string;
  readonly about: string;
  /** The site it leaves in doubt. */
  readonly siteId?: string;
  /** The one station it is about, where the rest of the site is judged. */
  readonly station?: 'gutter' | 'stand' | 'tap' | 'cup';
}

/** A row with some cells changed. */
export function changed(row: Row, cells: Row): Row {
  return { ...row, ...cells };
}

/** A trip of a plan of the demo; days are counted from the first day of its rollout. */
export interface DemoTrip {
  readonly crewId: string;
  readonly leaves: number;
  readonly back: number;
  /** Null: as soon as it can. */
  readonly notBefore: number | null;
  readonly sites: readonly string[];
  readonly handOvers: readonly number[];
}
