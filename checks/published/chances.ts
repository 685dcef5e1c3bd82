import {
  betaBinomialShares,
  nextCountRange,
  studentQuantile,
  widenedTail_fraction,
} from '../../packages/engine/src/kernel/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

/** Good years seen, years seen, years to come, then pairs of a count and the share of at most so many. */
const counts: readonly (readonly [number, number, number, readonly (readonly [number, string])[]])[] = [
  [
    11,
    31,
    31,
    [
      [0, '0.0001047190'],
      [10, '0.4470415384'],
      [15, '0.8760790208'],
      [30, '0.9999999953'],
    ],
  ],
  [
    28,
    31,
    31,
    [
      [10, '0.0000009093'],
      [15, '0.0001725713'],
      [30, '0.9179308777'],
    ],
  ],
  [
    0,
    10,
    10,
    [
      [0, '0.7115368061'],
      [3, '0.9859092305'],
      [9, '0.9999990463'],
    ],
  ],
  [
    28,
    31,
    10,
    [
      [3, '0.0002942390'],
      [5, '0.0086579860'],
      [9, '0.6376152933'],
    ],
  ],
];

/** Points under which a twentieth lies, and over which a twentieth lies. */
const ends: readonly (readonly [number, number, number, string, string])[] = [
  [11, 31, 31, '5', '17'],
  [28, 31, 31, '23', '31'],
  [0, 10, 10, '0', '2'],
  [10, 10, 10, '8', '10'],
  [28, 31, 10, '7', '10'],
];

export const betaBinomial: PublishedFile = {
  source: 'scipy',
  method: 'betaBinomialShares',
  rows: [
    ...counts.flatMap(([k, n, next, shares]) =>
      shares.map(([count, printed]) => ({
        place: `betabinom(${next}, ${k} + 0.5, ${n - k} + 0.5).cdf(${count})`,
        inputs: { k, n, next, count },
        printed,
        got: () => betaBinomialShares(next, k + 0.5, n - k + 0.5)[count]!,
      })),
    ),
    ...ends.flatMap(([k, n, next, low, high]): PublishedRow[] => [
      {
        place: `betabinom(${next}, ${k} + 0.5, ${n - k} + 0.5).ppf(0.05)`,
        inputs: { k, n, next },
        printed: low,
        got: () => nextCountRange(k, n, next, 0.9).low,
        method: 'nextCountRange',
      },
      {
        place: `betabinom(${next}, ${k} + 0.5, ${n - k} + 0.5).ppf(0.95)`,
        inputs: { k, n, next },
        printed: high,
        got: () => nextCountRange(k, n, next, 0.9).high,
        method: 'nextCountRange',
      },
    ]),
  ],
};

const quantiles: readonly (readonly [number, readonly (readonly [number, string])[]])[] = [
  [
    1,
    [
      [0.05, '-6.313751515'],
      [0.025, '-12.706204736'],
      [0.2, '-1.376381920'],
    ],
  ],
  [
    9,
    [
      [0.05, '-1.833112933'],
      [0.025, '-2.262157163'],
      [0.2, '-0.883403860'],
    ],
  ],
  [
    29,
    [
      [0.05, '-1.699127027'],
      [0.025, '-2.045229642'],
      [0.2, '-0.854191986'],
    ],
  ],
  [98, [[0.05, '-1.660551217']]],
];

const tails: readonly (readonly [number, string])[] = [
  [5, '0.0085749742'],
  [10, '0.0266630519'],
  [15, '0.0341419128'],
  [30, '0.0419785135'],
  [100, '0.0475828829'],
];

export const student: PublishedFile = {
  source: 'scipy',
  method: 'studentQuantile',
  rows: [
    ...quantiles.flatMap(([freedom, points]) =>
      points.map(([p, printed]) => ({
        place: `t.ppf(${p}, ${freedom})`,
        inputs: { p, freedom },
        printed,
        got: () => studentQuantile(p, freedom),
      })),
    ),
    ...tails.map(([n, printed]) => ({
      place: `norm.cdf(t.ppf(0.05, ${n} - 1) * sqrt(${n} / (${n} - 1)))`,
      inputs: { n, range_fraction: 0.9 },
      printed,
      got: () => widenedTail_fraction(n, 0.9),
      method: 'widenedTail_fraction',
    })),
  ],
};
