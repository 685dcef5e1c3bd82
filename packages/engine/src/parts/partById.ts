import type { PartFacts } from '../kernel/index.ts';

/**
 * Which part has this id?
 *
 * @param parts - the catalogue
 * @param partId - the id asked for [text]
 * @returns the part, its volume_L [L]; null where the catalogue has none of that id
 * @definition ours
 * @example
 * partById([{ partId: 'T1', kind: 'tank', name: 'Tank', volume_L: 500, length_m: null }], 'T2') // → null
 */
export function partById(parts: readonly PartFacts[], partId: string): PartFacts | null {
  return parts.find((part) => part.partId === partId) ?? null;
}
