import { timeSlack_days } from './constants.ts';

/**
 * The days of a calendar on which there is work, made ready so that many days of work are one look-up. Times are crew days: the whole
 * part is the day, the fraction the share of its hours that is used; a day wholly used is the next whole number.
 */
export interface WorkDays {
  /** 1 on days of work, `horizon_days` long. */
  readonly works: Uint8Array;
  readonly horizon_days: number;
  /** Days of work before each day, one entry longer. */
  readonly before: Int32Array;
  /** The first day of work on or after each day, one entry longer; the horizon where there is none. */
  readonly next: Int32Array;
  /** The days of work, in order. */
  readonly dayOf: Int32Array;
}

/**
 * Makes a calendar ready.
 *
 * @param works - 1 on days of work [count]
 * @param horizon_days - days looked at [day]
 * @returns the calendar, ready for look-ups [day]
 * @definition ours
 */
export function workDays(works: Uint8Array, horizon_days: number): WorkDays {
  const before = new Int32Array(horizon_days + 1);
  const next = new Int32Array(horizon_days + 1).fill(horizon_days);
  for (let day = 0; day < horizon_days; day++) before[day + 1] = before[day]! + (works[day] === 1 ? 1 : 0);
  for (let day = horizon_days - 1; day >= 0; day--) next[day] = works[day] === 1 ? day : next[day + 1]!;
  const dayOf = new Int32Array(before[horizon_days]!);
  for (let day = 0; day < horizon_days; day++) if (works[day] === 1) dayOf[before[day]!] = day;
  return { works, horizon_days, before, next, dayOf };
}

/** A time that lies beside a whole number is that number. */
export function snapped(time: number): number {
  const whole = Math.round(time);
  return Math.abs(time - whole) <= timeSlack_days ? whole : time;
}

/**
 * The day on which what ends at this time ends.
 *
 * @param time - a time of the plan [day]
 * @returns the day, from 0; a whole time is the end of the day before [day]
 * @definition ours: docs/methods/rollout.md
 * @example
 * endDay(13) // → 12
 */
export function endDay(time: number): number {
  return Math.ceil(time - timeSlack_days) - 1;
}

/** The first day, `day` or later, of work on which nothing is closed; the horizon where there is none. */
export function nextOpen(calendar: WorkDays, closed: Uint8Array | null, day: number): number {
  if (day >= calendar.horizon_days) return calendar.horizon_days;
  let found = calendar.next[day]!;
  if (closed !== null) while (found < calendar.horizon_days && closed[found] === 1) found = calendar.next[found + 1]!;
  return found;
}

/** When hours can first be used at `time` or later: `time` itself on an open day of work, else the start of the next; Infinity beyond the horizon. */
export function firstHour(calendar: WorkDays, closed: Uint8Array | null, time: number): number {
  const day = Math.floor(time);
  const open = nextOpen(calendar, closed, day);
  if (open >= calendar.horizon_days) return Number.POSITIVE_INFINITY;
  return open === day ? time : open;
}

/**
 * When are so many days of work done that begin at a time?
 *
 * @param calendar - days of work [day]
 * @param closed - 1 on days on which nothing goes [count]; null: none
 * @param time - they may be begun at [day]
 * @param days - of work [day]
 * @returns when they are done [day]; Infinity beyond the horizon
 * @definition docs/methods/rollout.md, time
 */
export function afterDays(calendar: WorkDays, closed: Uint8Array | null, time: number, days: number): number {
  if (days <= timeSlack_days) return time;
  const day = Math.floor(time);
  if (day >= calendar.horizon_days) return Number.POSITIVE_INFINITY;
  if (closed !== null) return afterOpenDays(calendar, closed, time, days);
  const used = calendar.before[day]! + (calendar.works[day] === 1 ? time - day : 0) + days;
  const last = Math.ceil(used - timeSlack_days) - 1;
  if (last >= calendar.dayOf.length) return Number.POSITIVE_INFINITY;
  return snapped(calendar.dayOf[last]! + (used - last));
}

/** The same where an area is closed on some days: walked, since that differs with every draw. */
function afterOpenDays(calendar: WorkDays, closed: Uint8Array, time: number, days: number): number {
  const begun = Math.floor(time);
  let day = nextOpen(calendar, closed, begun);
  let used = day === begun ? time - begun : 0;
  for (let left = days; day < calendar.horizon_days; day = nextOpen(calendar, closed, day + 1)) {
    if (left <= 1 - used + timeSlack_days) return snapped(day + used + left);
    left -= 1 - used;
    used = 0;
  }
  return Number.POSITIVE_INFINITY;
}

/**
 * When are so many hours on a river done? What would not be done on the day on which it could begin is begun in the next morning.
 *
 * @param calendar - days of work [day]
 * @param closed - 1 on days on which nothing goes [count]; null: none
 * @param time - they may be begun at [day]
 * @param hours - on the river [h]
 * @param day_h - hours of a day [h]
 * @param river_h - its first in which boats may be out [h]
 * @returns when they are done [day]; Infinity beyond the horizon
 * @definition docs/decisions/0398-no-night-on-open-water.md
 */
export function afterRiver(
  calendar: WorkDays,
  closed: Uint8Array | null,
  time: number,
  hours: number,
  day_h: number,
  river_h: number,
): number {
  if (hours <= timeSlack_days) return time;
  if (!(river_h > timeSlack_days)) return Number.POSITIVE_INFINITY;
  const begun = Math.floor(time);
  let day = nextOpen(calendar, closed, begun);
  const used_h = day === begun ? (time - begun) * day_h : 0;
  if (day < calendar.horizon_days && used_h + hours <= river_h + timeSlack_days)
    return snapped(day + (used_h + hours) / day_h);
  if (used_h > timeSlack_days) day = nextOpen(calendar, closed, day + 1);
  const more = Math.ceil(hours / river_h - timeSlack_days) - 1;
  if (closed === null) {
    const last = day < calendar.horizon_days ? calendar.before[day]! + more : calendar.dayOf.length;
    if (last >= calendar.dayOf.length) return Number.POSITIVE_INFINITY;
    return snapped(calendar.dayOf[last]! + (hours - more * river_h) / day_h);
  }
  for (let nth = 0; nth < more && day < calendar.horizon_days; nth++) day = nextOpen(calendar, closed, day + 1);
  if (day >= calendar.horizon_days) return Number.POSITIVE_INFINITY;
  return snapped(day + (hours - more * river_h) / day_h);
}

/** How many hours of a day may be used, its first, and how many from the beginning must fit into what is left of one. */
export interface HoursOfDay {
  readonly day_h: number;
  readonly most_h: number;
  readonly inOne_h: number;
}

/**
 * When hours that are used in the first `most_h` of each day of work are begun and done.
 *
 * @param calendar - days of work [day]
 * @param time - they may be begun at [day]
 * @param hours - of work [h]
 * @param of - hours of a day, its first that may be used, and how many must fit into what is left of one [h]
 * @returns when they are begun and done [day]; null beyond the horizon
 * @definition docs/methods/rollout.md, a leg
 */
export function stretchDays(
  calendar: WorkDays,
  time: number,
  hours: number,
  of: HoursOfDay,
): { readonly begins: number; readonly ends: number } | null {
  const { day_h, most_h, inOne_h } = of;
  if (hours <= timeSlack_days) return { begins: time, ends: time };
  const begun = Math.floor(time);
  let day = nextOpen(calendar, null, begun);
  let used_h = day === begun ? (time - begun) * day_h : 0;
  if (used_h >= most_h - timeSlack_days || (inOne_h > 0 && used_h + inOne_h > most_h + timeSlack_days)) {
    if (day === begun) day = nextOpen(calendar, null, day + 1);
    used_h = 0;
  }
  if (day >= calendar.horizon_days) return null;
  const begins = snapped(day + used_h / day_h);
  for (let left_h = hours; ; left_h -= most_h - used_h, used_h = 0, day = nextOpen(calendar, null, day + 1)) {
    if (day >= calendar.horizon_days) return null;
    if (left_h <= most_h - used_h + timeSlack_days) return { begins, ends: snapped(day + (used_h + left_h) / day_h) };
  }
}
