import { wetDayMoments } from '../../packages/engine/src/water/rain/index.ts';
import type { PublishedFile } from './published.ts';

/** The variance of the number of wet days in 30. */
const varianceOf = (wetAfterDry_fraction: number, wetAfterWet_fraction: number) => () =>
  wetDayMoments({ wetAfterDry_fraction, wetAfterWet_fraction }, 30).sd_days ** 2;

/** Share of wet days of a chain with the chances 0.25 and 0.66. */
const share = 0.25 / 0.59;

export const wetDays: PublishedFile = {
  source: 'katz-parlange-1998',
  method: 'wetDayMoments',
  rows: [
    {
      place: 'variance of the wet days in 30, chain with the chances 0.25 and 0.66, exact',
      inputs: { days: 30, wetAfterDry: 0.25, wetAfterWet: 0.66 },
      printed: '16.9',
      got: varianceOf(0.25, 0.66),
    },
    {
      place: 'variance of the wet days in 30, days without memory and the same share of wet days',
      inputs: { days: 30, wetShare: share },
      printed: '7.3',
      got: varianceOf(share, share),
    },
  ],
};
