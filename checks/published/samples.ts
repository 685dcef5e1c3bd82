import {
  ecoliBand,
  garwoodLimits_count,
  inspectionBand,
  samplesByBinomial_count,
  samplesForClaim_count,
} from '../../packages/engine/src/water/waterTests/index.ts';
import type { PublishedFile } from './published.ts';

/** Exceedances allowed, and the first number of samples of each line as printed: of 5 %, and of 2 %. */
const tableA13 = ['38', '77', '109', '139', '167', '194', '221', '247', '273', '299', '324'] as const;
const tableA14 = ['95', '194', '275', '350', '421', '490', '557', '622', '687', '751', '814'] as const;

export const allowedExceedances: PublishedFile = {
  source: 'nz-moh-2008',
  method: 'samplesForClaim_count',
  rows: [
    ...tableA13.map((printed, bad) => ({
      place: `table A1.3, ${bad} exceedances of 5 %`,
      inputs: { exceedances: bad, exceeded_fraction: 0.05, certainty_fraction: 0.95 },
      printed,
      got: () => samplesForClaim_count(bad),
      ...(bad === 5
        ? {
            follows: {
              value: 195,
              tolerance: 0,
              reason: 'with 194 samples the certainty is 0.94991, which only rounds to 0.95',
            },
          }
        : {}),
    })),
    ...tableA14.map((printed, bad) => ({
      place: `table A1.4, ${bad} exceedances of 2 %`,
      inputs: { exceedances: bad, exceeded_fraction: 0.02, certainty_fraction: 0.95 },
      printed,
      got: () => samplesForClaim_count(bad, 0.02),
    })),
    {
      place: 'table A1.3, 0 exceedances of 5 %, by the classical rule',
      inputs: { exceedances: 0, exceeded_fraction: 0.05, certainty_fraction: 0.95 },
      printed: '38',
      got: () => samplesByBinomial_count(0),
      follows: {
        value: 59,
        tolerance: 0,
        reason: '0.95^59 < 0.05: the table rests on the prior of Jeffreys, and not on the classical binomial rule',
      },
      method: 'samplesByBinomial_count',
    },
  ],
};

/** Colonies counted, and the 95 % limits as the table of membrane filters prints them. */
const membraneLimits = [
  [0, '0', '3.7'],
  [1, '0.1', '5.6'],
  [2, '0.2', '7.2'],
  [5, '1.6', '11.7'],
  [10, '4.7', '18.4'],
  [20, '12.2', '30.8'],
] as const;

export const membraneTable: PublishedFile = {
  source: 'apha-9222',
  method: 'garwoodLimits_count',
  rows: membraneLimits.flatMap(([colonies, lowest, highest]) => {
    const inputs = { colonies };
    const place = `95 % limits of ${colonies} colonies`;
    const last = 'the table differs from the exact limit in its last digit';
    const odd = (value: number) => ({ follows: { value, tolerance: 0.0005, reason: last } });
    return [
      {
        ...{ place: `${place}, lower`, inputs, printed: lowest, fromMemory: true as const },
        got: () => garwoodLimits_count(colonies).low,
        ...(colonies === 1 ? odd(0.0253) : colonies === 10 ? odd(4.7954) : {}),
      },
      {
        ...{ place: `${place}, upper`, inputs, printed: highest, fromMemory: true as const },
        got: () => garwoodLimits_count(colonies).high,
        ...(colonies === 20 ? odd(30.8884) : {}),
      },
    ];
  }),
};

export const germBandsPrinted: PublishedFile = {
  source: 'who-gdwq-2017',
  method: 'ecoliBand',
  rows: (
    [
      [0.5, 'low'],
      [1, 'intermediate'],
      [10, 'intermediate'],
      [11, 'high'],
      [100, 'high'],
      [101, 'veryHigh'],
    ] as const
  ).map(([ecoli_per_100mL, printed]) => ({
    place: `table 5.4, ${ecoli_per_100mL} in 100 mL`,
    inputs: { ecoli_per_100mL },
    printed,
    got: () => ecoliBand(ecoli_per_100mL),
    fromMemory: true,
  })),
};

export const inspectionScores: PublishedFile = {
  source: 'who-sanitary-inspection',
  method: 'inspectionBand',
  rows: (
    [
      [0, 'low'],
      [2, 'low'],
      [3, 'intermediate'],
      [5, 'intermediate'],
      [6, 'high'],
      [8, 'high'],
      [9, 'veryHigh'],
      [10, 'veryHigh'],
    ] as const
  ).map(([risks, printed]) => ({
    place: `score ${risks} of 10`,
    inputs: { risks },
    printed,
    got: () => inspectionBand(risks, 10)!.band,
    fromMemory: true,
  })),
};
