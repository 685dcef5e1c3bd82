import { expect, it } from 'vitest';
import { roofMaterials } from '../../kernel/index.ts';
import { roofCoverings } from './constants.ts';
import { runoffFractionOf } from './runoffFractionOf.ts';

it('believes the survey', () => {
  const found = runoffFractionOf({ runoffFraction: 0.66, material: 'thatch' });
  expect(found).toEqual({ runoffFraction: 0.66, assumed: false, source: 'survey' });
});

it('takes a surveyed 0 as 0, not as unknown', () => {
  expect(runoffFractionOf({ runoffFraction: 0, material: 'tile' }).runoffFraction).toBe(0);
});

it('has figures in order and inside 0 to 1 for every covering', () => {
  for (const material of roofMaterials) {
    const { low, used, high } = roofCoverings[material];
    expect(low).toBeGreaterThan(0);
    expect(used).toBeGreaterThanOrEqual(low);
    expect(high).toBeGreaterThanOrEqual(used);
    expect(high).toBeLessThan(1);
  }
});

it('takes the low end of a hard roof where the covering is unknown', () => {
  expect(runoffFractionOf({ runoffFraction: null, material: null }).runoffFraction).toBe(0.5);
});
