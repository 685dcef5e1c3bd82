import { chainFromCounts, wetDayMoments, wetShare } from '../../packages/engine/src/water/rain/index.ts';
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

/** Winter days of rain at Tel Aviv: days after dry ones and after wet ones. */
const telAviv = {
  afterDry_count: 1049 + 350,
  wetAfterDry_count: 350,
  afterWet_count: 351 + 687,
  wetAfterWet_count: 687,
};
const telAvivDays = { afterDry: 1399, wetAfterDry: 350, afterWet: 1038, wetAfterWet: 687 };

/** From memory of a textbook's table; the printed chances follow from the counts. */
export const chancesOfRain: PublishedFile = {
  source: 'gabriel-neumann-1962',
  method: 'chainFromCounts',
  rows: [
    {
      place: 'Tel Aviv, as tabulated in Cox and Miller 1965, example 3.2 (from memory): chance of rain after a dry day',
      inputs: telAvivDays,
      fromMemory: true,
      printed: '0.250',
      got: () => chainFromCounts(telAviv)!.wetAfterDry_fraction,
    },
    {
      place: 'the same: chance of rain after a wet day',
      inputs: telAvivDays,
      fromMemory: true,
      printed: '0.662',
      got: () => chainFromCounts(telAviv)!.wetAfterWet_fraction,
    },
    {
      place: 'the same: share of wet days in the long run',
      inputs: telAvivDays,
      fromMemory: true,
      printed: '0.425',
      got: () => wetShare(chainFromCounts(telAviv)!),
    },
  ],
};
