import {
  type CalendarDay,
  calendarDay,
  type Dice,
  dayIndexOf,
  filledDay,
  isLeapYear,
  isoDay,
  measured,
  type RainRecord,
  seededDice,
  seedFor,
  unknownDay,
} from '../../kernel/index.ts';
import { type DayRun, runsOfDays } from './runsOfDays.ts';

/**
 * What rain may have fallen on the days nobody measured? A gap takes the same calendar days of another year, drawn among
 * the years that measured them all, so that spells stay whole; where there is none, each day takes its own year. 29
 * February takes 28 February of a common year. A day no year measured stays unknown. For the balance only.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param seed - the programme's seed [number], whole
 * @returns a record of the same days, filled days marked `filledDay`: rain_mm [mm] by day
 * @law measured days never change; the draw of a gap depends on the seed, the gauge's id and the gap's first day only
 * @definition ours: resampling of the same calendar days (docs/methods/rain.md)
 */
export function fillGaps(record: RainRecord, seed: number): RainRecord {
  const gaps = runsOfDays(record.state.length, (day) => record.state[day] === unknownDay);
  if (gaps.length === 0) return record;
  const rain_mm = record.rain_mm.slice();
  const state = record.state.slice();
  for (const gap of gaps) {
    const gapDay = isoDay(record.firstDay + gap.from);
    const dice = seededDice(seedFor(seed, `${record.gaugeId} ${gapDay}`));
    const donors = gapDonors(record, gap, dice);
    for (const [i, donor] of donors.entries()) {
      if (donor === null) continue;
      rain_mm[gap.from + i] = record.rain_mm[donor]!;
      state[gap.from + i] = filledDay;
    }
  }
  return { ...record, rain_mm, state };
}

/** For each day of the gap, the offset of the measured day it takes, or null. */
function gapDonors(record: RainRecord, gap: DayRun, dice: Dice): readonly (number | null)[] {
  const dates: CalendarDay[] = [];
  for (let day = gap.from; day < gap.to; day++) dates.push(calendarDay(record.firstDay + day));
  const firstYear = calendarDay(record.firstDay).year;
  const lastYear = calendarDay(record.firstDay + record.rain_mm.length - 1).year;
  // Its own year is among them and never gives: the gap's days are not measured in it.
  const shifts: number[] = [];
  for (let shift = firstYear - dates.at(-1)!.year; shift <= lastYear - dates[0]!.year; shift++) shifts.push(shift);
  const donorOf = (date: CalendarDay, shift: number) => measuredDay(record, date, date.year + shift);
  const whole = shifts.filter((shift) => dates.every((date) => donorOf(date, shift) !== null));
  if (whole.length > 0) {
    const shift = whole[dice.next(whole.length)]!;
    return dates.map((date) => donorOf(date, shift));
  }
  return dates.map((date) => {
    const some = shifts.map((shift) => donorOf(date, shift)).filter((donor) => donor !== null);
    return some.length > 0 ? some[dice.next(some.length)]! : null;
  });
}

/** The offset of this calendar day in another year, or null where it was not measured. */
function measuredDay(record: RainRecord, { month, day }: CalendarDay, year: number): number | null {
  const leapDay = month === 2 && day === 29 && !isLeapYear(year);
  const at = dayIndexOf(year, month, leapDay ? 28 : day) - record.firstDay;
  return record.state[at] === measured ? at : null;
}
