import { describe, expect, it } from 'vitest';
import { overflowRate_m_per_s } from './overflowRate.ts';
import { monthsToClean, sludgeRise } from './sludge.ts';

describe('overflowRate_m_per_s', () => {
  it('is 16 m a day where 15,000 m³ a day flow over 937.5 m², a circle of 34.55 m', () => {
    const area_m2 = (Math.PI / 4) * 34.549 ** 2;
    expect(overflowRate_m_per_s(15_000 / 86_400, area_m2) * 86_400).toBeCloseTo(16, 3);
    expect(area_m2).toBeCloseTo(937.5, 1);
  });
});

describe('sludgeRise', () => {
  it('makes 40 L of sludge of 10 kg of dirt, 2 cm on 2 m²', () => {
    expect(sludgeRise(10, 2)).toEqual({ sludge_L_per_year: 40, rise_m_per_year: 0.02 });
  });
});

describe('monthsToClean', () => {
  it('counts from a clean floor to the clearance under the draw-off', () => {
    expect(monthsToClean(0.3, 0.1, 0.1)).toBeCloseTo(24, 12);
    expect(monthsToClean(0.1, 0.1, 0.1)).toBe(0);
    expect(monthsToClean(0.3, 0.1, 0)).toBe(Infinity);
    expect(monthsToClean(0.05, 0.1, 0)).toBe(Infinity);
  });
});
