import { isWaterTemperature } from '../../kernel/index.ts';
import { leastRead_pH, mostVirus_log, mostVirus_pH, virusColumn_pH } from './constants.ts';
import { tableTemperatures_C, virusTable_log, virusTable_mg_min_per_L } from './ctTables.ts';
import { type CtReading, noReading, placeDown, placeUp, reading } from './reading.ts';

/**
 * How much chlorine times minutes leaves so few viruses alive? Read from the table on the safe side: temperature down, acidity and logs up.
 *
 * @param temperature_C - of the water [C], 0 to 40; above 25 as at 25
 * @param water_pH - acidity of the water [pH], 5 to 10; under 6 as at 6, above 9 as at 10
 * @param wanted_log - logs of inactivation wanted [log], above 0, at most 4
 * @returns chlorine times minutes [mg·min/L]; null with what is outside the table
 * @law never falls with acidity, logs or colder water
 * @source epa-815-r-20-003, table B-2; epa-swtr-1991, table E-7
 */
export function virusCt(temperature_C: number, water_pH: number, wanted_log: number = mostVirus_log): CtReading {
  if (!isWaterTemperature(temperature_C)) return noReading('temperature');
  if (!(water_pH >= leastRead_pH && water_pH <= mostVirus_pH)) return noReading('acidity');
  if (!(wanted_log > 0 && wanted_log <= mostVirus_log)) return noReading('logs');
  const column = water_pH <= virusColumn_pH ? virusTable_mg_min_per_L.upTo9 : virusTable_mg_min_per_L.upTo10;
  return reading(column[placeUp(virusTable_log, wanted_log)]![placeDown(tableTemperatures_C, temperature_C)]!);
}
