import { expect, it } from 'vitest';
import { survivalNeeds } from './constants.ts';
import { survivalNeed_L_per_person_per_day } from './survivalNeed.ts';

it('lies between each purpose alone and the sum of their high ends', () => {
  const { low, high } = survivalNeed_L_per_person_per_day();
  for (const need of survivalNeeds) {
    expect(need.low_L_per_person_per_day).toBeLessThan(need.high_L_per_person_per_day);
    expect(low).toBeGreaterThan(need.low_L_per_person_per_day);
    expect(high).toBeGreaterThan(need.high_L_per_person_per_day);
  }
  expect(high).toBeGreaterThan(low);
});
