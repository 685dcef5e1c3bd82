import { dayIndexOf } from '../../packages/engine/src/kernel/index.ts';
import { monthCompleteness, monthlyNormals } from '../../packages/engine/src/water/rain/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

/** Days missing from a month, and whether its mean may be used. */
const months: readonly (readonly [readonly number[], 'valid' | 'void'])[] = [
  [[1, 4, 7, 10, 13, 16, 19, 22, 25, 28], 'valid'],
  [[1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21], 'void'],
  [[10, 11, 12, 13, 14], 'void'],
  [[10, 11, 12, 13, 20, 21, 22, 23], 'valid'],
  [[5], 'valid'],
];

const word = (valid: boolean) => (valid ? 'valid' : 'void');
const named = (days: readonly number[]) => `days missing ${days.join(', ')}`;

/** Thirty Januaries of which so many have a day missing: is there a normal? */
function normalOf30(completeYears: number): PublishedRow['got'] {
  return () => {
    const firstDay = dayIndexOf(1991, 1, 1);
    const days = dayIndexOf(2021, 1, 1) - firstDay;
    const state = new Uint8Array(days);
    for (let year = 1991 + completeYears; year < 2021; year++) state[dayIndexOf(year, 1, 15) - firstDay] = 1;
    const normals = monthlyNormals({ gaugeId: 'G', firstDay, rain_mm: new Float64Array(days).fill(1), state });
    return word(normals[0]!.meanTotal_mm !== null);
  };
}

export const monthlyMeans: PublishedFile = {
  source: 'wmo-1203',
  method: 'monthCompleteness',
  rows: [
    ...months.map(([missing, printed]) => ({
      place: `11-or-5 rule, monthly mean, ${named(missing)}`,
      inputs: { missing },
      printed,
      got: () => word(monthCompleteness(missing).meanValid),
    })),
    ...([24, 23] as const).map((years) => ({
      place: `normal from ${years} of 30 years (80 % of years)`,
      inputs: { years },
      printed: years === 24 ? 'valid' : 'void',
      got: normalOf30(years),
      method: 'monthlyNormals',
    })),
  ],
};

export const monthlyTotals: PublishedFile = {
  source: 'wmo-100',
  method: 'monthCompleteness',
  rows: months.map(([missing]) => ({
    place: `totals of rain need every day, ${named(missing)}`,
    inputs: { missing },
    printed: 'void',
    got: () => word(monthCompleteness(missing).totalValid),
  })),
};
