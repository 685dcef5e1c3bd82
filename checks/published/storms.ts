import {
  greatestIntensity_mm_per_h,
  intensityOfCoefficients_mm_per_h,
} from '../../packages/engine/src/water/storm/index.ts';
import type { PublishedFile } from './published.ts';

/** A storm's mass curve in steps of 15 minutes [mm]. */
const cumulative_mm = [0, 12.4, 22.1, 35.1, 52.7, 63.7, 81.9, 109.2, 123.5, 132.6, 143.3, 146.0, 146.0];
const depths_mm = cumulative_mm.slice(1).map((sum, i) => sum - cumulative_mm[i]!);

const hardest: readonly (readonly [number, string])[] = [
  [15, '109.2'],
  [30, '91.0'],
  [45, '79.7'],
  [60, '74.1'],
  [90, '67.6'],
  [120, '61.75'],
];

/** Time of concentration of Example 4.38, by the book's formula for it [min]: 60 × 0.000323 L^0.77 S^−0.385. */
const concentration_min = 60 * 0.000323 * 2400 ** 0.77 * (30 / 2400) ** -0.385;
/** The book's i = 78 T^0.22 ÷ (t + 12)^0.45 in cm/h with t in minutes, written for mm/h and hours. */
const bookCoefficients = { lambda: 780 / 60 ** 0.45, kappa: 0.22, theta_h: 0.2, eta: 0.45 };

export const textbookStorms: PublishedFile = {
  source: 'punmia-pande-lal',
  method: 'greatestIntensity_mm_per_h',
  rows: [
    ...hardest.map(([duration_min, printed]) => ({
      place: `Example 4.8, greatest intensity over ${duration_min} minutes [mm/h]`,
      inputs: { cumulative_mm, step_min: 15, duration_min },
      printed,
      got: () => greatestIntensity_mm_per_h(depths_mm, 15, duration_min)!,
    })),
    {
      place: 'Example 4.38, peak off a catchment of three parts [m³/s], by i = 78 T^0.22 ÷ (t + 12)^0.45 cm/h',
      inputs: { L_m: 2400, fall_m: 30, T: 30, C: [0.22, 0.12, 0.32], A_km2: [3.2, 4.8, 1.8] },
      printed: '141.2',
      got: () => {
        const intensity_cm_per_h = intensityOfCoefficients_mm_per_h(bookCoefficients, 30, concentration_min / 60) / 10;
        return 2.778 * intensity_cm_per_h * (0.22 * 3.2 + 0.12 * 4.8 + 0.32 * 1.8);
      },
      method: 'intensityOfCoefficients_mm_per_h',
    },
  ],
};
