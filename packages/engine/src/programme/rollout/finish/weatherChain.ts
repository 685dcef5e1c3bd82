import { calendarDay, type DayIndex, type RainRecord, unknownDay } from '../../../kernel/index.ts';
import { daysForMonth_count } from './constants.ts';

/** Days of an area as they were: 0 open, 1 closed, 2 not known. */
export interface ClosedDays {
  readonly firstDay: DayIndex;
  readonly state: Uint8Array;
}

/** A two-state chain of days, by month (January first): the chance that a day is closed, after an open and after a closed one. */
export interface ClosedChain {
  readonly afterOpen_fraction: readonly number[];
  readonly afterClosed_fraction: readonly number[];
}

/** What follows from a chain of one month that goes on for ever. */
export interface ChainMeans {
  readonly closed_fraction: number;
  /** Mean length of a closed spell, and mean wait of who comes on any day [day]. */
  readonly spell_days: number;
  readonly wait_days: number;
}

/**
 * On which days was an area closed by rain: more fell than the threshold. Days that were not read are not known; those filled or made up are taken as they are.
 *
 * @param record - a gauge's days [mm]
 * @param threshold_mm - over it nobody travels or works [mm]
 * @returns the days [0 open, 1 closed, 2 not known]
 * @definition ours: docs/methods/rollout.md, finish dates
 */
export function closedByRain(record: RainRecord, threshold_mm: number): ClosedDays {
  const state = Uint8Array.from(record.rain_mm, (rain, at) =>
    record.state[at] === unknownDay ? 2 : rain > threshold_mm ? 1 : 0,
  );
  return { firstDay: record.firstDay, state };
}

/**
 * On which days was a way closed by its river: the level was under the least or over the greatest at which its carrier goes.
 *
 * @param levels - readings of one gauge in the river [day, m], in any order
 * @param least_m - under it it is closed [m]; null: none
 * @param greatest_m - over it it is closed [m]; null: none
 * @returns the days from the first reading to the last [0 open, 1 closed, 2 not known]; null where there is none
 * @definition ours: docs/methods/rollout.md, finish dates
 */
export function closedByLevel(
  levels: readonly { readonly day: DayIndex; readonly level_m: number }[],
  least_m: number | null,
  greatest_m: number | null,
): ClosedDays | null {
  if (levels.length === 0) return null;
  const days = levels.map(({ day }) => day);
  const firstDay = days.reduce((least, day) => Math.min(least, day));
  const lastDay = days.reduce((most, day) => Math.max(most, day));
  const state = new Uint8Array(lastDay - firstDay + 1).fill(2);
  for (const { day, level_m } of levels) {
    const isClosed = (least_m !== null && level_m < least_m) || (greatest_m !== null && level_m > greatest_m);
    state[day - firstDay] = isClosed ? 1 : 0;
  }
  return { firstDay, state };
}

/**
 * Fits the chain to days as they were: by month of the day that follows, the share of closed days after open ones and after closed ones. A month with fewer than 30 days of
 * a kind takes the share of the whole year; where there are none of that kind at all, the share of closed days.
 *
 * @param days - days as they were [0 open, 1 closed, 2 not known]
 * @returns the chain, January first [fraction]; null where no two days that follow each other are known
 * @law chances are between 0 and 1
 * @source richardson-1981, first-order chain of wet and dry days, fitted by counting (from memory)
 */
export function fittedChain(days: ClosedDays): ClosedChain | null {
  const { firstDay, state } = days;
  // Counts by month and by the day before: [after open, after closed] x [all, closed].
  const counts = Array.from({ length: 12 }, () => [0, 0, 0, 0]);
  for (let at = 1; at < state.length; at++) {
    const [before, now] = [state[at - 1]!, state[at]!];
    if (before > 1 || now > 1) continue;
    const own = counts[calendarDay(firstDay + at).month - 1]!;
    own[2 * before]!++;
    own[2 * before + 1]! += now;
  }
  const year = [0, 1, 2, 3].map((place) => counts.reduce((sum, own) => sum + own[place]!, 0));
  const all = year[0]! + year[2]!;
  if (all === 0) return null;
  const shareOf = (before: number) => {
    const whole = year[2 * before]! > 0 ? year[2 * before + 1]! / year[2 * before]! : (year[1]! + year[3]!) / all;
    return counts.map((own) =>
      own[2 * before]! >= daysForMonth_count ? own[2 * before + 1]! / own[2 * before]! : whole,
    );
  };
  return { afterOpen_fraction: shareOf(0), afterClosed_fraction: shareOf(1) };
}

/**
 * What follows from a chain: the share of days closed, how long a closed spell lasts, how long who comes on any day waits.
 *
 * @param afterOpen_fraction - chance of a closed day after an open one [fraction], 0 to 1
 * @param afterClosed_fraction - chance of a closed day after a closed one [fraction], 0 to 1
 * @returns share closed [fraction], mean spell [day], mean wait [day]; Infinity where it never opens
 * @source scipy, geom: share a/(1 + a − c), spell 1/(1 − c), wait share/(1 − c)
 * @example
 * chainMeans(0.25, 0.25) // → { closed_fraction: 0.25, spell_days: 1.3333333333333333, wait_days: 0.3333333333333333 }
 */
export function chainMeans(afterOpen_fraction: number, afterClosed_fraction: number): ChainMeans {
  const leaves = 1 - afterClosed_fraction;
  const closed_fraction = afterOpen_fraction === 0 ? 0 : afterOpen_fraction / (leaves + afterOpen_fraction);
  if (closed_fraction === 0) return { closed_fraction, spell_days: 1 / leaves, wait_days: 0 };
  return { closed_fraction, spell_days: 1 / leaves, wait_days: closed_fraction / leaves };
}
