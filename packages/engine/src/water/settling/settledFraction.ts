import { gammaShares, risingRoot } from '../../kernel/index.ts';

/**
 * Which share of grains that sink at one speed stays in a settling tank? Hazen's tank of equal cells in a row, each mixed by what flows through: one cell is a tank
 * stirred throughout, very many are one without any mixing.
 *
 * @param velocity_m_per_s - speed of the grain in still water [m/s], 0 or more
 * @param overflowRate_m_per_s - flow over the plan area of the whole tank [m/s], 0 or more
 * @param cells_count - mixed cells in a row [count], above 0; Infinity: no mixing along the way
 * @returns share that settles [fraction]; where nothing flows all that sinks
 * @law never falls with the speed of the grain or the number of cells, never rises with the flow
 * @source hazen-1904, cells in a row (from memory): 1 − (1 + v ÷ (n · q))^−n
 * @example
 * settledFraction(1, 1, 1) // → 0.5
 * settledFraction(0, 1, 2) // → 0
 */
export function settledFraction(velocity_m_per_s: number, overflowRate_m_per_s: number, cells_count: number): number {
  if (velocity_m_per_s <= 0) return 0;
  if (overflowRate_m_per_s <= 0) return 1;
  const ratio = velocity_m_per_s / overflowRate_m_per_s;
  if (cells_count === Infinity) return -Math.expm1(-ratio);
  // 1 − (1 + r ÷ n)^−n without losing the digits of a small r.
  return -Math.expm1(-cells_count * Math.log1p(ratio / cells_count));
}

/**
 * How soon has the first tenth of the water gone through, as a share of the mean stay? With n mixed cells in a row the stays are spread as a gamma
 * distribution of shape n.
 *
 * @param cells_count - mixed cells in a row [count], above 0; Infinity: no mixing along the way
 * @returns T10 ÷ T, the baffling factor [fraction]
 * @law never falls with the number of cells; at most 1
 * @source levenspiel-1999, tanks in series (from memory); epa-816-r-03-004, baffling factors
 * @example
 * firstTenth_fraction(1) // → 0.105361
 */
export function firstTenth_fraction(cells_count: number): number {
  if (cells_count === Infinity) return 1;
  const stay = risingRoot((share) => gammaShares(cells_count * share, cells_count).below_fraction - firstShare, 0, 1);
  return stay;
}

const firstShare = 1 / 10;
