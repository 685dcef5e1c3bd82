import { expect, it } from 'vitest';
import { performanceTier_count } from './performanceTier.ts';

it('gives stars at the very figure, and none just under it', () => {
  const stars = (bacteria_log10: number, viruses_log10: number, protozoa_log10: number) =>
    performanceTier_count({ bacteria_log10, viruses_log10, protozoa_log10 });
  expect([stars(4, 5, 4), stars(3.99, 5, 4), stars(4, 4.99, 4), stars(4, 5, 3.99)]).toEqual([3, 2, 2, 2]);
  expect([stars(2, 3, 2), stars(1.99, 3, 2), stars(2, 2.99, 2), stars(2, 3, 1.99)]).toEqual([2, 1, 1, 1]);
  expect([stars(9, 0, 0), stars(0, 0, 0)]).toEqual([0, 0]);
});
