import { describe, expect, it } from 'vitest';
import { chamberHeight_m, firstFlushChamber, loadLeft_fraction } from './firstFlushChamber.ts';

/** A chamber of 100 L, 0.4 m tall: 0.25 m² in plan, a hole of 3 mm. */
const bore_mm = 1000 * Math.sqrt((4 * 0.25) / Math.PI);
const diverter = {
  firstFlush_mm: null,
  chamber_L: 100,
  drainHole: 'open',
  chamberBore_mm: bore_mm,
  drainHole_mm: 3,
} as const;

describe('firstFlushChamber', () => {
  // Worked out apart: t = 2 A √h ÷ (Cd a √2g) = 4.52583 h; first flow 44.19 L/h, mean flow 22.10 L/h.
  it('empties 100 L through 3 mm in 4.526 h', () => {
    const found = firstFlushChamber(diverter, 100, 1);
    expect(found.head_m).toBeCloseTo(0.4, 9);
    expect(found.emptying_h).toBeCloseTo(4.52583, 3);
    // 1 L on 100 m² is 0.01 mm.
    expect(found.leak_mm_per_h).toBeCloseTo(0.4419, 3);
    expect(100 / found.emptying_h! / (found.leak_mm_per_h! * 100)).toBeCloseTo(0.5, 9);
  });

  it('wants the depth on the area, and diverts what its chamber holds', () => {
    const found = firstFlushChamber(diverter, 50, 0.5);
    expect(found.chamberWanted_L).toBe(25);
    expect(found.diverted_mm).toBe(2);
    expect(found.loadLeft_fraction).toBe(0.25);
  });

  it('lets nothing go while its hole is blocked', () => {
    const found = firstFlushChamber({ ...diverter, drainHole: 'blocked' }, 50, 0.5);
    expect(found).toMatchObject({ diverted_mm: 0, loadLeft_fraction: 1, emptying_h: null, leak_mm_per_h: null });
    expect(found.chamber_L).toBe(100);
  });

  it('takes the stated depth where the chamber was not measured', () => {
    const found = firstFlushChamber({ ...diverter, chamber_L: null, firstFlush_mm: 0.8 }, 50, 0.5);
    expect(found.chamber_L).toBe(40);
    expect(found.diverted_mm).toBe(0.8);
  });

  it('does not know when it is empty where bore or hole were not measured', () => {
    for (const missing of [{ chamberBore_mm: null }, { drainHole_mm: null }, { drainHole_mm: 0 }])
      expect(firstFlushChamber({ ...diverter, ...missing }, 50, 0.5).emptying_h).toBeNull();
    expect(firstFlushChamber({ ...diverter, chamber_L: null }, 50, 0.5)).toMatchObject({
      chamber_L: null,
      diverted_mm: 0,
      head_m: null,
      emptying_h: null,
    });
  });
});

it('halves the load with every millimetre', () => {
  for (const depth of [0, 0.4, 1.7]) expect(loadLeft_fraction(depth + 1)).toBeCloseTo(loadLeft_fraction(depth) / 2, 12);
});

it('stands as high as its pipe is narrow', () => {
  expect(chamberHeight_m(20, 100)).toBeCloseTo(4 * chamberHeight_m(20, 200), 12);
});
