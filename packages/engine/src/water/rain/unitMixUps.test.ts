import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayIndexOf, type RainRecord } from '../../kernel/index.ts';
import { unitMixUps } from './unitMixUps.ts';

/** Whole years from 2001 on with rain every third day, its depths in turn. */
function record(years: number, depths: readonly number[]): RainRecord {
  const firstDay = dayIndexOf(2001, 1, 1);
  const days = dayIndexOf(2001 + years, 1, 1) - firstDay;
  const rain_mm = Float64Array.from({ length: days }, (_, i) => (i % 3 === 0 ? depths[(i / 3) % depths.length]! : 0));
  return { gaugeId: 'G1', firstDay, rain_mm, state: new Uint8Array(days) };
}
const codes = (found: RainRecord) => unitMixUps(found, {}).map(({ code }) => code);

describe('unitMixUps', () => {
  it('names hundredths that are far too small for mm, and what a year would be', () => {
    const [problem, ...others] = unitMixUps(record(1, [0.12, 0.57, 1.03]), { gaugeId: 'G1' });
    expect(others).toEqual([]);
    // 122 days with rain: 41 of 0.12, 41 of 0.57, 40 of 1.03 make 69.49.
    expect(problem!.facts['value']).toBeCloseTo(69.49, 6);
    expect(problem!.facts['likely_mm']).toBeCloseTo(69.49 * 25.4, 6);
  });

  it('names whole numbers that are far too large for mm', () => {
    expect(codes(record(1, [12, 57, 203]))).toEqual(['rain.in_tenths']);
    expect(codes(record(1, [12, 57, 203.5]))).toEqual([]);
    expect(codes(record(1, [12, 57, 103]))).toEqual([]);
  });

  it('leaves hundredths that are mm: a day, or a year, larger than inches are', () => {
    expect(codes(record(1, [0.12, 0.57, 3.03]))).toEqual([]);
    expect(codes(record(1, [...Array.from({ length: 60 }, () => 0.12), 26.01]))).toEqual([]);
  });

  it('says nothing of a year that is short, or has few days with rain', () => {
    const short = record(1, [0.12, 0.57, 1.03]);
    expect(codes({ ...short, state: short.state.map((_, i) => (i < 70 ? 1 : 0)) })).toEqual([]);
    expect(codes({ ...short, rain_mm: short.rain_mm.map((depth, i) => (i < 57 ? depth : 0)) })).toEqual([]);
  });

  it('never names numbers of one decimal that are not all whole', () => {
    const depths = fc.array(fc.integer({ min: 1, max: 9999 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(depths, (tenths) => {
        expect(codes(record(2, [...tenths.map((one) => one / 10), 0.1]))).toEqual([]);
      }),
      { numRuns: 100, seed: 5 },
    );
  });
});
