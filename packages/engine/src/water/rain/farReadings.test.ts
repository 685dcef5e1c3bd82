import { describe, expect, it } from 'vitest';
import { dayIndexOf, noStorms, type RainReading } from '../../kernel/index.ts';
import { nearReadings } from './farReadings.ts';
import { rainRecord } from './rainRecord.ts';

const readingsFrom = (year: number, count: number): RainReading[] =>
  Array.from({ length: count }, (_, i) => ({
    day: dayIndexOf(year, 1, 1) + i,
    rain_mm: ((i * i * 31 + i) % 997) / 50,
    row: i + 2,
  }));
const place = { file: 'rain/G1.csv', gaugeId: 'G1' };
const gauge = {
  gaugeId: 'G1',
  name: 'Gauge',
  readingTime: null,
  latitude_deg: null,
  longitude_deg: null,
  file: 'rain/G1.csv',
  normals: [],
  ...noStorms,
};

describe('nearReadings', () => {
  it('sets a day aside whose year is mistyped, names its row, and leaves the record as if the day were not read', () => {
    const readings = readingsFrom(2001, 800);
    readings[400] = { ...readings[400]!, day: dayIndexOf(2091, 3, 5), rain_mm: 4 };
    const found = rainRecord({ ...gauge, readings });
    expect(found.problems).toMatchObject([
      { code: 'rain.day_far', place: { row: 402, column: 'date', day: '2091-03-05' }, facts: { count: 1, value: 4 } },
      { code: 'rain.days_missing', facts: { count: 1 } },
    ]);
    expect(found.ok && found.value.rain_mm.length).toBe(800);
  });

  it('leaves stretches alone that are more than a handful, or not so far', () => {
    const apart = [...readingsFrom(1980, 400), ...readingsFrom(2001, 800)];
    expect(nearReadings(apart, 0, place)).toEqual({ readings: apart, problems: [] });
    const close = [...readingsFrom(2001, 800), ...readingsFrom(2008, 3)];
    expect(nearReadings(close, 0, place)).toEqual({ readings: close, problems: [] });
    expect(nearReadings([], 0, place)).toEqual({ readings: [], problems: [] });
  });

  it('keeps everything where no stretch is the largest', () => {
    const even = [...readingsFrom(1950, 3), ...readingsFrom(2001, 3)];
    expect(nearReadings(even, 0, place).readings).toEqual(even);
  });

  it('tells the day the rain fell, where it was read the morning after', () => {
    const readings = [...readingsFrom(2001, 800), { day: dayIndexOf(2031, 1, 1), rain_mm: null, row: 900 }];
    const { problems } = nearReadings(readings, 1, place);
    expect(problems).toMatchObject([{ place: { day: '2030-12-31', row: 900 }, facts: { days: ['2030-12-31'] } }]);
    expect(problems[0]!.facts).not.toHaveProperty('value');
  });
});
