import { outletFlow } from './constants.ts';

/**
 * How much water does a round hole in the sole of a gutter let go, under so much water? As the rim of a weir while water is shallow, as a hole once it
 * stands higher than half the bore; both give the same there.
 *
 * @param outlet_mm - diameter of the hole [mm], above 0
 * @param head_mm - depth of water over it [mm], 0 or more
 * @param grate - `grated` where a grate or strainer lies over it, which lets through half [text]
 * @returns flow [L/s]
 * @law more water over it, or a wider hole, never lets go less
 * @source en-12056-3, Table 7 (from memory)
 * @example
 * outletCapacity_L_per_s(100, 60, 'open') // → 5.164
 * outletCapacity_L_per_s(100, 60, 'grated') // → 2.582
 */
export function outletCapacity_L_per_s(outlet_mm: number, head_mm: number, grate: 'open' | 'grated'): number {
  const flow_L_per_s =
    head_mm <= outlet_mm / 2
      ? outlet_mm * head_mm ** 1.5 * outletFlow.weir_factor
      : outlet_mm ** 2 * Math.sqrt(head_mm) * outletFlow.hole_factor;
  return grate === 'grated' ? outletFlow.grate_fraction * flow_L_per_s : flow_L_per_s;
}

/**
 * How deep is the water over the outlet of a level gutter that is full to the brim at its far end? Its depth ÷ √3: so a rectangle pours, and every
 * other section pours deeper.
 *
 * @param depth_mm - depth of the gutter [mm], 0 or more
 * @returns depth of water at its outlet [mm]
 * @source hinds-1926, momentum balance of flow with side inflow, for a rectangle (from memory)
 * @example
 * headAtOutlet_mm(60) // → 34.641
 */
export function headAtOutlet_mm(depth_mm: number): number {
  return depth_mm / Math.sqrt(3);
}
