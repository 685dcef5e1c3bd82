import { type DesignSettings, type Range, seedFor } from '../../kernel/index.ts';
import { shown_years } from './constants.ts';
import { limitsOfStorms_mm, stormDistribution } from './extremeLimits.ts';
import { type ExtremeFit, maximumOnceIn_mm } from './extremes.ts';
import { gevByLikelihood } from './gevByLikelihood.ts';
import { gevByLMoments, gumbelByLMoments } from './gevFits.ts';
import { gumbelByMoments, gumbelChow, sampleMoments } from './gumbelFits.ts';
import { type LMoments, lMoments } from './lMoments.ts';

/** The maximum exceeded once in so many years, by every method there is. */
export interface StormTableRow {
  readonly returnPeriod_years: number;
  /** By the distribution storms are taken from, with its likely range. */
  readonly maximum_mm: number;
  readonly maximum_mm_range: Range;
  readonly gevByLMoments_mm: number | null;
  readonly gevByLikelihood_mm: number | null;
  readonly gumbelByLMoments_mm: number;
  readonly gumbelByMoments_mm: number;
  readonly gumbelChow_mm: number;
}

/** Maxima of years, and what they say of rarer years. */
export interface StormTable {
  readonly moments: LMoments;
  /** The distribution storms are taken from. */
  readonly fit: ExtremeFit;
  readonly rows: readonly StormTableRow[];
}

/**
 * What do these years' maxima say of rarer years, by one method beside the other? The methods agree where the record tells, and part where it does not.
 *
 * @param maxima_mm - yearly maxima [mm], in any order
 * @param gaugeId - the gauge, for the seed of its own
 * @param settings - return period of the storm, range and seed
 * @returns L-moments and distribution [mm], and storms by return period and method [mm]; null where fewer than four maxima are given or all are the same
 * @law at the settings' return period the maximum and its range are those of the design storm
 * @definition ours: docs/methods/storm.md
 */
export function stormTable(
  maxima_mm: readonly number[],
  gaugeId: string,
  settings: Pick<DesignSettings, 'stormReturnPeriod_years' | 'range_fraction' | 'seed'>,
): StormTable | null {
  const { stormReturnPeriod_years: wanted, range_fraction, seed } = settings;
  const moments = lMoments(maxima_mm);
  const fit = stormDistribution(maxima_mm);
  const gumbel = gumbelByLMoments(maxima_mm);
  const sample = sampleMoments(maxima_mm);
  if (!moments || !fit || !gumbel || !sample) return null;
  const periods = [...new Set([...shown_years, ...(wanted > 1 ? [wanted] : [])])].sort((a, b) => a - b);
  const ranges = limitsOfStorms_mm(fit, maxima_mm.length, periods, range_fraction, seedFor(seed, `storm ${gaugeId}`));
  const gev = gevByLMoments(maxima_mm);
  const likeliest = gevByLikelihood(maxima_mm);
  const [plain, chow] = [gumbelByMoments(sample), gumbelChow(sample, maxima_mm.length)];
  return {
    moments,
    fit,
    rows: periods.map((returnPeriod_years, i) => {
      const by = (distribution: ExtremeFit) => maximumOnceIn_mm(distribution, returnPeriod_years);
      return {
        returnPeriod_years,
        maximum_mm: by(fit),
        maximum_mm_range: ranges[i]!,
        gevByLMoments_mm: gev && by(gev),
        gevByLikelihood_mm: likeliest && by(likeliest),
        gumbelByLMoments_mm: by(gumbel),
        gumbelByMoments_mm: by(plain),
        gumbelChow_mm: by(chow),
      };
    }),
  };
}
