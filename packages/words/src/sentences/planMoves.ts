import type { PlanMove, PlanRecord, TripAt } from '@eavewell/records';
import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What sites and crews are called. */
export interface PlanNames {
  readonly siteOf: (siteId: string) => string;
  readonly crewOf: (crewId: string) => string;
}

/** So many things of a record are told; of more the rest are counted. Ours. */
const told_most = 2;

/**
 * What a record did to plans, in one sentence without an end: "Osk went from trip 3 of Crew 1 to trip 1 of Crew 2; and 3 more".
 *
 * @param record - what it did
 * @param names - what sites and crews are called
 * @param speech - of the language
 */
export function planRecordSaid({ moves, ofPlan, others_count }: PlanRecord, names: PlanNames, speech: Speech): string {
  const { say } = speech;
  const told = moves.slice(0, told_most).map((move) => moveSaid(move, names, speech));
  const more = moves.length - told.length;
  const all = [
    ...told,
    ...(more > 0 ? [say('rolloutAnswers.moves.more', { count: more })] : []),
    ...(others_count > 0 ? [say('rolloutAnswers.moves.others', { count: others_count })] : []),
  ].join('; ');
  // It begins a sentence, whatever word of the language stands first.
  if (ofPlan === null) return all.charAt(0).toUpperCase() + all.slice(1);
  return say('rolloutAnswers.moves.ofPlan', { plan: ofPlan, what: all });
}

function moveSaid(move: PlanMove, names: PlanNames, speech: Speech): string {
  switch (move.kind) {
    case 'siteWent':
    case 'sitePlace':
    case 'handedOver':
      return siteSaid(move, names, speech);
    case 'kept':
    case 'removed':
    case 'inForce':
    case 'notInForce':
    case 'timed':
    case 'named':
      return planSaid(move, speech);
    default:
      return tripSaid(move, names, speech);
  }
}

type Of<Kind extends PlanMove['kind']> = Extract<PlanMove, { readonly kind: Kind }>;

function planSaid(
  move: Of<'kept' | 'removed' | 'inForce' | 'notInForce' | 'timed' | 'named'>,
  { say }: Speech,
): string {
  if (move.kind === 'named') return say('rolloutAnswers.moves.named', { before: move.before, after: move.after });
  const { name } = move;
  return move.kind === 'kept' || move.kind === 'removed'
    ? say(`rolloutAnswers.moves.${move.kind}`, { name, trips: move.trips_count, sites: move.sites_count })
    : say(`rolloutAnswers.moves.${move.kind}`, { name });
}

function siteSaid(
  move: Of<'siteWent' | 'sitePlace' | 'handedOver'>,
  { siteOf, crewOf }: PlanNames,
  { say, numbers }: Speech,
): string {
  const site = siteOf(move.siteId);
  if (move.kind === 'handedOver')
    return move.day === null
      ? say('rolloutAnswers.moves.notHandedOver', { site })
      : say('rolloutAnswers.moves.handedOver', { site, day: numbers.date(move.day) });
  if (move.kind === 'sitePlace') {
    const { nth, trip } = move;
    return say('rolloutAnswers.moves.sitePlace', { site, nth, crew: crewOf(trip.crewId), trip: trip.nth });
  }
  const { from, to } = move;
  const [was, is] = [from ?? to, to ?? from].map((trip) => ({ crew: crewOf(trip?.crewId ?? ''), nth: trip?.nth ?? 0 }));
  if (from === null) return say('rolloutAnswers.moves.siteIn', { site, ...is! });
  if (to === null) return say('rolloutAnswers.moves.siteOut', { site, ...was! });
  return say('rolloutAnswers.moves.siteWent', {
    ...{ site, crew: was!.crew, nth: was!.nth, toCrew: is!.crew, toNth: is!.nth },
    isSameCrew: yes(from.crewId === to.crewId),
  });
}

type TripMove = Of<'tripWent' | 'tripPlace' | 'left' | 'cameBack' | 'notBefore' | 'locked' | 'leaves' | 'back'>;

function tripSaid(move: TripMove, { crewOf }: PlanNames, { say, numbers }: Speech): string {
  const named = ({ crewId, nth }: TripAt) => ({ crew: crewOf(crewId), nth });
  const date = (day: string | null) => (day === null ? '' : numbers.date(day));
  switch (move.kind) {
    case 'tripWent':
    case 'tripPlace': {
      const { crew, nth } = named(move.to);
      return say(`rolloutAnswers.moves.${move.kind}`, { ...named(move.from), toCrew: crew, toNth: nth });
    }
    case 'locked':
      return say('rolloutAnswers.moves.locked', { ...named(move.trip), isLocked: yes(move.isLocked) });
    case 'leaves':
    case 'back': {
      const { trip, before, after } = move;
      return say(`rolloutAnswers.moves.${move.kind}`, {
        ...{ ...named(trip), before: date(before), after: date(after) },
        ...{ hadDay: yes(before !== null), hasDay: yes(after !== null) },
      });
    }
    default: {
      const { kind, trip, day } = move;
      return say(`rolloutAnswers.moves.${kind}`, { ...named(trip), day: date(day), hasDay: yes(day !== null) });
    }
  }
}
