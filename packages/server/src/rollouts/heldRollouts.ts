import {
  type AreaWeather,
  areasWeather,
  type DayIndex,
  evaluatePlan,
  type FinishDates,
  type KeptPlan,
  keptPlan,
  type Outcome,
  type PlanFacts,
  type Problem,
  type ProgrammeFacts,
  pastTrips,
  type ReadyKit,
  type ReadyProgramme,
  type ReadyRollout,
  type Retiming,
  type RolloutPlan,
  type RolloutSite,
  readyKit,
  readyProgramme,
  readyRollout,
  retiming,
  type Verdict,
  type WaitingBounds,
} from '@eavewell/engine';
import type { JobAround } from '@eavewell/work';
import { readList } from '../designs/designFiles.ts';
import { ontoSharedMemory } from './acrossThreads.ts';
import { type PlansRead, readFacts, readPlans, type WayLinesRead } from './readFacts.ts';
import type { RolloutAt } from './rolloutAt.ts';
import { SitesKept } from './sitesKept.ts';

/** The facts beside the plans, with what the rollout wants to know of each site. */
interface Base {
  readonly factsStamp: string;
  readonly facts: ProgrammeFacts;
  readonly problems: readonly Problem[];
  readonly linesOf: WayLinesRead;
  readonly programme: ReadyProgramme;
  readonly kit: ReadyKit;
  readonly sites: readonly RolloutSite[];
}

/** What was drawn of a plan. */
interface Drawn {
  readonly futures: FinishDates;
}

/** Days of hand-over by site [day]; null: not within the days looked at. */
export type HandOvers = ReadonlyMap<string, DayIndex | null>;

/** What a plan came to before something changed. */
export interface PlanBefore {
  readonly handOvers: HandOvers;
  /** Of the trips that were to go then. */
  readonly cost: number;
  readonly tripIds: readonly string[];
}

/** A rollout made ready for what has happened of a plan. */
interface ReadyHeld {
  readonly key: string;
  readonly ready: ReadyRollout;
  readonly timing: Retiming;
  readonly weather: readonly AreaWeather[];
  /** Undefined: not reckoned yet; null: there are none. */
  bounds: WaitingBounds | null | undefined;
}

/** A state of a programme, held. */
export interface Held extends Omit<Base, 'factsStamp'> {
  readonly at: RolloutAt;
  readonly verdictOf: ReadonlyMap<string, Verdict>;
  readonly peopleOf: ReadonlyMap<string, number>;
}

/** A plan as it is timed now. */
export interface TimedNow {
  readonly held: ReadyHeld;
  /** Null: there is none, and nothing is planned. */
  readonly kept: KeptPlan | null;
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
}

/** What of the making is judging, the rest is legs. Ours, for what is told of how far it is. */
const judging_fraction = 0.6;
/** Rollouts that are held ready, for plans of which different things have happened: of a large programme one, its legs are large. Ours. */
const [mostReady_count, fewJobs_count] = [3, 300] as const;
/** Futures that are held. Ours. */
const mostDrawn_count = 12;

/** Days a plan was to hand its sites over on, before something changed: of so many plans they are held. Ours. */
const mostBefore_count = 8;

/** What the thread holds: the facts asked for last, and rollouts made ready from them. */
export class HeldRollouts {
  private base: Base | null = null;
  private readonly sitesKept = new SitesKept();
  private plans: (PlansRead & { readonly stamp: string }) | null = null;
  private readonly readies = new Map<string, ReadyHeld>();
  private readonly drawn = new Map<string, Drawn>();
  private readonly before = new Map<string, PlanBefore>();
  /** How often more was drawn or bounded: what was put together before says less. */
  drawn_count = 0;

  /** The state that is asked of; made where it is not held. */
  async of(at: RolloutAt, around: JobAround): Promise<Held> {
    if (this.base?.factsStamp !== at.factsStamp) {
      // The last one goes first: two of a large programme do not fit.
      this.base = null;
      this.plans = null;
      this.readies.clear();
      this.drawn.clear();
      this.base = await makeBase(at, this.sitesKept, around);
    }
    const { base } = this;
    if (this.plans?.stamp !== at.stamp) this.plans = { ...(await readPlans(at, base.facts)), stamp: at.stamp };
    const { plans, problems } = this.plans;
    const rollout = { ...base.facts.rollout, plans };
    return {
      ...base,
      at,
      facts: { ...base.facts, rollout },
      problems: [...base.problems, ...problems],
      verdictOf: new Map(base.sites.map(({ site, verdict }) => [site.siteId, verdict])),
      peopleOf: new Map(
        base.sites.flatMap(({ site, people_count }) =>
          people_count === null ? [] : [[site.siteId, people_count] as const],
        ),
      ),
    };
  }

  /** The rollout ready for a plan; plans of which the same has happened share one. */
  readyFor(held: Held, planId: string | null): ReadyHeld {
    const key = keyOf(held, planId);
    const known = this.readies.get(key);
    if (known !== undefined) {
      this.readies.delete(key);
      this.readies.set(key, known);
      return known;
    }
    const isLarge = held.facts.sites.length > fewJobs_count;
    for (const old of [...this.readies.keys()].slice(0, isLarge ? undefined : 1 - mostReady_count || undefined))
      if (isLarge || this.readies.size >= mostReady_count) this.readies.delete(old);
    const { today } = held.at;
    const found = readyRollout(held.facts, held.sites, { today, planId, firstDay: firstDayOf(held, planId) });
    const ready = { ...found, problem: ontoSharedMemory(found.problem) };
    const weather = areasWeather(ready, held.facts.sites, held.programme);
    const made: ReadyHeld = { key, ready, timing: retiming(ready.problem), weather, bounds: undefined };
    this.readies.set(key, made);
    return made;
  }

  /** A plan, timed as the facts are now. */
  timed(held: Held, planId: string | null): TimedNow {
    const ready = this.readyFor(held, planId);
    return timedOn(held, ready, planId);
  }

  /**
   * What would a plan come to, had nothing changed since a version?
   *
   * @param version - the last before the changes
   * @returns days of hand-over by site [day], null where it is not handed over within the days looked at, and what its trips cost; null: there was no such plan
   */
  async planBefore({ at }: Held, planId: string, version: number): Promise<PlanBefore | null> {
    const key = JSON.stringify([at.programmeId, version, at.today, at.build, planId]);
    const known = this.before.get(key) ?? (await planAt({ ...at, version }, planId, this.sitesKept));
    if (known === null) return null;
    this.before.delete(key);
    this.before.set(key, known);
    for (const old of [...this.before.keys()].slice(0, -mostBefore_count)) this.before.delete(old);
    return known;
  }

  drawnOf(key: string): Drawn | null {
    return this.drawn.get(key) ?? null;
  }

  keepDrawn(key: string, drawn: Drawn): void {
    this.drawn.set(key, drawn);
    this.drawn_count += 1;
    for (const old of [...this.drawn.keys()].slice(0, -mostDrawn_count)) this.drawn.delete(old);
  }

  /** Keeps the bounds of a rollout, where it is held still. */
  keepBounds(key: string, bounds: WaitingBounds | null): void {
    const ready = this.readies.get(key);
    if (ready !== undefined) ready.bounds = bounds;
    this.drawn_count += 1;
  }
}

/** The days of a plan as they were worked out from the facts of a version: what has gone by since stands as it is today. */
async function planAt(at: RolloutAt, planId: string, sitesKept: SitesKept): Promise<PlanBefore | null> {
  const { facts } = await readFacts(at);
  const { today } = at;
  const [programme, kit] = [readyProgramme(facts, { today }), readyKit(facts, today)];
  const sites = [...new SitesKept(sitesKept).of(facts, programme, kit, new Map())];
  const ready = readyRollout(facts, sites, { today, planId, firstDay: firstDayOf({ facts, at }, planId) });
  const kept = keptPlan(ready, facts, planId, today);
  if (kept === null) return null;
  const { problem } = ready;
  const { trips, cost } = evaluatePlan(problem, kept.plan);
  const stops = trips.flat().flatMap((trip) => trip.stops);
  const handOvers = new Map(
    stops.map(({ job, handOverDay }) => [
      problem.jobs[job]!.siteId,
      handOverDay < problem.horizon_days ? problem.firstDay + handOverDay : null,
    ]),
  );
  return { handOvers, cost, tripIds: kept.tripIds.flat() };
}

/** A plan, timed on a rollout that may be ready for another. */
export function timedOn({ facts, at }: Held, held: ReadyHeld, planId: string | null): TimedNow {
  const { problem } = held.ready;
  const kept = planId === null ? null : keptPlan(held.ready, facts, planId, at.today);
  const plan = kept?.plan ?? { trips: problem.crews.map(() => []) };
  return { held, kept, plan, outcome: evaluatePlan(held.timing, plan) };
}

/** What has happened of a plan, as far as anything is planned by it. */
function keyOf({ facts, at }: Held, planId: string | null): string {
  const plan = facts.rollout.plans.find((one) => one.planId === planId);
  const past = pastTrips(facts, plan, at.today).map(({ crewId, state, back, stops }) => [
    ...[crewId, state, back],
    stops.map(({ siteId, handOver }) => [siteId, handOver]),
  ]);
  return JSON.stringify([firstDayOf({ facts, at }, planId), past]);
}

/** The first day planned anew: that of the plan or of the settings, today at the earliest. */
function firstDayOf({ facts, at }: Pick<Held, 'facts' | 'at'>, planId: string | null): DayIndex {
  const plan = facts.rollout.plans.find((one) => one.planId === planId);
  return Math.max(at.today, plan?.from ?? facts.settings.rolloutStart ?? at.today);
}

/** The plan that is shown: the one asked for, else in force, else the one worked out last; null: there is none. Undefined: there is none of that id. */
export function planShown({ rollout }: ProgrammeFacts, planId: string | null): PlanFacts | null | undefined {
  if (planId !== null) return rollout.plans.find((plan) => plan.planId === planId);
  const timed = (plan: PlanFacts) => plan.timedAt ?? '';
  const newest = rollout.plans.reduce<PlanFacts | null>(
    (best, plan) => (best === null || timed(plan) >= timed(best) ? plan : best),
    null,
  );
  return rollout.plans.find(({ isInForce }) => isInForce) ?? newest;
}

async function makeBase(at: RolloutAt, kept: SitesKept, around: JobAround): Promise<Base> {
  const { facts, problems, linesOf } = await readFacts(at);
  const verdicts = await verdictsOf(at);
  const today: DayIndex = at.today;
  const programme = readyProgramme(facts, { today });
  const kit = readyKit(facts, today);
  const sites: RolloutSite[] = [];
  for (const site of kept.of(facts, programme, kit, verdicts)) {
    sites.push(site);
    around.report((judging_fraction * sites.length) / facts.sites.length);
  }
  return { factsStamp: at.factsStamp, facts, problems, linesOf, programme, kit, sites };
}

/** Verdicts of the design of these facts, where it is kept. */
async function verdictsOf({ designs, build, version }: RolloutAt): Promise<ReadonlyMap<string, Verdict>> {
  const list = await readList(designs, build);
  if (list === null || list.version !== version) return new Map();
  return new Map(list.sites.map(({ short }) => [short.siteId, short.verdict]));
}
