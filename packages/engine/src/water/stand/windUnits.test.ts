import { expect, it } from 'vitest';
import { windInOtherUnit } from './windUnits.ts';

it('believes what can be a wind, and names the other units of what cannot', () => {
  expect(windInOtherUnit(90)).toBeNull();
  const { asKmh_m_per_s, asKn_m_per_s } = windInOtherUnit(180)!;
  expect(asKmh_m_per_s).toBe(50);
  expect(asKn_m_per_s).toBeCloseTo(92.6, 9);
});
