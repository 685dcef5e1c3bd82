import { mostPeriods_count } from './constants.ts';
import type { StatePeriod, WayCause, WayState } from './waysFacts.ts';

/** Periods, and on how many days they tell a way worse than it is. */
export interface PeriodsFound {
  readonly periods: readonly StatePeriod[];
  readonly worse_days: number;
}

/**
 * The days at which any way changes. Where there are more periods than may be, neighbours become one, those first for which the ways are told
 * worse than they are for the fewest days: what is closed, or slower, in one of the two is so in both.
 */
export function statePeriods(
  causes: readonly WayCause[],
  horizon_days: number,
  most_count = mostPeriods_count,
): PeriodsFound {
  const raw = rawPeriods(causes, horizon_days);
  const weights = causes.map(weightOf);
  let worse_days = 0;
  while (raw.length > most_count) {
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    for (let index = 0; index + 1 < raw.length; index++) {
      const cost = worseBy(raw[index]!, raw[index + 1]!, weights);
      if (cost < least) [best, least] = [index, cost];
    }
    const [one, next] = [raw[best]!, raw[best + 1]!];
    worse_days += daysWorse(one, next);
    const days = one.days + next.days;
    raw.splice(best, 2, { from: one.from, days, causes: union(one.causes, next.causes) });
  }
  const states = new Map<string, WayState>();
  const periods: StatePeriod[] = [];
  for (const { from, causes: own } of raw) {
    const key = own.join();
    if (!states.has(key)) states.set(key, { causes_positions: own });
    const state = states.get(key)!;
    if (periods.at(-1)?.state !== state) periods.push({ from, state });
  }
  return { periods, worse_days };
}

/** As few states as there is room for: of all, in time neighbours or not, those become one that are told worse for the fewest days. */
export function fewerStates(
  { periods, worse_days }: PeriodsFound,
  causes: readonly WayCause[],
  horizon_days: number,
  most_count: number,
): PeriodsFound {
  const weights = causes.map(weightOf);
  const own = new Map<WayState, Run>();
  periods.forEach(({ from, state }, index) => {
    const days = (periods[index + 1]?.from ?? horizon_days) - from;
    own.set(state, { from: 0, days: days + (own.get(state)?.days ?? 0), causes: state.causes_positions });
  });
  const runs = [...own.values()];
  let worse = worse_days;
  while (runs.length > Math.max(1, most_count)) {
    let best: [number, number] = [0, 1];
    let least = Number.POSITIVE_INFINITY;
    runs.forEach((one, a) => {
      for (let b = a + 1; b < runs.length; b++) {
        const cost = worseBy(one, runs[b]!, weights);
        if (cost < least) [best, least] = [[a, b], cost];
      }
    });
    const [one, other] = [runs[best[0]]!, runs[best[1]]!];
    worse += daysWorse(one, other);
    runs.splice(best[1], 1);
    runs[best[0]] = { from: 0, days: one.days + other.days, causes: union(one.causes, other.causes) };
  }
  const states = runs.map((run): WayState => ({ causes_positions: run.causes }));
  const merged: StatePeriod[] = [];
  for (const { from, state } of periods) {
    // The state it went into holds all that it held, and as little more as there is.
    const fitting = states.filter(({ causes_positions: all }) =>
      state.causes_positions.every((one) => all.includes(one)),
    );
    const to = fitting.reduce((a, b) => (b.causes_positions.length < a.causes_positions.length ? b : a));
    if (merged.at(-1)?.state !== to) merged.push({ from, state: to });
  }
  return { periods: merged, worse_days: worse };
}

interface Run {
  readonly from: number;
  readonly days: number;
  readonly causes: readonly number[];
}

function rawPeriods(causes: readonly WayCause[], horizon_days: number): Run[] {
  const runs: Run[] = [];
  let from = 0;
  const isNew = (day: number) => causes.some(({ holdsOn_days: on }) => on[day] !== on[day - 1]);
  for (let day = 1; day <= horizon_days; day++) {
    if (day < horizon_days && !isNew(day)) continue;
    const own = causes.flatMap(({ holdsOn_days }, index) => (holdsOn_days[from] === 1 ? [index] : []));
    runs.push({ from, days: day - from, causes: own });
    from = day;
  }
  return runs;
}

/** How much a cause takes away: its ways, closed, or the share by which they are slower. */
function weightOf({ ways_positions, slower_factor }: WayCause): number {
  return ways_positions.length * (1 - 1 / slower_factor);
}

function worseBy(one: Run, other: Run, weights: readonly number[]): number {
  const beyond = (a: Run, b: Run) =>
    b.causes.reduce((sum, cause) => sum + (a.causes.includes(cause) ? 0 : weights[cause]!), 0);
  return one.days * beyond(one, other) + other.days * beyond(other, one);
}

function daysWorse(one: Run, other: Run): number {
  const isWorse = (a: Run, b: Run) => b.causes.some((cause) => !a.causes.includes(cause));
  return (isWorse(one, other) ? one.days : 0) + (isWorse(other, one) ? other.days : 0);
}

function union(one: readonly number[], other: readonly number[]): readonly number[] {
  return [...new Set([...one, ...other])].sort((a, b) => a - b);
}
