import {
  boundWhenAll_per_100mL,
  boundWhenNone_per_100mL,
  ecoliEstimate,
  jarvisLimits,
  type Portion,
} from '../../packages/engine/src/water/waterTests/index.ts';
import { count, high, inputs, low, perOne, rarity, tubes, twoFigures } from './portionsWritten.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

const threes = [3, 3, 3] as const;
const tens = [10, 10, 10] as const;
const fives = [5, 5, 5] as const;
const hundredths = [0.1, 0.01, 0.001] as const;
const ones = [1, 0.1, 0.01] as const;
const water = [10, 1, 0.1] as const;

type Case = readonly [
  positive: readonly number[],
  of: readonly number[],
  volume_mL: readonly number[],
  printed: string,
];

const bamCases: readonly (readonly [table: string, ...one: Case])[] = [
  ['1', [0, 0, 1], threes, hundredths, '3.0'],
  ['1', [1, 1, 1], threes, hundredths, '11'],
  ['1', [2, 2, 0], threes, hundredths, '21'],
  ['1', [3, 3, 2], threes, hundredths, '1100'],
  ['2', [0, 0, 1], fives, hundredths, '1.8'],
  ['2', [1, 2, 0], fives, hundredths, '6.1'],
  ['2', [4, 0, 2], fives, hundredths, '21'],
  ['2', [5, 5, 4], fives, hundredths, '1600'],
  ['3', [0, 0, 1], tens, hundredths, '0.9'],
  ['3', [3, 2, 2], tens, hundredths, '7.5'],
  ['3', [8, 2, 0], tens, hundredths, '17'],
  ['3', [10, 10, 9], tens, hundredths, '2300'],
];

export const bamTables: PublishedFile = {
  source: 'bam-appendix-2',
  method: 'ecoliEstimate',
  rows: [
    ...bamCases.map(([table, positive, of, volume_mL, printed]) => ({
      place: `table ${table}, ${positive.join('-')}, two figures [per g]`,
      inputs: inputs(positive, of, volume_mL),
      printed,
      got: () => twoFigures(count(tubes(positive, of, volume_mL))),
    })),
    ...(
      [
        [1, '1.1'],
        [5, '6.9'],
        [9, '23'],
      ] as const
    ).map(([positive, printed]) => ({
      place: `table 5, ${positive} of 10 tubes of 10 mL, two figures [per 100 mL]`,
      inputs: { positive, of: 10, volume_mL: 10 },
      printed,
      got: () => twoFigures(ecoliEstimate(tubes([positive], [10], [10]))!.ecoli_per_100mL!),
    })),
  ],
};

const quickCases: readonly Case[] = [
  [[1, 1, 1], threes, water, '0.11'],
  [[2, 1, 0], threes, water, '0.15'],
  [[3, 1, 0], threes, water, '0.43'],
  [[1, 1, 1], fives, water, '0.061'],
  [[2, 1, 0], fives, water, '0.068'],
  [[3, 1, 0], fives, water, '0.11'],
  [[5, 2, 0], fives, water, '0.49'],
];

export const aphaTable: PublishedFile = {
  source: 'apha-9221',
  method: 'ecoliEstimate',
  rows: quickCases.map(([positive, of, volume_mL, printed]) => ({
    place: `quick table, ${positive.join('-')} of ${of[0]}, two figures [per mL]`,
    inputs: inputs(positive, of, volume_mL),
    printed,
    got: () => twoFigures(count(tubes(positive, of, volume_mL))),
  })),
};

/** Table 1, likelihood ratio: pattern, count, lower and upper limit as printed. */
const ridoutTable = [
  [[0, 1, 0], '3.1', '0.2', '13.4'],
  [[1, 0, 0], '3.6', '0.2', '16.0'],
  [[1, 1, 0], '7.4', '1.2', '23.3'],
  [[2, 0, 0], '9.2', '1.5', '30.6'],
  [[2, 0, 1], '14.3', '3.4', '40.5'],
  [[2, 1, 0], '14.7', '3.5', '41.8'],
  [[2, 2, 0], '21.1', '6.2', '54.3'],
  [[3, 0, 0], '23.1', '4.9', '90.8'],
  [[3, 0, 1], '38.5', '9.3', '139.1'],
  [[3, 1, 0], '42.7', '9.8', '164.7'],
  [[3, 1, 1], '74.9', '17.5', '235.4'],
  [[3, 2, 0], '93.3', '19.8', '311.0'],
  [[3, 2, 1], '149.4', '36.8', '425.7'],
  [[3, 2, 2], '214.7', '62.9', '554.8'],
  [[3, 3, 0], '239.8', '51.0', '975.0'],
  [[3, 3, 1], '462.2', '102.5', '1848.5'],
  [[3, 3, 2], '1099.0', '218.8', '3784.9'],
] as const;

const ridoutRow = (
  positive: readonly number[],
  what: string,
  printed: string,
  value: (portions: readonly Portion[]) => number,
): PublishedRow => ({
  place: `table 1, ${positive.join('-')}, ${what} [per mL]`,
  inputs: inputs(positive, threes, hundredths),
  printed,
  got: () => value(tubes(positive, threes, hundredths)),
  tolerance: {
    value: 0.06 + 3e-4 * Number(printed),
    reason: 'printed a little finer than it was worked out: all of the table is within 0.06 and 0.03 %',
  },
});

const likelihoodLimits: readonly PublishedRow[] = ridoutTable.flatMap(([positive, middle, lowest, highest]) => [
  ridoutRow(positive, 'count', middle, count),
  ridoutRow(positive, 'lower limit', lowest, low),
  ridoutRow(positive, 'upper limit', highest, high),
]);

export const ridoutLimits: PublishedFile = {
  source: 'ridout-1994',
  method: 'ecoliEstimate',
  rows: [
    ...likelihoodLimits,
    {
      place: 'table 1, 0-0-0, upper limit [per mL]',
      inputs: inputs([0, 0, 0], threes, hundredths),
      printed: '9.0',
      got: () => high(tubes([0, 0, 0], threes, hundredths)),
    },
    {
      place: 'table 1, 3-3-3, lower limit [per mL]',
      inputs: inputs([3, 3, 3], threes, hundredths),
      printed: '465.1',
      got: () => low(tubes([3, 3, 3], threes, hundredths)),
    },
  ],
};

const jarvisCases = [
  ['1', [2, 2, 0], threes, ones, '2.1', '0.71', '6.2', '0.069', 6.1056],
  ['1', [3, 1, 1], threes, ones, '7.5', '1.9', '30', '0.209', 29.4549],
  ['2', [50, 34, 7], [50, 49, 49], [2, 0.2, 0.02], '6.2', '4.5', '8.6', '0.746', 8.5431],
] as const;

export const jarvisTables: PublishedFile = {
  source: 'jarvis-2010',
  method: 'jarvisLimits',
  rows: jarvisCases.flatMap(
    ([table, positive, of, volume_mL, middle, lowest, highest, rare, narrow]): PublishedRow[] => {
      const portions = tubes(positive, of, volume_mL);
      const row = (
        what: string,
        printed: string,
        got: () => number,
        more: Partial<PublishedRow> = {},
      ): PublishedRow => ({
        place: `table ${table}, ${positive.join('-')}, ${what}`,
        inputs: inputs(positive, of, volume_mL),
        printed,
        got,
        ...more,
      });
      return [
        row('count, two figures', middle, () => twoFigures(perOne(jarvisLimits(portions)!.ecoli_per_100mL))),
        row('lower limit, two figures', lowest, () => twoFigures(perOne(jarvisLimits(portions)!.lowest_per_100mL))),
        row('upper limit, two figures', highest, () => twoFigures(perOne(jarvisLimits(portions)!.highest_per_100mL))),
        row(
          'upper limit with 1.96 errors',
          Number(highest).toFixed(1),
          () => perOne(jarvisLimits(portions, 1.96)!.highest_per_100mL),
          {
            follows: {
              value: narrow,
              tolerance: 0.005,
              reason:
                'limits are called those of 95 %; with 1.96 standard errors they do not come out as printed, with 2 they do',
            },
          },
        ),
        row('rarity', rare, () => rarity(portions), { method: 'ecoliEstimate' }),
      ];
    },
  ),
};

export const jarvisBounds: PublishedFile = {
  source: 'jarvis-2010',
  method: 'boundWhenNone_per_100mL',
  rows: [
    {
      place: 'table 1, 0-0-0, upper limit at 0.025',
      inputs: { ...inputs([0, 0, 0], threes, ones), chance: 0.025 },
      printed: '1.1',
      got: () => perOne(boundWhenNone_per_100mL(tubes([0, 0, 0], threes, ones), 0.025)),
    },
    {
      place: 'table 1, 3-3-3, lower limit at 0.025',
      inputs: { ...inputs([3, 3, 3], threes, ones), chance: 0.025 },
      printed: '36',
      got: () => perOne(boundWhenAll_per_100mL(tubes([3, 3, 3], threes, ones), 0.025)),
      method: 'boundWhenAll_per_100mL',
    },
  ],
};

const blodgettRarities: readonly Case[] = [
  [[3, 0, 0], fives, ones, '1'],
  [[2, 1, 0], fives, ones, '0.354'],
  [[0, 4, 1], fives, ones, '0.000000585'],
  [[3, 4, 0], fives, ones, '0.00251'],
  [[3, 3, 1], fives, ones, '0.00234'],
  [[5, 3, 0], tens, hundredths, '0.0924576'],
  [[4, 2, 2], [5, 5, 4], hundredths, '0.00102'],
  [[3, 0, 2], [7, 5, 7], hundredths, '0.00115'],
];
const blodgettCounts: readonly Case[] = [
  [[1, 5], [5, 5], [1, 0.1], '1.29'],
  [[2, 4], [5, 5], [1, 0.1], '1.48'],
  [[3, 3], [5, 5], [1, 0.1], '1.75'],
  [[4, 2], [5, 5], [1, 0.1], '2.21'],
  [[5, 1], [5, 5], [1, 0.1], '3.48'],

  [[4, 2, 2], [5, 5, 4], hundredths, '31.918'],
  [[3, 0, 2], [7, 5, 7], hundredths, '8.549'],
  [[2, 3, 4], [9, 3, 4], hundredths, '11.274'],
];

export const blodgettTables: PublishedFile = {
  source: 'blodgett-2002',
  method: 'ecoliEstimate',
  rows: [
    ...blodgettCounts.map(([positive, of, volume_mL, printed]) => ({
      place: `count of ${positive.join('-')} of ${of.join('-')}`,
      inputs: inputs(positive, of, volume_mL),
      printed,
      got: () => count(tubes(positive, of, volume_mL)),
    })),
    {
      place: 'worksheet, count of 5-3-0 of 10-10-10',
      inputs: inputs([5, 3, 0], tens, hundredths),
      printed: '9.950764229',
      got: () => count(tubes([5, 3, 0], tens, hundredths)),
      tolerance: { value: 2e-6, reason: 'found by the solver of a spreadsheet: good to six figures' },
    },
    ...blodgettRarities.map(([positive, of, volume_mL, printed]) => ({
      place: `rarity of ${positive.join('-')} of ${of.join('-')}`,
      inputs: inputs(positive, of, volume_mL),
      printed,
      got: () => rarity(tubes(positive, of, volume_mL)),
    })),
  ],
};
