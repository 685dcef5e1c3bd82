import {
  type AreaWeather,
  aboardForSites,
  type FinishDates,
  goneTripLegs,
  isoDay,
  type KeptPlan,
  type KitLine,
  kitAtSite,
  packLegs,
  packNumbers,
  pairsOfPlan,
  type RolloutPlan,
  type RolloutProblem,
  type TravelPair,
  tripLegs,
  type WaitingBounds,
  type WhyThen,
  whyThen,
} from '@eavewell/engine';
import { type ChangesSince, type RolloutFigure, rolloutTrip, rolloutWorking } from '@eavewell/report';
import { loadLanguage } from '@eavewell/words';
import type { Asks, JobAround } from '@eavewell/work';
import { comparedOf, type PlansAsked } from './comparedAsk.ts';
import { type HandOvers, type Held, HeldRollouts, planShown, type TimedNow, timedOn } from './heldRollouts.ts';
import type { RolloutAt } from './rolloutAt.ts';
import { startOf } from './searchStart.ts';
import { drawKeyOf, givenOf, hasTrips, type SheetFound, sheetOf } from './sheetAsk.ts';

/** What every ask has: the state it is of. */
interface OfState {
  readonly at: RolloutAt;
}

export interface SheetAsked extends OfState {
  readonly planId: string | null;
  readonly language: string;
  /** What changed since the days of each plan were worked out, by its id. */
  readonly changes: Readonly<Record<string, ChangesSince>>;
  /** Futures that could not be drawn. */
  readonly notDrawn: readonly string[];
}

export interface TripAsked extends OfState {
  readonly planId: string | null;
  readonly tripId: string;
  readonly language: string;
}

export interface WorkingAsked extends OfState {
  readonly planId: string | null;
  readonly figure: RolloutFigure;
  /** A plan it is set beside: it is timed from what has happened of that one. Null: of none. */
  readonly beside: string | null;
  readonly language: string;
}

export interface ComparedAsked extends OfState, PlansAsked {}

export interface NumbersAsked extends OfState {
  readonly planId: string | null;
}

export interface LegsAsked extends OfState {
  readonly planId: string | null;
  readonly pairs: readonly TravelPair[];
}

export interface SearchAsked extends OfState {
  /** The plan to go on from; null: from nothing but what has happened. */
  readonly from: string | null;
  readonly onlyCrews: readonly string[] | null;
  /** Trips of it that stay as they are, as if they were locked. */
  readonly keepTrips: readonly string[];
  /** A plan that was found in place of that one, and is gone on with. Null: none. */
  readonly goesOnWith: string | null;
}

/** What a search begins with. */
export interface SearchStart {
  readonly key: string;
  readonly problem: RolloutProblem;
  /** Null: from nothing. */
  readonly start: RolloutPlan | null;
  /** What of the plan there was is kept with the new one. */
  readonly kept: Pick<KeptPlan, 'past' | 'otherPast' | 'otherTrips' | 'unanswered' | 'tripIds' | 'plan'>;
  /** The first day of the plan, ISO. */
  readonly from: string;
  readonly bounds: WaitingBounds | null | undefined;
}

interface DrawAsked extends OfState {
  readonly planId: string | null;
  readonly drawKey: string;
}

/** What futures are drawn of. */
export interface DrawStart {
  readonly key: string;
  readonly problem: RolloutProblem;
  readonly plan: RolloutPlan;
  readonly weather: readonly AreaWeather[];
  readonly bounds: WaitingBounds | null | undefined;
}

interface DrawnKept extends OfState {
  readonly drawKey: string;
  readonly key: string;
  readonly futures: FinishDates;
  readonly bounds: WaitingBounds | null;
}

const holding = new HeldRollouts();
/** Sheets that were put together, by all that they are made of; and how many are kept. Ours. */
const sheets = new Map<string, SheetFound>();
const mostSheets_count = 8;

/** The plan that is meant, timed; undefined: there is none of that id. */
async function shown({ at, planId }: OfState & { readonly planId: string | null }, around: JobAround) {
  const held = await holding.of(at, around);
  const plan = planShown(held.facts, planId);
  return plan === undefined ? undefined : { held, planId: plan?.planId ?? null };
}

/** The page of a plan; null: there is none of that id. */
async function sheet(asked: SheetAsked, around: JobAround): Promise<SheetFound | null> {
  const found = await shown(asked, around);
  if (found === undefined) return null;
  const language = await loadLanguage(asked.language);
  const changes = found.planId === null ? null : (asked.changes[found.planId] ?? null);
  const key = JSON.stringify([
    asked.at.stamp,
    found.planId,
    asked.language,
    changes,
    asked.notDrawn,
    holding.drawn_count,
  ]);
  const known =
    sheets.get(key) ??
    sheetOf(holding, found.held, found.planId, {
      ...{ language, changes, notDrawn: asked.notDrawn },
      before: await beforeChanges(found.held, found.planId, changes),
    });
  sheets.delete(key);
  sheets.set(key, known);
  for (const old of [...sheets.keys()].slice(0, -mostSheets_count)) sheets.delete(old);
  return known;
}

/** Days of hand-over before something changed, where some of them were never kept; null: nothing changed, or all are kept. */
async function beforeChanges(
  held: Held,
  planId: string | null,
  changes: ChangesSince | null,
): Promise<HandOvers | null> {
  if (planId === null || changes === null || changes.changes_count === 0) return null;
  const stops = planShown(held.facts, planId)?.trips.flatMap((one) => one.stops) ?? [];
  const isKept = stops.every(({ handOver }) => handOver !== null) && changes.takenOut.every(({ was }) => was !== null);
  return isKept ? null : ((await holding.planBefore(held, planId, changes.version))?.handOvers ?? null);
}

/** One trip in full, as JSON; `plan`, `trip`: there is none of that id. */
async function trip(asked: TripAsked, around: JobAround): Promise<{ readonly text: string } | 'plan' | 'trip'> {
  const found = await shown(asked, around);
  if (found === undefined || found.planId === null) return 'plan';
  const { held, planId } = found;
  const now = holding.timed(held, planId);
  const drawn = holding.drawnOf(drawKeyOf(now));
  const given = givenOf(held, now, {
    futures: drawn?.futures ?? null,
    futuresState: drawn === null ? 'none' : 'there',
  });
  const answer = rolloutTrip(
    { ...given, changedSince: null },
    {
      tripId: asked.tripId,
      aboardFor: (siteIds) => aboardForSites(siteIds, linesOf(held, siteIds), held.kit),
      goneLegsOf: (one) => goneTripLegs(now.held.ready, held.facts, one),
    },
    await loadLanguage(asked.language),
  );
  return answer === null ? 'trip' : { text: JSON.stringify(answer) };
}

/** How a figure of a plan was reached, as JSON; null: there is no plan of that id, or no such figure. */
async function working(asked: WorkingAsked, around: JobAround): Promise<{ readonly text: string } | null> {
  const found = await shown(asked, around);
  if (found === undefined) return null;
  const { held, planId } = found;
  if (asked.beside !== null && !planShown(held.facts, asked.beside)) return null;
  const given = (now: TimedNow) => {
    const futures = holding.drawnOf(drawKeyOf(now))?.futures ?? null;
    return {
      ...givenOf(held, now, { futures, futuresState: futures === null ? 'none' : 'there' }),
      changedSince: null,
    };
  };
  const ready = holding.readyFor(held, asked.beside ?? planId);
  const beside = asked.beside === null ? null : given(timedOn(held, ready, asked.beside));
  const now = timedOn(held, ready, planId);
  const why = asked.figure.figure === 'why' ? whyOf(now, asked.figure.site) : null;
  const answer = rolloutWorking(given(now), asked.figure, await loadLanguage(asked.language), { plan: beside, why });
  return answer === null ? null : { text: JSON.stringify(answer) };
}

/** Why a village comes when it does; null: it is in no trip, or nobody can go there first. */
function whyOf(now: TimedNow, siteId: string): WhyThen | null {
  const { ready, timing } = now.held;
  const job = ready.problem.jobs.findIndex((one) => one.siteId === siteId);
  return job < 0 ? null : whyThen(timing, now, job, (outcome, crew, trip) => tripLegs(ready, outcome, crew, trip));
}

/** Kits of sites; that of a site that is handed over is not kept, and made anew. */
function linesOf({ sites, kit }: Held, siteIds: readonly string[]): ReadonlyMap<string, readonly KitLine[]> {
  const wanted = new Set(siteIds);
  return new Map(
    sites
      .filter(({ site }) => wanted.has(site.siteId))
      .map(({ site, lines }) => [site.siteId, lines.length > 0 ? lines : kitAtSite(site, kit).lines]),
  );
}

/** Two plans side by side, as JSON, both timed from what has happened of the first; null: one of them is not there. */
async function compared(asked: ComparedAsked, around: JobAround): Promise<{ readonly text: string } | null> {
  const held = await holding.of(asked.at, around);
  return comparedOf(holding, held, asked);
}

/** A plan as numbers with the legs it goes by, as JSON; null: there is none of that id. */
async function numbers(asked: NumbersAsked, around: JobAround): Promise<{ readonly text: string } | null> {
  const found = await shown(asked, around);
  if (found === undefined) return null;
  const now = holding.timed(found.held, found.planId);
  const { problem } = now.held.ready;
  return {
    text: JSON.stringify({
      ...{ stamp: asked.at.stamp, planId: found.planId, plan: now.plan, tripIds: now.kept?.tripIds ?? [] },
      numbers: packNumbers(problem, pairsOfPlan(problem, now.plan)),
    }),
  };
}

/** More legs of the same rollout, as JSON; null: there is no plan of that id. */
async function legs(asked: LegsAsked, around: JobAround): Promise<{ readonly text: string } | null> {
  const found = await shown(asked, around);
  if (found === undefined) return null;
  const { ready } = holding.readyFor(found.held, found.planId);
  const { travels } = ready.problem;
  const known = asked.pairs.filter(({ travel }) => travel < travels.length);
  return { text: JSON.stringify({ stamp: asked.at.stamp, legs: packLegs(ready.problem, known) }) };
}

/** What a search begins with; `plan`, `crew`: there is none of that id; `nothing`: there is nothing to plan. */
async function searchStart(
  { at, from, onlyCrews, keepTrips, goesOnWith }: SearchAsked,
  around: JobAround,
): Promise<SearchStart | 'plan' | 'crew' | 'nothing'> {
  const held = await holding.of(at, around);
  const basis = from === null ? planInForce(held) : planShown(held.facts, from);
  if (basis === undefined) return 'plan';
  if (onlyCrews?.some((id) => !held.facts.rollout.crews.some(({ crewId }) => crewId === id))) return 'crew';
  const now = holding.timed(held, basis?.planId ?? null);
  const { problem } = now.held.ready;
  if (problem.jobs.length === 0 || problem.crews.length === 0) return 'nothing';
  const kept = keptOf(now);
  // Its trips are still named after those of the plan that is kept.
  const begun = goesOnWith === null ? now : timedOn(held, now.held, goesOnWith);
  return {
    ...{ key: now.held.key, problem, bounds: now.held.bounds, kept },
    start:
      from === null
        ? null
        : startOf(problem, begun.plan, onlyCrews, (crew, trip) =>
            keepTrips.includes(begun.kept?.tripIds[crew]?.[trip] ?? ''),
          ),
    from: basis?.from == null ? isoDay(problem.firstDay) : isoDay(basis.from),
  };
}

/** What has happened is a fact of the plan that is followed: a plan from nothing goes on from it too. */
function planInForce({ facts }: Held) {
  return facts.rollout.plans.find(({ isInForce }) => isInForce) ?? null;
}

function keptOf({ kept, plan }: TimedNow): SearchStart['kept'] {
  const { past = [], otherPast = [], otherTrips = [], unanswered = [], tripIds = [] } = kept ?? {};
  return { past, otherPast, otherTrips, unanswered, tripIds, plan };
}

/** What futures are drawn of; null: they are of another state, or there already. */
async function drawStart({ at, planId, drawKey }: DrawAsked, around: JobAround): Promise<DrawStart | null> {
  const held = await holding.of(at, around);
  const now = holding.timed(held, planId);
  if (drawKeyOf(now) !== drawKey || !hasTrips(now) || holding.drawnOf(drawKey) !== null) return null;
  const { key, ready, weather, bounds } = now.held;
  return { key, problem: ready.problem, plan: now.plan, weather, bounds };
}

async function keepDrawn({ drawKey, key, futures, bounds }: Omit<DrawnKept, 'at'>): Promise<void> {
  holding.keepDrawn(drawKey, { futures });
  holding.keepBounds(key, bounds);
}

async function keepBounds({ key, bounds }: Pick<DrawnKept, 'key' | 'bounds'>): Promise<void> {
  holding.keepBounds(key, bounds);
}

/** What the thread that holds rollouts may be asked, by name. */
export const rolloutAsks = {
  ...{ sheet, trip, working, compared, numbers, legs, searchStart, drawStart, keepDrawn, keepBounds },
} satisfies Asks;
