import { riverSlack_h } from './constants.ts';

/**
 * Hours from the morning on in which a stretch by river is gone as well, after so many hours: it is begun only if it ends in what is left of the day, else
 * the night is spent where it begins. One that takes longer than a day begins in a morning.
 *
 * @param gone_h - hours of days of boats before it, those waited for mornings counted [h]
 * @param stretch_h - its own [h]
 * @param day_h - hours of a day in which boats may be out; Infinity: all [h]
 * @param inOne_h - hours that must follow each other in one day once it is begun, its own among them [h]
 * @returns hours of such days until it is gone [h]
 * @law one after the other, each is gone within one day or begins with a morning
 * @definition docs/decisions/0398-no-night-on-open-water.md
 * @example
 * withStretch(6, 5, 10) // → 15
 */
export function withStretch(gone_h: number, stretch_h: number, day_h: number, inOne_h = stretch_h): number {
  if (day_h === Number.POSITIVE_INFINITY) return gone_h + stretch_h;
  const days = Math.floor(gone_h / day_h + riverSlack_h);
  const used_h = Math.max(0, gone_h - days * day_h);
  if (used_h <= riverSlack_h || used_h + inOne_h <= day_h + riverSlack_h) return gone_h + stretch_h;
  return (days + 1) * day_h + stretch_h;
}

/** A stretch of a river part: from the first way by river to the last, land between them too. */
export interface RiverStretch {
  readonly hours_h: number;
  /** Changing carriers before it [h]. */
  readonly change_h: number;
  readonly isRiver: boolean;
  /** May one sleep where it begins? */
  readonly maySleep: boolean;
}

/**
 * Hours that must follow each other in one day once a stretch by river is begun: on to the first landing where one may sleep.
 *
 * @param stretches - of a river part, in order [h]
 * @param at - the place of the one that is begun [count]
 * @param day_h - hours of a day in which boats may be out [h]
 * @returns its hours and those after it [h]; its own alone where all of them are more than a day
 * @definition docs/decisions/0410-nights-where-one-may-sleep.md
 * @example
 * toSleep_h([{ hours_h: 3, change_h: 0, isRiver: true, maySleep: true }, { hours_h: 4, change_h: 0, isRiver: true, maySleep: false }], 0, 10) // → 7
 */
export function toSleep_h(stretches: readonly RiverStretch[], at: number, day_h: number): number {
  const own_h = stretches[at]!.hours_h;
  let all_h = own_h;
  for (let next = at + 1; next < stretches.length; next++) {
    const { isRiver, maySleep, change_h, hours_h } = stretches[next]!;
    if (!isRiver || maySleep) break;
    all_h += change_h + hours_h;
  }
  return all_h <= day_h + riverSlack_h ? all_h : own_h;
}

/**
 * Hours from a morning on in which a river part is gone, by days of boats, nights at landings where one may sleep.
 *
 * @param stretches - in order [h]
 * @param day_h - hours of a day in which boats may be out [h]
 * @returns hours of such days until it is gone, those waited for mornings counted [h]
 * @law no night where nobody may sleep, but where landings are more than a day apart
 * @definition docs/decisions/0410-nights-where-one-may-sleep.md
 */
export function riverPart_h(stretches: readonly RiverStretch[], day_h: number): number {
  return stretches.reduce((gone_h, { hours_h, change_h, isRiver }, at) => {
    const ready_h = gone_h + (at === 0 ? 0 : change_h);
    return isRiver ? withStretch(ready_h, hours_h, day_h, toSleep_h(stretches, at, day_h)) : ready_h + hours_h;
  }, 0);
}

/** Hours in 32 bits and never more, so that what just ends with a day does so in the tables too. */
export function inTable_h(hours_h: number): number {
  const near = Math.fround(hours_h);
  return near <= hours_h ? near : Math.fround(hours_h - hours_h * 2 ** -24);
}
