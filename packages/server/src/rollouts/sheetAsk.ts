import { createHash } from 'node:crypto';
import { haulRunLegs, type Problem, rolloutWay, tightTrips, tripLegs } from '@eavewell/engine';
import { type ChangesSince, changedSaid, rolloutSheet, type SheetGiven } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import type { HandOvers, Held, HeldRollouts, TimedNow } from './heldRollouts.ts';

/** What the page of a plan is, and what is still to be drawn of it. */
export interface SheetFound {
  readonly text: string;
  readonly planId: string | null;
  /** Names the futures that are to be drawn for it; null: they are there, or there is nothing to draw. */
  readonly drawKey: string | null;
}

/** Names what is drawn of a plan: the rollout it is timed on and its trips. */
export function drawKeyOf({ held, plan }: TimedNow): string {
  return createHash('sha256')
    .update(JSON.stringify([held.key, plan]))
    .digest('hex')
    .slice(0, 24);
}

/** Is anything planned of which futures may be drawn? */
export const hasTrips = ({ plan }: TimedNow): boolean => plan.trips.some((trips) => trips.length > 0);

/** The page of a plan. */
export function sheetOf(
  holding: HeldRollouts,
  held: Held,
  planId: string | null,
  {
    language,
    changes,
    before,
    notDrawn,
  }: {
    readonly language: Language;
    readonly changes: ChangesSince | null;
    /** Days of hand-over before the changes, where some were never kept. */
    readonly before: HandOvers | null;
    readonly notDrawn: readonly string[];
  },
): SheetFound {
  const now = holding.timed(held, planId);
  const key = drawKeyOf(now);
  const drawn = holding.drawnOf(key);
  const isToDraw = drawn === null && hasTrips(now) && !notDrawn.includes(key);
  const futuresState = drawn !== null ? 'there' : isToDraw ? 'beingDrawn' : 'none';
  const given = givenOf(held, now, { futures: drawn?.futures ?? null, futuresState });
  const changedSince = changes === null ? null : changedSaid(changes, { ...given, before }, language);
  return {
    text: JSON.stringify(rolloutSheet({ ...given, changedSince }, language)),
    planId,
    drawKey: isToDraw ? key : null,
  };
}

/** What a sheet is made of, but for what changed since. */
export function givenOf(
  held: Held,
  now: TimedNow,
  drawn: Pick<SheetGiven, 'futures' | 'futuresState'>,
): Omit<SheetGiven, 'changedSince'> {
  const { at, facts } = held;
  const { ready, bounds } = now.held;
  const { kept, plan, outcome } = now;
  const legs = new LegsOnce(now);
  return {
    ...{ eavewell: '', today: at.today, seed: 0, tries_count: 0, facts, problem: ready.problem, plan, outcome },
    ...{ leftOut: ready.leftOut, bounds: bounds ?? null, ...drawn, compared: null, aboardOf: () => [] },
    legsOf: (crew, trip) => legs.of(crew, trip),
    haulLegsOf: (haul) => haulRunLegs(ready, haul),
    problems: problemsOf(held, now),
    ...{ version: at.version, stamp: at.stamp, planId: kept?.planId ?? null, tripIds: kept?.tripIds ?? [] },
    past: kept === null ? [] : [...kept.past.flat(), ...kept.otherPast],
    ...{ overdue: new Set(kept?.overdue ?? []), verdictOf: held.verdictOf, peopleOf: held.peopleOf },
    ...{ crewsLeftOut: ready.crewsLeftOut, linesOf: held.linesOf, ways: ready.ways, waysWanted: waysWanted(now) },
    tight: tightTrips(now.held.timing, now),
  };
}

function problemsOf({ problems }: Held, { held, kept }: TimedNow): readonly Problem[] {
  return [...problems, ...held.ready.problems, ...(kept?.problems ?? [])];
}

/** Legs of trips, each reckoned once. */
class LegsOnce {
  private readonly known = new Map<string, ReturnType<typeof tripLegs>>();

  constructor(private readonly now: TimedNow) {}

  of(crew: number, trip: number): ReturnType<typeof tripLegs> {
    const key = `${crew} ${trip}`;
    const found = this.known.get(key) ?? tripLegs(this.now.held.ready, this.now.outcome, crew, trip);
    this.known.set(key, found);
    return found;
  }
}

/** Sites that are in no trip are looked at up to so many, each by the way of the first crew that gets there. Ours. */
const mostWanted_count = 200;

/** Ways to sites that may be planned and are in no trip. */
function waysWanted({ held: { ready }, outcome }: TimedNow): ReadonlySet<string> {
  const { problem } = ready;
  const left = outcome.broken.flatMap((one) => (one.kind === 'leftOut' ? [one.job] : []));
  const found = new Set<string>();
  for (const job of left.slice(0, mostWanted_count)) {
    for (const [crew, { store }] of problem.crews.entries()) {
      const leg = { crew, from: problem.stores[store]!.node, to: problem.placeIds.length + job };
      const ways = problem.periods.map((_, period) => rolloutWay(ready, { ...leg, period }));
      const open = ways.filter((way) => way.stretches !== null);
      for (const { stretches } of open) for (const { wayId } of stretches!) found.add(wayId);
      if (open.length > 0) break;
    }
  }
  return found;
}
