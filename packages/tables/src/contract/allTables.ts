import { arrivals } from './arrivals.ts';
import { carriers } from './carriers.ts';
import { closures } from './closures.ts';
import { crewCarriers, crews, workCalendars } from './crews.ts';
import { demand } from './demand.ts';
import { diverters } from './diverters.ts';
import { downpipes } from './downpipes.ts';
import { gauges } from './gauges.ts';
import { gutters } from './gutters.ts';
import { keptApart, kitConditions, kitRules } from './kit.ts';
import { costs, rates, redenominations } from './money.ts';
import { normals } from './normals.ts';
import { parts } from './parts.ts';
import { pipes } from './pipes.ts';
import { places } from './places.ts';
import { carriersAway, planStops, plans, planTrips } from './plans.ts';
import { presence } from './presence.ts';
import { prices } from './prices.ts';
import { rain } from './rain.ts';
import { riverLevels, wayLevels } from './rivers.ts';
import { roofs } from './roofs.ts';
import { barriers, chlorination, inspections, rawWater, testPortions, waterTests } from './safety.ts';
import { secondSources } from './secondSources.ts';
import { shortRain } from './shortRain.ts';
import { sites } from './sites.ts';
import { stormCoefficients, storms } from './storms.ts';
import type { Table } from './table.ts';
import { tanks } from './tanks.ts';
import { targets } from './targets.ts';
import { cartridges, flowReadings, pressureTests, treatmentUnits } from './treatment.ts';
import { ways } from './ways.ts';

/** The tables kept one to a file, by name. */
export const folderTables = {
  sites,
  roofs,
  gutters,
  downpipes,
  diverters,
  tanks,
  pipes,
  treatmentUnits,
  cartridges,
  flowReadings,
  pressureTests,
  rawWater,
  barriers,
  waterTests,
  testPortions,
  inspections,
  chlorination,
  demand,
  gauges,
  normals,
  storms,
  stormCoefficients,
  shortRain,
  parts,
  prices,
  rates,
  redenominations,
  costs,
  kitRules,
  kitConditions,
  keptApart,
  carriers,
  targets,
  presence,
  secondSources,
  places,
  ways,
  closures,
  riverLevels,
  wayLevels,
  crews,
  crewCarriers,
  workCalendars,
  arrivals,
  carriersAway,
  plans,
  planTrips,
  planStops,
} as const;

export type FolderTableName = keyof typeof folderTables;

export const folderTableNames = Object.keys(folderTables) as readonly FolderTableName[];

/** Every table there is, in the order of the page of tables. */
export const allTables: readonly Table[] = [
  sites,
  roofs,
  gutters,
  downpipes,
  diverters,
  tanks,
  pipes,
  treatmentUnits,
  cartridges,
  flowReadings,
  pressureTests,
  rawWater,
  barriers,
  waterTests,
  testPortions,
  inspections,
  chlorination,
  demand,
  gauges,
  rain,
  normals,
  storms,
  stormCoefficients,
  shortRain,
  parts,
  prices,
  rates,
  redenominations,
  costs,
  kitRules,
  kitConditions,
  keptApart,
  carriers,
  targets,
  presence,
  secondSources,
  places,
  ways,
  closures,
  riverLevels,
  wayLevels,
  crews,
  crewCarriers,
  workCalendars,
  arrivals,
  carriersAway,
  plans,
  planTrips,
  planStops,
];
