import { expect, it } from 'vitest';
import { madeDay, measured } from '../kernel/index.ts';
import { worstYear } from './leaveIt.ts';

const year = (waterYear: number, dryDays: number, longestRun_days: number, judged = true) => ({
  waterYear,
  dryDays,
  longestRun_days,
  judged,
});
const span = (label: number, from: number, to: number) => ({ label, from, to, missing_days: 0, judged: true });

it('finds the judged year with the most dry days, then the longest run, and its litres short', () => {
  const rain = { years: [span(2001, 0, 2), span(2002, 2, 4), span(2003, 4, 6), span(2004, 6, 8)] };
  // In 2002 its second day asks for half as much.
  const judgedAsked_L = Float64Array.of(10, 10, 10, 5, 10, 10, 10, 10);
  const judgedTaken_L = Float64Array.of(10, 10, 4, 0, 0, 0, 10, 7);
  // 3 L of 2002 come from elsewhere.
  const secondSource_L = Float64Array.of(0, 0, 0, 3, 0, 0, 0, 0);
  const dry = Uint8Array.of(0, 1, 1, 1, 0, 1, 1, 1);
  const state = new Uint8Array(8).fill(measured);
  const series = { firstDay: 1000, judgedAsked_L, judgedTaken_L, secondSource_L, dry, state };
  const years = [year(2001, 1, 1), year(2002, 2, 3), year(2003, 9, 9, false), year(2004, 2, 1)];
  expect(worstYear(years, series, rain, null)).toEqual({
    tankIds: null,
    waterYear: 2002,
    dryDays: 2,
    longestRun_days: 3,
    // The run began on the last day of 2001.
    longestRunFrom: 1001,
    ofMadeYears: null,
    shortfall_L: 8,
  });
  expect(worstYear([year(2003, 9, 9, false)], series, rain, null)).toBeNull();
  const made = { ...series, state: new Uint8Array(8).fill(madeDay) };
  expect(worstYear(years, made, rain, null)).toMatchObject({ waterYear: 2002, ofMadeYears: 3 });
});
