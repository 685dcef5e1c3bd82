import { timeSlack_days } from '../../constants.ts';
import type { Crew, LegTable, RolloutProblem } from '../../problem.ts';
import { afterDays, afterRiver, type WorkDays, workDays } from '../../workDays.ts';
import { stepSlack_ratio } from './constants.ts';

/** Steps, or days, that no plan has. */
const never = 0x3fffffff;

/**
 * Legs of a kind of crew in steps of its working days, rounded down, by table of legs and by the part of the day at which it sets out. From nodes: the
 * jobs, then the store.
 */
export interface LegSteps {
  /** `to[table][(part * (jobs + 1) + from) * jobs + job]`: steps until the work at a job ends, its windows aside. */
  readonly to: readonly Int32Array[];
  /** `home[table][part * jobs + from]`: days from the one of setting out to the one on which the next trip can leave. */
  readonly home: readonly Int32Array[];
  /** By table: steps from the base to the store at the start of a day. */
  readonly toStore: Int32Array;
  /** The table of each working day, and the first later day that has another one; the count of days where none has. */
  readonly tableOn: Int32Array;
  readonly changesOn: Int32Array;
}

interface LegsAsked {
  readonly stepsOfDay: number;
  readonly days: number;
  /** By job. */
  readonly work_days: Float64Array;
}

/** Makes the legs of a kind ready; null where some leg and the work after it take no step. */
export function legSteps(problem: RolloutProblem, crew: Crew, calendar: WorkDays, asked: LegsAsked): LegSteps | null {
  const { travels, jobs, placeIds, stores, riverEnds_h, horizon_days } = problem;
  const { byPeriod, nodes } = travels[crew.travel]!;
  const tables = [...new Set(byPeriod)];
  const store = stores[crew.store]!.node;
  const froms = [...jobs.map((_, job) => placeIds.length + job), store];
  const gone = goneBy(crew.work_h_per_day, Math.min(crew.work_h_per_day, riverEnds_h), horizon_days);
  const { stepsOfDay, work_days } = asked;
  const to = tables.map(() => new Int32Array(stepsOfDay * froms.length * jobs.length).fill(never));
  const home = tables.map(() => new Int32Array(stepsOfDay * jobs.length).fill(never));
  const toStore = new Int32Array(tables.length).fill(never);
  for (const [at, table] of tables.entries()) {
    const there = store === crew.base ? 0 : gone(table, crew.base * nodes + store, 0);
    if (there < Number.POSITIVE_INFINITY) toStore[at] = Math.floor(there * stepsOfDay + stepSlack_ratio);
    for (let part = 0; part < stepsOfDay; part++)
      for (const [from, node] of froms.entries()) {
        for (let job = 0; job < jobs.length; job++) {
          if (job === from) continue;
          const ends = gone(table, node * nodes + placeIds.length + job, part / stepsOfDay) + work_days[job]!;
          if (ends === Number.POSITIVE_INFINITY) continue;
          const steps = Math.floor(ends * stepsOfDay + stepSlack_ratio) - part;
          if (steps < 1) return null;
          to[at]![(part * froms.length + from) * jobs.length + job] = steps;
        }
        if (from === jobs.length) continue;
        const back = gone(table, node * nodes + crew.base, part / stepsOfDay) + crew.turnaround_days;
        if (back < Number.POSITIVE_INFINITY)
          home[at]![part * jobs.length + from] = Math.ceil(back - 2 * timeSlack_days);
      }
  }
  const { tableOn, changesOn } = tablesByDay(problem, byPeriod, tables, calendar, asked.days);
  return { to, home, toStore, tableOn, changesOn };
}

/** When a leg is gone that is begun at a time of a working day and waits for nothing [working day]; Infinity where it cannot be. */
function goneBy(day_h: number, most_h: number, horizon_days: number) {
  const every = workDays(new Uint8Array(horizon_days + 1).fill(1), horizon_days + 1);
  return ({ landBefore_h, river_h, landAfter_h }: LegTable, leg: number, time: number): number => {
    let there = afterDays(every, null, time, landBefore_h[leg]! / day_h);
    if (there < Number.POSITIVE_INFINITY && river_h[leg]! > 0)
      there = afterRiver(every, null, there, river_h[leg]!, day_h, most_h);
    return there < Number.POSITIVE_INFINITY ? afterDays(every, null, there, landAfter_h[leg]! / day_h) : there;
  };
}

function tablesByDay(
  { periods }: RolloutProblem,
  byPeriod: readonly LegTable[],
  tables: readonly LegTable[],
  { dayOf }: WorkDays,
  days: number,
) {
  const tableOn = new Int32Array(days);
  const changesOn = new Int32Array(days).fill(days);
  let period = 0;
  for (let on = 0; on < days; on++) {
    while (period + 1 < periods.length && periods[period + 1]!.from <= dayOf[on]!) period++;
    tableOn[on] = tables.indexOf(byPeriod[period]!);
  }
  for (let on = days - 2; on >= 0; on--) changesOn[on] = tableOn[on + 1] === tableOn[on] ? changesOn[on + 1]! : on + 1;
  return { tableOn, changesOn };
}
