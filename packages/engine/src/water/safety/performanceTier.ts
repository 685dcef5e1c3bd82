import type { ProtectionTier, Reductions } from '../../kernel/index.ts';
import { tierThreeStars, tierTwoStars } from './constants.ts';

/**
 * In which tier of household water treatment does a log reduction stand? Three stars: highly protective. Two: protective. One: the two-star figure for two of the
 * three classes. None: less.
 *
 * @param reductions - log reduction by class [log10]
 * @returns stars [count], 0 to 3
 * @law more log reduction of a class never takes a star away
 * @source who-hwt-2011, performance tiers (from memory)
 */
export function performanceTier_count(reductions: Reductions): ProtectionTier {
  const met = (tier: Reductions) =>
    (Object.keys(tier) as (keyof Reductions)[]).filter((field) => reductions[field] >= tier[field]).length;
  if (met(tierThreeStars) === 3) return 3;
  const protective = met(tierTwoStars);
  if (protective === 3) return 2;
  return protective === 2 ? 1 : 0;
}
