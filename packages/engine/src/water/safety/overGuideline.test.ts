import { expect, it } from 'vitest';
import { overGuideline } from './overGuideline.ts';

it('names what is over, those that harm first; the value itself is not over', () => {
  const over = overGuideline({ zinc: 3.1, lead: 0.011, copper: 2, cadmium: null });
  expect(over).toEqual([
    { substance: 'lead', measured_mg_per_L: 0.011, most_mg_per_L: 0.01, basis: 'health' },
    { substance: 'zinc', measured_mg_per_L: 3.1, most_mg_per_L: 3, basis: 'taste' },
  ]);
  expect(overGuideline({})).toEqual([]);
});
