import { expect, it } from 'vitest';
import { mostHeld } from './mostHeld.ts';

const nothing = { diameter_m: null, height_m: null, overflowHeight_m: null, nominal_L: null, partVolume_L: null };

it('fills to the rim, else to the overflow, else what is written on it', () => {
  const measured = { ...nothing, diameter_m: 2, height_m: 1.5, overflowHeight_m: 1.3 };
  expect(mostHeld(measured)!.from).toBe('rim');
  expect(mostHeld(measured)!.mostHeld_L).toBeCloseTo(Math.PI * 1500, 6);
  expect(mostHeld({ ...measured, height_m: null })!.from).toBe('overflow');
  expect(mostHeld({ ...nothing, partVolume_L: 900 })).toEqual({ mostHeld_L: 900, from: 'stated' });
});

it('is never less than what is written on it', () => {
  const tank = { ...nothing, diameter_m: 2, height_m: 1, nominal_L: 5000 };
  expect(mostHeld(tank)).toEqual({ mostHeld_L: 5000, from: 'stated' });
});

it('is null where nothing is known', () => {
  expect(mostHeld(nothing)).toBeNull();
  expect(mostHeld({ ...nothing, diameter_m: 2 })).toBeNull();
});
