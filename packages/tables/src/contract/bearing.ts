import { defaultRolloutSettings, type SiteFacts } from '@eavewell/engine';

/** A station that can be in doubt while the rest of a site is judged. */
export type Beside = keyof SiteFacts['doubtsBeside'];

/** Tables, and columns of others, that one station alone is judged by. */
export const tablesBeside: Readonly<Record<string, Beside | undefined>> = {
  gutters: 'drainage',
  downpipes: 'drainage',
  pipes: 'head',
  treatmentUnits: 'treatment',
  cartridges: 'treatment',
  flowReadings: 'treatment',
  pressureTests: 'treatment',
  rawWater: 'safety',
  barriers: 'safety',
  waterTests: 'safety',
  testPortions: 'safety',
  inspections: 'safety',
  chlorination: 'safety',
};
export const columnsBeside: Readonly<Record<string, Readonly<Record<string, Beside>> | undefined>> = {
  sites: {
    taps: 'head',
    tapHeight_m: 'head',
    unitHeight_m: 'head',
    handPump: 'head',
    windSpeed_m_per_s: 'stand',
    windExposure: 'stand',
    skipping_fraction: 'safety',
    daysOff_per_year: 'safety',
    altitude_m: 'safety',
  },
  roofs: {
    wallAbove_m2: 'drainage',
    valleys: 'drainage',
    fragile: 'drainage',
    pitch_deg: 'drainage',
    eaveHeight_m: 'drainage',
    coating: 'safety',
    lead: 'safety',
    asbestos: 'safety',
    underTrees: 'safety',
  },
  diverters: { chamberBore_mm: 'drainage', drainHole_mm: 'drainage' },
  tanks: {
    height_m: 'stand',
    standHeight_m: 'stand',
    emptyMass_kg: 'stand',
    standMass_kg: 'stand',
    groundClass: 'stand',
    pads: 'stand',
    padSide_m: 'stand',
    baseWidth_m: 'stand',
    fastened: 'stand',
    signedBy: 'stand',
    signedOn: 'stand',
    overflowBore_mm: 'drainage',
    overflows: 'drainage',
    overflowScreen: 'drainage',
    inletHeight_m: 'settling',
    cells: 'settling',
  },
};

/** Columns of sites that the rollout alone is planned by: they say nothing of its water, and leave no verdict in doubt. */
export const siteColumnsOfRollout: ReadonlySet<string> = new Set([
  'place',
  'weatherArea',
  'readyFrom',
  'finishBy',
  'workMonths',
  'priority_factor',
  'priorityReason',
  'agreedOn',
  'installLow_days',
  'installLikely_days',
  'installHigh_days',
  'skill',
]);

/** Settings that say nothing of the water of any site: a wrong one leaves no verdict in doubt. */
export const settingsBeside: ReadonlySet<string> = new Set(['programme', ...Object.keys(defaultRolloutSettings)]);

/**
 * What a whole row leaves unknown where it cannot be used: its site, or one station of it; the sites it is for; the gutters of the
 * sites of its gauge; a month of normals; every site; or nothing, where the first row of a key is used all the same.
 */
export type Bearing = 'site' | Beside | 'sites' | 'storms' | 'month' | 'programme' | 'first';

/** Tables whose rows are about no one site. */
const bearingOfOthers: Readonly<Record<string, Bearing | undefined>> = {
  gauges: 'sites',
  parts: 'sites',
  targets: 'sites',
  presence: 'sites',
  secondSources: 'sites',
  storms: 'storms',
  stormCoefficients: 'storms',
  normals: 'month',
  settings: 'programme',
  shortRain: 'first',
  prices: 'first',
  rates: 'first',
  redenominations: 'first',
  costs: 'first',
  kitRules: 'first',
  kitConditions: 'first',
  keptApart: 'first',
  carriers: 'first',
  places: 'first',
  ways: 'first',
  closures: 'first',
  riverLevels: 'first',
  wayLevels: 'first',
  crews: 'first',
  crewCarriers: 'first',
  workCalendars: 'first',
  arrivals: 'first',
  carriersAway: 'first',
  plans: 'first',
  planTrips: 'first',
  planStops: 'first',
};

/**
 * What does a row of a table leave unknown where it cannot be used?
 *
 * @param table - name of the table [text]
 * @param isOfSite - does the row name a site? The programme's own demand does not
 * @returns what it bears on
 * @definition ours: docs/decisions/0010-faults-in-files.md
 */
export function bearingOf(table: string, isOfSite: boolean): Bearing {
  const station = tablesBeside[table];
  if (station !== undefined) return station;
  if (table === 'demand' && !isOfSite) return 'sites';
  return bearingOfOthers[table] ?? 'site';
}
