import { riverSlack_h } from './constants.ts';

/**
 * Hours from the morning on in which a stretch by river is gone as well, after so many hours: it is begun only if it ends in what is left of the day, else
 * the night is spent where it begins. One that takes longer than a day begins in a morning.
 *
 * @param gone_h - hours of days of boats before it, those waited for mornings counted [h]
 * @param stretch_h - its own [h]
 * @param day_h - hours of a day in which boats may be out; Infinity: all [h]
 * @returns hours of such days until it is gone [h]
 * @law one after the other, each is gone within one day or begins with a morning
 * @definition docs/decisions/0398-no-night-on-open-water.md
 * @example
 * withStretch(6, 5, 10) // → 15
 */
export function withStretch(gone_h: number, stretch_h: number, day_h: number): number {
  if (day_h === Number.POSITIVE_INFINITY) return gone_h + stretch_h;
  const days = Math.floor(gone_h / day_h + riverSlack_h);
  const used_h = Math.max(0, gone_h - days * day_h);
  if (used_h <= riverSlack_h || used_h + stretch_h <= day_h + riverSlack_h) return gone_h + stretch_h;
  return (days + 1) * day_h + stretch_h;
}

/** The same in 32 bits and never more, so that what just ends with a day does so in the tables too. */
export function inTable_h(hours_h: number): number {
  const near = Math.fround(hours_h);
  return near <= hours_h ? near : Math.fround(hours_h - hours_h * 2 ** -24);
}
