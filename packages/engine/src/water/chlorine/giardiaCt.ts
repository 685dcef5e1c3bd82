import { isWaterTemperature } from '../../kernel/index.ts';
import { giardiaTable_log, leastRead_pH } from './constants.ts';
import { giardiaTable_mg_min_per_L, giardiaTable_mg_per_L, giardiaTable_pH, tableTemperatures_C } from './ctTables.ts';
import { type CtReading, noReading, placeDown, placeUp, reading } from './reading.ts';

/**
 * How much chlorine times minutes leaves so few cysts of Giardia alive? Read from the table on the safe side: temperature down, acidity up, chlorine up; more than
 * 3 mg/L as 3. Nothing is read beyond the table, and nothing between its cells.
 *
 * @param temperature_C - of the water [C], 0 to 40; above 25 as at 25
 * @param water_pH - acidity of the water [pH], 5 to 9; under 6 as at 6
 * @param residual_mg_per_L - free chlorine at the end of the stay [mg/L], above 0
 * @param wanted_log - logs of inactivation wanted [log], above 0, at most 3
 * @returns chlorine times minutes [mg·min/L]; null with what is outside the table
 * @law never falls with acidity, logs or colder water
 * @source epa-815-r-20-003, table B-1 and its rule of reading; fewer logs in proportion
 */
export function giardiaCt(
  temperature_C: number,
  water_pH: number,
  residual_mg_per_L: number,
  wanted_log: number = giardiaTable_log,
): CtReading {
  if (!isWaterTemperature(temperature_C)) return noReading('temperature');
  const highest_pH = giardiaTable_pH[giardiaTable_pH.length - 1]!;
  if (!(water_pH >= leastRead_pH && water_pH <= highest_pH)) return noReading('acidity');
  if (!(residual_mg_per_L > 0 && Number.isFinite(residual_mg_per_L))) return noReading('chlorine');
  if (!(wanted_log > 0 && wanted_log <= giardiaTable_log)) return noReading('logs');
  const byChlorine = giardiaTable_mg_min_per_L[placeDown(tableTemperatures_C, temperature_C)]!;
  const byAcidity = byChlorine[placeUp(giardiaTable_mg_per_L, residual_mg_per_L)]!;
  const cell = byAcidity[placeUp(giardiaTable_pH, water_pH)]!;
  return reading((cell * wanted_log) / giardiaTable_log);
}
