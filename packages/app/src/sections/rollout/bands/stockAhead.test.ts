import { readIsoDay } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { sheetForTests } from '../sheetForTests.ts';
import { goesOn, notThereYet, stockAhead } from './stockAhead.ts';

const day = (text: string) => readIsoDay(text)!;
const point = (text: string, in_count: number, out_count: number, left_count: number) => ({
  ...{ day: text, in_count, out_count, left_count },
});
const of = (partId: string, points: readonly ReturnType<typeof point>[], store = 'W') => ({
  ...{ store, partId, name: partId, points: [...points] },
});
/** Today is 10 June 2026. */
const ahead = (...stock: readonly ReturnType<typeof of>[]) =>
  stockAhead(sheetForTests([], { stock: [...stock], places: [] }));

describe('what lies in a store today', () => {
  it('is enough until the day on which more went than lies there now, whatever comes; and the next that come are told', () => {
    const [filters] = ahead(
      of('filter', [
        point('2026-06-01', 12, 0, 12),
        point('2026-06-20', 0, 8, 4),
        point('2026-07-01', 40, 0, 44),
        point('2026-07-10', 0, 6, 38),
      ]),
    );
    expect(filters).toMatchObject({
      ...{ now_count: 12, goes_count: 14, until: day('2026-07-10'), short: null },
      next: { at: day('2026-07-01'), in_count: 40 },
    });
  });

  it('is enough for the plan where no more goes than lies there; what goes no more is not told', () => {
    const found = ahead(
      of('pipe', [point('2026-06-01', 12, 0, 12), point('2026-06-20', 0, 12, 0)]),
      of('gone', [point('2026-06-01', 5, 5, 0)]),
    );
    expect(found.map(({ line, until }) => [line.partId, until])).toEqual([['pipe', null]]);
  });

  it('is told of what came before the first day that is written', () => {
    const [pipes] = ahead(of('pipe', [point('2026-06-20', 2, 3, 7)]));
    expect(pipes?.now_count).toBe(8);
  });

  it('has what is short first, then what is used up first', () => {
    const found = ahead(
      of('enough', [point('2026-06-01', 9, 0, 9), point('2026-06-20', 0, 1, 8)]),
      of('later', [point('2026-06-01', 1, 0, 1), point('2026-06-30', 2, 3, 0)]),
      of('sooner', [point('2026-06-01', 1, 0, 1), point('2026-06-20', 2, 3, 0)]),
      of('short', [point('2026-06-01', 1, 0, 1), point('2026-07-20', 0, 3, -2)]),
    );
    expect(found.map(({ line }) => line.partId)).toEqual(['short', 'sooner', 'later', 'enough']);
    expect(found[0]?.short).toEqual({ at: day('2026-07-20'), count: 2 });
  });
});

describe('what a trip takes and is not there yet', () => {
  const all = ahead(
    of('there', [point('2026-06-01', 9, 0, 9), point('2026-06-20', 0, 1, 8)]),
    of('comes', [point('2026-06-18', 4, 0, 4), point('2026-06-20', 0, 4, 0)]),
    of('short', [point('2026-06-01', 1, 0, 1), point('2026-06-20', 0, 3, -2)]),
    of('another day', [point('2026-06-18', 4, 0, 4), point('2026-06-21', 0, 4, 0)]),
    of('another store', [point('2026-06-18', 4, 0, 4), point('2026-06-20', 0, 4, 0)], 'V'),
  );

  it('is told with the day it comes, and what nothing covers without one', () => {
    const found = notThereYet(all, 'W', '2026-06-20');
    expect(found.toSorted((a, b) => a.part.localeCompare(b.part))).toEqual([
      { part: 'comes', comes: day('2026-06-18') },
      { part: 'short', comes: null },
    ]);
  });

  it('is nothing on a day on which nothing goes, which is told apart', () => {
    expect(notThereYet(all, 'W', '2026-06-22')).toEqual([]);
    expect([goesOn(all, 'W', '2026-06-22'), goesOn(all, 'W', '2026-06-20')]).toEqual([false, true]);
  });

  it('counts what went before: the last trip is the one that lacks', () => {
    const two = ahead(
      of('filter', [
        point('2026-06-01', 4, 0, 4),
        point('2026-06-20', 0, 4, 0),
        point('2026-06-25', 4, 0, 4),
        point('2026-06-26', 0, 4, 0),
      ]),
    );
    expect(notThereYet(two, 'W', '2026-06-20')).toEqual([]);
    expect(notThereYet(two, 'W', '2026-06-26')).toEqual([{ part: 'filter', comes: day('2026-06-25') }]);
  });
});
