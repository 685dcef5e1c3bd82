/** A part that could do, and what it would carry here. */
export interface PartCarrying {
  readonly partId: string;
  /** Width of a gutter, bore of a pipe or an outlet. */
  readonly size_mm: number;
  readonly capacity_L_per_s: number;
}

/**
 * Which is the smallest part that carries this flow? The one of least size among those that do; of equal ones the first by partId.
 *
 * @param parts - what could be bought: partId [text], size_mm [mm], capacity_L_per_s [L/s]
 * @param flow_L_per_s - what it has to carry [L/s], 0 or more
 * @returns the part; null where none carries it
 * @law the order of the catalogue changes nothing; more flow never gives a smaller part
 * @definition ours
 * @example
 * smallestThatHolds([{ partId: 'B', size_mm: 90, capacity_L_per_s: 8 }, { partId: 'A', size_mm: 63, capacity_L_per_s: 3 }], 4) // → { partId: 'B', size_mm: 90, capacity_L_per_s: 8 }
 * smallestThatHolds([{ partId: 'A', size_mm: 63, capacity_L_per_s: 3 }], 4) // → null
 */
export function smallestThatHolds(parts: readonly PartCarrying[], flow_L_per_s: number): PartCarrying | null {
  const enough = parts.filter(({ capacity_L_per_s }) => capacity_L_per_s >= flow_L_per_s);
  enough.sort((a, b) => a.size_mm - b.size_mm || (a.partId < b.partId ? -1 : 1));
  return enough[0] ?? null;
}
