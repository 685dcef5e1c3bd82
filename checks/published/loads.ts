import { binBounds } from '../../packages/engine/src/parts/index.ts';
import {
  ferryFreeboard_mm,
  loadsOf,
  type Piece,
  platePersons_count,
} from '../../packages/engine/src/programme/loads/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

/** Things of so many units on a truck that takes so much: how many trucks? */
function loads(masses: readonly number[], limit_kg: number): number {
  const pieces = masses.map(
    (mass_kg, index): Piece => ({
      ...{ partId: `P${index}`, name: `P${index}`, kind: 'other', each_count: 1, mass_kg, count: 1 },
      ...{ sides_m: [null, null, null], bulk_L: null, isFragile: false, danger: null },
    }),
  );
  const limits = { limit_kg, limit_L: null, longest_m: null, stowage_fraction: 1, carriers_count: 1 };
  const unset = {
    freeboard_cm: null,
    leastFreeboard_cm: null,
    freeboardEmpty_cm: null,
    length_m: null,
    limitSetBy: null,
    limitSetOn: null,
  };
  const found = loadsOf(pieces, { carrierId: 'T', name: 'T', mode: 'truck', ...limits, ...unset }, []);
  return found.isLeast ? found.loads.length : Number.NaN;
}

const row = (place: string, sizes: readonly number[], capacity: number, printed: string): PublishedRow => ({
  place,
  inputs: { sizes, capacity },
  printed,
  got: () => loads(sizes, capacity),
});
const upTo100 = Array.from({ length: 100 }, (_, index) => index + 1);
const fifty = [
  ...[99, 99, 96, 96, 92, 92, 91, 88, 87, 86, 85, 76, 74, 72, 69, 67, 67, 62, 61, 56, 52, 51, 49, 46, 44],
  ...[42, 40, 40, 33, 33, 30, 30, 29, 28, 28, 27, 25, 24, 23, 22, 21, 20, 17, 14, 13, 11, 10, 7, 7, 3],
];

/** Proven least numbers of bins, as printed with the runs of a solver of mixed-integer programs. */
export const printedBins: PublishedFile = {
  source: 'borchers-bin-packing',
  method: 'loadsOf',
  rows: [
    row('12 items, optimal solution [bins]', [50, 3, 48, 53, 53, 4, 3, 41, 23, 20, 52, 49], 100, '4'),
    row(
      '20 items, optimal solution [bins]',
      [8, 19, 40, 51, 21, 48, 85, 68, 86, 79, 93, 93, 21, 73, 72, 77, 7, 41, 14, 70],
      100,
      '12',
    ),
    row(
      '24 items, optimal solution [bins]',
      [100, 98, 96, 93, 91, 87, 81, 59, 58, 55, 50, 43, 22, 21, 20, 15, 14, 10, 8, 6, 5, 4, 3, 1],
      100,
      '11',
    ),
    row('10 items, where first fit takes 4 [bins]', [49, 41, 34, 33, 29, 26, 26, 22, 20, 19], 100, '3'),
    row('50 items, optimal solution [bins]', fifty, 100, '25'),
    row('1 to 100 in bins of 505, optimal solution [bins]', upTo100, 505, '10'),
    row(
      'primes from 19 to 97 in two halves [bins]',
      [19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97],
      501,
      '2',
    ),
  ],
};

/** The nine things that textbooks bound. */
export const textbookBounds: PublishedFile = {
  source: 'martello-toth-1990',
  method: 'binBounds',
  rows: [['byTotal_count', '3'] as const, ['byLarge_count', '4'] as const].map(([bound, printed]) => ({
    place: `section 8.3, example of nine items, ${bound === 'byTotal_count' ? 'L1' : 'L2'} [bins]`,
    inputs: { sizes: [70, 60, 50, 33, 33, 33, 11, 7, 3], capacity: 100 },
    printed,
    fromMemory: true,
    got: () => binBounds([70, 60, 50, 33, 33, 33, 11, 7, 3], 100)![bound],
  })),
};

export const ferryBoats: PublishedFile = {
  source: 'maharashtra-ferry-rules',
  method: 'ferryFreeboard_mm',
  rows: [[20, '12'] as const, [30, '15'] as const, [40, '18'] as const].map(([length_ft, printed]) => ({
    place: `rule 3, least freeboard of a boat ${length_ft} ft long [in]`,
    inputs: { length_ft },
    printed,
    tolerance: { value: 1e-9, reason: 'the rule gives whole inches, and between them a line' },
    got: () => ferryFreeboard_mm(length_ft * 0.3048)! / 25.4,
  })),
};

export const boatPlates: PublishedFile = {
  source: 'uscg-safe-loading',
  method: 'platePersons_count',
  rows: [[550, '4.12'] as const, [547, '4.10'] as const, [546, '4.09'] as const].map(([capacity_lb, printed]) => ({
    place: `category two, outboard boats: ${capacity_lb} lb, persons before rounding`,
    inputs: { capacity_lb },
    printed,
    tolerance: {
      value: 0.01,
      reason: 'its figures are cut after the second decimal, not rounded: 4.128, 4.106, 4.099',
    },
    got: () => platePersons_count(capacity_lb)!,
  })),
};
