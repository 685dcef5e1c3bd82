import { describe, expect, it } from 'vitest';
import { madeDay } from '../../kernel/index.ts';
import { judgedMadeRain } from './judgedMadeRain.ts';
import { monthsFromNormals, type RainMonth } from './rainMonths.ts';
import { judgedDaysFilled } from './recordFacts.ts';
import { yearMoments } from './yearFacts.ts';

const months: readonly RainMonth[] = monthsFromNormals(
  [210, 190, 220, 150, 80, 40, 25, 12, 30, 90, 160, 230].map((rain_mm, i) => ({
    rain_mm,
    wetDays: [16, 14, 16, 13, 9, 6, 4, 2, 4, 8, 12, 17][i]!,
  })),
)!;
const settings = {
  seed: 1,
  missingDays_fraction: 0,
  leastYears: 10,
  waterYearStartMonth: null as number | null,
  gapFilling: 'otherYears' as const,
  madeYears: 40,
};

describe('judgedMadeRain', () => {
  it.each([null, 1, 9])('has as many whole water years as asked for, from month %s', (waterYearStartMonth) => {
    const found = judgedMadeRain('G1', months, { ...settings, waterYearStartMonth });
    expect(found.problems).toEqual([]);
    if (!found.ok) throw new Error('no rain');
    const { value } = found;
    expect(value.judgedYears).toBe(40);
    expect(value.years).toHaveLength(40);
    expect(value.cutDays).toBe(0);
    expect(value.filledDays).toBe(0);
    expect(value.madeDays).toBe(value.record.state.length);
    expect(value.record.state.every((state) => state === madeDay)).toBe(true);
    expect(value.years.every(({ judged, missing_days }) => judged && missing_days === 0)).toBe(true);
    expect(judgedDaysFilled(value)).toEqual({
      days: value.madeDays,
      fromOtherYearsDays: 0,
      fromNeighboursDays: 0,
      madeDays: value.madeDays,
    });
  });

  it('says where so few years were asked for that nothing could hold', () => {
    const found = judgedMadeRain('G1', months, { ...settings, madeYears: 5, leastYears: 6 });
    expect(found.problems.map(({ code }) => code)).toEqual(['rain.few_years']);
  });

  it('is the same for the same gauge and seed, another for another', () => {
    const rain = (gaugeId: string, seed: number) => judgedMadeRain(gaugeId, months, { ...settings, seed });
    expect(rain('G1', 1)).toEqual(rain('G1', 1));
    const moments = [rain('G1', 1), rain('G2', 1), rain('G1', 2)].map((found) => found.ok && yearMoments(found.value));
    expect(moments[0]).not.toEqual(moments[1]);
    expect(moments[0]).not.toEqual(moments[2]);
  });
});
