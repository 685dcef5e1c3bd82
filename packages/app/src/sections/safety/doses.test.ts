import { expect, it } from 'vitest';
import { dosesOf } from './doses.ts';

const found = { stock_mL: 200, product_per_L: 15.4, wait_min: 30 };

it('doses grow with the water, by the dose of the own batch', () => {
  const doses = dosesOf(found, { batch_L: '500', product: 'calciumHypochlorite' });
  // 200 mL for 500 L is 4 mL for a bucket of 10 L and 400 mL for a tank of 1,000 L.
  expect(doses?.rows).toEqual([
    { water_L: 10, stock_mL: 4 },
    { water_L: 20, stock_mL: 8 },
    { water_L: 200, stock_mL: 80 },
    { water_L: 500, stock_mL: 200 },
    { water_L: 1000, stock_mL: 400 },
  ]);
  expect(doses?.isLiquid).toBe(false);
});

it('without a batch or a stock there is no dose, and never one of nothing', () => {
  expect(dosesOf(found, {})).toBeNull();
  expect(dosesOf(found, { batch_L: '0' })).toBeNull();
  expect(dosesOf(found, { batch_L: 'many' })).toBeNull();
  expect(dosesOf({ ...found, stock_mL: null }, { batch_L: '500' })).toBeNull();
});
