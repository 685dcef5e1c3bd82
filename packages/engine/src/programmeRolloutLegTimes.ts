import { type Crew, type RolloutProblem, stretchDays, type WorkDays } from './programme/rollout/index.ts';
import { type ExplainedWay, type RiverStretch, toSleep_h } from './programme/ways/index.ts';

/** When one stretch of a leg is gone, as a plan tells times; a change of carrier before it is made where it begins. */
export interface StretchTimes {
  readonly begins: number;
  readonly ends: number;
}

/** What of a crew tells how far it gets in a day. */
export type Walker = Pick<Crew, 'work_h_per_day'> & { readonly calendar: WorkDays };

/**
 * When is each stretch of a way gone, by a crew that sets out at a time or on the first day of work after it?
 *
 * @param problem - when boats must be ashore [h]
 * @param crew - hours of its day [h], days it works
 * @param way - stretch by stretch [h]
 * @param time - when it may set out [day]
 * @returns times of the stretches, in their order [day]; fewer where the days looked at end before
 * @law the last ends when the evaluator lets the leg arrive
 * @definition docs/methods/rollout.md, a leg: from the first stretch by river to the last all is done in hours in which boats may be out
 */
export function stretchTimes(
  { riverEnds_h }: Pick<RolloutProblem, 'riverEnds_h'>,
  { calendar, work_h_per_day }: Walker,
  { stretches, river_h }: Pick<ExplainedWay, 'stretches' | 'river_h'>,
  time: number,
): readonly StretchTimes[] {
  const isRiver = stretches.map(({ mode }) => mode === 'river');
  const [first, last] = [isRiver.indexOf(true), isRiver.lastIndexOf(true)];
  const boats_h = Math.min(work_h_per_day, riverEnds_h);
  const part = stretches.slice(first, last + 1).map(({ hours_h, changeOver_h, maySleep }, at): RiverStretch => {
    return { hours_h, change_h: changeOver_h, isRiver: isRiver[first + at]!, maySleep };
  });
  const times: StretchTimes[] = [];
  let now = time;
  for (const [at, { hours_h, changeOver_h }] of stretches.entries()) {
    const isBoats = first >= 0 && at >= first && at <= last;
    const most_h = isBoats ? boats_h : work_h_per_day;
    // A change before the first boat is made on land, and need not be done while boats may be out.
    const change = { day_h: work_h_per_day, most_h: at > first ? most_h : work_h_per_day, inOne_h: 0 };
    const changed = stretchDays(calendar, now, changeOver_h, change);
    // What takes longer than a day begins in a morning; what is begun gets to where one may sleep.
    const whole_h = at === first ? river_h : isBoats && isRiver[at] ? toSleep_h(part, at - first, boats_h) : 0;
    const inOne_h = Math.min(whole_h, boats_h);
    const gone = changed && stretchDays(calendar, changed.ends, hours_h, { day_h: work_h_per_day, most_h, inOne_h });
    if (changed === null || gone === null) break;
    times.push({ begins: gone.begins, ends: gone.ends });
    now = gone.ends;
  }
  return times;
}
