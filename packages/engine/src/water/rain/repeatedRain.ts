import {
  calendarDay,
  dayIndexOf,
  daysInMonth,
  engineProblem,
  isoDay,
  measured,
  type Place,
  type Problem,
  type RainRecord,
} from '../../kernel/index.ts';
import { copiedWetDays_days, sameRain_days, wetDayFrom_mm } from './constants.ts';
import { type DayRun, runsOfDays } from './runsOfDays.ts';

/** Runs of measured days with one rain, not 0. */
function sameRuns({ rain_mm, state }: RainRecord): readonly DayRun[] {
  const runs = runsOfDays(rain_mm.length, (day) => state[day] === measured && rain_mm[day] !== 0);
  const same: DayRun[] = [];
  for (const { from, to } of runs)
    for (let at = from; at < to; ) {
      let end = at + 1;
      while (end < to && rain_mm[end] === rain_mm[at]) end++;
      if (end - at >= sameRain_days) same.push({ from: at, to: end });
      at = end;
    }
  return same;
}

/** A month of the sheet: its first day as an offset of the record, and its days. */
interface SheetMonth {
  readonly label: string;
  readonly from: number;
  readonly days: number;
}

/** The months that were measured throughout, as the observer's sheets have them. */
function wholeMonths({ firstDay, rain_mm, state }: RainRecord, shift_days: number): readonly SheetMonth[] {
  const months: SheetMonth[] = [];
  const sheetDay = firstDay + shift_days;
  let { year, month } = calendarDay(sheetDay);
  for (let from = dayIndexOf(year, month, 1) - sheetDay; from < rain_mm.length; ) {
    const days = daysInMonth(year, month);
    const isWhole = from >= 0 && from + days <= rain_mm.length;
    if (isWhole && state.subarray(from, from + days).every((one) => one === measured))
      months.push({ label: isoDay(sheetDay + from).slice(0, 7), from, days });
    from += days;
    [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
  }
  return months;
}

/** Pairs of months alike day by day, over the days both have; each month with the first it is like. */
function copies(record: RainRecord, shift_days: number): readonly (readonly [SheetMonth, SheetMonth])[] {
  const { rain_mm } = record;
  const leastDays = 28;
  const known = new Map<number, SheetMonth[]>();
  const pairs: (readonly [SheetMonth, SheetMonth])[] = [];
  for (const month of wholeMonths(record, shift_days)) {
    const days = rain_mm.subarray(month.from, month.from + month.days);
    if (days.filter((depth_mm) => depth_mm >= wetDayFrom_mm).length < copiedWetDays_days) continue;
    // Months alike have one key; months of one key are compared.
    const key = days.subarray(0, leastDays).reduce((sum, depth_mm, i) => sum + depth_mm * (i + 1), 0);
    const alike = known.get(key) ?? [];
    const same = (other: SheetMonth) =>
      days.subarray(0, other.days).every((depth_mm, i) => depth_mm === rain_mm[other.from + i]);
    const first = alike.find(same);
    if (first) pairs.push([first, month]);
    known.set(key, [...alike, month]);
  }
  return pairs;
}

/**
 * Does rain stand in this record that fell only once, or not as it stands? Names long runs of one value, and months that are copies
 * of others. Nothing is taken out: which of two months is the true one cannot be told.
 *
 * @param record - the record as it was measured, nothing filled
 * @param shift_days - how many days earlier the rain fell than it was read [day], 0 or 1: a copy is made of a month as it was read
 * @param place - file and gauge, for the places of problems
 * @returns one problem for each kind: how many, the first place, its days [day] and rain [mm]
 * @problem rain.same_for_days - seven days or more in a row with one rain, not 0
 * @problem rain.month_twice - two months alike day by day, with five wet days or more
 * @law a dry stretch, however long, is neither
 * @source ferrari-ozaki-2014, abstract: one rain on 7 days in a row
 * @definition the copied month is ours: docs/decisions/0016-units-mixed-up.md
 */
export function repeatedRain(record: RainRecord, shift_days: number, place: Place): readonly Problem[] {
  const problems: Problem[] = [];
  const column = 'rain_mm';
  const runs = sameRuns(record);
  const [run] = runs;
  if (run) {
    const count = runs.reduce((sum, { from, to }) => sum + to - from, 0);
    const facts = { value: record.rain_mm[run.from]!, days: run.to - run.from, runs: runs.length, count };
    problems.push(
      engineProblem('rain.same_for_days', { ...place, column, day: isoDay(record.firstDay + run.from) }, facts),
    );
  }
  const pairs = copies(record, shift_days);
  const [pair] = pairs;
  if (pair) {
    const [first, second] = pair;
    const facts = { value: second.label, other: first.label, count: pairs.length };
    problems.push(engineProblem('rain.month_twice', { ...place, column }, facts));
  }
  return problems;
}
