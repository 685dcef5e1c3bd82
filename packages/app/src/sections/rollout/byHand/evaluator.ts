import {
  type Becomes,
  type Broken,
  evaluatePlan,
  isoDay,
  type Moved,
  missingPairs,
  moveSite,
  moveTrip,
  nearestThatCan,
  type PackedLegs,
  type PackedRollout,
  type PlannedTrip,
  pairsOfSite,
  putSiteIn,
  type RolloutPlan,
  type RolloutProblem,
  readIsoDay,
  readNumbers,
  retiming,
  rowsOfPlan,
  type SitePlace,
  type TimedPlan,
  type TravelPair,
  takeSiteOut,
  tripNotBefore,
  whatBecomes,
  withLegs,
} from '@eavewell/engine';
import type { BreakTold, CrewAsMoved, MoveAnswer, NearestFound, StopAsMoved, TripAsMoved } from './moveAnswer.ts';
import type { Held, Place } from './places.ts';

/** The planned trips of the plan that is shown, by their names, as the thread is told them. */
export interface PlanNamed {
  readonly planId: string;
  readonly crews: readonly {
    readonly crewId: string;
    readonly trips: readonly {
      readonly tripId: string;
      readonly siteIds: readonly string[];
      readonly notBefore: string | null;
      readonly isLocked: boolean;
    }[];
  }[];
}

/** What a question comes to: an answer, legs that are to be had first, or that it is of nothing the numbers know. */
export type Tried<T> =
  | { readonly kind: 'answer'; readonly answer: T }
  | { readonly kind: 'missing'; readonly pairs: readonly TravelPair[] }
  | { readonly kind: 'unknown' };

interface NamedTrip extends PlannedTrip {
  /** Left out of a trip that is not there yet. */
  readonly tripId?: string;
}

interface NamedPlan extends RolloutPlan {
  readonly trips: readonly (readonly NamedTrip[])[];
}

interface TimedNamed extends TimedPlan {
  readonly plan: NamedPlan;
}

/** So many places are tried for a trip that cannot be where it is wanted [count]. Ours. */
const mostTripPlaces = 60;

/** The evaluator of a plan: what would become of it if something were moved. It holds the numbers, and the legs that were had so far. */
export class Evaluator {
  private problem: RolloutProblem;
  private ready: ReturnType<typeof retiming>;
  private before: TimedNamed;
  private readonly jobOf: ReadonlyMap<string, number>;
  private readonly crewOf: ReadonlyMap<string, number>;
  private readonly shown: PlanNamed;

  constructor(numbers: PackedRollout, shown: PlanNamed) {
    this.problem = readNumbers(numbers);
    this.shown = shown;
    this.jobOf = new Map(this.problem.jobs.map(({ siteId }, at) => [siteId, at]));
    this.crewOf = new Map(this.problem.crews.map(({ crewId }, at) => [crewId, at]));
    this.ready = retiming(this.problem);
    const plan = this.planShown();
    this.before = { plan, outcome: evaluatePlan(this.ready, plan) };
  }

  /** More legs: all is timed by them from now on. False where they are of other numbers. */
  addLegs(more: PackedLegs): boolean {
    const problem = withLegs(this.problem, more);
    if (problem === null) return false;
    this.problem = problem;
    this.ready = retiming(problem);
    this.before = { plan: this.before.plan, outcome: evaluatePlan(this.ready, this.before.plan) };
    return true;
  }

  /** Legs that are not known yet with which what is held can be put anywhere. */
  pairsOf(held: Held): readonly TravelPair[] {
    const job = held.kind === 'site' ? this.jobOf.get(held.siteId) : undefined;
    if (job === undefined) return missingPairs(this.ready, this.before.plan);
    const known = this.problem.travels.map(({ pairs }) =>
      pairs === undefined ? null : new Set(Array.from(pairs.keys)),
    );
    return pairsOfSite(this.problem, job, this.before.plan).filter(
      ({ travel, from, to }) => known[travel]?.has(from * this.problem.travels[travel]!.nodes + to) === false,
    );
  }

  /** What would become of the plan with what is held at a place; `isWhole`: of all crews, for keeping, else of those that change. */
  become(held: Held, place: Place, isWhole = false): Tried<MoveAnswer> {
    const plan = this.moved(held, place);
    if (plan === null) return { kind: 'unknown' };
    const becomes = whatBecomes(this.ready, this.before, plan);
    if (becomes.missing.length > 0) return { kind: 'missing', pairs: missingPairs(this.ready, plan) };
    return { kind: 'answer', answer: this.answer(held, plan, becomes, isWhole) };
  }

  /** The nearest place at which nothing breaks. */
  nearest(held: Held, place: Place): Tried<NearestFound> {
    if (held.kind === 'trip') return this.nearestOfTrip(held, place);
    const job = this.jobOf.get(held.siteId);
    const wanted = job === undefined ? null : this.sitePlace(place);
    if (job === undefined || wanted === null) return { kind: 'unknown' };
    const found = nearestThatCan(this.ready, this.before, job, wanted);
    const isReason = (reason: string): reason is Broken['kind'] => reason in breakKinds;
    const commonest = found.reason !== null && isReason(found.reason) ? found.reason : null;
    return { kind: 'answer', answer: { place: found.place === null ? null : this.named(found.place), commonest } };
  }

  private planShown(): NamedPlan {
    const trips = this.problem.crews.map(({ crewId }): readonly NamedTrip[] => {
      const crew = this.shown.crews.find((one) => one.crewId === crewId);
      return (crew?.trips ?? []).flatMap(({ tripId, siteIds, notBefore, isLocked }) => {
        const stops = siteIds.flatMap((siteId) => this.jobOf.get(siteId) ?? []);
        return stops.length === 0 ? [] : [{ tripId, stops, isLocked, notBefore: this.dayIn(notBefore) }];
      });
    });
    return { trips };
  }

  private dayIn(text: string | null): number {
    const day = text === null ? null : readIsoDay(text);
    return day === null ? 0 : Math.max(0, day - this.problem.firstDay);
  }

  private standsAt(tripId: string): { readonly crew: number; readonly trip: number } | null {
    for (const [crew, own] of this.before.plan.trips.entries()) {
      const trip = own.findIndex((one) => one.tripId === tripId);
      if (trip >= 0) return { crew, trip };
    }
    return null;
  }

  /** The trips of a crew the numbers have before the n-th that is shown, one of them perhaps in hand. */
  private countBefore(crewId: string, index: number, inHand: string | null): number {
    const crew = this.shown.crews.find((one) => one.crewId === crewId);
    const shown = (crew?.trips ?? []).filter(({ tripId }) => tripId !== inHand).slice(0, index);
    return shown.filter(({ tripId }) => this.standsAt(tripId) !== null).length;
  }

  private sitePlace(place: Place): SitePlace | null {
    if (place.kind === 'inTrip') {
      const found = this.standsAt(place.tripId);
      return found === null ? null : { ...found, at: place.position };
    }
    if (place.kind !== 'newTrip') return null;
    const crew = this.crewOf.get(place.crewId);
    return crew === undefined ? null : { crew, newTripAt: this.countBefore(place.crewId, place.index, null) };
  }

  private named(place: SitePlace): Place {
    const own = this.before.plan.trips[place.crew]!;
    if ('trip' in place) return { kind: 'inTrip', tripId: own[place.trip]!.tripId!, position: place.at };
    const { crewId } = this.problem.crews[place.crew]!;
    const trips = this.shown.crews.find((one) => one.crewId === crewId)?.trips ?? [];
    const next = own[place.newTripAt]?.tripId;
    const index = next === undefined ? trips.length : trips.findIndex(({ tripId }) => tripId === next);
    return { kind: 'newTrip', crewId, index };
  }

  /** The plan with what is held at a place; null where it is of nothing the numbers know. */
  private moved(held: Held, place: Place): NamedPlan | null {
    const { plan } = this.before;
    const done = (moved: Moved) => moved.plan as NamedPlan | null;
    if (held.kind === 'trip') {
      const from = this.standsAt(held.tripId);
      const crew = place.kind === 'amongTrips' ? this.crewOf.get(place.crewId) : undefined;
      if (from === null || crew === undefined || place.kind !== 'amongTrips') return null;
      const at = this.countBefore(place.crewId, place.index, held.tripId);
      const shifted = done(moveTrip(plan, from, { crew, at }));
      return shifted && done(tripNotBefore(shifted, { crew, trip: at }, this.dayIn(place.notBefore)));
    }
    const job = this.jobOf.get(held.siteId);
    if (job === undefined) return null;
    const isIn = plan.trips.some((own) => own.some(({ stops }) => stops.includes(job)));
    if (place.kind === 'tray') return isIn ? done(takeSiteOut(plan, job)) : plan;
    const to = this.sitePlace(place);
    return to && done(isIn ? moveSite(plan, job, to) : putSiteIn(plan, job, to));
  }

  private nearestOfTrip(held: Held & { readonly kind: 'trip' }, place: Place): Tried<NearestFound> {
    if (place.kind !== 'amongTrips') return { kind: 'unknown' };
    let commonest: Broken['kind'] | null = null;
    for (const near of this.placesNear(held, place).slice(0, mostTripPlaces)) {
      const tried = this.become(held, near);
      if (tried.kind === 'missing') return tried;
      if (tried.kind === 'unknown') continue;
      const [first] = tried.answer.breaks;
      if (first === undefined) return { kind: 'answer', answer: { place: near, commonest: null } };
      commonest ??= first.kind;
    }
    return { kind: 'answer', answer: { place: null, commonest } };
  }

  /** Places of its crew first, those next to the one wanted before the others, then of the other crews. */
  private placesNear(
    held: Held & { readonly kind: 'trip' },
    at: Place & { readonly kind: 'amongTrips' },
  ): readonly Place[] {
    const inOrder = (crewId: string): readonly Place[] => {
      const trips = this.shown.crews.find((one) => one.crewId === crewId)?.trips ?? [];
      const count = trips.filter(({ tripId }) => tripId !== held.tripId).length;
      return Array.from({ length: count + 1 }, (_, index) => ({ ...at, crewId, index }))
        .sort((a, b) => Math.abs(a.index - at.index) - Math.abs(b.index - at.index))
        .filter(({ index }) => crewId !== at.crewId || index !== at.index);
    };
    const others = this.shown.crews.map(({ crewId }) => crewId).filter((crewId) => crewId !== at.crewId);
    const soonest: readonly Place[] = at.notBefore === null ? [] : [{ ...at, notBefore: null }];
    return [...soonest, ...inOrder(at.crewId), ...others.flatMap(inOrder)];
  }

  private answer(held: Held, plan: NamedPlan, { outcome, breaks, changes }: Becomes, isWhole: boolean): MoveAnswer {
    const { plan: was, outcome: timed } = this.before;
    const isShown = plan.trips.map(
      (own, crew) => isWhole || own !== was.trips[crew] || outcome.trips[crew] !== timed.trips[crew],
    );
    const [now, then] = [this.dayOf(held, plan, outcome), this.dayOf(held, was, timed)];
    return {
      crews: this.crewsAsMoved(plan, outcome, isShown),
      moved: changes.sites.flatMap(({ job, later_days }) =>
        later_days === 0 ? [] : [{ siteId: this.problem.jobs[job]!.siteId, later_days }],
      ),
      day: now === null ? null : isoDay(this.problem.firstDay + now),
      later_days: now === null || then === null ? null : now - then,
      waiting_personDays: changes.waiting_personDays,
      finish_days: changes.finish_days,
      cost: changes.cost,
      breaks: breaks.map(({ broken }) => this.told(broken)),
    };
  }

  /** The day the site in hand first serves, or its trip leaves [day]; null: never. */
  private dayOf(held: Held, plan: NamedPlan, outcome: TimedPlan['outcome']): number | null {
    const job = held.kind === 'site' ? this.jobOf.get(held.siteId) : undefined;
    for (const [crew, own] of plan.trips.entries())
      for (const [at, trip] of own.entries()) {
        const timed = outcome.trips[crew]![at]!;
        const stop = timed.stops.find((one) => one.job === job);
        if (held.kind === 'trip' ? trip.tripId !== held.tripId : stop === undefined) continue;
        const day = Math.floor(stop?.serviceDay ?? timed.leaves);
        return day < this.problem.horizon_days ? day : null;
      }
    return null;
  }

  private crewsAsMoved(
    plan: NamedPlan,
    outcome: TimedPlan['outcome'],
    isShown: readonly boolean[],
  ): readonly CrewAsMoved[] {
    const some = { trips: plan.trips.map((own, crew) => (isShown[crew] ? own : [])) };
    const rows = rowsOfPlan(
      this.problem,
      some,
      { ...outcome, trips: outcome.trips.map((own, crew) => (isShown[crew] ? own : [])) },
      { planId: this.shown.planId },
    );
    let [tripAt, stopAt] = [0, 0];
    return some.trips.flatMap((own, crew) => {
      if (!isShown[crew]) return [];
      const trips = own.map((trip, at): TripAsMoved => {
        const cells = rows.planTrips[tripAt++]!;
        const timed = outcome.trips[crew]![at]!;
        const stops = trip.stops.map((_, place): StopAsMoved => {
          const stop = rows.planStops[stopAt++]!;
          const arrives = Math.floor(timed.stops[place]!.arrives);
          return {
            siteId: stop['siteId']!,
            handOver: stop['handOver'] ?? null,
            arrives: arrives < this.problem.horizon_days ? isoDay(this.problem.firstDay + arrives) : null,
          };
        });
        return {
          ...{ tripId: trip.tripId ?? null, notBefore: cells['notBefore'] ?? null, isLocked: trip.isLocked, stops },
          ...{ leaves: cells['leaves'] ?? null, back: cells['back'] ?? null, nights_count: timed.nights_count },
        };
      });
      return [{ crewId: this.problem.crews[crew]!.crewId, trips }];
    });
  }

  private told(broken: Broken): BreakTold {
    const job = 'job' in broken ? broken.job : null;
    return {
      kind: broken.kind,
      siteId: job === null ? null : this.problem.jobs[job]!.siteId,
      by: 'by' in broken ? broken.by : null,
      partId: 'goods' in broken ? this.problem.goods[broken.goods]!.partId : null,
    };
  }
}

const breakKinds: Readonly<Record<Broken['kind'], true>> = {
  ...{ noWay: true, tooHeavy: true, tooBulky: true, tooLong: true, tooLongAway: true, noStock: true },
  ...{ noSkill: true, notOpen: true, sleepsAtSite: true, late: true, leftOut: true, beyondHorizon: true },
};
