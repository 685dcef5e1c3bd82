import { describe, expect, it } from 'vitest';
import { defaultSettings, type JudgedRain } from '../../kernel/index.ts';
import { drawYears } from './drawYears.ts';
import { storageFinding } from './storageFinding.ts';

/** Twelve years of 20 days: 300 L on the first day of each; so much is asked a day for drinking and besides. */
function foundAt(tankVolume_L: number, judged_L: number, other_L: number) {
  const inflow_L = Float64Array.from({ length: 240 }, (_, day) => (day % 20 === 0 ? 300 : 0));
  const years = Array.from({ length: 12 }, (_, i) => ({
    label: 2001 + i,
    from: 20 * i,
    to: 20 * i + 20,
    missing_days: 0,
    judged: true,
  }));
  const rain: JudgedRain = {
    record: { gaugeId: 'G', firstDay: 0, rain_mm: inflow_L, state: new Uint8Array(240) },
    startMonth: 1,
    years,
    judgedYears: 12,
    filledDays: 0,
    neighbourDays: 0,
    madeDays: 0,
    meanAnnualRain_mm: 300,
    longestRainlessRun_days: 19,
    cutDays: 0,
  };
  const { finding } = storageFinding({
    tankIds: ['T1'],
    people: 1,
    ration: null,
    balance: {
      inflow_L,
      judged_L: new Float64Array(240).fill(judged_L),
      other_L: new Float64Array(240).fill(other_L),
    },
    rain,
    tankVolume_L,
    judgedDemand_L_per_day: judged_L,
    judgedDemandHighest_L_per_day: judged_L,
    secondSource: null,
    otherDemand_L_per_day: other_L,
    inflow_L_per_year: 300,
    catalogue: [],
    settings: defaultSettings,
    drawn: drawYears(12, 100, 1),
    handOverDay: null,
    cappedBy: null,
  });
  return finding;
}

describe('storageFinding', () => {
  it('tells what the tank would do for drinking alone only where it is short of all that is asked', () => {
    expect(foundAt(300, 10, 2)).toMatchObject({ judgedAlone: null, lacks: null });
    const short = foundAt(300, 10, 10);
    expect(short).toMatchObject({ verdict: 'short', lacks: 'water' });
    expect(short.judgedAlone).toMatchObject({ goodYears: 12, dryDays_per_year: 0, meetsTarget: true });
    expect(foundAt(100, 10, 0)).toMatchObject({ verdict: 'short', judgedAlone: null });
  });

  it('tells as many coming years as were judged, no surer than the share of the years', () => {
    const { goodYears, comingGood_years_range, goodYears_fraction_range } = foundAt(300, 10, 2);
    expect(goodYears).toBe(12);
    expect(comingGood_years_range.high).toBe(12);
    expect(comingGood_years_range.low).toBeLessThanOrEqual(12 * goodYears_fraction_range.low);
  });
});
