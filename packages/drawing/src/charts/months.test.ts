import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import type { Shape } from '../sheet/shapes.ts';
import { monthsFacts } from './chartFacts.ts';
import { csvOf, tableOfMonths } from './chartTables.ts';
import { madeUpRecord, monthsWords, seriesOf, yearsFrom } from './madeUp.testing.ts';
import { monthsChart } from './monthsChart.ts';
import { monthFlows, monthTotals } from './monthTotals.ts';

describe('litres by month', () => {
  it('by hand: two years from February, 10 L caught a day in one and 20 in the other, 1 L short each day of the first March', () => {
    const years = yearsFrom(2001, 2, 2);
    const days = years[1]!.to;
    const caught = Array.from({ length: days }, (_, day) => (day < 365 ? 10 : 20));
    const march = (day: number) => day >= 28 && day < 59;
    const input = {
      series: seriesOf(dayIndexOf(2001, 2, 1), caught, {
        inflow_L: caught,
        judgedAsked_L: caught.map(() => 5),
        judgedTaken_L: caught.map((_, day) => (march(day) ? 2 : 5)),
        secondSource_L: caught.map((_, day) => (march(day) ? 2 : 0)),
      }),
      years,
    };
    const totals = monthTotals(input);
    expect(totals.months).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 1]);
    // February: 28 days of 10 L and 28 of 20 L; a tenth of the way from the first to the second, and nine tenths.
    expect(totals.means.caught[0]).toEqual({ mean_L: 420, low_L: 280 + 28, high_L: 560 - 28 });
    expect(totals.means.short[1]!.mean_L).toBe(31 / 2);
    expect(totals.means.secondSource[1]!.mean_L).toBe(31);
    expect(totals.each.map(({ year }) => year).filter((year) => year === 2002)).toHaveLength(12);
    expect(monthsFacts(totals)).toMatchObject({ shortest: 3, mostSpilled: null, spillsWhileShort: false });
  });

  it('the months come to the sums of the days, and the water to what is in the tank', () => {
    for (const [seed, month] of [
      [1, 1],
      [2, 7],
      [3, 10],
    ] as const) {
      const input = madeUpRecord({ seed, month, years: 11 });
      const { means, years } = monthTotals(input);
      const all = (flow: (typeof monthFlows)[number]) => means[flow].reduce((sum, one) => sum + one.mean_L, 0) * years;
      const sum = (list: Float64Array) => list.reduce((total, litres) => total + litres, 0);
      const { series, tankVolume_L } = input;
      const scale = 1e-9 * sum(series.inflow_L);
      expect(Math.abs(all('caught') - sum(series.inflow_L))).toBeLessThan(scale);
      expect(Math.abs(all('judgedTaken') - sum(series.judgedTaken_L))).toBeLessThan(scale);
      expect(Math.abs(all('spilled') - sum(series.spill_L))).toBeLessThan(scale);
      const kept = series.content_L[series.content_L.length - 1]! - tankVolume_L / 2;
      const left = all('caught') - all('judgedTaken') - all('otherTaken') - all('spilled');
      expect(Math.abs(left - kept)).toBeLessThan(scale);
      const asked = sum(series.judgedAsked_L) - all('judgedTaken') - all('secondSource');
      expect(Math.abs(asked - all('short'))).toBeLessThan(scale);
    }
  });

  it('the table says each of them, a row a month, and is CSV', () => {
    const input = madeUpRecord({ years: 3, month: 7 });
    const table = tableOfMonths(input);
    expect(table.rows).toHaveLength(12);
    expect(table.rows[0]![0]).toBe(7);
    expect(table.columns).toHaveLength(1 + 3 * monthFlows.length);
    for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
    const { means } = monthTotals(input);
    const column = table.columns.findIndex(({ key }) => key === 'spilled_L');
    expect(table.rows.map((row) => row[column])).toEqual(means.spilled.map((one) => one.mean_L));
    expect(csvOf(table).split('\r\n')).toHaveLength(14);
  });

  it('what never is, is left out, but that nothing is short is said', () => {
    const input = madeUpRecord({ years: 3, asked_L: 1, tankVolume_L: 90_000 });
    const chart = monthsChart(input, monthsWords, { width: 1216 });
    const parts = chart.shapes.flatMap((shape) => (shape.kind === 'group' ? [shape.part] : []));
    expect(parts).toContain('flow:short');
    expect(parts).not.toContain('flow:secondSource');
    expect(chart.shapes.some((shape) => shape.kind === 'letter' && shape.text === 'never')).toBe(true);
  });

  it('a month pointed at is the month of its place, and a day lights up its own month with its own litres', () => {
    const input = madeUpRecord({ years: 3, month: 7, year: 2000 });
    for (const width of [328, 606, 1216]) {
      const chart = monthsChart(input, monthsWords, { width });
      for (let month = 1; month <= 12; month++)
        for (const { x, y, width: own } of chart.placesOf(month)) expect(chart.monthAt(x + own / 2, y + 2)).toBe(month);
      const day = dayIndexOf(2002, 2, 11);
      const said = chart.overlayOf(day).flatMap((shape: Shape) => (shape.kind === 'letter' ? [shape.text] : []));
      const from = dayIndexOf(2002, 2, 1) - input.series.firstDay;
      const caught = input.series.inflow_L.subarray(from, from + 28).reduce((sum, litres) => sum + litres, 0);
      expect(said[0]).toBe(monthsWords.at(2, 2002, caught));
    }
  });
});
