import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roofYield_mm } from './roofYield.ts';

const rule = { runoffFraction: 1, firstFlush_mm: 2, drainHole: 'open', passes: 1 } as const;
const yields = (rain: readonly number[], changed: Partial<Parameters<typeof roofYield_mm>[1]> = {}) =>
  Array.from(roofYield_mm(Float64Array.from(rain), { ...rule, ...changed }));

describe('roofYield_mm', () => {
  it('loses the first depth over several days, then nothing more', () => {
    expect(yields([1, 0.5, 3, 4])).toEqual([0, 0, 2.5, 4]);
  });

  it('is not armed again by two dry days', () => {
    expect(yields([5, 0, 0.9, 5])).toEqual([3, 0, 0.9, 5]);
  });

  it('is armed again by three days each under 1 mm', () => {
    expect(yields([5, 0, 0.9, 0, 5])).toEqual([3, 0, 0.9, 0, 3]);
  });

  it('is not armed by a day of exactly 1 mm among them', () => {
    expect(yields([5, 0, 0, 1, 0, 5])).toEqual([3, 0, 0, 1, 0, 5]);
  });

  it('takes the depth from the runoff, not from the rain', () => {
    expect(yields([10], { runoffFraction: 0.5 })).toEqual([3]);
  });

  it('counts the dry days of rain as it falls at the site', () => {
    expect(yields([5, 1.5, 1.5, 1.5, 10], { rainFactor: 0.5 })).toEqual([0.5, 0.75, 0.75, 0.75, 3]);
  });

  it('loses the depth once where the drain hole is blocked', () => {
    expect(yields([5, 0, 0, 0, 5], { drainHole: 'blocked' })).toEqual([3, 0, 0, 0, 5]);
    expect(yields([5, 0, 0, 0, 5], { drainHole: 'blocked', passes: 2 })).toEqual([5, 0, 0, 0, 5]);
  });

  it('carries the diverter across the seam of two passes', () => {
    // The record ends wet, so its start is not the start of a spell.
    expect(yields([5, 0, 6], { passes: 2 })).toEqual([5, 0, 6]);
    // It ends with two dry days; with the one at its start that makes three.
    expect(yields([0, 5, 6, 0, 0], { passes: 2 })).toEqual([0, 3, 6, 0, 0]);
    // It ends half-way through a first flush.
    expect(yields([4, 0, 0, 0, 1.5], { passes: 2 })).toEqual([3.5, 0, 0, 0, 0]);
  });

  const rainDays = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 0, max: 80, noNaN: true })), { maxLength: 80 });
  it('never gives more than the runoff, and loses at most one depth for each arming', () => {
    fc.assert(
      fc.property(rainDays, fc.double({ min: 0, max: 5, noNaN: true }), (rain, firstFlush_mm) => {
        const net = yields(rain, { firstFlush_mm, runoffFraction: 0.8 });
        let lost = 0;
        let armings = 1;
        rain.forEach((mm, day) => {
          expect(net[day]).toBeGreaterThanOrEqual(0);
          expect(net[day]).toBeLessThanOrEqual(0.8 * mm);
          lost += 0.8 * mm - net[day]!;
          if (day >= 3 && rain.slice(day - 3, day).every((before) => before < 1)) armings++;
        });
        expect(lost).toBeLessThanOrEqual(armings * firstFlush_mm + 1e-9);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('gives the second of two passes as the tail of the record written twice', () => {
    fc.assert(
      fc.property(rainDays, fc.constantFrom('open' as const, 'blocked' as const), (rain, drainHole) => {
        const written = yields([...rain, ...rain], { drainHole });
        expect(yields(rain, { drainHole, passes: 2 })).toEqual(written.slice(rain.length));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
