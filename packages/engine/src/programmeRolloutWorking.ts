import { cellName, explain, type WorkingInput, type WorkingLine, workingInput } from './kernel/index.ts';
import {
  type Crew,
  endDay,
  type FinishDates,
  learnedShare,
  type PlanTimed,
  planDay,
  planTime,
  type RolloutNames,
  spanLines,
  type TimedStop,
  type TimedTrip,
} from './programme/rollout/index.ts';
import { legTimes, restBetween } from './programmeRolloutLegUse.ts';
import type { TripLeg } from './programmeRolloutTrips.ts';

/** One stop of a trip, and what its working is made with. */
export interface ServiceAsked {
  readonly crew: number;
  readonly trip: number;
  readonly job: number;
  readonly legs: readonly TripLeg[];
  /** Null: none were drawn. */
  readonly futures: FinishDates | null;
  readonly names: Pick<RolloutNames, 'siteOf'>;
}

/**
 * How was the day reached on which a village drinks: when its crew is free, what the trip waits for, legs, work of it and of the sites before it, the wait for rain?
 *
 * @param timed - a plan [day, h, person]
 * @param asked - which stop of which trip
 * @returns lines in the order things happen [day of the plan]; none where the site is not handed over, up to the hand-over where its wait is not known
 * @law each line follows from its inputs
 * @definition docs/methods/rollout.md
 */
export function serviceWorking(timed: PlanTimed, asked: ServiceAsked): WorkingLine[] {
  const { problem, outcome } = timed;
  const { crew, trip, job, futures, names } = asked;
  const lines: WorkingLine[] = [];
  const own = outcome.trips[crew]![trip]!;
  const upTo = own.stops.slice(0, own.stops.findIndex((stop) => stop.job === job) + 1);
  const wanted = upTo.at(-1);
  if (wanted === undefined || wanted.handOverDay >= problem.horizon_days) return lines;
  setsOutLines(lines, timed, asked);
  let nth = doneBefore(timed, crew, trip);
  for (const stop of upTo) {
    if (stop.handOverDay >= problem.horizon_days) continue;
    arrivesLine(lines, problem.crews[crew]!, stop, { own, asked, siteId: problem.jobs[stop.job]!.siteId });
    workLines(lines, timed, stop, { asked, nth: ++nth });
  }
  const ofSite = workingInput('ofSite', names.siteOf(job), 'text');
  line(lines, 'rollout.handOver', wanted.handOverDay, planDay, [
    ofSite,
    workingInput('workEnds', wanted.ends, planTime),
  ]);
  if (problem.jobs[job]!.serviceWaits === null) return lines;
  line(lines, 'rollout.firstService', wanted.serviceDay, planDay, [
    ofSite,
    workingInput('handedOver', wanted.handOverDay, planDay),
    workingInput('waitForRain', wanted.serviceDay - wanted.handOverDay, 'day'),
  ]);
  const drawn = futures?.bySite.find((one) => one.job === job);
  if (futures !== null && drawn !== undefined) spanLines(lines, drawn.service, futures.replicates_count);
  return lines;
}

function line(
  lines: WorkingLine[],
  code: WorkingLine['code'],
  value: number,
  unit: string,
  inputs: readonly WorkingInput[],
): void {
  explain(lines, { code, value, unit, inputs, source: 'definition' });
}

/** A number of days that is named where there are any. */
const daysIf = (name: string, days: number) => (days > slack_days ? [workingInput(name, days, 'day')] : []);

/** Jobs a crew has done before a trip, for what it has learnt. */
function doneBefore({ problem, outcome }: PlanTimed, crew: number, trip: number): number {
  const before = outcome.trips[crew]!.slice(0, trip).flatMap(({ stops }) => stops);
  return (
    problem.crews[crew]!.done_count + before.filter(({ handOverDay }) => handOverDay < problem.horizon_days).length
  );
}

/** When the crew is free for the trip, and when it leaves. */
function setsOutLines(lines: WorkingLine[], { problem, outcome }: PlanTimed, { crew, trip }: ServiceAsked): void {
  const own = problem.crews[crew]!;
  const trips = outcome.trips[crew]!;
  const { ready, leaves, waitsFor } = trips[trip]!;
  const before = trips.slice(0, trip).findLast((one) => one.back > one.ready);
  const from = before?.back ?? own.freeFrom;
  const ofCrew = (column: string) => cellName('crews', own.crewId, column);
  line(lines, 'rollout.crewFree', ready, planDay, [
    ...(before === undefined
      ? [workingInput('freeFrom', own.freeFrom, planDay, ofCrew('from'))]
      : [
          workingInput('backAgain', before.back, planTime),
          workingInput('turnaround', own.turnaround_days, 'day', ofCrew('turnaround_days')),
        ]),
    ...daysIf('restDays', restBetween(own, Math.floor(from), ready - 1)),
  ]);
  line(lines, 'rollout.leaves', leaves, planDay, [
    workingInput('crewFree', ready, planDay),
    ...(leaves > ready
      ? [workingInput('waitedDays', leaves - ready, 'day'), workingInput('waitsFor', `waitsFor_${waitsFor}`, 'text')]
      : []),
  ]);
}

/** The column of sites, and the setting for those that state none. */
const likely = 'installLikely_days';
const setting = (key: string) => cellName('settings', key, key);

/** Legs are kept in 32 bits. */
const slack_days = 1e-4;

function arrivesLine(
  lines: WorkingLine[],
  crew: Crew,
  { job, arrives }: TimedStop,
  { own, asked, siteId }: { readonly own: TimedTrip; readonly asked: ServiceAsked; readonly siteId: string },
): void {
  const toSite = workingInput('toSite', asked.names.siteOf(job), 'text');
  const leg = legTimes(crew, arrives, { own, legs: asked.legs, siteId });
  if (leg === null) {
    line(lines, 'rollout.arrives', arrives, planTime, [toSite, workingInput('setsOut', own.leaves, planDay)]);
    return;
  }
  line(lines, 'rollout.arrives', arrives, planTime, [
    ...[toSite, workingInput('setsOut', leg.begins, planTime), workingInput('hoursOnWay', leg.hours_h, 'h')],
    workingInput('hoursADay', crew.work_h_per_day, 'h_per_day', cellName('crews', crew.crewId, 'work_h_per_day')),
    ...daysIf('restDays', leg.rest_days),
    ...daysIf('stoodDays', leg.stood_days),
  ]);
}

function workLines(
  lines: WorkingLine[],
  { problem }: PlanTimed,
  { job, arrives, starts, ends }: TimedStop,
  { asked, nth }: { readonly asked: ServiceAsked; readonly nth: number },
): void {
  const crew = problem.crews[asked.crew]!;
  const { siteId, install_days, windows } = problem.jobs[job]!;
  const ofSite = workingInput('ofSite', asked.names.siteOf(job), 'text');
  const learnt = learnedShare(nth, problem.learning_fraction);
  if (problem.learning_fraction !== 1)
    line(lines, 'rollout.learnt', learnt, 'factor', [
      workingInput('nthJob', nth, 'count'),
      workingInput('learning', problem.learning_fraction, 'factor', setting('learning_fraction')),
    ]);
  const days = install_days.likely * crew.pace_factor * learnt;
  line(lines, 'rollout.workDays', days, 'day', [
    ofSite,
    workingInput('installDays', install_days.likely, 'day', cellName('sites', siteId, likely), setting(likely)),
    workingInput('paceOfCrew', crew.pace_factor, 'factor', cellName('crews', crew.crewId, 'pace_factor')),
    workingInput('learntFactor', learnt, 'factor'),
  ]);
  const opens = windows.findLast(({ from }) => from <= starts)?.from ?? 0;
  if (starts > arrives + slack_days)
    line(lines, 'rollout.starts', starts, planTime, [
      ...[ofSite, workingInput('arrivesAt', arrives, planTime)],
      ...(opens > arrives ? [workingInput('opensOn', opens, planDay)] : []),
      ...daysIf('restDays', restBetween(crew, Math.floor(Math.max(arrives, opens)), Math.floor(starts) - 1)),
    ]);
  line(lines, 'rollout.ends', ends, planTime, [
    ...[ofSite, workingInput('startsAt', starts, planTime), workingInput('daysOfWork', days, 'day')],
    ...daysIf('restDays', restBetween(crew, Math.floor(starts), endDay(ends))),
  ]);
}
