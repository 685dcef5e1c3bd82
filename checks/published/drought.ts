import { normalShares } from '../../packages/engine/src/kernel/index.ts';
import {
  gammaByLMoments,
  gammaByThom,
  spiClass,
  standardisedSums,
} from '../../packages/engine/src/water/rain/index.ts';
import type { PublishedFile } from './published.ts';

/** April rain of 1980 to 2011 [mm], and the index the package prints for each. */
const aprils_mm = [
  27.2, 9.8, 18.6, 96.4, 94.2, 57.9, 45.8, 15.5, 113.4, 5.9, 20.4, 57.8, 36.2, 53.7, 96.4, 86.5, 37.6, 96.7, 85.7,
  152.9, 30.7, 36.1, 67.5, 103.2, 86.7, 26.1, 50.6, 68.6, 46.3, 252.5, 26.0, 37.3,
];
const aprilIndices = [
  '-0.73375',
  '-1.64357',
  '-1.10041',
  '0.83698',
  '0.80202',
  '0.12645',
  '-0.16209',
  '-1.26371',
  '1.09124',
  '-2.02084',
  '-1.01471',
  '0.12424',
  '-0.43114',
  '0.03140',
  '0.83698',
  '0.67535',
  '-0.38902',
  '0.84170',
  '0.66177',
  '1.60067',
  '-0.60865',
  '-0.43419',
  '0.32750',
  '0.94188',
  '0.67873',
  '-0.77544',
  '-0.04205',
  '0.34929',
  '-0.14919',
  '2.59905',
  '-0.77930',
  '-0.39795',
];
const fitReason =
  'the shape is an approximation, off by less than 0.00005 of itself; the package may use another form of it';

export const droughtIndex: PublishedFile = {
  source: 'spei-package',
  method: 'standardisedSums',
  rows: [
    {
      place: 'gamma distribution by L-moments, 32 Aprils: shape',
      inputs: { aprils_mm },
      printed: '1.790487',
      tolerance: { value: 1e-5, reason: fitReason },
      got: () => gammaByLMoments(aprils_mm)!.shape,
      method: 'gammaByLMoments',
    },
    {
      place: 'gamma distribution by L-moments, 32 Aprils: scale [mm]',
      inputs: { aprils_mm },
      printed: '35.60832',
      tolerance: { value: 1e-4, reason: fitReason },
      got: () => gammaByLMoments(aprils_mm)!.scale_mm,
      method: 'gammaByLMoments',
    },
    ...aprilIndices.map((printed, i) => ({
      place: `index of one month, April ${1980 + i}`,
      inputs: { aprils_mm },
      printed,
      got: () => standardisedSums(aprils_mm, 'lMoments')[i]!,
    })),
  ],
};

/** April rain of 1981 to 2010 [mm]. */
const gridAprils_mm = [
  4.37988, 198.29004, 83.26953, 52.36035, 65.80957, 35.59961, 3.84961, 24.45996, 42.61035, 58.94043, 59.26953, 74.80957,
  54.69043, 104.41992, 98.5, 55.87988, 58.04004, 5.33008, 31.78027, 71.28027, 73.7998, 15.46973, 73.30957, 46.57031,
  27.84961, 30.23047, 115.19043, 66.91992, 5.0498, 87.76953,
];

export const thomFit: PublishedFile = {
  source: 'climate-indices',
  method: 'gammaByThom',
  rows: [
    {
      place: 'gamma distribution by Thom, 30 Aprils: shape',
      inputs: { gridAprils_mm },
      printed: '1.62021029',
      tolerance: { value: 2e-5, reason: 'the sums of rain are printed to five decimals only' },
      got: () => gammaByThom(gridAprils_mm)!.shape,
    },
    {
      place: 'gamma distribution by Thom, 30 Aprils: scale [mm]',
      inputs: { gridAprils_mm },
      printed: '35.5042085',
      tolerance: { value: 2e-5, reason: 'the sums of rain are printed to five decimals only' },
      got: () => gammaByThom(gridAprils_mm)!.scale_mm,
    },
  ],
};

const cumulative = [
  '0.0062',
  '0.0228',
  '0.0668',
  '0.1587',
  '0.3085',
  '0.5',
  '0.6915',
  '0.8413',
  '0.9332',
  '0.9772',
  '0.9938',
];

export const normalTable: PublishedFile = {
  source: 'spi-table-2015',
  method: 'normalShares',
  rows: cumulative.map((printed, i) => ({
    place: `Table 1, index ${-2.5 + i / 2}`,
    inputs: { index: -2.5 + i / 2 },
    printed,
    got: () => normalShares(-2.5 + i / 2).below_fraction,
  })),
};

const classes: readonly (readonly [number, string])[] = [
  [-2, 'extremelyDry'],
  [-1.99, 'severelyDry'],
  [-1.5, 'severelyDry'],
  [-1.49, 'moderatelyDry'],
  [-1, 'moderatelyDry'],
  [-0.99, 'nearNormal'],
  [0.99, 'nearNormal'],
  [1, 'moderatelyWet'],
  [1.49, 'moderatelyWet'],
  [1.5, 'veryWet'],
  [1.99, 'veryWet'],
  [2, 'extremelyWet'],
];

export const droughtClasses: PublishedFile = {
  source: 'wmo-1090',
  method: 'spiClass',
  rows: classes.map(([index, printed]) => ({
    place: `classes of the index, ${index}`,
    inputs: { index },
    printed,
    got: () => spiClass(index),
  })),
};
