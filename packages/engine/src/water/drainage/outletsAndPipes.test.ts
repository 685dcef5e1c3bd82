import { describe, expect, it } from 'vitest';
import { downpipeCapacity_L_per_s } from './downpipeCapacity.ts';
import { headAtOutlet_mm, outletCapacity_L_per_s } from './outletCapacity.ts';
import { overflowCapacity_L_per_s } from './overflowCapacity.ts';
import { smallestThatHolds } from './smallestThatHolds.ts';
import { stormCarried_mm_per_h, stormFlow_L_per_s } from './stormFlow.ts';
import { uniformVelocity_m_per_s } from './uniformVelocity.ts';

describe('outletCapacity_L_per_s', () => {
  // en-12056-3, Table 7, from memory; worked out apart: 100 × 40^1.5 ÷ 7500 and 100² × √60 ÷ 15000.
  it.each([
    [40, 3.373],
    [50, 4.714],
    [60, 5.164],
  ])('100 mm under %d mm of water', (head, flow) => {
    expect(outletCapacity_L_per_s(100, head, 'open')).toBeCloseTo(flow, 3);
    expect(outletCapacity_L_per_s(100, head, 'grated')).toBeCloseTo(flow / 2, 3);
  });

  it('is the same as weir and as hole at half its bore', () => {
    const below = outletCapacity_L_per_s(80, 40 - 1e-9, 'open');
    expect(outletCapacity_L_per_s(80, 40 + 1e-9, 'open')).toBeCloseTo(below, 8);
  });

  // As a weir 0.455 of (2 ÷ 3) √2g π D h^1.5, as a hole 0.606 of √2gh π D² ÷ 4: both are usual coefficients of discharge.
  it('comes to usual coefficients of discharge', () => {
    const weir = (2 / 3) * Math.sqrt(2 * 9.80665) * Math.PI * 0.1 * 0.03 ** 1.5 * 1000;
    expect(outletCapacity_L_per_s(100, 30, 'open') / weir).toBeCloseTo(0.455, 2);
    const hole = Math.sqrt(2 * 9.80665 * 0.09) * (Math.PI / 4) * 0.1 ** 2 * 1000;
    expect(outletCapacity_L_per_s(100, 90, 'open') / hole).toBeCloseTo(0.606, 2);
  });

  it("stands under the gutter's depth ÷ √3", () => {
    expect(headAtOutlet_mm(75) ** 2 * 3).toBeCloseTo(75 ** 2, 9);
  });
});

describe('downpipeCapacity_L_per_s', () => {
  it('with the exponents as fractions is 0.16 % less at 100 mm', () => {
    const fractions = 2.5e-4 * 0.25 ** (-1 / 6) * 100 ** (8 / 3) * 0.33 ** (5 / 3);
    expect(fractions).toBeCloseTo(10.693993, 6);
    expect(fractions / downpipeCapacity_L_per_s(100)).toBeCloseTo(0.9984, 4);
  });
});

describe('overflowCapacity_L_per_s', () => {
  it('lets nothing out where its lower edge is at the rim or above', () => {
    expect(overflowCapacity_L_per_s(100, 0, 'open')).toBe(0);
    expect(overflowCapacity_L_per_s(100, -20, 'open')).toBe(0);
  });

  it('is a hole under much water, and half of it under a screen', () => {
    const hole = 0.62 * (Math.PI / 4) * 0.1 ** 2 * Math.sqrt(2 * 9.80665 * 0.95) * 1000;
    expect(overflowCapacity_L_per_s(100, 1000, 'open')).toBeCloseTo(hole, 9);
    expect(overflowCapacity_L_per_s(100, 1000, 'screened')).toBeCloseTo(hole / 2, 9);
  });

  // Worked out apart for water to the crown: a level of 0.552 of the bore has a head of the whole bore behind it once two speed heads are taken off.
  it('pours at the depth of least energy while water is under its crown', () => {
    const found = overflowCapacity_L_per_s(100, 100, 'open');
    expect(found / (Math.sqrt(9.80665) * 0.1 ** 2.5 * 1000)).toBeCloseTo(0.298, 3);
  });

  it('never lets out less under more water, without a jump', () => {
    let last = 0;
    for (let head = 1; head < 400; head++) {
      const found = overflowCapacity_L_per_s(90, head, 'open');
      expect(found).toBeGreaterThan(last);
      expect(found - last).toBeLessThan(0.12);
      last = found;
    }
  });
});

describe('smallestThatHolds', () => {
  const parts = [
    { partId: 'C', size_mm: 150, capacity_L_per_s: 2.1 },
    { partId: 'B', size_mm: 125, capacity_L_per_s: 1.4 },
    { partId: 'A', size_mm: 125, capacity_L_per_s: 1.4 },
  ];

  it('takes the least size that carries the flow, just so too, and of equal ones the first by id', () => {
    expect(smallestThatHolds(parts, 1.4)?.partId).toBe('A');
    expect(smallestThatHolds(parts, 1.41)?.partId).toBe('C');
    expect(smallestThatHolds(parts, 2.2)).toBeNull();
    expect(smallestThatHolds([], 0)).toBeNull();
  });
});

describe('stormFlow_L_per_s and stormCarried_mm_per_h', () => {
  it('undo each other', () => {
    for (const rain of [0, 12.5, 300])
      expect(stormCarried_mm_per_h(70, stormFlow_L_per_s(70, rain))).toBeCloseTo(rain, 9);
  });
});

it('water stands on a level slope and runs twice as fast on one four times as steep', () => {
  expect(uniformVelocity_m_per_s(0.03, 0, 0.015)).toBe(0);
  expect(uniformVelocity_m_per_s(0.03, 8, 0.015)).toBeCloseTo(2 * uniformVelocity_m_per_s(0.03, 2, 0.015), 12);
});
