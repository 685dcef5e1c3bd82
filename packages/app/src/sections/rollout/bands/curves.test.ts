import { readIsoDay } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { sheetForTests } from '../sheetForTests.ts';
import { axisOf } from './axis.ts';
import { bandPath, drinkingOf, stepsPath, stockLines, yOf } from './curves.ts';

const day = (text: string) => readIsoDay(text)!;
const axis = axisOf(day('2026-06-01'), day('2026-06-28'), 70);
const rise = { least: 0, most: 200, height_px: 100 };

describe('a curve of steps', () => {
  it('goes level to a day and straight up on it', () => {
    const points = [
      { at: day('2026-06-08'), value: 100 },
      { at: day('2026-06-15'), value: 200 },
    ];
    expect(stepsPath(points, 50, axis, rise)).toBe('M0 75H70V50H140V0H280');
  });

  it('is level where nothing happens', () => {
    expect(stepsPath([], 50, axis, rise)).toBe('M0 75H280');
  });

  it('has a band that comes back along its lower line', () => {
    const band = [
      { at: day('2026-06-08'), low: 50, high: 100 },
      { at: day('2026-06-15'), low: 100, high: 200 },
    ];
    expect(bandPath(band, 0, axis, rise)).toBe('M0 100H70V50H140V0H280V50H140V75H70V100Z');
    expect(bandPath([], 0, axis, rise)).toBe('');
  });

  it('stands at the foot where all there is is nothing', () => {
    expect(yOf({ least: 0, most: 0, height_px: 100 }, 0)).toBe(100);
    expect(yOf({ least: -50, most: 50, height_px: 100 }, 0)).toBe(50);
  });
});

describe('people who drink', () => {
  it('are those of before and those of the plan', () => {
    const found = drinkingOf(
      sheetForTests([], {
        servedBefore_people: 1000,
        people_count: 300,
        served: [
          { day: '2026-06-12', people: 100 },
          { day: '2026-06-20', people: 300 },
        ],
      }),
    );
    expect(found.isDrawn).toBe(false);
    expect(found.all).toBe(1300);
    expect(found.line).toEqual([
      { at: day('2026-06-12'), value: 1100 },
      { at: day('2026-06-20'), value: 1300 },
    ]);
  });

  it('are told by the end of a week where futures were drawn', () => {
    const found = drinkingOf(
      sheetForTests([], {
        servedBefore_people: 10,
        people_count: 100,
        servedByWeek: [{ until: '2026-06-14', p10: 20, p50: 40, p90: 60 }],
      }),
    );
    expect(found.line).toEqual([{ at: day('2026-06-15'), value: 50 }]);
    expect(found.band).toEqual([{ at: day('2026-06-15'), low: 30, high: 70 }]);
  });

  it('rise in the past on the days that were entered, whatever is drawn of what comes', () => {
    const found = drinkingOf(
      sheetForTests([], {
        ...{ from: '2026-06-10', servedBefore_people: 10, people_count: 100 },
        served: [
          { day: '2026-06-02', people: 30 },
          { day: '2026-06-12', people: 130 },
        ],
        servedByWeek: [{ until: '2026-06-14', p10: 30, p50: 60, p90: 130 }],
      }),
    );
    expect(found.line).toEqual([
      { at: day('2026-06-02'), value: 40 },
      { at: day('2026-06-15'), value: 70 },
    ]);
  });
});

describe('stock', () => {
  const point = (text: string, in_count: number, out_count: number, left_count: number) => ({
    ...{ day: text, in_count, out_count, left_count },
  });
  const of = (partId: string, points: readonly ReturnType<typeof point>[]) => ({
    ...{ store: 'W', partId, name: partId, points: [...points] },
  });

  it('comes with the tightest part first, by what is left against what goes', () => {
    const lines = stockLines(
      sheetForTests([], {
        places: [{ placeId: 'W', name: 'Warehouse', kind: null, latitude_deg: null, longitude_deg: null }],
        stock: [
          of('plenty', [point('2026-06-01', 100, 0, 100), point('2026-06-08', 0, 10, 90)]),
          of('tight', [point('2026-06-01', 100, 0, 100), point('2026-06-08', 0, 99, 1)]),
          of('short', [point('2026-06-01', 4, 0, 4), point('2026-06-08', 0, 6, -2), point('2026-06-10', 9, 0, 7)]),
          of('untouched', [point('2026-06-01', 5, 0, 5)]),
        ],
      }),
    );
    expect(lines.map(({ part, least_count }) => [part, least_count])).toEqual([
      ['short', -2],
      ['tight', 1],
      ['plenty', 90],
      ['untouched', 5],
    ]);
    expect(lines[0]!.store).toBe('Warehouse');
  });
});
