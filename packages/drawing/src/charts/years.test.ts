import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import type { PathShape, Shape } from '../sheet/shapes.ts';
import { curveFacts, yearsFacts } from './chartFacts.ts';
import { csvOf, tableOfCurve, tableOfDays, tableOfRaster, tableOfRuns, tableOfYears } from './chartTables.ts';
import { madeUpCurve, madeUpRecord, seriesOf, yearsFrom, yearsInputOf, yearsWords } from './madeUp.testing.ts';
import { tellingDay, yearsChart } from './yearsChart.ts';

/** Four years of the calendar: 10 dry days in a row, 4 apart, none, and 30 in a row in one that is not judged. */
function fourYears() {
  const years = yearsFrom(2001, 1, 4, [3]);
  const dry = new Array<number>(years[3]!.to).fill(0);
  dry.fill(1, 100, 110);
  for (const day of [400, 420, 440, 460]) dry[day] = 1;
  dry.fill(1, years[3]!.from + 50, years[3]!.from + 80);
  const content = dry.map((isDry, day) => (isDry === 1 ? 0 : day === 900 ? 3 : 50));
  return yearsInputOf({
    series: seriesOf(dayIndexOf(2001, 1, 1), content, { dry }),
    years,
    tankVolume_L: 100,
    longestDryRun_days: 7,
  });
}
const pathsOf = (shapes: readonly Shape[]): readonly PathShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' ? [shape] : shape.kind === 'group' ? pathsOf(shape.shapes) : []));

describe('dry days by year', () => {
  it('by hand: a year with a run over the limit is solid, one without is grey, one not judged is hollow', () => {
    const chart = yearsChart(fourYears(), yearsWords, { width: 606 });
    const tall = (paths: readonly PathShape[]) =>
      paths.flatMap((path) => [...path.d.matchAll(/v(\d[\d.]*)/g)].map((found) => Number(found[1])));
    const paths = pathsOf(chart.shapes);
    const [over] = tall(paths.filter((path) => path.ground === 'brick'));
    const [under] = tall(paths.filter((path) => path.ground === 'mark'));
    const [hollow] = tall(paths.filter((path) => path.ground === 'paper'));
    expect(over! / under!).toBeCloseTo(10 / 4, 2);
    expect(hollow! / under!).toBeCloseTo(30 / 4, 2);
  });

  it('a place means the day that says most of its year', () => {
    const input = fourYears();
    const { years, series } = input;
    expect(years.map((year) => tellingDay(input, year))).toEqual([100, 400, 900, years[3]!.from + 50]);
    const chart = yearsChart(input, yearsWords, { width: 606 });
    for (const [index, day] of [100, 400, 900].entries()) {
      const box = chart.placeOf(series.firstDay + years[index]!.from)!;
      expect(chart.dayAt(box.x + box.width / 2, box.y + 5)).toBe(series.firstDay + day);
      expect(chart.placeOf(series.firstDay + years[index]!.to - 1)).toEqual(box);
    }
  });

  it('facts count the judged years alone', () => {
    expect(yearsFacts(fourYears())).toMatchObject({
      judgedYears: 3,
      goodYears: 2,
      yearsWithoutDryDay: 1,
      worst: { waterYear: 2001, dryDays: 10 },
    });
  });
});

describe('tables of the charts', () => {
  it('of days: each day once, and a window of them', () => {
    const input = madeUpRecord({ years: 2, year: 2000, state: (day) => (day === 3 ? 2 : 0) });
    const table = tableOfDays(input);
    expect(table.rows).toHaveLength(731);
    expect(table.rows[3]!.slice(0, 4)).toEqual(['2000-01-04', 2000, 1, input.series.content_L[3]]);
    expect(table.rows[3]!.at(-1)).toBe('filled');
    const from = dayIndexOf(2001, 12, 30);
    expect(tableOfDays(input, { from, to: from + 50 }).rows.map((row) => row[0])).toEqual(['2001-12-30', '2001-12-31']);
  });

  it('of runs and of the raster: what was laid out by hand', () => {
    const input = fourYears();
    expect(tableOfRuns(input).rows[0]).toEqual(['2001-04-11', '2001-04-20', 10, 2001, 1]);
    const rows = tableOfRaster(input).rows;
    expect(rows.map((row) => row[14])).toEqual([10, 4, 0, 30]);
    expect(rows.map((row) => row[15])).toEqual([10, 1, 0, 30]);
    expect(rows[0]![1 + 4]).toBe(10);
  });

  it('of years: the years, and the mean with its range', () => {
    const rows = tableOfYears(fourYears()).rows;
    expect(rows).toHaveLength(5);
    expect(rows[4]!.slice(0, 3)).toEqual(['mean', null, 14 / 3]);
  });

  it('of the curve: at every step, never a size without end, dry days never more in a larger tank', () => {
    const curve = madeUpCurve(3, 5, 4);
    const rows = tableOfCurve(curve).rows as readonly (readonly number[])[];
    expect(rows.length).toBeGreaterThan(40);
    for (const [index, [size, dry, good]] of rows.entries()) {
      expect(Number.isFinite(size)).toBe(true);
      expect(dry).toBe(curve.critical_L.filter((own) => own > size! * (1 + 1e-9)).length / 5);
      if (index > 0) expect(dry).toBeLessThanOrEqual(rows[index - 1]![1]!);
      if (index > 0) expect(good).toBeGreaterThanOrEqual(rows[index - 1]![2]!);
    }
    expect(curveFacts(curve, 2000)).toMatchObject({ catalogueForTarget_L: 8000, meetsDays: false, isExact: true });
  });

  it('CSV: what is not known is empty, what holds a comma or a mark of quotation is quoted, figures have six decimals', () => {
    const columns = [
      { key: 'a', unit: '' },
      { key: 'b_L', unit: 'L' },
    ];
    expect(
      csvOf({
        columns,
        rows: [
          [null, 1.5],
          ['x,"y"', -2],
          // The dust of 0.1 + 0.2 is none of the figure.
          [0.1 + 0.2, 50117.19928418725],
        ],
      }),
    ).toBe('a,b_L\r\n,1.5\r\n"x,""y""",-2\r\n0.3,50117.199284\r\n');
  });
});
