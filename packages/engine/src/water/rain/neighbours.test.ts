import { describe, expect, it } from 'vitest';
import { dayIndexOf, measured, neighbourDay, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { fillFromNeighbours } from './fillFromNeighbours.ts';
import { judgedRain } from './judgedRain.ts';
import { inverseDistance_mm, normalRatio_mm } from './neighbourRain.ts';
import { neighboursOf } from './neighbours.ts';

const firstDay = dayIndexOf(2000, 1, 1);
const days = dayIndexOf(2004, 1, 1) - firstDay;

function record(gaugeId: string, rain: (day: number) => number, unknown: readonly number[] = []): RainRecord {
  const rain_mm = Float64Array.from({ length: days }, (_, day) => rain(day));
  const state = new Uint8Array(days);
  for (const day of unknown) {
    rain_mm[day] = 0;
    state[day] = unknownDay;
  }
  return { gaugeId, firstDay, rain_mm, state };
}

const uneven = (day: number) => (day % 3 === 0 ? (day % 41) + 1 : 0);
const near = (of: RainRecord, distance_km: number) => ({ record: of, distance_km });

describe('neighboursOf', () => {
  const at = (gaugeId: string, latitude_deg: number | null, longitude_deg: number | null) => ({
    gauge: { gaugeId, latitude_deg, longitude_deg },
    record: record(gaugeId, uneven),
  });
  const own = at('A', -8, 120);
  const all = [at('far', -9, 121), at('C', -8, 120.5), own, at('B', -8, 119.5), at('D', -8.1, 120), at('E', null, 120)];

  it('takes those within 100 km whose position is known, nearest first, whatever their order', () => {
    const ids = ['D', 'B', 'C'];
    for (const some of [all, [...all].reverse()])
      expect(neighboursOf(own.gauge, some).map((one) => one.record.gaugeId)).toEqual(ids);
  });

  it('has none for a gauge without a position', () => {
    expect(neighboursOf({ ...own.gauge, latitude_deg: null }, all)).toEqual([]);
  });
});

describe('inverseDistance_mm and normalRatio_mm', () => {
  it('weigh as they say', () => {
    const two = [
      { rain_mm: 8, distance_km: 10 },
      { rain_mm: 3, distance_km: 20 },
    ];
    expect(inverseDistance_mm(two)).toBeCloseTo((4 * 8 + 3) / 5, 12);
    expect(inverseDistance_mm([...two, { rain_mm: 1, distance_km: 0 }])).toBe(1);
    expect(normalRatio_mm([{ rain_mm: 6, normal_mm: 2, ownNormal_mm: 1 }])).toBe(3);
  });

  it('say nothing where nobody measured', () => {
    expect(inverseDistance_mm([])).toBeNull();
    expect(normalRatio_mm([])).toBeNull();
  });
});

describe('fillFromNeighbours', () => {
  const gap = [100, 101, 102, 700];
  const own = record('A', (day) => 2 * uneven(day), gap);

  it('brings back a record that is always twice its neighbour, by normal ratio', () => {
    const filled = fillFromNeighbours(own, [near(record('B', uneven), 30)], 'normalRatio');
    for (const day of gap) {
      expect(filled.rain_mm[day]).toBeCloseTo(2 * uneven(day), 9);
      expect(filled.state[day]).toBe(neighbourDay);
    }
    for (let day = 0; day < days; day++) {
      if (gap.includes(day)) continue;
      expect(filled.rain_mm[day]).toBe(own.rain_mm[day]);
      expect(filled.state[day]).toBe(measured);
    }
    expect(own.state[100]).toBe(unknownDay);
  });

  it('asks the three nearest that measured the day, and only what they measured', () => {
    const of = (id: string, rain_mm: number, unknown: readonly number[] = []) =>
      record(id, (day) => (gap.includes(day) ? rain_mm : uneven(day)), unknown);
    const four = [near(of('B', 9, [100]), 1), near(of('C', 1), 10), near(of('D', 1), 10), near(of('E', 100), 10)];
    const filled = fillFromNeighbours(own, four, 'inverseDistance');
    expect(filled.rain_mm[100]).toBeCloseTo((1 + 1 + 100) / 3, 9);
    expect(filled.rain_mm[101]).toBeCloseTo((9 * 100 + 1 + 1) / 102, 9);
  });

  it('leaves a day unknown where no neighbour knows it or has three years in common', () => {
    const short: RainRecord = {
      gaugeId: 'B',
      firstDay,
      rain_mm: own.rain_mm.slice(0, 1099),
      state: new Uint8Array(1099),
    };
    // 1099 days, of which four lie in the gap: 1095 are shared, one short of three years.
    expect(fillFromNeighbours(own, [near(short, 5)], 'normalRatio').state[100]).toBe(unknownDay);
    const enough = { ...short, rain_mm: own.rain_mm.slice(0, 1100), state: new Uint8Array(1100) };
    expect(fillFromNeighbours(own, [near(enough, 5)], 'normalRatio').state[100]).toBe(neighbourDay);
    const blind = record('B', uneven, gap);
    expect(fillFromNeighbours(own, [near(blind, 5)], 'normalRatio').state[100]).toBe(unknownDay);
  });
});

describe('judgedRain with neighbours', () => {
  const gap = Array.from({ length: 20 }, (_, i) => 400 + i);
  const own = record('A', uneven, gap);
  const neighbours = [near(record('B', uneven, gap.slice(0, 5)), 30)];
  const settings = { seed: 1, missingDays_fraction: 0.1, leastYears: 2, waterYearStartMonth: 1 };
  const judged = (gapFilling: 'otherYears' | 'normalRatio' | 'inverseDistance') => {
    const found = judgedRain(own, { ...settings, gapFilling }, neighbours);
    if (!found.ok) throw new Error('not judged');
    return found;
  };

  it('counts by what the days were filled from, and other years fill the rest', () => {
    for (const method of ['normalRatio', 'inverseDistance'] as const) {
      const { value, problems } = judged(method);
      expect(value).toMatchObject({ filledDays: 20, neighbourDays: 15 });
      expect(value.years[1]).toMatchObject({ missing_days: 20, judged: true });
      expect(problems).toMatchObject([
        { code: 'rain.days_filled_neighbours', facts: { count: 15, gapFilling: method } },
        { code: 'rain.no_neighbour', facts: { count: 5 } },
        { code: 'rain.days_filled', facts: { count: 5 } },
      ]);
    }
  });

  it('does not ask them unless the settings say so', () => {
    const { value, problems } = judged('otherYears');
    expect(value).toMatchObject({ filledDays: 20, neighbourDays: 0 });
    expect(problems.map(({ code }) => code)).toEqual(['rain.days_filled']);
  });
});
