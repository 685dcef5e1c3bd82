import { litresFromUsGallons, mm_per_in, squareMetresFromSquareFeet } from '../../packages/engine/src/kernel/index.ts';
import { chamberHeight_m, firstFlushChamber, loadLeft_fraction } from '../../packages/engine/src/water/roof/index.ts';
import type { PublishedFile } from './published.ts';

export const firstFlushLoad: PublishedFile = {
  source: 'martinson-thomas-2005',
  method: 'loadLeft_fraction',
  rows: (
    [
      [0, '1'],
      [1, '0.5'],
      [2, '0.25'],
      [3, '0.125'],
    ] as const
  ).map(([diverted_mm, printed]) => ({
    place: `abstract: ${diverted_mm} mm let go, halved by each`,
    inputs: { diverted_mm },
    printed,
    got: () => loadLeft_fraction(diverted_mm),
  })),
};

export const standpipes: PublishedFile = {
  source: 'standpipe-page',
  method: 'chamberHeight_m',
  rows: [
    ...(
      [
        [3, '33'],
        [4, '18'],
        [6, '8'],
      ] as const
    ).map(([bore_in, printed]) => ({
      place: `table: length of ${bore_in} in pipe for a gallon, its bore taken as nominal [in]`,
      inputs: { bore_in },
      printed,
      got: () => (chamberHeight_m(litresFromUsGallons(1), bore_in * mm_per_in) * 1000) / mm_per_in,
    })),
    {
      place: 'rule: 10 gal to 1,000 ft², as a depth (worked out from the printed gallons) [mm]',
      inputs: { gallons: 10, area_ft2: 1000 },
      printed: '0.407',
      method: 'firstFlushChamber',
      got: () => {
        const chamber = {
          firstFlush_mm: null,
          drainHole: 'open',
          chamberBore_mm: null,
          drainHole_mm: null,
          chamber_L: litresFromUsGallons(10),
        } as const;
        return firstFlushChamber(chamber, squareMetresFromSquareFeet(1000), 0.4).diverted_mm;
      },
    },
  ],
};
