import { readFile } from 'node:fs/promises';
import {
  dayIndexOf,
  designSites,
  isoDay,
  type Problem,
  readIsoDay,
  readyGauges,
  readyProgramme,
} from '@eavewell/engine';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { greer1963 } from '../records/greer1963.ts';
import { good, readFiles } from './folder.ts';

/** Public domain; the package's exports do not name its data, so it is read from where it is installed. */
const seattle = new URL('../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url);
const east = 'rain/G-east.csv';

type Day = readonly [date: string, rain_mm: number | null];

let days: readonly Day[];
beforeAll(async () => {
  const lines = (await readFile(seattle, 'utf8')).trim().split('\n').slice(1);
  days = lines.map((line) => [line.split(',')[0]!.replaceAll('/', '-'), Number(line.split(',')[1])]);
});

const table = (rows: readonly Day[]) =>
  `date,rain_mm\n${rows.map(([date, rain_mm]) => `${date},${rain_mm ?? ''}\n`).join('')}`;

const looked = ['rain.in_inches', 'rain.in_tenths', 'rain.same_for_days', 'rain.month_twice'];

/** What is found in a record, read as the file of a gauge that is read in the morning (07:00). */
async function found(rows: readonly Day[]): Promise<readonly Problem[]> {
  const { facts } = await readFiles({ ...good, [east]: table(rows) });
  return readyGauges(facts)
    .get('G-east')!
    .problems.filter(({ code }) => looked.includes(code));
}

const inInches = (rows: readonly Day[]): readonly Day[] =>
  rows.map(([date, rain_mm]) => [date, Math.round((rain_mm! / 25.4) * 100) / 100]);
const inTenths = (rows: readonly Day[]): readonly Day[] =>
  rows.map(([date, rain_mm]) => [date, Math.round(rain_mm! * 10)]);
const ofYear = (year: number) => (rows: readonly Day[]) => rows.filter(([date]) => date.startsWith(String(year)));

describe('a measured record', () => {
  it('in mm raises nothing', async () => {
    expect(days).toHaveLength(1461);
    expect(await found(days)).toEqual([]);
    const greer = greer1963.readings.map(({ day, rain_mm }): Day => [isoDay(day), rain_mm]);
    expect(await found(greer)).toEqual([]);
    // Inches turned into mm as they should be, and mm read to the whole millimetre, are no fault either.
    expect(await found(inInches(days).map(([date, rain]) => [date, Math.round(rain! * 2540) / 100]))).toEqual([]);
    expect(await found(days.map(([date, rain_mm]) => [date, Math.round(rain_mm!)]))).toEqual([]);
  });

  it('in inches is named with the likely unit and withholds every verdict of its sites', async () => {
    const read = await readFiles({ ...good, [east]: table(inInches(days)) });
    const ready = readyProgramme(read.facts);
    const gauge = ready.gauges.get('G-east')!;
    const [problem] = gauge.problems.filter(({ code }) => looked.includes(code));
    expect(problem).toMatchObject({ code: 'rain.in_inches', severity: 'blocker', place: { file: east } });
    expect(problem!.facts).toMatchObject({ likely: 'in', years: ['2012', '2013', '2014', '2015'] });
    const inMm = days.reduce((sum, [, rain_mm]) => sum + rain_mm!, 0) / 4;
    expect(Math.abs((problem!.facts['likely_mm'] as number) - inMm)).toBeLessThan(0.01 * inMm);
    expect(gauge.rain).toBeNull();
    const verdicts = [...designSites(read.facts.sites, ready)].map(({ verdict }) => verdict);
    expect(verdicts.slice(0, 2)).toEqual(['unknown', 'unknown']);
    // Written to 0.1 by somebody who knows that it is mm, it is taken as it stands.
    const asMm = inInches(days).map(([date, rain]): Day => [date, Math.round(rain! * 10) / 10]);
    expect(await found(asMm)).toEqual([]);
  });

  it('in tenths of mm is named with the likely unit and withholds every verdict of its sites', async () => {
    const read = await readFiles({ ...good, [east]: table(inTenths(days)) });
    const gauge = readyGauges(read.facts).get('G-east')!;
    const [problem] = gauge.problems.filter(({ code }) => looked.includes(code));
    expect(problem).toMatchObject({ code: 'rain.in_tenths', severity: 'blocker' });
    expect(problem!.facts['likely']).toBe('0.1 mm');
    expect(gauge.rain).toBeNull();
  });

  it('of which half is in inches is named with the years', async () => {
    const mixed = [2012, 2013].flatMap((year) => inInches(ofYear(year)(days)));
    const rest = [2014, 2015].flatMap((year) => ofYear(year)(days));
    const [problem, ...others] = await found([...mixed, ...rest]);
    expect(others).toEqual([]);
    expect([problem!.code, problem!.facts['years']]).toEqual(['rain.in_inches', ['2012', '2013']]);
  });

  it('of made-up climates raises nothing in mm; in inches and, with 8 mm or more a day of rain, in tenths its own unit', async () => {
    const climate = fc.record({
      seed: fc.nat(),
      chance: fc.double({ min: 0.08, max: 0.7, noNaN: true }),
      mean_mm: fc.double({ min: 3, max: 25, noNaN: true }),
    });
    let [inches, tenths] = [0, 0];
    await fc.assert(
      fc.asyncProperty(climate, async ({ seed, chance, mean_mm }) => {
        const rows = madeUp(seed, chance, mean_mm);
        expect(await found(rows)).toEqual([]);
        const [asInches, asTenths] = [await found(inInches(rows)), await found(inTenths(rows))];
        if (mean_mm <= 20) expect(asInches.map(({ code }) => code)).toEqual(['rain.in_inches']);
        else expect(asInches.filter(({ code }) => code !== 'rain.in_inches')).toEqual([]);
        if (mean_mm >= 8) expect(asTenths.map(({ code }) => code)).toEqual(['rain.in_tenths']);
        else expect(asTenths.filter(({ code }) => code !== 'rain.in_tenths')).toEqual([]);
        inches += asInches.length;
        tenths += asTenths.length;
      }),
      { numRuns: 80, seed: 20261127 },
    );
    expect(inches).toBeGreaterThan(60);
    expect(tenths).toBeGreaterThan(30);
  });
});

/** Three years of rain that falls by chance, in mm to one decimal; exponential depths. Numerical Recipes' constants. */
function madeUp(seed: number, chance: number, mean_mm: number): readonly Day[] {
  let state = (seed * 7919 + 17) >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  const from = dayIndexOf(2001, 1, 1);
  return Array.from({ length: 1095 }, (_, i): Day => {
    const falls = next() < chance;
    const depth_mm = Math.round(-10 * mean_mm * Math.log(next())) / 10;
    return [isoDay(from + i), falls ? depth_mm : 0];
  });
}

describe('rain that repeats itself', () => {
  const withRun = (from: string, length: number, rain_mm: number | null) => {
    const first = readIsoDay(from)!;
    return days.map(([date, rain]): Day => {
      const day = readIsoDay(date)!;
      return [date, day >= first && day < first + length ? rain_mm : rain];
    });
  };

  it('the same for seven days is named and kept, six days are not', async () => {
    const [problem, ...others] = await found(withRun('2013-03-05', 7, 4.3));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: 'rain.same_for_days', severity: 'warning' });
    expect(problem!.facts).toMatchObject({ value: 4.3, days: 7, runs: 1, count: 7 });
    // The gauge is read in the morning: the rain of the reading of 5 March fell on the 4th.
    expect(problem!.place.day).toBe('2013-03-04');
    expect(await found(withRun('2013-03-05', 6, 4.3))).toEqual([]);
  });

  it('no rain for weeks is a dry spell, and no reading for weeks a gap', async () => {
    expect(await found(withRun('2013-03-05', 60, 0))).toEqual([]);
    expect(await found(withRun('2013-03-05', 60, null))).toEqual([]);
  });

  /** The readings of one month written into another, as far as both go. */
  const withCopy = (of: string, into: string) => {
    const source = days.filter(([date]) => date.startsWith(of)).map(([, rain]) => rain);
    return days.map(([date, rain]): Day => {
      return [date, date.startsWith(into) ? (source[Number(date.slice(8)) - 1] ?? rain) : rain];
    });
  };

  it.each([
    ['2012-11', '2013-11'],
    ['2012-12', '2014-04'],
    ['2012-03', '2013-02'],
  ])('a month copied twice is named and kept: %s into %s', async (of, into) => {
    const [problem, ...others] = await found(withCopy(of, into));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: 'rain.month_twice', severity: 'warning' });
    const months = [problem!.facts['value'], problem!.facts['other']];
    expect(months.toSorted()).toEqual([of, into].toSorted());
  });

  it('months alike with few wet days are no copies', async () => {
    // August 2012 was rainless at this gauge but for traces.
    expect(await found(withCopy('2012-08', '2013-08'))).toEqual([]);
  });
});
