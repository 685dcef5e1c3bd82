import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayIndexOf, type GaugeFacts, isoDay, measured, noStorms, unknownDay } from '../../kernel/index.ts';
import { rainRecord } from './rainRecord.ts';

const start = dayIndexOf(2001, 3, 1);
/** A gauge from pairs of offset and rain, in the order of its file. */
const gauge = (
  pairs: readonly (readonly [number, number | null])[],
  readingTime: string | null = null,
): GaugeFacts => ({
  ...noStorms,
  gaugeId: 'G1',
  name: 'Gauge',
  latitude_deg: null,
  longitude_deg: null,
  readingTime,
  file: 'rain/G1.csv',
  normals: [],
  readings: pairs.map(([offset, rain_mm], i) => ({ day: start + offset, rain_mm, row: i + 2 })),
});
const read = (pairs: readonly (readonly [number, number | null])[], readingTime: string | null = null) => {
  const found = rainRecord(gauge(pairs, readingTime));
  const codes = found.problems.map(({ code }) => code);
  const days = found.ok ? Array.from(found.value.rain_mm) : null;
  const state = found.ok ? Array.from(found.value.state) : null;
  return { found, codes, days, state };
};

describe('rainRecord', () => {
  it('puts readings on the calendar without a word', () => {
    const { days, codes, found } = read([
      [0, 1.5],
      [1, 0],
      [2, 3],
    ]);
    expect(codes).toEqual([]);
    expect(days).toEqual([1.5, 0, 3]);
    expect(found.ok && found.value.firstDay).toBe(start);
  });

  it('sorts readings and says so once', () => {
    const { days, found } = read([
      [2, 3],
      [0, 1],
      [1, 2],
    ]);
    expect(days).toEqual([1, 2, 3]);
    expect(found.problems).toMatchObject([
      { code: 'rain.out_of_order', place: { row: 3, day: '2001-03-01' }, facts: { count: 1 } },
    ]);
  });

  it('keeps a day that stands twice with one value', () => {
    const { days, codes } = read([
      [0, 1],
      [1, 2],
      [1, 2],
    ]);
    expect([days, codes]).toEqual([[1, 2], ['rain.day_twice_same']]);
  });

  it('leaves a day unknown that stands twice with two values, whatever comes after', () => {
    const { state, found } = read([
      [0, 1],
      [1, 2],
      [1, 4],
      [1, 2],
      [2, 0],
    ]);
    expect(state).toEqual([measured, unknownDay, measured]);
    const [twice, missing] = found.problems;
    expect(twice).toMatchObject({ code: 'rain.day_twice_differs', severity: 'warning', facts: { count: 2 } });
    expect(missing).toMatchObject({ code: 'rain.days_missing', facts: { count: 1 } });
  });

  it('does not take an empty reading as a second value', () => {
    const { days, codes } = read([
      [0, 1],
      [1, null],
      [1, 5],
    ]);
    expect([days, codes]).toEqual([[1, 5], ['rain.day_twice_same']]);
  });

  it('leaves negative and absurd days unknown and keeps large ones', () => {
    const { state, found, days } = read([
      [0, 1],
      [1, -3],
      [2, 1828.9],
      [3, 500.1],
      [4, 1828.8],
      [5, 500],
    ]);
    expect(state).toEqual([measured, unknownDay, unknownDay, measured, measured, measured]);
    expect(days).toEqual([1, 0, 0, 500.1, 1828.8, 500]);
    expect(found.problems).toMatchObject([
      { code: 'rain.negative', place: { row: 3, column: 'rain_mm', day: '2001-03-02' }, facts: { value: -3 } },
      { code: 'rain.absurd', place: { row: 4 }, facts: { count: 1 } },
      { code: 'rain.large', severity: 'note', facts: { count: 2, days: ['2001-03-04', '2001-03-05'] } },
      { code: 'rain.days_missing' },
    ]);
  });

  it('never lets NaN or an endless reading through', () => {
    const { state, codes } = read([
      [0, 1],
      [1, Number.NaN],
      [2, Infinity],
      [3, 1],
    ]);
    expect(state).toEqual([measured, unknownDay, unknownDay, measured]);
    expect(codes).toEqual(['rain.absurd', 'rain.days_missing']);
  });

  it('tells of all missing days at once, and of the longest gap', () => {
    const { found } = read([
      [0, 1],
      [2, 1],
      [3, null],
      [4, null],
      [5, 1],
      [7, 1],
    ]);
    expect(found.problems).toMatchObject([
      {
        code: 'rain.days_missing',
        place: { gaugeId: 'G1', file: 'rain/G1.csv', day: '2001-03-02' },
        facts: { count: 4, gaps: 3, longest_days: 2, longestFrom: '2001-03-04', longestTo: '2001-03-05' },
      },
    ]);
  });

  it('ends at the last measured day', () => {
    const { days, codes } = read([
      [0, null],
      [1, 2],
      [2, -1],
    ]);
    expect([days, codes]).toEqual([[2], ['rain.negative']]);
  });

  it('moves a morning reading to the day before, and no other', () => {
    for (const [time, shift] of [
      ['06:00', 1],
      ['11:59', 1],
      ['9:00', 1],
      ['12:00', 0],
      ['18:00', 0],
    ] as const) {
      const { found, codes } = read([[0, 4]], time);
      expect(found.ok && isoDay(found.value.firstDay)).toBe(isoDay(start - shift));
      expect(codes).toEqual(shift === 1 ? ['rain.shifted'] : []);
    }
  });

  it('has no answer without a usable reading', () => {
    expect(read([]).codes).toEqual(['rain.none']);
    expect(read([[0, null]]).found.ok).toBe(false);
    expect(read([[0, -1]]).codes).toEqual(['rain.negative', 'rain.none']);
  });

  it('gives the same days whatever the order of the readings', () => {
    const reading = fc.tuple(fc.integer({ min: 0, max: 12 }), fc.constantFrom(0, 1, 2, -1, null, 600));
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 25 }), fc.nat(), (pairs, turn) => {
        const at = turn % pairs.length;
        const turned = read([...pairs.slice(at), ...pairs.slice(0, at)].reverse());
        const straight = read(pairs);
        expect(turned.days).toEqual(straight.days);
        expect(turned.state).toEqual(straight.state);
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });
});
