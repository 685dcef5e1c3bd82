import { describe, expect, it } from 'vitest';
import { dayIndexOf, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { repeatedRain } from './repeatedRain.ts';

const firstDay = dayIndexOf(2001, 1, 1);
const offset = (month: number, day: number) => dayIndexOf(2001, month, day) - firstDay;
/** 2001 with rain on no two days alike, then changed. */
function record(change: (rain_mm: Float64Array, state: Uint8Array) => void): RainRecord {
  const rain_mm = Float64Array.from({ length: 365 }, (_, i) => 1 + i / 10);
  const state = new Uint8Array(365);
  change(rain_mm, state);
  return { gaugeId: 'G1', firstDay, rain_mm, state };
}
const found = (of: RainRecord, shift_days = 0) => repeatedRain(of, shift_days, {});

describe('repeatedRain', () => {
  it('counts every run of seven days or more, and shows the first', () => {
    const [problem] = found(record((rain_mm) => rain_mm.fill(3, 40, 47).fill(5, 100, 110)));
    expect(problem!.facts).toEqual({ value: 3, days: 7, runs: 2, count: 17 });
    expect(problem!.place.day).toBe('2001-02-10');
  });

  it('parts runs of two values, and does not count over an unknown day', () => {
    expect(found(record((rain_mm) => rain_mm.fill(3, 40, 46).fill(4, 46, 52)))).toEqual([]);
    const broken = record((rain_mm, state) => {
      rain_mm.fill(3, 40, 49);
      state[45] = unknownDay;
    });
    expect(found(broken)).toEqual([]);
  });

  it('compares months as the observer wrote them, a day later than the rain fell', () => {
    const copied = (shift_days: number) =>
      record((rain_mm) =>
        rain_mm.copyWithin(offset(5, 1) - shift_days, offset(3, 1) - shift_days, offset(4, 1) - shift_days),
      );
    expect(found(copied(1), 1).map(({ facts }) => facts)).toEqual([{ value: '2001-05', other: '2001-03', count: 1 }]);
    expect(found(copied(0), 0)).toHaveLength(1);
    expect(found(copied(1), 0)).toEqual([]);
  });

  it('needs every day measured and five wet days', () => {
    const copy = (rain_mm: Float64Array) => rain_mm.copyWithin(offset(5, 1), offset(3, 1), offset(4, 1));
    const gap = record((rain_mm, state) => {
      copy(rain_mm);
      state[offset(5, 9)] = unknownDay;
    });
    expect(found(gap)).toEqual([]);
    const wet = (days: number) =>
      record((rain_mm) => {
        rain_mm.fill(0, offset(3, 1) + days, offset(4, 1));
        copy(rain_mm);
      });
    expect(found(wet(5))).toHaveLength(1);
    expect(found(wet(4))).toEqual([]);
  });
});
