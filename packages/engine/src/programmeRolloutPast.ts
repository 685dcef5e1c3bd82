import type { CalendarDays, CrewFacts, DayIndex, PlanFacts, PlanTripFacts, ProgrammeFacts } from './kernel/index.ts';
import { kitAtSite, readyKit } from './programmeKit.ts';
import { type PlanDays, workingDays } from './programmeRolloutDays.ts';
import type { RolloutSite } from './programmeRolloutFacts.ts';
import type { Taken } from './programmeRolloutStock.ts';

/** A stop of a trip that left. */
export interface PastStop {
  readonly siteId: string;
  readonly order: number;
  /** The day the site was handed over, as it was entered [day]; null: not yet, or nobody has entered it. */
  readonly handOver: DayIndex | null;
  /** The hand-over as it was worked out last [day]; null: never. */
  readonly kept: DayIndex | null;
}

/** A trip of a kept plan that left. Nothing moves it. */
export interface PastTrip {
  readonly tripId: string;
  readonly crewId: string;
  readonly state: 'done' | 'underWay';
  readonly leftOn: DayIndex;
  /** The day it came back; of a trip under way the day it is to be back, today at the least. */
  readonly back: DayIndex;
  /** In the order they are served. */
  readonly stops: readonly PastStop[];
  /** As the tables have it. */
  readonly kept: PlanTripFacts;
}

/**
 * When did a trip leave? On the day that was entered; one that came back has left even if nobody entered when: on the day it was to, or the day
 * it came back where that is earlier.
 *
 * @param trip - the days that were entered, and the one it was to leave on [day]
 * @returns the day it left [day]; null: it has not
 * @definition ours: docs/decisions/0351-what-happened-and-what-is-planned.md
 */
export function tripLeftOn({
  leftOn,
  backOn,
  leaves,
}: Pick<PlanTripFacts, 'leftOn' | 'backOn' | 'leaves'>): DayIndex | null {
  if (leftOn !== null || backOn === null) return leftOn;
  return Math.min(leaves ?? backOn, backOn);
}

/** Trips and stops in the order they go; of two of the same order the one whose id comes first. */
export const byOrder =
  <T extends { readonly order: number }>(idOf: (one: T) => string) =>
  (a: T, b: T): number =>
    a.order - b.order || (idOf(a) < idOf(b) ? -1 : 1);

/** The plan of an id; undefined where there is none. */
export function planOf({ rollout }: ProgrammeFacts, planId: string | null | undefined): PlanFacts | undefined {
  return planId == null ? undefined : rollout.plans.find((plan) => plan.planId === planId);
}

/**
 * Which trips of a plan have left by today? A day entered that is still to come has not happened.
 *
 * @param facts - the programme
 * @param plan - a kept plan; undefined: none
 * @param today - today [day]
 * @returns trips done and under way [day], those that left first first
 * @definition ours: docs/decisions/0351-what-happened-and-what-is-planned.md
 */
export function pastTrips(facts: ProgrammeFacts, plan: PlanFacts | undefined, today: DayIndex): readonly PastTrip[] {
  const handedOver = new Map(facts.sites.map(({ siteId, handOverDay }) => [siteId, handOverDay]));
  const handOverOf = (siteId: string) => {
    const day = handedOver.get(siteId) ?? null;
    return day !== null && day <= today ? day : null;
  };
  return (plan?.trips ?? [])
    .flatMap((kept): readonly PastTrip[] => {
      const leftOn = tripLeftOn(kept);
      if (leftOn === null || leftOn > today) return [];
      const isDone = kept.backOn !== null && kept.backOn <= today;
      const stops = [...kept.stops].sort(byOrder(({ siteId }) => siteId));
      return [
        {
          ...{ tripId: kept.tripId, crewId: kept.crewId, state: isDone ? 'done' : 'underWay', leftOn, kept },
          back: isDone ? kept.backOn! : Math.max(today, kept.backOn ?? kept.back ?? today),
          stops: stops.map(({ siteId, order, handOver }) => ({
            ...{ siteId, order, handOver: handOverOf(siteId), kept: handOver },
          })),
        },
      ];
    })
    .sort((a, b) => a.leftOn - b.leftOn || byOrder(({ tripId }: PlanTripFacts) => tripId)(a.kept, b.kept));
}

/**
 * What has happened, for who goes on from a plan: its own trips that left, and those of the plan in force, which are where crews and kits truly are.
 */
export function happenedBy(facts: ProgrammeFacts, plan: PlanFacts | undefined, today: DayIndex): readonly PastTrip[] {
  const own = pastTrips(facts, plan, today);
  const inForce = facts.rollout.plans.find(({ isInForce }) => isInForce);
  if (plan === undefined || inForce === undefined || inForce.planId === plan.planId) return own;
  // A plan made from the one in force has its trips too: each leaves once.
  const known = new Set(own.map(({ crewId, leftOn }) => `${crewId} ${leftOn}`));
  const others = pastTrips(facts, inForce, today).filter(({ crewId, leftOn }) => !known.has(`${crewId} ${leftOn}`));
  return [...own, ...others];
}

/** What a crew's past trips leave it with. */
export interface CrewPast {
  /** The first day it is free for the next trip, counted from the first day of the plan [day]. */
  readonly freeFrom: number;
  /** Jobs it has done, those of a trip under way among them. */
  readonly done_count: number;
}

/** From when on is a crew free after its trips that left, and how many sites has it done? */
export function crewPast(
  crew: CrewFacts,
  past: readonly PastTrip[],
  calendars: readonly CalendarDays[],
  plan: PlanDays,
): CrewPast {
  const own = past.filter(({ crewId }) => crewId === crew.crewId);
  const done = own.flatMap(({ state, stops }) =>
    stops.filter(({ handOver }) => state === 'underWay' || handOver !== null),
  );
  const free = own.map(({ back }) => freeAfter(crew, back, calendars, plan));
  return { freeFrom: Math.max(0, ...free), done_count: done.length };
}

/** The day after it is back, and after so many days of work at its base. */
function freeAfter(crew: CrewFacts, back: DayIndex, calendars: readonly CalendarDays[], plan: PlanDays): number {
  const { firstDay, horizon_days } = plan;
  const first = back + 1;
  const works = workingDays(crew, calendars, {
    firstDay: first,
    horizon_days: Math.max(1, firstDay + horizon_days - first),
  });
  let left_days = crew.turnaround_days;
  let day = 0;
  for (; day < works.length && left_days > slack_days; day++) if (works[day] === 1) left_days -= 1;
  return Math.min(horizon_days, first + day - firstDay);
}

/** What of a day rounding may add. */
const slack_days = 1e-9;

/**
 * What did trips that left take from the stores? The kit of their sites that are handed over, and of all where a trip is under way: what was
 * brought back is there again.
 */
export function takenByTrips(
  past: readonly PastTrip[],
  facts: ProgrammeFacts,
  { sites, today, rootOf }: TakenFrom,
): ReadonlyMap<string, readonly Taken[]> {
  const taken = new Map<string, Taken[]>();
  if (past.length === 0) return taken;
  const storeOf = new Map(facts.rollout.crews.map(({ crewId, store }) => [crewId, rootOf(store)]));
  const lines = new Map(sites.map((one) => [one.site.siteId, one.lines]));
  const known = new Map(facts.sites.map((site) => [site.siteId, site]));
  const kit = readyKit(facts, today);
  for (const { crewId, state, leftOn, stops } of past) {
    const store = storeOf.get(crewId);
    if (store === undefined) continue;
    for (const { siteId, handOver } of stops) {
      const site = known.get(siteId);
      if (site === undefined || (state === 'done' && handOver === null)) continue;
      // Of a site that is handed over nothing is wanted any more: what was is what it took.
      const own = handOver === null ? (lines.get(siteId) ?? []) : kitAtSite({ ...site, handOverDay: null }, kit).lines;
      for (const { partId, total_count } of own)
        if (total_count !== null && total_count > 0)
          taken.set(partId, [...(taken.get(partId) ?? []), { store, leftOn, quantity_count: total_count }]);
    }
  }
  return taken;
}

interface TakenFrom {
  readonly sites: readonly RolloutSite[];
  readonly today: DayIndex;
  /** Where the goods of a store come to. */
  readonly rootOf: (store: string) => string;
}
