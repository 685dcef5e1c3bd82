import { describe, expect, it } from 'vitest';
import {
  annualMaximum_mm,
  drySpells,
  judgedRain,
  longestDryRunByYear,
  monthlyNormals,
  type RainSettings,
  rainRecord,
} from '../../packages/engine/src/water/rain/index.ts';
import { greer1963 } from '../records/greer1963.ts';

/** Worked out apart from this program, from the same 365 readings (ETCCDI definitions: a wet day has 1 mm or more). */
const apart = {
  annual_mm: 1196.3,
  monthly_mm: [100.1, 82.5, 245.5, 151.1, 77.8, 120.0, 62.5, 29.4, 118.9, 6.1, 106.4, 96.0],
  wetDays: 86,
  longestDry: 29,
  most_mm: 98.8,
};

describe('a real year, 1963', () => {
  const record = rainRecord(greer1963);
  if (!record.ok) throw new Error('the year of 1963 was not read');
  const year = [{ from: 0, to: 365 }];

  it('is read without a fault', () => {
    expect(record.problems).toEqual([]);
    expect(record.value.rain_mm.length).toBe(365);
  });

  it('has the monthly totals and wet days worked out apart', () => {
    const normals = monthlyNormals(record.value);
    expect(normals.map(({ meanTotal_mm }) => Number(meanTotal_mm?.toFixed(6)))).toEqual(apart.monthly_mm);
    expect(normals.reduce((sum, { meanWetDays }) => sum + (meanWetDays ?? 0), 0)).toBe(apart.wetDays);
  });

  it('has the dry run and the wettest day worked out apart', () => {
    expect(longestDryRunByYear(record.value, year)).toEqual([apart.longestDry]);
    expect(Math.max(...drySpells(record.value).map(({ days }) => days))).toBe(apart.longestDry);
    expect(annualMaximum_mm(record.value, year)).toEqual([apart.most_mm]);
  });

  it('is one whole water year from January', () => {
    const settings: RainSettings = {
      seed: 1,
      missingDays_fraction: 0.1,
      leastYears: 10,
      waterYearStartMonth: null,
      gapFilling: 'otherYears',
    };
    const rain = judgedRain(record.value, settings);
    if (!rain.ok) throw new Error('the year of 1963 was not judged');
    expect(rain.value.startMonth).toBe(1);
    expect(rain.value.years).toEqual([{ label: 1963, from: 0, to: 365, missing_days: 0, judged: true }]);
    expect(rain.value.meanAnnualRain_mm).toBeCloseTo(apart.annual_mm, 9);
    expect(rain.value.longestRainlessRun_days).toBe(apart.longestDry);
  });
});
