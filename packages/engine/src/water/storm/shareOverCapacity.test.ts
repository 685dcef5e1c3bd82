import { expect, it } from 'vitest';
import type { ShortReading } from '../../kernel/index.ts';
import { rainByIntensity, shareOverCapacity_fraction } from './shareOverCapacity.ts';

const row = (rain_mm: number, interval_min: number): ShortReading => ({
  day: 0,
  minuteOfDay: 600,
  interval_min,
  rain_mm,
});
const share = (rows: readonly ShortReading[], capacity: number) =>
  shareOverCapacity_fraction(rainByIntensity(rows)!, capacity);

it('is what falls faster than the capacity, of all that falls', () => {
  // 60 mm/h carry 5 mm in five minutes: 5 of 10 mm and nothing of 5 are lost.
  expect(share([row(10, 5), row(5, 5)], 60)).toBeCloseTo(1 / 3, 12);
  expect(share([row(10, 5), row(3, 1)], 60)).toBeCloseTo(7 / 13, 12);
  expect(share([row(10, 5)], 0)).toBe(1);
  expect(share([row(10, 5)], 120)).toBe(0);
});

it('is not known where no interval is short enough', () => {
  expect(rainByIntensity([row(10, 15)])).toBeNull();
  expect(rainByIntensity([row(0, 5)])).toBeNull();
  expect(rainByIntensity([])).toBeNull();
});
