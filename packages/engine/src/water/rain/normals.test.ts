import { describe, expect, it } from 'vitest';
import type { GaugeNormal } from '../../kernel/index.ts';
import type { MonthlyNormal } from './monthlyNormals.ts';
import { normalFault, normalsBesideRecord, normalsProblems, twelveNormals } from './normals.ts';

const normal = (month: number, rain_mm: number | null, wetDays: number | null): GaugeNormal => ({
  month,
  rain_mm,
  wetDays,
  source: null,
  yearFrom: null,
  yearTo: null,
});
const usual = Array.from({ length: 12 }, (_, i) => normal(i + 1, 90, 9));
const withMonth = (other: GaugeNormal) => usual.map((one) => (one.month === other.month ? other : one));
const faultsOf = (normals: readonly GaugeNormal[]) =>
  normalsProblems({ gaugeId: 'G1', normals }).map(({ code, severity, facts }) => [code, severity, facts]);

describe('normalFault', () => {
  it('names what keeps days from being made', () => {
    const of = (rain_mm: number | null, wetDays: number | null, month = 1) => normalFault({ rain_mm, wetDays }, month);
    expect(of(90, 9)).toBeNull();
    expect(of(0, 0)).toBeNull();
    expect(of(null, 9)).toBe('rainUnknown');
    expect(of(Number.NaN, 9)).toBe('rainUnknown');
    expect(of(90, null)).toBe('wetDaysUnknown');
    expect(of(90, 31)).toBeNull();
    expect(of(90, 29, 2)).toBe('tooManyWetDays');
    expect(of(4, 0)).toBe('rainWithoutWetDays');
    expect(of(4, -1)).toBe('rainWithoutWetDays');
    expect(of(0, 4)).toBe('wetDaysTooDry');
    expect(of(4, 4)).toBe('wetDaysTooDry');
    expect(of(4.1, 4)).toBeNull();
  });
});

describe('the normals of a gauge', () => {
  it('stand by month, whatever their order; a month that is not there is not known', () => {
    const twelve = twelveNormals({ normals: [normal(12, 7, 1), normal(2, 5, 2)] });
    expect(twelve).toHaveLength(12);
    expect(twelve[1]).toEqual({ rain_mm: 5, wetDays: 2 });
    expect(twelve[11]).toEqual({ rain_mm: 7, wetDays: 1 });
    expect(twelve[0]).toEqual({ rain_mm: null, wetDays: null });
  });

  it('are without a problem where days can be made; else the problem names the months', () => {
    expect(faultsOf(usual)).toEqual([]);
    expect(faultsOf(withMonth(normal(5, 80, null)))).toEqual([
      ['rain.normals_incomplete', 'blocker', { noRain: [], noWetDays: ['5'] }],
    ]);
    expect(faultsOf(usual.slice(0, 10))).toEqual([
      ['rain.normals_incomplete', 'blocker', { noRain: ['11', '12'], noWetDays: [] }],
    ]);
    expect(faultsOf(withMonth(normal(4, 80, 31)))).toEqual([
      ['rain.normals_impossible', 'blocker', { tooManyWetDays: ['4'], rainWithoutWetDays: [], wetDaysTooDry: [] }],
    ]);
  });
});

describe('normals beside a record', () => {
  const record = (rain_mm: number, wetDays: number, completeYears = 20): MonthlyNormal[] =>
    Array.from({ length: 12 }, (_, i) => ({
      month: i + 1,
      years: completeYears,
      completeYears,
      meanTotal_mm: rain_mm,
      meanWetDays: wetDays,
      meanDaily_mm: null,
    }));
  const codes = (own: readonly MonthlyNormal[]) =>
    normalsBesideRecord({ gaugeId: 'G1', normals: usual }, own).map(({ code }) => code);

  it('are named where a year’s rain or its wet days differ by more than a quarter, up or down', () => {
    expect(codes(record(90, 9))).toEqual([]);
    expect(codes(record(73, 9))).toEqual([]);
    expect(codes(record(71, 9))).toEqual(['rain.normals_differ']);
    expect(codes(record(114, 9))).toEqual(['rain.normals_differ']);
    expect(codes(record(90, 6))).toEqual(['rain.normals_differ']);
  });

  it('say nothing of wet days where none are given', () => {
    const normals = usual.map((one) => ({ ...one, wetDays: null }));
    const [problem] = normalsBesideRecord({ gaugeId: 'G1', normals }, record(200, 9));
    expect(problem!.facts).toEqual({ months: 12, given_mm: 1080, record_mm: 2400, limit_fraction: 0.25 });
    expect(normalsBesideRecord({ gaugeId: 'G1', normals }, record(90, 2))).toEqual([]);
  });

  it('are left alone beside fewer than ten years', () => {
    expect(codes(record(900, 9, 9))).toEqual([]);
  });
});
