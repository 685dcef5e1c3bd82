import { explain, type WorkingInput, type WorkingLine, workingInput } from './kernel/index.ts';
import {
  type Outcome,
  type PlanTimed,
  personDay,
  planDay,
  planTime,
  type Retiming,
  type RolloutNames,
  siteDiffersLines,
  standsAt,
  type TimedPlan,
  type TimedStop,
  type TimedTrip,
  type VisitedFirst,
  visitedFirst,
  whatBecomes,
} from './programme/rollout/index.ts';
import { legTimes, restBetween } from './programmeRolloutLegUse.ts';
import type { TripLeg } from './programmeRolloutTrips.ts';

/**
 * What a village waits for, in the order of which of equal ones is told: that somebody set the first day of a trip, others who come first, goods
 * into store, goods to a forward store, a carrier that is out, that a trip which left sooner would break a limit, a way, its own months and days, the crew's days off, rain, the way there and the work.
 */
export const waitReasons = [
  ...(['heldBack', 'others', 'stock', 'haul', 'carrier'] as const),
  ...(['limit', 'way', 'window', 'crew', 'rain', 'going'] as const),
] as const;
export type WaitReason = (typeof waitReasons)[number];

/** Why a village comes when it does. */
export interface WhyThen {
  readonly job: number;
  /** Its trip in the plan. */
  readonly crew: number;
  readonly trip: number;
  /** The first day of service; where nobody knows how long it waits for rain, that of the hand-over. */
  readonly serviceDay: number;
  /** Whole days from the first day planned on; they add up to that day. */
  readonly parts: Readonly<Record<WaitReason, number>>;
  /** That of which there are most days. */
  readonly most: WaitReason;
  readonly first: VisitedFirst;
  /** The day from which work may be done there, of its own days in which it is done as the first. */
  readonly opensDay: number;
  /** What all others would wait more if it were gone to first. */
  readonly othersWait_personDays: number;
  /** Sites that the crew which would go first comes to before, those of the most people first. */
  readonly before: readonly number[];
  /** Trips of that crew before its own, and its own. */
  readonly tripsBefore: readonly TripRate[];
  readonly ownTrip: TripRate;
}

/** People a trip serves for the days it is out. */
export interface TripRate {
  readonly crew: number;
  readonly trip: number;
  readonly people_count: number;
  readonly out_days: number;
}

/** By which ways a trip of a plan goes that came to this. */
type LegsOf = (outcome: Outcome, crew: number, trip: number) => readonly TripLeg[];

/**
 * Why does a village come when it does: what would be otherwise if a crew went there before all others, and what would it wait for even then?
 *
 * @param ready - the rollout made ready [day]
 * @param before - the plan, with what came of it in this rollout [day]
 * @param job - which site [index]
 * @param legsOf - the legs of a trip, to tell the hours of a way from what is waited on it [h]
 * @returns days by what they are waited for, and what going there first would cost others [day, person-day]; null: it is in no trip that gets it done, or no crew can go there first
 * @law the parts add up to the first day of service
 * @definition ours: docs/decisions/0405-why-a-village-comes-when-it-does.md
 */
export function whyThen(ready: Retiming, before: TimedPlan, job: number, legsOf: LegsOf): WhyThen | null {
  const { problem, horizon_days } = ready;
  const place = standsAt(before.plan, job);
  const now = place && stopOf(before.outcome, { ...place, job });
  if (place === null || now === null || now.handOverDay >= horizon_days) return null;
  const first = visitedFirst(ready, before, job);
  if (first === null || first.serviceDay > now.serviceDay) return null;
  const heldBack = now.serviceDay - (freedService(ready, before, { ...place, job }) ?? now.serviceDay);
  const parts = {
    ...{ heldBack, others: now.serviceDay - heldBack - first.serviceDay },
    ...partsOfFirst(ready, first, job, legsOf),
  };
  const { crew, trip } = place;
  const tripsBefore = ratesBefore(ready, before, first.crew, place);
  return {
    ...{ job, crew, trip, serviceDay: now.serviceDay, parts, first, tripsBefore },
    opensDay: opensOn(problem.jobs[job]!, first.becomes.outcome.trips[first.crew]![first.trip]!, job),
    most: waitReasons.reduce((best, reason) => (parts[reason] > parts[best] ? reason : best)),
    othersWait_personDays:
      first.becomes.changes.waiting_personDays - problem.jobs[job]!.people * (first.serviceDay - now.serviceDay),
    before: sitesBefore(ready, before, first.crew, { ...place, job }),
    ownTrip: rateOf(ready, before.outcome, crew, trip),
  };
}

interface StopAt {
  readonly crew: number;
  readonly trip: number;
  readonly job: number;
}

function stopOf({ trips }: Outcome, { crew, trip, job }: StopAt): TimedStop | null {
  return trips[crew]?.[trip]?.stops.find((stop) => stop.job === job) ?? null;
}

/** Its first day of service if no trip of its crew up to its own were held back to a day; null where none is, where it would be no sooner, or where a trip would break a limit. */
function freedService(ready: Retiming, before: TimedPlan, at: StopAt): number | null {
  const own = before.plan.trips[at.crew]!;
  if (own.slice(0, at.trip + 1).every(({ notBefore }) => notBefore === 0)) return null;
  const freed = own.map((trip, place) => (place <= at.trip ? { ...trip, notBefore: 0 } : trip));
  const { outcome, breaks } = whatBecomes(ready, before, { trips: before.plan.trips.with(at.crew, freed) });
  // A day that keeps a trip within its limits is nobody's choice.
  if (breaks.some(({ broken }) => 'crew' in broken && broken.crew === at.crew && broken.kind !== 'late')) return null;
  const [is, was] = [stopOf(outcome, at)!.serviceDay, stopOf(before.outcome, at)!.serviceDay];
  return is < was ? is : null;
}

/** What is waited for even where a site is gone to first, in whole days that add up to the first day of service then. */
function partsOfFirst(
  { problem }: Retiming,
  { crew: crewAt, trip: tripAt, becomes: { outcome }, handOverDay, serviceDay }: VisitedFirst,
  job: number,
  legsOf: LegsOf,
): Omit<Record<WaitReason, number>, 'heldBack' | 'others'> {
  const crew = problem.crews[crewAt]!;
  const { siteId } = problem.jobs[job]!;
  const own = outcome.trips[crewAt]![tripAt]!;
  const { arrives } = stopOf(outcome, { crew: crewAt, trip: tripAt, job })!;
  const { ready, leaves, waitsFor } = own;
  const leg = legTimes(crew, arrives, { own, legs: legsOf(outcome, crewAt, tripAt), siteId });
  const onWay = leg === null ? restBetween(crew, leaves, Math.ceil(arrives) - 1) : leg.rest_days;
  const stood = leg === null ? 0 : Math.max(0, Math.floor(leg.stood_days));
  const there = Math.floor(arrives);
  const opens = Math.max(there, opensOn(problem.jobs[job]!, own, job));
  const atWork = restBetween(crew, opens, handOverDay - 1);
  // Whoever comes before its own days begin waits for them, whatever else is waited for meanwhile.
  const before = Math.max(0, opensOn(problem.jobs[job]!, own, job) - (there - leaves));
  const after = (from: number, to: number) => Math.max(0, to - Math.max(from, before));
  const waited = (kind: TimedTrip['waitsFor']) => (waitsFor === kind ? after(ready, leaves) : 0);
  const free = after(0, ready);
  const parts = {
    ...{ stock: waited('stock'), haul: waited('haul'), carrier: waited('carrier'), limit: waited('notBefore') },
    ...{ way: waited('way') + stood, crew: free + onWay + atWork },
    window: opens - there + leaves - free - after(ready, leaves),
  };
  const sum = Object.values(parts).reduce((all, days) => all + days, 0);
  return { ...parts, rain: serviceDay - handOverDay, going: handOverDay - sum };
}

/** The day from which the work that was done there might be begun. */
function opensOn({ windows }: PlanTimed['problem']['jobs'][number], { stops }: TimedTrip, job: number): number {
  const { starts } = stops.find((stop) => stop.job === job)!;
  return windows.findLast(({ from }) => from <= starts)?.from ?? 0;
}

/** Trips that a crew makes before another is made: of its own crew those before it, of another those that leave earlier. */
function tripsUntil({ outcome }: TimedPlan, crew: number, at: { readonly crew: number; readonly trip: number }) {
  const { leaves } = outcome.trips[at.crew]![at.trip]!;
  const own = [...outcome.trips[crew]!.entries()];
  return own.filter(([trip, timed]) => (crew === at.crew ? trip < at.trip : timed.leaves < leaves));
}

function ratesBefore(
  ready: Retiming,
  before: TimedPlan,
  crew: number,
  at: { readonly crew: number; readonly trip: number },
): readonly TripRate[] {
  return tripsUntil(before, crew, at)
    .map(([trip]) => rateOf(ready, before.outcome, crew, trip))
    .filter(({ people_count }) => people_count > 0);
}

function rateOf({ problem, horizon_days }: Retiming, { trips }: Outcome, crew: number, trip: number): TripRate {
  const { stops, nights_count } = trips[crew]![trip]!;
  const done = stops.filter(({ handOverDay }) => handOverDay < horizon_days);
  const people_count = done.reduce((sum, { job }) => sum + problem.jobs[job]!.people, 0);
  return { crew, trip, people_count, out_days: nights_count + 1 };
}

function sitesBefore({ problem, horizon_days }: Retiming, before: TimedPlan, crew: number, at: StopAt): number[] {
  const { stops } = before.outcome.trips[at.crew]![at.trip]!;
  const here =
    crew === at.crew
      ? stops.slice(
          0,
          stops.findIndex(({ job }) => job === at.job),
        )
      : [];
  return [...tripsUntil(before, crew, at).flatMap(([, trip]) => trip.stops), ...here]
    .filter(({ handOverDay }) => handOverDay < horizon_days)
    .map(({ job }) => job)
    .sort((a, b) => problem.jobs[b]!.people - problem.jobs[a]!.people || a - b);
}

/**
 * How was it reached why a village comes when it does: who comes before, what going there first would do, and the days by what they are waited for?
 *
 * @param timed - the plan [day, person]
 * @param why - why it comes then [day]
 * @param names - what things are called
 * @returns lines of trips, of sites that would wait otherwise, and the days part by part [day of the plan, person-day]
 * @law each line follows from its inputs; the last is the first day of service
 * @definition ours: docs/decisions/0405-why-a-village-comes-when-it-does.md
 */
export function whyWorking(timed: PlanTimed, why: WhyThen, names: RolloutNames): WorkingLine[] {
  const { problem, outcome } = timed;
  const { job, first, parts, othersWait_personDays } = why;
  const lines: WorkingLine[] = [];
  const add = (code: WorkingLine['code'], value: number, unit: string, inputs: readonly WorkingInput[]) =>
    explain(lines, { code, value, unit, inputs, source: 'definition' });
  const ofSite = workingInput('ofSite', names.siteOf(job), 'text');
  for (const { crew, trip, people_count, out_days } of [...why.tripsBefore, why.ownTrip])
    add('rollout.tripRate', people_count / out_days, 'person', [
      workingInput('ofTrip', names.tripOf(crew, trip), 'text'),
      workingInput('tripPeople', people_count, 'person'),
      workingInput('daysOut', out_days, 'day'),
    ]);
  const differs = siteDiffersLines({ problem, outcome, names }, { problem, outcome: first.becomes.outcome });
  lines.push(...differs.filter(({ inputs }) => inputs[0]!.value !== ofSite.value));
  add('rollout.othersWait', othersWait_personDays, personDay, [ofSite]);
  add('rollout.ifFirst', first.serviceDay, planDay, ifFirstInputs(timed, why, names));
  const known = waitReasons.filter((reason) => parts[reason] !== 0);
  add('rollout.whyThen', why.serviceDay, planDay, [
    ofSite,
    ...known.map((reason) => workingInput(partNames[reason], parts[reason], 'day')),
  ]);
  return lines;
}

const partNames: Readonly<Record<WaitReason, string>> = {
  ...{ heldBack: 'partHeldBack', others: 'partOthers', stock: 'partStock', haul: 'partHaul', carrier: 'partCarrier' },
  ...{
    limit: 'partLimit',
    way: 'partWay',
    window: 'partWindow',
    crew: 'partCrew',
    rain: 'waitForRain',
    going: 'partGoing',
  },
};

function ifFirstInputs({ problem }: PlanTimed, { job, first }: WhyThen, names: RolloutNames): readonly WorkingInput[] {
  const own = first.becomes.outcome.trips[first.crew]![first.trip]!;
  const { arrives, starts } = own.stops.find((stop) => stop.job === job)!;
  const isWaiting = own.leaves > own.ready;
  return [
    ...[workingInput('ofSite', names.siteOf(job), 'text'), workingInput('ofCrew', names.crewOf(first.crew), 'text')],
    workingInput('crewFree', own.ready, planDay),
    ...(isWaiting
      ? [
          workingInput('waitedDays', own.leaves - own.ready, 'day'),
          workingInput('waitsFor', `waitsFor_${own.waitsFor}`, 'text'),
        ]
      : []),
    ...[workingInput('arrivesAt', arrives, planTime), workingInput('startsAt', starts, planTime)],
    workingInput('handedOver', first.handOverDay, planDay),
    ...(problem.jobs[job]!.serviceWaits === null
      ? []
      : [workingInput('waitForRain', first.serviceDay - first.handOverDay, 'day')]),
  ];
}
