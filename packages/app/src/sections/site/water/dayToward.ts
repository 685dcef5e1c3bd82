import type { DayIndex } from '@eavewell/engine';

/** How finely is looked for the last day that a hand went over [px]. */
const look_px = 2;

/**
 * Which day was dragged to? A hand that went past the end of the picture means the last day on its way.
 *
 * @param from - where it was pressed [px]
 * @param to - where it was let go, maybe outside the picture [px]
 * @param dayAt - the day at a place of the picture; null where there is none
 */
export function dayToward(from: number, to: number, dayAt: (at: number) => DayIndex | null): DayIndex | null {
  const way = Math.sign(from - to);
  for (let at = to; (from - at) * way > 0; at += way * look_px) {
    const day = dayAt(at);
    if (day !== null) return day;
  }
  return dayAt(from);
}
