import type { RolloutSheet } from '@eavewell/tables';
import { type QueryClient, useQueryClient } from '@tanstack/react-query';
import { useEffect, useEffectEvent, useMemo, useReducer, useRef } from 'react';
import { queries } from '../../../api/queries.ts';
import { useChange } from '../../../api/useChange.ts';
import type { PlanAsked } from './byHandMessages.ts';
import { askByHand } from './byHandThread.ts';
import { emptyHand, type Hand, type HandBy, handAfter } from './hand.ts';
import type { Cannot, Laid, NearestFound } from './moveAnswer.ts';
import { type Held, isSamePlace, type Place, plannedOf, tripOfSite } from './places.ts';
import { changesOfPlan } from './planRows.ts';
import { mayLay, type RowsSeen } from './seenRows.ts';

/** What a page does with a hand over its plan. */
export interface HandOver {
  readonly hand: Hand;
  readonly outcome: ReturnType<typeof useChange>['outcome'];
  takeUp(held: Held, by: HandBy): void;
  moveTo(place: Place): void;
  letGo(): void;
  putBack(): void;
  /** What was told last is not told any more. */
  heard(): void;
}

/** The planned trips of a sheet by their names; null: no plan is kept. */
function planAsked(programmeId: string, sheet: RolloutSheet): PlanAsked | null {
  const { planId, stamp, crews } = sheet;
  if (planId === null) return null;
  const plan = {
    planId,
    crews: crews.map((crew) => ({
      crewId: crew.crewId,
      trips: plannedOf(crew).map(({ tripId, stops, notBefore, isLocked }) => ({
        ...{ tripId, notBefore, isLocked },
        siteIds: stops.map(({ siteId }) => siteId),
      })),
    })),
  };
  return { programmeId, stamp, plan };
}

/**
 * A hand over the plan of a sheet: it takes up, asks what would become of it, lays down as one change.
 *
 * @param programmeId - the programme
 * @param sheet - the sheet as the program has it now
 */
export function useHand(programmeId: string, sheet: RolloutSheet): HandOver {
  const [hand, send] = useReducer(handAfter, emptyHand);
  const of = useMemo(() => planAsked(programmeId, sheet), [programmeId, sheet]);
  const client = useQueryClient();
  const askAnew = () => void client.invalidateQueries({ queryKey: ['programme', programmeId, 'rollout'] });
  useAsking(hand, of, sheet, send, askAnew);
  const outcome = useLaying(hand, of, programmeId, sheet, send, askAnew);
  const seen = useRef(sheet.stamp);
  const onSheet = useEffectEvent(() => {
    if (seen.current === sheet.stamp) return;
    seen.current = sheet.stamp;
    send({ kind: 'planChanged', plan: sheet });
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another state of the plan is what it waits for
  useEffect(() => onSheet(), [sheet.stamp]);
  return {
    ...{ hand, outcome },
    takeUp: (held, by) => {
      send({ kind: 'takeUp', held, by, plan: sheet });
      if (of !== null) void askByHand({ kind: 'ready', of, held });
    },
    moveTo: (place) => send({ kind: 'moveTo', place, plan: sheet }),
    letGo: () => send({ kind: 'letGo' }),
    putBack: () => send({ kind: 'putBack' }),
    heard: () => send({ kind: 'heard' }),
  };
}

type Send = (event: Parameters<typeof handAfter>[1]) => void;

/** Asks for what would become of it wherever it is held: one question at a time, that of the last place next. */
function useAsking(hand: Hand, of: PlanAsked | null, sheet: RolloutSheet, send: Send, askAnew: () => void): void {
  const isAsking = useRef(false);
  const now = useRef({ hand, of });
  const ask = useEffectEvent(async (handNow: Hand, ofNow: PlanAsked | null): Promise<void> => {
    now.current = { hand: handNow, of: ofNow };
    if (isAsking.current) return;
    isAsking.current = true;
    try {
      for (let done: unknown = null; ; ) {
        const { hand: asked, of: plan } = now.current;
        if (asked === done || asked.phase === 'empty' || plan === null) return;
        done = asked;
        await askOne(asked, plan);
      }
    } finally {
      isAsking.current = false;
    }
  });
  const askOne = async (asked: Exclude<Hand, { phase: 'empty' }>, plan: PlanAsked): Promise<void> => {
    const { held, at, home, phase, answer, cannot, nearest } = asked;
    const isWanted = phase === 'held' && answer === null && cannot === null && !isSamePlace(at, home);
    const isNearest = phase === 'refused' && nearest === null && cannot !== null && canBeNear(cannot);
    if (!isWanted && !isNearest) return;
    const told = await askByHand({ kind: isWanted ? 'become' : 'nearest', of: plan, held, place: nearOf(sheet, at) });
    if (told.kind === 'becomes') send({ kind: 'answered', place: at, answer: told.answer });
    if (told.kind === 'nearest') send({ kind: 'nearest', place: at, found: otherThan(home, told.found) });
    if (told.kind === 'otherState') askAnew();
    if (told.kind === 'otherState' || told.kind === 'becomes' || told.kind === 'nearest') return;
    if (isNearest) send({ kind: 'nearest', place: at, found: { place: null, commonest: null } });
    else send({ kind: 'notAnswered', place: at, why: { why: told.kind === 'unknown' ? 'gone' : 'noAnswer' } });
  };
  useEffect(() => void ask(hand, of), [hand, of]);
}

/** Where it is already is no other place to offer: to put it back is a press of its own. */
const otherThan = (home: Place, found: NearestFound): NearestFound =>
  found.place !== null && isSamePlace(found.place, home) ? { ...found, place: null } : found;

const canBeNear = ({ why }: Cannot) => why === 'breaks' || why === 'locked' || why === 'underWay' || why === 'done';

/** Of a trip that has left the place next to it is asked: in a trip of its own, the first of its crew. */
function nearOf(sheet: RolloutSheet, at: Place): Place {
  if (at.kind !== 'inTrip') return at;
  const crew = sheet.crews.find(({ trips }) => trips.some(({ tripId }) => tripId === at.tripId));
  const trip = crew?.trips.find(({ tripId }) => tripId === at.tripId);
  if (crew === undefined || trip === undefined || trip.state === 'planned') return at;
  return { kind: 'newTrip', crewId: crew.crewId, index: 0 };
}

/** What was laid down is saved as one change of the plan's rows. */
function useLaying(
  hand: Hand,
  of: PlanAsked | null,
  programmeId: string,
  sheet: RolloutSheet,
  send: Send,
  askAnew: () => void,
): HandOver['outcome'] {
  const client = useQueryClient();
  const { change, outcome } = useChange(programmeId);
  const seen = useRef<RowsSeen | null>(null);
  const isFull = hand.phase !== 'empty';
  // What the rows are as it is taken up, so that what somebody else does to them meanwhile is not written over.
  // biome-ignore lint/correctness/useExhaustiveDependencies: of another version they are read anew
  useEffect(() => {
    if (!isFull) return;
    void rowsNow(client, programmeId).then(
      (rows) => {
        seen.current = rows;
      },
      () => undefined,
    );
  }, [isFull, sheet.version, client, programmeId]);
  const lay = useEffectEvent(async (): Promise<void> => {
    if (hand.phase !== 'laying' || of === null) return;
    const { held, at } = hand;
    const { planId } = of.plan;
    const [told, rows] = await Promise.all([
      askByHand({ kind: 'whole', of, held, place: at }),
      rowsNow(client, programmeId),
    ]);
    const may = mayLay(planId, sheet.version, seen.current, rows);
    if (told.kind === 'otherState' || may === 'no') {
      askAnew();
      return send({ kind: 'notLaid', isAnew: true });
    }
    if (told.kind !== 'becomes') return send({ kind: 'notLaid' });
    const before = of.plan.crews.flatMap(({ trips }) => trips);
    const laid: Laid = { held, at, answer: told.answer };
    // Where tables changed since the days were worked out, the others still tell what that moved.
    const isAllNow = sheet.changedSince === null && may === 'yes';
    const onlyTrips = isAllNow ? null : tripsTouched(sheet, laid);
    const days = { at: new Date().toISOString(), onlyTrips, unanswered: unansweredOf(sheet) };
    const changes = changesOfPlan({ planId, ...rows, before }, told.answer.crews, days);
    const { isSaved } = changes.length === 0 ? { isSaved: true } : await change(changes);
    send(isSaved ? { kind: 'laid', laid } : { kind: 'notLaid' });
  });
  const isLaying = hand.phase === 'laying';
  useEffect(() => {
    if (isLaying) void lay().catch(() => send({ kind: 'notLaid' }));
  }, [isLaying, send]);
  return outcome;
}

/** Trips that should have left or be back, and nobody has said whether they are. */
const unansweredOf = ({ crews }: RolloutSheet): ReadonlySet<string> =>
  new Set(crews.flatMap(({ trips }) => trips.flatMap(({ tripId, isOverdue }) => (isOverdue ? [tripId] : []))));

/** The rows of all plans as they are now. */
async function rowsNow(client: QueryClient, programmeId: string): Promise<RowsSeen> {
  const of = (table: 'plans' | 'planTrips' | 'planStops') =>
    client.fetchQuery({ ...queries.table(programmeId, table), staleTime: 0 });
  const [plans, planTrips, planStops] = await Promise.all([of('plans'), of('planTrips'), of('planStops')]);
  const versions = [plans, planTrips, planStops].map(({ version }) => version);
  // Read while it changed: they are of no version, and nothing is laid on them.
  const version = versions.every((one) => one === versions[0]) ? plans.version : -1;
  return { version, plans: plans.rows, planTrips: planTrips.rows, planStops: planStops.rows };
}

/** Trips that a move takes from and gives to. */
export function tripsTouched(sheet: RolloutSheet, { held, at }: Pick<Laid, 'held' | 'at'>): ReadonlySet<string> {
  const from = held.kind === 'trip' ? held.tripId : tripOfSite(sheet, held.siteId)?.tripId;
  const to = at.kind === 'inTrip' ? at.tripId : undefined;
  return new Set([from, to].filter((tripId) => tripId !== undefined));
}
