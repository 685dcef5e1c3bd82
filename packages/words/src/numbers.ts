import { calendarDay, type DayIndex } from '@eavewell/engine';

/** A size of tank that is enough: rounded up, never down, to 10 L below 1,000 L and to 100 L above. */
export function enoughLitres(volume_L: number): number {
  const step = volume_L <= 1000 ? 10 : 100;
  return Math.ceil(volume_L / step - 1e-9) * step;
}

/** A day of the calendar as year, month and day, from an index or an ISO text; null where the text is no date. */
export function dateParts(day: DayIndex | string): { year: number; month: number; day: number } | null {
  if (typeof day === 'number') return Number.isFinite(day) ? calendarDay(day) : null;
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  return found ? { year: Number(found[1]), month: Number(found[2]), day: Number(found[3]) } : null;
}
