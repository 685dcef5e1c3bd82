import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { madeUpRecord, rasterWords, seriesOf, yearsFrom } from './madeUp.testing.ts';
import { cellSpans, toneOf } from './rasterCells.ts';
import { rasterChart } from './rasterChart.ts';
import { rowOf, slotAt, slotOf } from './rasterFrame.ts';

describe('cells of the raster', () => {
  it('the year of a row begins in its month: 1 March is the 60th place from January, the first from March', () => {
    expect(slotOf(1, 1, 1)).toBe(0);
    expect(slotOf(3, 1, 1)).toBe(60);
    expect(slotOf(12, 31, 1)).toBe(365);
    expect(slotOf(3, 1, 3)).toBe(0);
    expect(slotOf(2, 29, 3)).toBe(365);
    expect(slotOf(7, 1, 7)).toBe(0);
    expect(slotOf(2, 29, 7)).toBe(243);
  });

  it.each([
    [1, 2001, 58],
    [1, 2000, 58],
    [7, 2000, 242],
    [7, 1999, 242],
    [3, 2003, 364],
    [3, 2002, 364],
    [2, 2001, 27],
  ])(
    'from month %i of %i: 28 February is at place %i, and takes the 29th too where there is none',
    (month, year, place) => {
      const first = dayIndexOf(year, month, 1);
      const [own] = yearsFrom(year, month, 1);
      const row = rowOf(own!, first, month);
      const februaryYear = month > 2 ? year + 1 : year;
      const offset = dayIndexOf(februaryYear, 2, 28) - first;
      const isLeap = dayIndexOf(februaryYear, 3, 1) - dayIndexOf(februaryYear, 2, 28) === 2;
      expect(slotAt(row, offset)).toBe(place);
      expect(slotAt(row, offset + 1) - slotAt(row, offset)).toBe(isLeap ? 1 : 2);
      // Whatever the year, its last day ends at the row's end.
      expect(slotAt(row, own!.to)).toBe(366);
    },
  );

  it('each day of the record is in one span, under its own tone', () => {
    for (const seed of [1, 2, 3]) {
      const input = madeUpRecord({ seed, years: 9, month: seed * 3, year: 1995, notJudged: [2] });
      const seen = new Uint8Array(input.series.content_L.length);
      for (const { row, from, to, tone } of cellSpans(input)) {
        const year = input.years[row]!;
        expect(from).toBeGreaterThanOrEqual(year.from);
        expect(to).toBeLessThanOrEqual(year.to);
        for (let day = from; day < to; day++) {
          seen[day]!++;
          const { content_L, dry } = input.series;
          expect(toneOf(content_L[day]!, input.tankVolume_L, dry[day] === 1)).toBe(tone);
        }
      }
      expect(seen.every((count) => count === 1)).toBe(true);
    }
  });

  it('tones are sixths of the tank; dry is its own; a tank of nothing has none', () => {
    expect([0, 99, 100, 250, 599, 600].map((content) => toneOf(content, 600, false))).toEqual([0, 0, 1, 2, 5, 5]);
    expect(toneOf(600, 600, true)).toBe(6);
    expect(toneOf(0, 0, false)).toBe(0);
  });

  it('a day pointed at is the day whose cell it is, at every width', () => {
    for (const width of [328, 606, 1216])
      for (const month of [1, 3, 7]) {
        const input = madeUpRecord({ years: 5, month, year: 1998 });
        const chart = rasterChart(input, rasterWords, { width });
        const { firstDay, content_L } = input.series;
        for (let day = firstDay; day < firstDay + content_L.length; day++) {
          const box = chart.placeOf(day)!;
          expect(chart.dayAt(box.x + box.width / 2, box.y + box.height / 2)).toBe(day);
        }
      }
  });

  it('32 years come to few paths, whatever the days', () => {
    const input = madeUpRecord({ years: 32, state: (day) => (day % 50 === 0 ? 2 : 0), notJudged: [3] });
    const chart = rasterChart(input, rasterWords, { width: 1216 });
    const cells = chart.shapes.find((shape) => shape.kind === 'group' && shape.part === 'cells');
    expect(cells?.kind === 'group' && cells.shapes.length).toBe(7);
  });

  it('by hand: one year, dry from 10 to 12 January, is one brick cell of 3 days', () => {
    const dry = new Array<number>(365).fill(0).map((_, day) => (day >= 9 && day < 12 ? 1 : 0));
    const series = seriesOf(
      dayIndexOf(2001, 1, 1),
      dry.map((isDry) => (isDry === 1 ? 0 : 600)),
      { dry },
    );
    const input = { series, years: yearsFrom(2001, 1, 1), tankVolume_L: 600, longestDryRun_days: 7 };
    expect(cellSpans(input)).toEqual([
      { row: 0, from: 0, to: 9, tone: 5 },
      { row: 0, from: 9, to: 12, tone: 6 },
      { row: 0, from: 12, to: 365, tone: 5 },
    ]);
  });
});
