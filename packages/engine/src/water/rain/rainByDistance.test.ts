import { describe, expect, it } from 'vitest';
import { measured, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { rainByDistance } from './rainByDistance.ts';

/** A gauge's record from a first day on; null where it was not read. */
function record(gaugeId: string, firstDay: number, rain: readonly (number | null)[]): RainRecord {
  return {
    gaugeId,
    firstDay,
    rain_mm: Float64Array.from(rain, (one) => one ?? 0),
    state: Uint8Array.from(rain, (one) => (one === null ? unknownDay : measured)),
  };
}
const near = (distance_km: number, of: RainRecord) => ({ record: of, distance_km });

describe('rainByDistance', () => {
  it('is one gauge’s own record where there is one, unknown days among them', () => {
    const only = record('G1', 10, [1.1, null, 0, 7.3]);
    const { record: found, shares } = rainByDistance('site S1', [near(12, only)]);
    expect(found).toEqual({ ...only, gaugeId: 'site S1' });
    expect(shares).toEqual([{ gaugeId: 'G1', distance_km: 12, weight_fraction: 1 }]);
  });

  it('weighs by one over the square of the distance, each day among those that measured it', () => {
    const found = rainByDistance('x', [
      near(10, record('A', 0, [10, null, 10, null])),
      near(20, record('B', 0, [0, 5, null, null])),
    ]);
    // 1 ÷ 10² to 1 ÷ 20² is 4 to 1: 8 mm; then each alone; then nobody.
    expect(Array.from(found.record.rain_mm)).toEqual([8, 5, 10, 0]);
    expect(Array.from(found.record.state)).toEqual([measured, measured, measured, unknownDay]);
    // Over three days: 0.8, 0 and 1 of A.
    expect(found.shares.map(({ weight_fraction }) => weight_fraction)).toEqual([1.8 / 3, expect.closeTo(1.2 / 3, 12)]);
  });

  it('runs from the first to the last day that any of them measured', () => {
    const { record: found } = rainByDistance('x', [near(5, record('A', 3, [1])), near(6, record('B', 0, [2, 2]))]);
    expect(found.firstDay).toBe(0);
    expect(Array.from(found.rain_mm)).toEqual([2, 2, 0, 1]);
    expect(Array.from(found.state)).toEqual([measured, measured, unknownDay, measured]);
  });

  it('asks three a day at most, and the one at the very place alone', () => {
    const rain = [3, 6, 9, 300].map((one, i) => near(10, record(`G${i}`, 0, [one, i === 0 ? null : one])));
    const found = rainByDistance('x', rain);
    expect(found.record.rain_mm[0]).toBe(6);
    expect(found.record.rain_mm[1]).toBe(105);
    const here = rainByDistance('x', [near(0, record('H', 0, [1, null])), ...rain]);
    expect(here.record.rain_mm[0]).toBe(1);
    expect(here.record.rain_mm[1]).toBe(105);
    expect(here.shares.reduce((sum, { weight_fraction }) => sum + weight_fraction, 0)).toBeCloseTo(1, 12);
  });
});
