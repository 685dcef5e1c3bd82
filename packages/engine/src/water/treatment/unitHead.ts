import {
  cleanUnit,
  type DesignSettings,
  headOfPressure_m,
  isWaterTemperature,
  type SiteFacts,
  unitPressure_kPa,
  usableFigure,
} from '../../kernel/index.ts';
import { unitsInUse } from './unitsInUse.ts';

/**
 * What head do the treatment units of a site take at the flow of all its taps, clean? Several share the flow; the one that takes most is told.
 *
 * @param site - the site's facts: its units and its taps [count]
 * @param settings - temperature of the water [C], flow of a tap [L/min]
 * @returns the head [m]; null where a unit or the taps are not known
 * @law rises with the taps, falls with the warmth of the water
 * @source darcy-1856, pressure = viscosity × resistance × flow ÷ area (from memory)
 */
export function unitHead_m(site: SiteFacts, settings: DesignSettings): number | null {
  const { tapFlow_L_per_min, waterTemperature_C } = settings;
  const units = unitsInUse(site);
  const taps_count = usableFigure(site.taps_count);
  if (units.length === 0 || taps_count === null || !isWaterTemperature(waterTemperature_C)) return null;
  const flow_L_per_min = (taps_count * tapFlow_L_per_min) / units.length;
  const heads = units.map(({ figures }) => {
    const clean_per_m3 = figures === null ? null : cleanUnit(figures).clean_per_m3;
    if (clean_per_m3 === null) return null;
    return headOfPressure_m(unitPressure_kPa(clean_per_m3, flow_L_per_min, waterTemperature_C, 1), waterTemperature_C);
  });
  return heads.includes(null) ? null : Math.max(...heads.map((head) => head!));
}
