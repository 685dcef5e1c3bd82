import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import type { PathShape, Shape } from '../sheet/shapes.ts';
import { madeUpRecord, seriesOf, traceWords, yearsFrom } from './madeUp.testing.ts';
import { traceChart } from './traceChart.ts';

const pathsOf = (shapes: readonly Shape[]): readonly PathShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' ? [shape] : shape.kind === 'group' ? pathsOf(shape.shapes) : []));
const lettersIn = (shapes: readonly Shape[]) =>
  shapes.flatMap((shape) => (shape.kind === 'letter' ? [shape.text] : []));

describe('the trace', () => {
  it('by hand: full, half, empty, a day after another, as steps of 2 px to the day', () => {
    const series = seriesOf(dayIndexOf(2001, 1, 1), [100, 50, 0]);
    const years = [{ label: 2001, from: 0, to: 3, missing_days: 0, judged: true }];
    const chart = traceChart(
      { series, years, tankVolume_L: 100, longestDryRun_days: 7 },
      { ...traceWords, litres: () => '', empty: '' },
      { width: 608 },
    );
    const [first, second, third] = [0, 1, 2].map((day) => chart.placeOf(series.firstDay + day)!);
    expect(first!.width).toBeCloseTo(200, 9);
    const { y: top, height } = first!;
    const water = pathsOf(chart.shapes).find((path) => path.ground === 'water')!;
    expect(water.d).toBe(`M7 ${top + height}V${top}H207V${top + height / 2}H407V${top + height}H607V${top + height}Z`);
    expect(chart.dayAt(second!.x + 1, top + 5)).toBe(series.firstDay + 1);
    expect(chart.dayAt(third!.x + 199, top + 5)).toBe(series.firstDay + 2);
    expect(chart.dayAt(3, top + 5)).toBeNull();
  });

  it('the water of each px goes up to the lowest, and the band to the highest, of the days that have a share in it', () => {
    for (const seed of [1, 2]) {
      const input = madeUpRecord({ seed, years: 30 });
      const chart = traceChart(input, traceWords, { width: 1216 });
      const [low, band] = ['water', 'level4'].map(
        (ground) => pathsOf(chart.shapes).find((path) => path.ground === ground)!,
      );
      const lowAt = heightsOf(low!.d);
      const highAt = heightsOf(band!.d.slice(0, band!.d.length / 2 + 20));
      const { firstDay, content_L } = input.series;
      const first = chart.placeOf(firstDay)!;
      const levelOf = (content: number) => first.y + first.height * (1 - content / input.tankVolume_L);
      const columns = Math.floor(content_L.length * first.width);
      expect(columns).toBeGreaterThan(1000);
      for (let column = 0; column < columns; column++) {
        // All days that have a share in this px, however small.
        const from = Math.floor(column / first.width + 1e-6);
        const to = Math.ceil((column + 1) / first.width - 1e-6);
        const days = content_L.subarray(from, to);
        const x = first.x + column + 0.5;
        expect(lowAt(x)).toBeCloseTo(levelOf(Math.min(...days)), 1);
        expect(highAt(x)).toBeCloseTo(levelOf(Math.max(...days)), 1);
      }
    }
  });

  it('runs hang as deep as they are long, brick over the limit, grey up to it, and the three longest are lettered', () => {
    const days = 730;
    const dry = new Array<number>(days).fill(0);
    for (const [from, length] of [
      [20, 7],
      [60, 8],
      [100, 20],
      [200, 3],
      [300, 12],
    ] as const)
      dry.fill(1, from, from + length);
    const series = seriesOf(
      dayIndexOf(2001, 1, 1),
      dry.map((isDry) => (isDry === 1 ? 0 : 80)),
      { dry },
    );
    const chart = traceChart(
      { series, years: yearsFrom(2001, 1, 2), tankVolume_L: 100, longestDryRun_days: 7 },
      traceWords,
      { width: 1216 },
    );
    const depths = (ground: string) =>
      [
        ...pathsOf(chart.shapes)
          .find((path) => path.ground === ground)!
          .d.matchAll(/v(\d[\d.]*)/g),
      ].map((found) => Number(found[1]));
    const perDay = depths('brick')[1]! / 20;
    expect(depths('brick').map((depth) => Math.round(depth / perDay))).toEqual([8, 20, 12]);
    expect(depths('mark').map((depth) => Math.round(depth / perDay))).toEqual([7, 3]);
    const said = lettersIn(chart.shapes).filter((text) => / d$/.test(text) && !text.startsWith('runs'));
    expect(said.sort()).toEqual(['12 d', '20 d', '8 d']);
  });

  it('strips hold whole years, each day in one of them', () => {
    const input = madeUpRecord({ years: 32 });
    const chart = traceChart(input, traceWords, { width: 328, strips: 4 });
    const tops = new Map<number, number>();
    const { firstDay, content_L } = input.series;
    for (let day = 0; day < content_L.length; day++) {
      const box = chart.placeOf(firstDay + day)!;
      tops.set(box.y, (tops.get(box.y) ?? 0) + 1);
    }
    expect([...tops.values()]).toEqual(
      [0, 8, 16, 24].map((year) => input.years[year + 7]!.to - input.years[year]!.from),
    );
  });

  it('a window of a year shows each day, with the rain above in a frame of its own', () => {
    const input = madeUpRecord({ years: 3, year: 2000 });
    const from = dayIndexOf(2001, 1, 1);
    const chart = traceChart(input, traceWords, { width: 1216, window: { from, to: from + 364 } });
    expect(chart.placeOf(from - 1)).toBeNull();
    for (let day = from; day < from + 365; day++) {
      const box = chart.placeOf(day)!;
      expect(chart.dayAt(box.x + box.width / 2, box.y + 3)).toBe(day);
    }
    expect(lettersIn(chart.shapes).some((text) => text.startsWith('rain, most'))).toBe(true);
    const wet = input.series.rain_mm
      .subarray(from - input.series.firstDay, from - input.series.firstDay + 365)
      .filter((rain) => rain > 0);
    const bars = pathsOf(chart.shapes).find((path) => path.ground === 'waterline')!;
    expect(bars.d.split('M').length - 1).toBe(wet.length);
  });

  it('years not judged are paler and said, days not measured are hatched and said', () => {
    const input = madeUpRecord({
      years: 10,
      notJudged: [4],
      state: (day) => (day > 400 && day < 500 ? 2 : day > 900 && day < 940 ? 1 : 0),
    });
    const chart = traceChart(input, traceWords, { width: 1216 });
    expect(lettersIn(chart.shapes)).toEqual(expect.arrayContaining(['not judged', 'filled', 'not known']));
    const grounds = pathsOf(chart.shapes).map((path) => path.ground);
    expect(grounds).toEqual(expect.arrayContaining(['water', 'low', 'doubt']));
  });

  it('what lights up is at the level of its day', () => {
    const input = madeUpRecord({ years: 2 });
    const chart = traceChart(input, traceWords, { width: 1216 });
    const day = input.series.firstDay + 100;
    const box = chart.placeOf(day)!;
    const level = box.y + box.height * (1 - input.series.content_L[100]! / input.tankVolume_L);
    const dot = pathsOf(chart.overlayOf(day)).find((path) => path.ground === 'paper')!;
    expect(Number(/ ([\d.]+)a/.exec(dot.d)![1])).toBeCloseTo(level, 1);
    expect(chart.overlayOf(input.series.firstDay - 1)).toEqual([]);
  });
});

/** The height of a path of V and H steps at a place. */
function heightsOf(d: string): (x: number) => number | undefined {
  const steps: { x: number; y: number }[] = [];
  let y = 0;
  for (const [, letter, value] of d.matchAll(/([VH])(-?[\d.]+)/g)) {
    if (letter === 'V') y = Number(value);
    else steps.push({ x: Number(value), y });
  }
  return (x) => steps.find((step) => step.x >= x)?.y;
}
