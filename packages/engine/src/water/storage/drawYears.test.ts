import { describe, expect, it } from 'vitest';
import { drawPool, drawYears } from './drawYears.ts';

describe('drawYears', () => {
  it('draws blocks of two years that follow each other in the list, but for the years beyond', () => {
    const { positions, length } = drawYears(5, 400, 3);
    const asDrawn = (position: number) => position < 5;
    let blocks = 0;
    for (let i = 0; i < positions.length; i += length)
      for (const first of [0, 2]) {
        const [one, next] = [positions[i + first]!, positions[i + first + 1]!];
        if (!asDrawn(one) || !asDrawn(next)) continue;
        blocks++;
        expect(next).toBe((one + 1) % 5);
      }
    expect(blocks).toBeGreaterThan(200);
    expect(new Set(positions)).toEqual(new Set([0, 1, 2, 3, 4, 5, 6]));
  });

  it('draws each of the years beyond one time in twice n + 1', () => {
    const { positions } = drawYears(9, 20_000, 1);
    for (const beyond of [9, 10]) {
      const share = positions.reduce((count, position) => count + (position === beyond ? 1 : 0), 0) / positions.length;
      // 180,000 years: a standard deviation of the share is 0.0005.
      expect(Math.abs(share - 0.05)).toBeLessThan(0.002);
    }
  });

  it('gives the same draws for the same seed and others for another', () => {
    expect(drawYears(30, 50, 1)).toEqual(drawYears(30, 50, 1));
    expect(drawYears(30, 50, 1)).not.toEqual(drawYears(30, 50, 2));
  });
});

describe('drawPool', () => {
  const year = (index: number, judged = true) => ({
    label: index,
    from: index,
    to: index + 1,
    missing_days: 0,
    judged,
  });
  const rainOf = (rain_mm: readonly number[], judged: readonly boolean[]) => ({
    record: { gaugeId: 'G', firstDay: 0, rain_mm: Float64Array.from(rain_mm), state: new Uint8Array(rain_mm.length) },
    years: rain_mm.map((_, index) => year(index, judged[index])),
  });

  it('is the judged years, then one beyond the driest and one beyond the wettest', () => {
    const pool = drawPool(rainOf([800, 100, 1200, 1000], [true, false, true, true]));
    expect(pool.map((one) => one.year.label)).toEqual([0, 2, 3, 0, 2]);
    expect(pool.slice(0, 3).map((one) => one.inflowFactor)).toEqual([1, 1, 1]);
    // Mean 1,000 mm, standard deviation 200 mm: a spread of 0.2, of which 0.8.
    expect(pool[3]!.inflowFactor).toBeCloseTo(Math.exp(-0.16), 12);
    expect(pool[4]!.inflowFactor).toBeCloseTo(Math.exp(0.16), 12);
  });

  it('knows no spread where there is one year, or no rain, and is empty where no year is judged', () => {
    expect(drawPool(rainOf([800], [true])).map((one) => one.inflowFactor)).toEqual([1, 1, 1]);
    expect(drawPool(rainOf([0, 0], [true, true])).map((one) => one.inflowFactor)).toEqual([1, 1, 1, 1]);
    expect(drawPool(rainOf([800], [false]))).toEqual([]);
  });
});
