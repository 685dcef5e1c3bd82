import { count, high, inputs, low, plates, tubes, twoFigures, uncountable } from './portionsWritten.ts';
import type { PublishedFile } from './published.ts';

const fives = [5, 5, 5] as const;
const water = [10, 1, 0.1] as const;
const odd = {
  positive: [7, 4, 3, 4, 2, 2, 2],
  of: [29, 30, 28, 30, 29, 25, 30],
  volume_mL: [0.032, 0.026, 0.021, 0.018, 0.016, 0.011, 0.005],
} as const;
const four = [10, 10, 10, 10] as const;
const fourVolumes = [10, 1, 0.1, 0.01] as const;
const evenVolumes = [1, 1, 1, 1, 1, 2.5, 2.5, 2.5, 2.5, 5, 5] as const;
const swapped = 'printed with shape and place of the incomplete gamma exchanged; the exact Poisson tail gives this';
const example62 = [...plates([12, 8, 15, 40, 58], [1, 1, 1, 10, 10]), ...uncountable(100, [10, 100, 100, 100])];
const inputs62 = { colonies: [12, 8, 15, 40, 58], volume_mL: [1, 1, 1, 10, 10], uncountable_mL: [10, 100, 100, 100] };

export const haasBook: PublishedFile = {
  source: 'haas-rose-gerba-2014',
  method: 'ecoliEstimate',
  rows: [
    {
      place: 'example 6.4, page 166 [per mL]',
      inputs: inputs([5, 3, 0], fives, water),
      printed: '0.792',
      got: () => count(tubes([5, 3, 0], fives, water)),
    },
    {
      place: 'page 178, 6-2-1-0 [per mL]',
      inputs: inputs([6, 2, 1, 0], four, fourVolumes),
      printed: '0.1215',
      got: () => count(tubes([6, 2, 1, 0], four, fourVolumes)),
    },
    {
      place: 'page 178, 4-3-1-3 [per mL]',
      inputs: inputs([4, 3, 1, 3], four, fourVolumes),
      printed: '0.1289',
      got: () => count(tubes([4, 3, 1, 3], four, fourVolumes)),
    },
    {
      place: 'example 6.9, page 179, seven odd volumes [per mL]',
      inputs: inputs(odd.positive, odd.of, odd.volume_mL),
      printed: '6.949',
      got: () => count(tubes(odd.positive, odd.of, odd.volume_mL)),
    },
    ...(
      [
        ['6.1A', [1, 2, 1, 0, 0, 1, 1, 3, 6, 8, 4]],
        ['6.1B', [1, 0, 5, 1, 0, 5, 0, 1, 5, 1, 8]],
      ] as const
    ).map(([example, colonies]) => ({
      place: `example ${example}, page 163, eleven plates [per mL]`,
      inputs: { colonies, volume_mL: evenVolumes },
      printed: '1.08',
      got: () => count(plates(colonies, evenVolumes)),
    })),
    {
      place: 'example 6.2, page 163, plates some of them uncountable [per mL]',
      inputs: inputs62,
      printed: '7',
      got: () => count(example62),
    },
    {
      place: 'example 6.2, page 185, lower limit [per mL]',
      inputs: inputs62,
      printed: '6.03',
      got: () => low(example62),
      follows: { value: 6.243, tolerance: 0.001, reason: swapped },
    },
    {
      place: 'example 6.2, page 185, upper limit [per mL]',
      inputs: inputs62,
      printed: '7.96',
      got: () => high(example62),
      follows: { value: 8.09, tolerance: 0.001, reason: swapped },
    },
  ],
};

export const uncountablePlates: PublishedFile = {
  source: 'haas-heller-1988',
  method: 'ecoliEstimate',
  rows: [
    {
      place: 'example, five plates and three uncountable [per mL]',
      inputs: { colonies: [10, 12, 23, 48, 63], volume_mL: [1, 1, 1, 5, 5], uncountable_mL: [5, 10, 10], limit: 80 },
      printed: '13.28',
      got: () => count([...plates([10, 12, 23, 48, 63], [1, 1, 1, 5, 5]), ...uncountable(80, [5, 10, 10])]),
      tolerance: {
        value: 0.02,
        reason: 'the exact tail gives 13.293; with the gamma function exchanged it would be 13.201',
      },
    },
  ],
};

const bamPlates = [
  ['one plate', [27], [0.01], '2700'],
  ['two plates of one dilution', [27, 51], [0.01, 0.01], '3900'],
  ['two dilutions', [120, 23], [0.01, 0.001], '13000'],
  ['four plates of two dilutions', [144, 118, 26, 20], [0.01, 0.01, 0.001, 0.001], '14000'],
] as const;

export const bamPlateCounts: PublishedFile = {
  source: 'bam-chapter-3',
  method: 'ecoliEstimate',
  rows: bamPlates.map(([place, colonies, volume_mL, printed]) => ({
    place: `${place}, two figures [per g]`,
    inputs: { colonies, volume_mL },
    printed,
    got: () => twoFigures(count(plates(colonies, volume_mL))),
  })),
};
