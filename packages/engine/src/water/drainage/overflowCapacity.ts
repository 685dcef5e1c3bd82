import {
  boreArea_m2,
  gravity_m_per_s2,
  orificeCoefficient_ratio,
  orificeFlow_m3_per_s,
  risingRoot,
} from '../../kernel/index.ts';
import { overflowEntrance_factor, screened_fraction } from './constants.ts';
import { waterInCircle } from './gutterSection.ts';
import { criticalFlow_L_per_s } from './idealGutterFlow.ts';

/**
 * How much water does an overflow pipe let out before the tank runs over its rim? A level pipe through the wall, its lower edge at the height of
 * the overflow: it pours at the depth of least energy, what comes in losing as much at the mouth as a pipe that stands into its tank loses; once its
 * mouth is well under water it passes no more than a hole of its bore.
 *
 * @param bore_mm - inside diameter [mm], above 0
 * @param head_mm - from the lower edge of the pipe to the rim of the tank [mm]; at 0 or under nothing leaves in time
 * @param screen - `screened` where a screen covers it, half of which is taken as blocked [text]
 * @returns flow [L/s]
 * @law more head or a wider pipe never lets out less
 * @source chow-1959, critical flow in a circle (from memory); crane-tp410, entrance losses; torricelli-1644
 * @example
 * overflowCapacity_L_per_s(100, 0, 'open') // → 0
 */
export function overflowCapacity_L_per_s(bore_mm: number, head_mm: number, screen: 'open' | 'screened'): number {
  if (head_mm <= 0) return 0;
  const radius_mm = bore_mm / 2;
  const overMiddle_m = (head_mm - radius_mm) / 1000;
  const asHole_L_per_s =
    1000 * orificeFlow_m3_per_s(boreArea_m2(bore_mm / 1000), overMiddle_m, orificeCoefficient_ratio);
  const pouring_L_per_s = pouringFlow_L_per_s(radius_mm, head_mm);
  // Under water as a hole, else pouring: whichever lets out less. With water under the crown it can only pour.
  const flow_L_per_s = head_mm < bore_mm ? pouring_L_per_s : Math.min(pouring_L_per_s, asHole_L_per_s);
  return screen === 'screened' ? screened_fraction * flow_L_per_s : flow_L_per_s;
}

/** The depth at which the energy of the pouring water, and what it lost on its way in, is the head there is. */
function pouringFlow_L_per_s(radius_mm: number, head_mm: number): number {
  const crown_mm = 2 * radius_mm;
  const level_mm = risingRoot((level) => headFor_mm(radius_mm, level) - head_mm, 0, Math.min(head_mm, crown_mm));
  return criticalFlow_L_per_s(waterInCircle(radius_mm, level_mm));
}

function headFor_mm(radius_mm: number, level_mm: number): number {
  const water = waterInCircle(radius_mm, level_mm);
  if (water.area_mm2 === 0) return 0;
  if (water.width_mm === 0) return Infinity;
  const speed_m_per_s = criticalFlow_L_per_s(water) / (water.area_mm2 / 1000);
  const speedHead_mm = (1000 * speed_m_per_s ** 2) / (2 * gravity_m_per_s2);
  return level_mm + (1 + overflowEntrance_factor) * speedHead_mm;
}
