import { calendarDay, type DayIndex, dayIndexOf } from '@eavewell/engine';

/** Steps that read well, as parts of ten. */
const steps = [1, 2, 2.5, 5, 10] as const;
/** Ends of an axis that read well, as parts of ten. */
const ends = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10] as const;

/** A round figure not under this one: 1, 2, 2.5 or 5 times a power of ten, or a finer one of `of`. 0 or less gives 1. */
export function roundUp(value: number, of: readonly number[] = steps): number {
  if (!(value > 0) || !Number.isFinite(value)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return (of.find((times) => times * power >= value * (1 - 1e-12)) ?? 10) * power;
}

/** A round end of an axis that is lettered there alone. */
export function axisEnd(most: number): number {
  return roundUp(most, ends);
}

/** A round end of an axis of so many steps at most: a whole number of round steps. */
export function stepsUp(most: number, mostSteps: number): number {
  const step = roundUp(most / mostSteps);
  return step * Math.max(1, Math.ceil(most / step - 1e-9));
}

/** Ticks from 0 to an end, at most so many steps of a round size. */
export function ticksTo(end: number, mostSteps: number): readonly number[] {
  const step = roundUp(end / mostSteps);
  const count = Math.floor(end / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => index * step);
}

/** Steps of years that read well. */
const yearSteps = [1, 2, 4, 5, 10, 20, 25, 50, 100, 200, 500, 1000] as const;

/** By how many years are ticks apart, so that each has so much room [px]? */
export function yearStep(pxPerYear: number, room: number): number {
  return yearSteps.find((step) => step * pxPerYear >= room) ?? yearSteps[yearSteps.length - 1]!;
}

/** First days of calendar years in a stretch of days, both ends in it. */
export function yearStarts(from: DayIndex, to: DayIndex): readonly { readonly year: number; readonly day: DayIndex }[] {
  const found: { year: number; day: DayIndex }[] = [];
  for (let { year } = calendarDay(from); ; year++) {
    const day = dayIndexOf(year, 1, 1);
    if (day > to) return found;
    if (day >= from) found.push({ year, day });
  }
}

/** First days of months in a stretch of days, both ends in it. */
export function monthStarts(
  from: DayIndex,
  to: DayIndex,
): readonly { readonly year: number; readonly month: number; readonly day: DayIndex }[] {
  const found: { year: number; month: number; day: DayIndex }[] = [];
  let { year, month } = calendarDay(from);
  for (;;) {
    const day = dayIndexOf(year, month, 1);
    if (day > to) return found;
    if (day >= from) found.push({ year, month, day });
    month = month === 12 ? 1 : month + 1;
    if (month === 1) year++;
  }
}

/** A share between 0 and 1 whatever is divided: nothing of nothing is 0. */
export function shareOf(part: number, whole: number): number {
  if (!(whole > 0) || !(part > 0)) return 0;
  return Math.min(1, part / whole);
}
