import { type Cannot, forbidding, type Laid, type MoveAnswer, type NearestFound } from './moveAnswer.ts';
import { type Held, homeOf, isSamePlace, type Place, type PlanShown, tripOf, tripOfSite } from './places.ts';

/** By what something was taken up: a pointer lets go of it, keys and presses lay it down. */
export type HandBy = 'pointer' | 'keys';

/** The hand over the plan: what is in it, where it is held, and what would become of the plan. */
export type Hand =
  | { readonly phase: 'empty'; readonly told: Told | null }
  | {
      /** `held`: it is being moved. `refused`: it was let go of where it cannot be. `laying`: it is being saved. */
      readonly phase: 'held' | 'refused' | 'laying';
      readonly held: Held;
      readonly by: HandBy;
      readonly home: Place;
      readonly at: Place;
      /** What would become of it at `at`; null: being worked out. */
      readonly answer: MoveAnswer | null;
      /** Why it cannot be laid down at `at`; null: it can, or it is being worked out. */
      readonly cannot: Cannot | null;
      /** It is to be laid down as soon as it is known what would become of it. */
      readonly isLetGo: boolean;
      /** The nearest place that can; null: not asked, or being looked for. */
      readonly nearest: NearestFound | null;
      /** The programme changed under the hand: it is tried where it is held as all is now, until it is moved. */
      readonly isAnew: boolean;
    };

/** What is said when the hand is empty again. */
export type Told =
  | { readonly kind: 'laid'; readonly laid: Laid }
  | { readonly kind: 'putBack'; readonly held: Held; readonly why: Cannot | null }
  | { readonly kind: 'cannotTake'; readonly held: Held; readonly why: Cannot };

/** What happens to a hand. */
export type HandEvent =
  | { readonly kind: 'takeUp'; readonly held: Held; readonly by: HandBy; readonly plan: PlanShown }
  | { readonly kind: 'moveTo'; readonly place: Place; readonly plan: PlanShown }
  | { readonly kind: 'answered'; readonly place: Place; readonly answer: MoveAnswer }
  | { readonly kind: 'notAnswered'; readonly place: Place; readonly why: Cannot }
  | { readonly kind: 'letGo' }
  | { readonly kind: 'nearest'; readonly place: Place; readonly found: NearestFound }
  | { readonly kind: 'putBack' }
  | { readonly kind: 'laid'; readonly laid: Laid }
  | { readonly kind: 'notLaid'; readonly isAnew?: boolean }
  | { readonly kind: 'planChanged'; readonly plan: PlanShown }
  | { readonly kind: 'heard' };

export const emptyHand: Hand = { phase: 'empty', told: null };

/** Why it cannot be taken up; null: it can. */
export function cannotTake(plan: PlanShown, held: Held): Cannot | null {
  const trip = held.kind === 'trip' ? tripOf(plan, held.tripId)?.trip : tripOfSite(plan, held.siteId);
  if (trip === undefined) return { why: 'gone' };
  if (trip !== null) return fixed(trip) ?? null;
  if (held.kind === 'trip') return null;
  const candidate = plan.candidates.find(({ siteId }) => siteId === held.siteId);
  if (candidate === undefined) return { why: 'gone' };
  return mayBePutIn(candidate.reason) ? null : { why: 'notToBePlanned', said: candidate.said };
}

/** May a site that is in no trip be put into one? One for which the search found no room may be tried by hand. */
export const mayBePutIn = (reason: string | null): boolean => reason === null || reason === 'noTrip';

function fixed({ state, isLocked }: { readonly state: string; readonly isLocked: boolean }): Cannot | null {
  if (state === 'done' || state === 'underWay') return { why: state };
  return isLocked ? { why: 'locked' } : null;
}

/** Why it cannot be laid at a place, as far as the sheet itself tells; null: it may be. */
export function cannotLay(plan: PlanShown, held: Held, place: Place): Cannot | null {
  if (place.kind !== 'inTrip') return null;
  const found = tripOf(plan, place.tripId);
  if (found === null) return { why: 'gone' };
  const isHome = held.kind === 'site' && tripOfSite(plan, held.siteId)?.tripId === place.tripId;
  return isHome ? null : fixed(found.trip);
}

/** What a hand is after something happened to it. What does not concern it leaves it as it is. */
export function handAfter(hand: Hand, event: HandEvent): Hand {
  if (event.kind === 'takeUp') return takenUp(hand, event);
  if (hand.phase === 'empty') return event.kind === 'heard' ? emptyHand : hand;
  switch (event.kind) {
    case 'moveTo':
      return movedTo(hand, event.place, event.plan);
    case 'answered':
      return hand.phase !== 'laying' && isSamePlace(event.place, hand.at) ? answered(hand, event.answer) : hand;
    case 'notAnswered':
      return isSamePlace(event.place, hand.at)
        ? { ...hand, phase: 'refused', cannot: event.why, isLetGo: false }
        : hand;
    case 'letGo':
      return letGo(hand);
    case 'nearest':
      return hand.phase === 'refused' && isSamePlace(event.place, hand.at) ? { ...hand, nearest: event.found } : hand;
    case 'putBack':
      return hand.phase === 'laying' ? hand : { phase: 'empty', told: { kind: 'putBack', held: hand.held, why: null } };
    case 'laid':
      return { phase: 'empty', told: { kind: 'laid', laid: event.laid } };
    case 'notLaid':
      return hand.phase === 'laying'
        ? { ...hand, phase: 'held', by: 'keys', isLetGo: false, isAnew: event.isAnew ?? false }
        : hand;
    case 'planChanged':
      return planChanged(hand, event.plan);
    default:
      return hand;
  }
}

type Full = Exclude<Hand, { readonly phase: 'empty' }>;

function takenUp(hand: Hand, { held, by, plan }: HandEvent & { readonly kind: 'takeUp' }): Hand {
  if (hand.phase === 'laying') return hand;
  const why = cannotTake(plan, held);
  const home = homeOf(plan, held);
  if (why !== null || home === null)
    return { phase: 'empty', told: { kind: 'cannotTake', held, why: why ?? { why: 'gone' } } };
  const nothing = { answer: null, cannot: null, isLetGo: false, nearest: null, isAnew: false };
  return { phase: 'held', held, by, home, at: home, ...nothing };
}

function movedTo(hand: Full, place: Place, plan: PlanShown): Hand {
  if (hand.phase === 'laying' || (hand.phase === 'held' && isSamePlace(place, hand.at))) return hand;
  const cannot = cannotLay(plan, hand.held, place);
  return { ...hand, phase: 'held', at: place, answer: null, cannot, isLetGo: false, nearest: null, isAnew: false };
}

function answered(hand: Full, answer: MoveAnswer): Hand {
  const breaks = forbidding(answer.breaks);
  const next: Full = { ...hand, answer, cannot: breaks.length === 0 ? hand.cannot : { why: 'breaks', breaks } };
  return next.isLetGo ? letGo({ ...next, isLetGo: false }) : next;
}

/** Let go of at its home it is put back; where it cannot be, it is told why; where nobody knows yet, it waits for the answer. */
function letGo(hand: Full): Hand {
  if (hand.phase === 'laying') return hand;
  if (isSamePlace(hand.at, hand.home)) return { phase: 'empty', told: { kind: 'putBack', held: hand.held, why: null } };
  if (hand.cannot !== null) return { ...hand, phase: 'refused', nearest: null };
  return hand.answer === null ? { ...hand, isLetGo: true } : { ...hand, phase: 'laying' };
}

/** Another plan under the hand: what is held is tried again where it is, or put back with the reason. */
function planChanged(hand: Full, plan: PlanShown): Hand {
  if (hand.phase === 'laying') return hand;
  const why = cannotTake(plan, hand.held);
  const home = homeOf(plan, hand.held);
  if (why !== null || home === null)
    return { phase: 'empty', told: { kind: 'putBack', held: hand.held, why: why ?? { why: 'gone' } } };
  const at = stillThere(plan, hand.at) ? hand.at : home;
  const cannot = cannotLay(plan, hand.held, at);
  return {
    ...hand,
    phase: 'held',
    home,
    at,
    answer: null,
    cannot,
    nearest: null,
    isAnew: true,
    isLetGo: hand.isLetGo && at === hand.at,
  };
}

function stillThere(plan: PlanShown, place: Place): boolean {
  if (place.kind === 'tray') return true;
  if (place.kind !== 'inTrip') return plan.crews.some(({ crewId }) => crewId === place.crewId);
  const found = tripOf(plan, place.tripId);
  return found !== null && place.position <= found.trip.stops.length;
}
