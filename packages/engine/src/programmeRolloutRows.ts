import { type DayIndex, isoDay, type PlanTripFacts } from './kernel/index.ts';
import type { Outcome, RolloutPlan, RolloutProblem, TimedTrip } from './programme/rollout/index.ts';
import { byOrder } from './programmeRolloutPast.ts';
import type { KeptPlan } from './programmeRolloutPlans.ts';

/** The cells of a row as text, those that are empty left out. */
export type PlanCells = Readonly<Record<string, string>>;

/** Every row of a plan. */
export interface PlanRows {
  readonly planTrips: readonly PlanCells[];
  readonly planStops: readonly PlanCells[];
}

/** What a plan is kept as, and what of it stays as it is. */
export interface PlanKept extends Partial<Pick<KeptPlan, 'past' | 'otherPast' | 'otherTrips' | 'unanswered'>> {
  readonly planId: string;
  /** Ids of trips as `plan.trips`; an id that is left out, or stands for another trip already, is made new. */
  readonly tripIds?: readonly (readonly (string | null)[])[];
}

/**
 * A plan as the rows it is kept in: its trips with the days they leave and are back, their stops with the days of hand-over, and the trips
 * that left as they stand.
 *
 * @param problem - the rollout as numbers [day]
 * @param plan - who goes where in which order
 * @param outcome - what came of it [day]; null: its days are not worked out
 * @param kept - the plan's id, the ids of its trips, trips that left
 * @returns every row of the plan, as cells of planTrips and planStops [ISO day]
 * @law a plan that is kept and read back is the same plan
 * @definition ours: docs/decisions/0351-what-happened-and-what-is-planned.md
 */
export function rowsOfPlan(
  problem: RolloutProblem,
  plan: RolloutPlan,
  outcome: Outcome | null,
  kept: PlanKept,
): PlanRows {
  const { planId, past = [], otherPast = [], otherTrips = [], unanswered = [] } = kept;
  const gone = [...past.flat(), ...otherPast].map((trip) => trip.kept);
  const planned = new Set(plan.trips.flatMap((trips) => trips.flatMap(({ stops }) => stops)));
  const isPlanned = new Set(problem.jobs.flatMap(({ siteId }, job) => (planned.has(job) ? [siteId] : [])));
  // What a crew that is not planned with was to do stays with it, but for sites that another goes to now.
  const others = otherTrips.map((trip) => ({
    ...trip,
    stops: trip.stops.filter(({ siteId }) => !isPlanned.has(siteId)),
  }));
  const ids = new TripIds([...gone, ...others].map(({ tripId }) => tripId));
  const idsOf = plan.trips.map((trips, crew) => trips.map((_, at) => ids.known(kept.tripIds?.[crew]?.[at] ?? null)));
  const asked = askedStill(problem, unanswered);
  const made = plan.trips.flatMap((trips, crew) => {
    const before = (past[crew] ?? []).map((trip) => trip.kept.order);
    const first = Math.max(0, ...before.map(Math.ceil));
    return trips.map((trip, at): PlanTripFacts => {
      const timed = outcome?.trips[crew]?.[at] ?? null;
      const [tripId, { crewId }] = [idsOf[crew]![at] ?? ids.next(), problem.crews[crew]!];
      const days = asked(tripId, crewId, trip.stops) ?? daysOf(problem, timed);
      return {
        ...{ tripId, crewId, order: first + at + 1 },
        notBefore: trip.notBefore > 0 ? problem.firstDay + Math.ceil(trip.notBefore - slack_days) : null,
        ...{ isLocked: trip.isLocked, ...days, leftOn: null, backOn: null },
        stops: trip.stops.map((job, order) => ({
          ...{ siteId: problem.jobs[job]!.siteId, order: order + 1 },
          handOver: dayWithin(problem, timed?.stops[order]?.handOverDay ?? null),
        })),
      };
    });
  });
  const all = [...gone, ...made, ...others];
  return {
    planTrips: all.map((trip) => tripCells(planId, trip)),
    planStops: all.flatMap(({ tripId, stops }) =>
      stops.map(({ siteId, order, handOver }) =>
        filled({ planId, siteId, tripId, order: String(order), handOver: textOf(handOver) }),
      ),
    ),
  };
}

/**
 * Of a trip that may have left is still asked: the day it was to leave stays as it was told. Not so where its id is that of another
 * crew now, or of other sites in another order: that trip was never to leave on that day.
 */
function askedStill({ jobs }: RolloutProblem, unanswered: readonly PlanTripFacts[]) {
  const jobOf = new Map(jobs.map(({ siteId }, job) => [siteId, job]));
  const known = new Map(
    unanswered.map(({ stops, ...trip }) => {
      const own = [...stops].sort(byOrder(({ siteId }) => siteId)).flatMap(({ siteId }) => jobOf.get(siteId) ?? []);
      return [trip.tripId, { ...trip, own }] as const;
    }),
  );
  return (tripId: string, crewId: string, stops: readonly number[]) => {
    const trip = known.get(tripId);
    const isSame = trip?.crewId === crewId && String(trip.own) === String(stops);
    return isSame ? { leaves: trip.leaves, back: trip.back } : null;
  };
}

function tripCells(planId: string, trip: PlanTripFacts): PlanCells {
  const { tripId, crewId, order, notBefore, isLocked, leaves, back, leftOn, backOn } = trip;
  return filled({
    ...{ planId, tripId, crewId, order: String(order), notBefore: textOf(notBefore) },
    ...{ isLocked: isLocked ? 'yes' : null, leaves: textOf(leaves), back: textOf(back) },
    ...{ leftOn: textOf(leftOn), backOn: textOf(backOn) },
  });
}

const textOf = (day: DayIndex | null): string | null => (day === null ? null : isoDay(day));

function filled(cells: Readonly<Record<string, string | null>>): PlanCells {
  return Object.fromEntries(Object.entries(cells).flatMap(([name, text]) => (text === null ? [] : [[name, text]])));
}

/** The days a trip leaves and is back, the last one on which it is away; of one that is not made none. */
function daysOf(problem: RolloutProblem, trip: TimedTrip | null) {
  if (!trip?.stops.some(({ handOverDay }) => handOverDay < problem.horizon_days)) return { leaves: null, back: null };
  const leaves = dayWithin(problem, trip.leaves);
  return { leaves, back: leaves === null ? null : leaves + trip.nights_count };
}

/** A time as a day; null: there is none within the days looked at. */
function dayWithin({ firstDay, horizon_days }: RolloutProblem, time: number | null): DayIndex | null {
  return time === null || !(time < horizon_days) ? null : firstDay + Math.floor(time);
}

/** Ids that are taken already stand for no other trip. */
class TripIds {
  private readonly taken: Set<string>;
  private last = 0;

  constructor(taken: readonly string[]) {
    this.taken = new Set(taken);
  }

  /** The id, where it is not taken; else null. */
  known(id: string | null): string | null {
    if (id === null || this.taken.has(id)) return null;
    this.taken.add(id);
    return id;
  }

  next(): string {
    for (;;) {
      this.last += 1;
      const id = `T${String(this.last).padStart(3, '0')}`;
      if (this.known(id) !== null) return id;
    }
  }
}

/** What of a day rounding may add. */
const slack_days = 1e-9;
