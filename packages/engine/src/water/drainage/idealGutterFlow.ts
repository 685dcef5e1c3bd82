import { gravity_m_per_s2, risingRoot } from '../../kernel/index.ts';
import type { GutterSection, WaterAt } from './gutterSection.ts';

/** A level gutter full to the brim at its far end, without friction. */
export interface IdealGutterFlow {
  readonly flow_L_per_s: number;
  /** Depth at which it pours into its outlet. */
  readonly outletDepth_mm: number;
}

/**
 * What would a level gutter carry, were there no friction? Water comes in all along it and has no speed along the gutter when it does; it leaves
 * over a free edge at the depth of least energy. Pressure and momentum together are the same at both ends: the level at the outlet is looked for
 * at which A·ȳ + A² ÷ T is what A·ȳ is at the brim, and the flow is √(g A³ ÷ T) there.
 *
 * @param section - the gutter in section
 * @returns flow_L_per_s [L/s], outletDepth_mm [mm], less than the gutter's depth
 * @law a rectangle pours at its depth ÷ √3; the flow of like sections grows with the size^2.5
 * @source hinds-1926, momentum balance of flow with side inflow; chow-1959, chapter 12 (from memory)
 */
export function idealGutterFlow(section: GutterSection): IdealGutterFlow {
  const pressure_mm3 = section.at(section.depth_mm).moment_mm3;
  const outletDepth_mm = risingRoot((level_mm) => thrust_mm3(section.at(level_mm)) - pressure_mm3, 0, section.depth_mm);
  return { flow_L_per_s: criticalFlow_L_per_s(section.at(outletDepth_mm)), outletDepth_mm };
}

function thrust_mm3({ area_mm2, width_mm, moment_mm3 }: WaterAt): number {
  return area_mm2 === 0 ? 0 : moment_mm3 + area_mm2 ** 2 / width_mm;
}

/** Flow at the depth of least energy: √(g A³ ÷ T), mm turned to m, m³ to L; without end where a pipe is full and has no free surface. */
export function criticalFlow_L_per_s({ area_mm2, width_mm }: WaterAt): number {
  if (area_mm2 === 0) return 0;
  if (width_mm === 0) return Infinity;
  const area_m2 = area_mm2 / 1e6;
  return 1000 * Math.sqrt((gravity_m_per_s2 * area_m2 ** 3) / (width_mm / 1000));
}
