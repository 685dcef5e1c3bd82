import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../kernel/index.ts';
import { chosenTank } from './chosenTank.ts';
import { sizeCurve } from './sizeCurve.ts';

/** Three years of four days: 10 L are asked a day for drinking and 5 L besides. */
function threeYears(inflow: readonly number[], judged: readonly boolean[], longestDryRun_days = 2) {
  const years = judged.map((is, i) => ({ label: 2001 + i, from: 4 * i, to: 4 * i + 4, missing_days: 0, judged: is }));
  const inflow_L = Float64Array.from(inflow);
  const balance = { inflow_L, judged_L: new Float64Array(12).fill(10), other_L: new Float64Array(12).fill(5) };
  const record = { gaugeId: 'G', firstDay: 0, rain_mm: inflow_L, state: new Uint8Array(12) };
  const rain = { record, years, judgedYears: judged.filter(Boolean).length };
  const curve = sizeCurve(balance, rain, { ...defaultSettings.target, longestDryRun_days }, 100);
  return chosenTank(balance, rain, curve, 100, null);
}

describe('chosenTank', () => {
  it('tells what falls short in a mean judged year, and leaves out the years that are not judged', () => {
    // Year 1 has 15 L every day, year 2 nothing, year 3 nothing until its last day.
    const inflow = [15, 15, 15, 15, 0, 0, 0, 0, 0, 0, 0, 15];
    const all = threeYears(inflow, [true, true, true]);
    // Year 1 is met throughout: its first morning has the last day's 15 L. Year 2 has one morning's; then 7 mornings are short.
    expect(all.shortfall_L_per_year).toBeCloseTo(70 / 3, 12);
    expect(all.otherShortDays_per_year).toBeCloseTo(7 / 3, 12);
    const two = threeYears(inflow, [true, false, true]);
    expect(two.shortfall_L_per_year).toBeCloseTo(40 / 2, 12);
    expect(two.otherShortDays_per_year).toBeCloseTo(4 / 2, 12);
    const first = threeYears(inflow, [true, false, false]);
    expect([first.shortfall_L_per_year, first.otherShortDays_per_year]).toEqual([0, 0]);
  });

  it('calls a year good at the generous end where its longest dry run is just the longest allowed', () => {
    // Rain before drawing: two dry days in year 2, none in the others.
    const inflow = [15, 15, 15, 15, 15, 0, 0, 15, 15, 15, 15, 15];
    const judged = [true, true, true];
    expect(threeYears(inflow, judged, 2).yieldBeforeSpill).toEqual({ dryDays_per_year: 2 / 3, goodYears: 3 });
    expect(threeYears(inflow, judged, 1).yieldBeforeSpill).toEqual({ dryDays_per_year: 2 / 3, goodYears: 2 });
  });
});
