import { describe, expect, it } from 'vitest';
import { dayIndexOf, filledDay, isoDay, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { judgedRain, type RainSettings } from './judgedRain.ts';
import { rainWorking } from './rainWorking.ts';

const settings: RainSettings = {
  seed: 1,
  missingDays_fraction: 0.1,
  leastYears: 3,
  waterYearStartMonth: null,
  gapFilling: 'otherYears',
};

/** 2 mm every day, from one day up to another. */
function steady(from: number, to: number): RainRecord {
  return {
    gaugeId: 'G1',
    firstDay: from,
    rain_mm: new Float64Array(to - from).fill(2),
    state: new Uint8Array(to - from),
  };
}
const fiveYears = steady(dayIndexOf(2000, 10, 1), dayIndexOf(2006, 3, 1));

function lacking(record: RainRecord, from: number, days: number): RainRecord {
  const at = from - record.firstDay;
  const holed = { rain_mm: record.rain_mm.slice(), state: record.state.slice() };
  holed.rain_mm.fill(0, at, at + days);
  holed.state.fill(unknownDay, at, at + days);
  return { ...record, ...holed };
}

function judged(record: RainRecord, changed: Partial<RainSettings> = {}) {
  const found = judgedRain(record, { ...settings, ...changed });
  if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join());
  return { rain: found.value, problems: found.problems, codes: found.problems.map(({ code }) => code) };
}

describe('judgedRain', () => {
  it('cuts the part-years at both ends and says how many days', () => {
    const { rain, problems } = judged(fiveYears, { waterYearStartMonth: 1 });
    expect(rain.years.map(({ label }) => label)).toEqual([2001, 2002, 2003, 2004, 2005]);
    expect(isoDay(rain.record.firstDay)).toBe('2001-01-01');
    expect(rain.cutDays).toBe(92 + 59);
    expect(problems).toMatchObject([{ code: 'rain.part_years_cut', severity: 'note', facts: { days: 151 } }]);
    expect(rain.cutDays + rain.record.rain_mm.length).toBe(fiveYears.rain_mm.length);
  });

  it('names a year by the calendar year it ends in', () => {
    const { rain } = judged(fiveYears, { waterYearStartMonth: 10 });
    expect(rain.years.map(({ label }) => label)).toEqual([2001, 2002, 2003, 2004, 2005]);
    expect(isoDay(rain.record.firstDay)).toBe('2000-10-01');
  });

  it('fills a gap, marks it and still judges the year', () => {
    const { rain, codes } = judged(lacking(fiveYears, dayIndexOf(2003, 6, 1), 20), { waterYearStartMonth: 1 });
    expect(rain.filledDays).toBe(20);
    expect(rain.record.state[dayIndexOf(2003, 6, 1) - rain.record.firstDay]).toBe(filledDay);
    expect(rain.years[2]).toMatchObject({ label: 2003, missing_days: 20, judged: true });
    expect(codes).toEqual(['rain.part_years_cut', 'rain.days_filled']);
    expect(rain.meanAnnualRain_mm).toBeCloseTo((2 * (365 * 4 + 366)) / 5, 9);
  });

  it('does not judge a year with more than the stated share missing', () => {
    const atTheShare = judged(lacking(fiveYears, dayIndexOf(2003, 1, 1), 36), { waterYearStartMonth: 1 });
    expect(atTheShare.rain.judgedYears).toBe(5);
    const { rain, problems } = judged(lacking(fiveYears, dayIndexOf(2003, 1, 1), 37), { waterYearStartMonth: 1 });
    expect(rain.years.map(({ judged: is }) => is)).toEqual([true, true, false, true, true]);
    expect(problems.at(-1)).toMatchObject({ code: 'rain.year_not_judged', facts: { years: ['2003'], count: 1 } });
  });

  it('judges a year that misses exactly the stated share', () => {
    const fifth = { waterYearStartMonth: 1, missingDays_fraction: 0.2 };
    expect(judged(lacking(fiveYears, dayIndexOf(2003, 1, 1), 73), fifth).rain.judgedYears).toBe(5);
    expect(judged(lacking(fiveYears, dayIndexOf(2003, 1, 1), 74), fifth).rain.judgedYears).toBe(4);
  });

  it('never judges a year with a day that could not be filled', () => {
    let record = fiveYears;
    for (let year = 2001; year <= 2005; year++) record = lacking(record, dayIndexOf(year, 7, 4), year === 2003 ? 2 : 1);
    // 4 July was measured in no year at all.
    const found = judgedRain(record, { ...settings, waterYearStartMonth: 1 });
    expect(found.ok).toBe(false);
    expect(found.problems.map(({ code }) => code)).toEqual([
      'rain.part_years_cut',
      'rain.days_filled',
      'rain.gap_not_filled',
      'rain.year_not_judged',
      'rain.too_short',
    ]);
  });

  it('has no answer without a whole year', () => {
    const found = judgedRain(steady(dayIndexOf(2000, 1, 2), dayIndexOf(2001, 12, 31)), settings);
    expect(found.ok).toBe(true);
    const short = judgedRain(steady(dayIndexOf(2000, 3, 1), dayIndexOf(2001, 2, 27)), settings);
    expect(short).toMatchObject({ ok: false, problems: [{ code: 'rain.too_short', severity: 'blocker' }] });
  });

  it('notes a record with few judged years', () => {
    const { problems } = judged(steady(dayIndexOf(2000, 1, 1), dayIndexOf(2002, 1, 1)));
    expect(problems).toMatchObject([{ code: 'rain.few_years', facts: { judgedYears: 2, leastYears: 3 } }]);
  });

  it('lets a year that is not judged break the longest rainless run', () => {
    const record = steady(dayIndexOf(2000, 1, 1), dayIndexOf(2003, 1, 1));
    record.rain_mm.fill(0, 350, 380);
    expect(judged(record, { waterYearStartMonth: 1 }).rain.longestRainlessRun_days).toBe(30);
    const holed = lacking(record, dayIndexOf(2001, 5, 1), 60);
    expect(judged(holed, { waterYearStartMonth: 1 }).rain.longestRainlessRun_days).toBe(16);
    // Dry from 16 December to the turn, and again from the turn after next: what lies between joins nothing.
    const bothSides = steady(dayIndexOf(2000, 1, 1), dayIndexOf(2003, 1, 1));
    bothSides.rain_mm.fill(0, 350, 366);
    bothSides.rain_mm.fill(0, 731, 751);
    const apart = lacking(bothSides, dayIndexOf(2001, 5, 1), 60);
    expect(judged(apart, { waterYearStartMonth: 1 }).rain.longestRainlessRun_days).toBe(20);
  });
});

describe('rainWorking', () => {
  it('writes years, filled days and the mean at the site', () => {
    const { rain } = judged(fiveYears, { waterYearStartMonth: 1 });
    const lines = rainWorking(rain, 0.5);
    expect(lines.map(({ code }) => code)).toEqual(['rain.years', 'rain.filled', 'rain.mean']);
    expect(lines.map(({ value }) => value)).toEqual([5, 0, rain.meanAnnualRain_mm / 2]);
  });
});
