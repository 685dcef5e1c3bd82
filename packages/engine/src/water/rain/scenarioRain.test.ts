import { describe, expect, it } from 'vitest';
import { calendarDay, dayIndexOf, type JudgedRain, measured, unknownDay } from '../../kernel/index.ts';
import { judgedRain } from './judgedRain.ts';
import { scenarioRain } from './scenarioRain.ts';

const firstDay = dayIndexOf(2001, 1, 1);
const days = dayIndexOf(2021, 1, 1) - firstDay;
/** Twenty years: 5 mm to 14 mm every third day, drizzle of half a millimetre on the day after. */
const rain_mm = Float64Array.from({ length: days }, (_, i) => (i % 3 === 0 ? 5 + (i % 10) : i % 3 === 1 ? 0.5 : 0));
const settings = {
  seed: 1,
  missingDays_fraction: 0.1,
  leastYears: 10,
  waterYearStartMonth: 1,
  gapFilling: 'otherYears' as const,
};
function rainOf(state = new Uint8Array(days).fill(measured)): JudgedRain {
  const found = judgedRain({ gaugeId: 'G1', firstDay, rain_mm, state }, settings);
  if (!found.ok) throw new Error('no rain');
  return found.value;
}
const asked = (wetDays_fraction: number, wetDayRain_fraction = 1, lastYears: number | null = null) =>
  scenarioRain(rainOf(), { wetDays_fraction, wetDayRain_fraction, lastYears }, 1)!;
const wetDays = ({ record }: JudgedRain) => record.rain_mm.filter((one) => one >= 1).length;

describe('scenarioRain', () => {
  it('is the rain itself where nothing is changed', () => {
    expect(asked(1)).toEqual(rainOf());
    expect(asked(1, 1, 20)).toEqual(rainOf());
    expect(asked(1, 1, 50)).toEqual(rainOf());
  });

  it('keeps nearly the share of wet days asked for, each as it was; drizzle stays', () => {
    const all = wetDays(rainOf());
    for (const share of [0.2, 0.5, 0.9]) {
      const { record } = asked(share);
      const kept = record.rain_mm.filter((one) => one >= 1).length;
      expect(Math.abs(kept - share * all)).toBeLessThan(4 * Math.sqrt(all * share * (1 - share)));
      for (const [at, one] of record.rain_mm.entries()) expect(one === 0 || one === rain_mm[at]).toBe(true);
      expect(record.rain_mm.filter((one) => one === 0.5).length).toBe(rain_mm.filter((one) => one === 0.5).length);
    }
  });

  it('adds nearly as many wet days as asked for, with rain of the same month’s wet days', () => {
    const all = wetDays(rainOf());
    const more = asked(1.5);
    const dry = days - all;
    const chance = (0.5 * all) / dry;
    expect(Math.abs(wetDays(more) - 1.5 * all)).toBeLessThan(4 * Math.sqrt(dry * chance * (1 - chance)));
    const ofMonth = new Map<number, Set<number>>();
    for (const [at, one] of rain_mm.entries()) {
      const { month } = calendarDay(firstDay + at);
      if (one >= 1) ofMonth.set(month, (ofMonth.get(month) ?? new Set()).add(one));
    }
    for (const [at, one] of more.record.rain_mm.entries())
      if (one !== rain_mm[at]) expect(ofMonth.get(calendarDay(firstDay + at).month)!.has(one)).toBe(true);
  });

  it('turns every dry day wet at most, and adds none to a month that never has any', () => {
    expect(wetDays(asked(3))).toBeGreaterThan(0.98 * days);
    const none = rainOf();
    none.record.rain_mm.fill(0);
    expect(wetDays(scenarioRain(none, { wetDays_fraction: 3, wetDayRain_fraction: 1, lastYears: null }, 1)!)).toBe(0);
  });

  it('changes the rain of wet days only, and the mean year with it', () => {
    const less = asked(1, 0.5);
    for (const [at, one] of less.record.rain_mm.entries())
      expect(one).toBe(rain_mm[at]! >= 1 ? rain_mm[at]! / 2 : rain_mm[at]);
    expect(less.meanAnnualRain_mm).toBeLessThan(rainOf().meanAnnualRain_mm);
  });

  it('leaves the last years alone, with offsets of their own, and counts what it cut', () => {
    const last = asked(1, 1, 12);
    expect(last.years.map(({ label }) => label)).toEqual(Array.from({ length: 12 }, (_, i) => 2009 + i));
    expect(last.years[0]!.from).toBe(0);
    expect(last.years.at(-1)!.to).toBe(last.record.rain_mm.length);
    expect(last.record.firstDay).toBe(dayIndexOf(2009, 1, 1));
    expect(last.judgedYears).toBe(12);
    expect(last.cutDays).toBe(dayIndexOf(2009, 1, 1) - firstDay);
  });

  it('gives nothing where none of the last years is judged', () => {
    const state = new Uint8Array(days).fill(measured);
    const from = dayIndexOf(2020, 3, 1) - firstDay;
    state.fill(unknownDay, from, from + 90);
    const rain = rainOf(state);
    expect(rain.judgedYears).toBe(19);
    const last = (lastYears: number) =>
      scenarioRain(rain, { wetDays_fraction: 0.5, wetDayRain_fraction: 1, lastYears }, 1);
    expect(last(1)).toBeNull();
    expect(last(2)!.judgedYears).toBe(1);
  });

  it('cuts no years off made-up rain: none of them is nearer to now', () => {
    const made = { ...rainOf(), madeDays: days };
    expect(scenarioRain(made, { wetDays_fraction: 1, wetDayRain_fraction: 1, lastYears: 2 }, 1)).toEqual(made);
    expect(asked(1, 1, 2).years).toHaveLength(2);
  });

  it('drops the same days whatever else is asked, others for another seed or gauge', () => {
    const dropped = ({ record }: JudgedRain, from = 0) =>
      Array.from(record.rain_mm.keys()).filter((at) => record.rain_mm[at] === 0 && rain_mm[at + from]! >= 1);
    const half = dropped(asked(0.5));
    expect(dropped(asked(0.5, 0.8))).toEqual(half);
    const other = scenarioRain(rainOf(), { wetDays_fraction: 0.5, wetDayRain_fraction: 1, lastYears: null }, 2)!;
    expect(dropped(other)).not.toEqual(half);
    const cut = asked(0.5, 1, 12);
    const from = cut.record.firstDay - firstDay;
    expect(dropped(cut, from).map((at) => at + from)).toEqual(half.filter((at) => at >= from));
  });
});
