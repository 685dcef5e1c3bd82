import {
  convertedTo,
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
    {
      place: 'appendix B.8, gallon [Canadian and U.K. (Imperial)] [m³], exact',
      inputs: { volume_m3: 1, unit: 'impgal' },
      printed: '4.54609',
      got: () => convertedTo('L', 'impgal', 1)!,
      fromMemory: true,
      method: 'convertedTo',
    },
    {
      place: 'appendix B.8, foot [m], exact',
      inputs: { length: 1, unit: 'ft' },
      printed: '0.3048',
      got: () => convertedTo('m', 'ft', 1)!,
      fromMemory: true,
      method: 'convertedTo',
    },
    {
      place: 'appendix B.8, pound (avoirdupois) [kg]',
      inputs: { mass: 1, unit: 'lb' },
      printed: '0.4535924',
      got: () => convertedTo('kg', 'lb', 1)!,
      fromMemory: true,
      method: 'convertedTo',
    },
    {
      place: 'appendix B.8, inch [cm], exact, an hour',
      inputs: { intensity: 1, unit: 'in/h' },
      printed: '25.4',
      got: () => convertedTo('mm/h', 'in/h', 1)!,
      fromMemory: true,
      method: 'convertedTo',
    },
  ],
};
