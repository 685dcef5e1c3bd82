import { gammaShares } from '../../kernel/index.ts';
import type { Plate, Portion } from './portion.ts';

/**
 * How often would the colonies on plates of one water scatter as much as these, or more, were the germs spread evenly? Fisher's index of dispersion against
 * what is expected by the plates' volumes. It says nothing of wells.
 *
 * @param portions - what was looked at: volumes [mL] and counts; all but plates that could be counted are passed over
 * @returns the chance [fraction]; null with fewer than two such plates, or none of whose colonies were found
 * @law never rises as a colony moves from the plate with fewer to that with more, the volumes being the same
 * @source fisher-1922, index of dispersion (from memory)
 */
export function scatter_fraction(portions: readonly Portion[]): number | null {
  const plates = portions.filter((portion): portion is Plate => portion.kind === 'plate');
  const found = plates.reduce((sum, { colonies_count }) => sum + colonies_count, 0);
  if (plates.length < 2 || found === 0) return null;
  const looked = plates.reduce((sum, { volume_mL }) => sum + volume_mL, 0);
  const index = plates.reduce((sum, { volume_mL, colonies_count }) => {
    const expected = (found * volume_mL) / looked;
    return sum + (colonies_count - expected) ** 2 / expected;
  }, 0);
  return gammaShares(index / 2, (plates.length - 1) / 2).above_fraction;
}
