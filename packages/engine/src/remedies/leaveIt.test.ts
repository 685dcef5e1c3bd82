import { expect, it } from 'vitest';
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
  const years = [year(2001, 0, 0), year(2002, 2, 2), year(2003, 9, 9, false), year(2004, 2, 1)];
  expect(worstYear(years, { judgedAsked_L, judgedTaken_L, secondSource_L }, rain, null)).toEqual({
    tankIds: null,
    waterYear: 2002,
    dryDays: 2,
    longestRun_days: 2,
    shortfall_L: 8,
  });
  expect(worstYear([year(2003, 9, 9, false)], { judgedAsked_L, judgedTaken_L, secondSource_L }, rain, null)).toBeNull();
});
