import {
  litresFromUsGallons,
  millimetresFromInches,
  squareMetresFromSquareFeet,
} from '../../packages/engine/src/kernel/index.ts';
import type { PublishedFile } from './published.ts';

export const conversions: PublishedFile = {
  source: 'nist-sp811',
  method: 'squareMetresFromSquareFeet',
  rows: [
    {
      place: 'appendix B.8, square foot [m²], exact',
      inputs: { area_ft2: 1 },
      printed: '0.09290304',
      got: () => squareMetresFromSquareFeet(1),
      fromMemory: true,
    },
    {
      place: 'appendix B.8, inch [mm], exact',
      inputs: { depth_in: 1 },
      printed: '25.4',
      got: () => millimetresFromInches(1),
      fromMemory: true,
      method: 'millimetresFromInches',
    },
    {
      place: 'appendix B.8, US gallon [L]',
      inputs: { gallons: 1 },
      printed: '3.785412',
      got: () => litresFromUsGallons(1),
      fromMemory: true,
      method: 'litresFromUsGallons',
    },
  ],
};
