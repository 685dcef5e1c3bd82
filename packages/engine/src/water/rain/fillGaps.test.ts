import { describe, expect, it } from 'vitest';
import { calendarDay, dayIndexOf, filledDay, measured, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { fillGaps } from './fillGaps.ts';

/** Whole calendar years; the rain of a day names its year, month and day, so that a donor can be read off. */
function named(firstYear: number, lastYear: number): RainRecord {
  const firstDay = dayIndexOf(firstYear, 1, 1);
  const days = dayIndexOf(lastYear + 1, 1, 1) - firstDay;
  const rain_mm = new Float64Array(days).map((_, i) => {
    const { year, month, day } = calendarDay(firstDay + i);
    return (year - 1990) * 10_000 + month * 100 + day;
  });
  return { gaugeId: 'G1', firstDay, rain_mm, state: new Uint8Array(days) };
}

function without(record: RainRecord, from: string, to: string): RainRecord {
  const at = (text: string) => {
    const [year, month, day] = text.split('-').map(Number);
    return dayIndexOf(year!, month!, day!) - record.firstDay;
  };
  const gap = { rain_mm: record.rain_mm.slice(), state: record.state.slice() };
  gap.rain_mm.fill(0, at(from), at(to) + 1);
  gap.state.fill(unknownDay, at(from), at(to) + 1);
  return { ...record, ...gap };
}

const filledOf = (record: RainRecord) =>
  Array.from(record.rain_mm).flatMap((rain, i) =>
    record.state[i] === filledDay ? [{ ...calendarDay(record.firstDay + i), rain }] : [],
  );

describe('fillGaps', () => {
  it('gives a record without gaps back as it is', () => {
    const record = named(2000, 2002);
    expect(fillGaps(record, 1)).toBe(record);
  });

  it('takes the same calendar days of one other year, over the turn of the year too', () => {
    const filled = filledOf(fillGaps(without(named(2000, 2009), '2003-12-20', '2004-01-10'), 1));
    expect(filled.length).toBe(22);
    const donors = filled.map(({ year, rain }) => Math.floor(rain / 10_000) + 1990 - year);
    expect(new Set(donors).size).toBe(1);
    expect(donors[0]).not.toBe(0);
    expect(filled.every(({ month, day, rain }) => rain % 10_000 === month * 100 + day)).toBe(true);
  });

  it('changes no measured day', () => {
    const record = without(named(2000, 2009), '2003-02-01', '2003-04-01');
    const filled = fillGaps(record, 1);
    record.state.forEach((how, i) => {
      if (how === measured) expect(filled.rain_mm[i]).toBe(record.rain_mm[i]);
    });
  });

  it('gives 29 February the 28th of a common year', () => {
    const filled = filledOf(fillGaps(without(named(2001, 2004), '2004-02-29', '2004-02-29'), 1));
    expect(filled[0]!.rain % 10_000).toBe(228);
  });

  it('goes day by day where no year measured the whole gap', () => {
    let record = without(named(2000, 2002), '2001-05-01', '2001-05-10');
    record = without(record, '2000-05-01', '2000-05-05');
    record = without(record, '2002-05-06', '2002-05-10');
    const of2001 = filledOf(fillGaps(record, 1)).filter(({ year }) => year === 2001);
    expect(of2001.map(({ rain }) => Math.floor(rain / 10_000) + 1990)).toEqual([
      ...[2002, 2002, 2002, 2002, 2002],
      ...[2000, 2000, 2000, 2000, 2000],
    ]);
  });

  it('leaves a day unknown that no year measured', () => {
    let record = without(named(2000, 2001), '2000-07-01', '2000-07-01');
    record = without(record, '2001-07-01', '2001-07-02');
    const { state, firstDay } = fillGaps(record, 1);
    expect(state[dayIndexOf(2001, 7, 1) - firstDay]).toBe(unknownDay);
    expect(state[dayIndexOf(2001, 7, 2) - firstDay]).toBe(filledDay);
  });

  it('is the same for one seed, and draws every year over many seeds', () => {
    const record = without(named(2000, 2004), '2002-06-01', '2002-06-30');
    expect(fillGaps(record, 7)).toEqual(fillGaps(record, 7));
    const donors = new Set<number>();
    for (let seed = 0; seed < 60; seed++) donors.add(Math.floor(filledOf(fillGaps(record, seed))[0]!.rain / 10_000));
    expect([...donors].sort()).toEqual([10, 11, 13, 14]);
  });

  it('draws a gap the same whatever other gaps there are', () => {
    const one = without(named(2000, 2009), '2003-02-01', '2003-02-20');
    const two = without(one, '2007-08-01', '2007-08-20');
    const ofFirst = (record: RainRecord) => filledOf(fillGaps(record, 5)).filter(({ month }) => month === 2);
    expect(ofFirst(two)).toEqual(ofFirst(one));
  });
});
