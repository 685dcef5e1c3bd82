import { giardiaTable_log, older, smith, smithParts_C } from './constants.ts';
import { giardiaTable_mg_per_L, giardiaTable_pH, tableTemperatures_C } from './ctTables.ts';
import { type CtReading, noReading, reading } from './reading.ts';

/**
 * How much chlorine times minutes leaves so few cysts of Giardia alive, by Smith's regression? A regression, not the table: it runs between the cells and is never
 * under them, up to 17 % above. Not used beyond what the table covers.
 *
 * @param temperature_C - of the water [C], 0.5 to 25
 * @param water_pH - acidity of the water [pH], 6 to 9
 * @param residual_mg_per_L - free chlorine at the end of the stay [mg/L], 0.4 to 3
 * @param wanted_log - logs of inactivation wanted [log], above 0, at most 3
 * @returns chlorine times minutes [mg·min/L]; null with what is outside
 * @law at every cell of the table no less than the table
 * @source smith-1995, as epa-815-r-20-003 prints it
 */
export function giardiaCtSmith(
  temperature_C: number,
  water_pH: number,
  residual_mg_per_L: number,
  wanted_log: number = giardiaTable_log,
): CtReading {
  return withinTable(temperature_C, water_pH, residual_mg_per_L, wanted_log, () => {
    const { factor, plus, exponent, perC, perChlorine, perPH } = temperature_C < smithParts_C ? smith.cold : smith.warm;
    const power = exponent + perC * temperature_C + perChlorine * residual_mg_per_L + perPH * water_pH;
    return factor * wanted_log * (plus + Math.exp(power));
  });
}

/**
 * The same by the older regression that many pages still print. It falls up to 11 % short of the table: to compare with, never to rely on.
 *
 * @param temperature_C - of the water [C], 0.5 to 25
 * @param water_pH - acidity of the water [pH], 6 to 9
 * @param residual_mg_per_L - free chlorine at the end of the stay [mg/L], 0.4 to 3
 * @param wanted_log - logs of inactivation wanted [log], above 0, at most 3
 * @returns chlorine times minutes [mg·min/L]; null with what is outside
 * @source epa-swtr-1991, regression (from memory); water-research-ct
 */
export function giardiaCtOlder(
  temperature_C: number,
  water_pH: number,
  residual_mg_per_L: number,
  wanted_log: number = giardiaTable_log,
): CtReading {
  return withinTable(temperature_C, water_pH, residual_mg_per_L, wanted_log, () => {
    const { factor, powerPH, powerChlorine, perC, from_C } = older;
    const chlorine = residual_mg_per_L ** powerChlorine;
    return factor * water_pH ** powerPH * chlorine * perC ** (temperature_C - from_C) * wanted_log;
  });
}

function withinTable(
  temperature_C: number,
  water_pH: number,
  residual_mg_per_L: number,
  wanted_log: number,
  ct: () => number,
): CtReading {
  const isWithin = (value: number, values: readonly number[]) => value >= values[0]! && value <= values.at(-1)!;
  if (!isWithin(temperature_C, tableTemperatures_C)) return noReading('temperature');
  if (!isWithin(water_pH, giardiaTable_pH)) return noReading('acidity');
  if (!isWithin(residual_mg_per_L, giardiaTable_mg_per_L)) return noReading('chlorine');
  return wanted_log > 0 && wanted_log <= giardiaTable_log ? reading(ct()) : noReading('logs');
}
