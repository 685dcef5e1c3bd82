import { type CrewFacts, isoDay, type ProgrammeFacts, readIsoDay, type TripLeg } from '@eavewell/engine';
import type { RolloutTripAnswer, SheetTrip } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { SheetTold } from './rolloutSheetTold.ts';

/** What the nights of a trip are told from. */
export interface NightsTold extends Pick<SheetTold, 'problem'> {
  readonly language: Pick<Language, 'say'>;
  readonly nameOf: ReadonlyMap<string, string>;
  /** Places where no crew may sleep, by id. */
  readonly noSleep: ReadonlySet<string>;
}

/**
 * Each day of a trip with the place its night is spent at: where the crew works or waits, or the last place it got to. Where it set out from there and did not
 * get to the next, it sleeps on the way, and that is said; on a river only where one way takes longer than a day: on the bank. Of a trip that left the days of its legs are not known: only its first and last are told.
 */
export function nightsOf(
  { problem, language, nameOf, noSleep }: NightsTold,
  trip: SheetTrip,
  legs: readonly TripLeg[],
  crew: CrewFacts,
): RolloutTripAnswer['days'] {
  const [first, last] = [readIsoDay(trip.leaves)!, readIsoDay(trip.back)!];
  const days = Array.from({ length: Math.max(1, last - first + 1) }, (_, at) => first + at);
  if (trip.state !== 'planned')
    return [...new Set([first, last])].map((day) => ({ day: isoDay(day), said: [], sleeps: null, siteIds: [] }));
  const sites = new Set(trip.stops.map(({ siteId }) => siteId));
  return days.map((day) => {
    const night = day < last ? nightAt(legs, day + 1 - problem.firstDay) : null;
    const sleeps = night !== null && night.to === null && night.at !== crew.base ? night.at : null;
    return {
      ...{ day: isoDay(day), said: [], sleeps },
      ...(night === null || night.to === null ? {} : nightSaid(betweenPlaces(night, night.to, language, nameOf))),
      ...(sleeps !== null && noSleep.has(sleeps) ? nightSaid(notHere(sleeps, language, nameOf)) : {}),
      ...afloatOn(legs, day - problem.firstDay),
      ...restOn(problem, crew, day - problem.firstDay),
      siteIds: sleeps !== null && sites.has(sleeps) ? [sleeps] : [],
    };
  });
}

const nightSaid = (night: string) => ({ said: [night], night });

/** Where nobody may sleep is said of a place; which other there is nobody has entered. */
const notHere = (place: string, { say }: NightsTold['language'], nameOf: NightsTold['nameOf']): string =>
  say('rolloutAnswers.day.nightNotHere', { place: nameOf.get(place) ?? place });

/** Places where no crew may sleep, as the tables say. */
export const noSleepIn = ({ rollout }: Pick<ProgrammeFacts, 'rollout'>): ReadonlySet<string> =>
  new Set(rollout.places.flatMap(({ placeId, maySleep }) => (maySleep ? [] : [placeId])));

/** What is said of a night that is spent at no place. */
function betweenPlaces(
  { at, isOnRiver = false }: Night,
  to: string,
  { say }: NightsTold['language'],
  nameOf: NightsTold['nameOf'],
): string {
  const [from, place] = [nameOf.get(at) ?? at, nameOf.get(to) ?? to];
  return isOnRiver
    ? say('rolloutAnswers.day.nightOnBank', { from, to: place })
    : say('rolloutAnswers.day.nightOnWay', { place });
}

/** Does the crew rest on a day? Left out where it works. */
function restOn({ crews }: NightsTold['problem'], { crewId }: CrewFacts, day: number): { readonly isRest?: true } {
  const works = crews.find((one) => one.crewId === crewId)?.works;
  return works !== undefined && works[day] === 0 ? { isRest: true } : {};
}

/** Is a way by river gone on a day? Left out where the times of a leg's ways are not known. */
function afloatOn(legs: readonly TripLeg[], day: number): { readonly isAfloat?: boolean } {
  if (legs.some(({ way, times }) => way === null || times.length < way.stretches.length)) return {};
  const isAfloat = legs.some(({ way, times }) =>
    times.some(({ begins, ends }, nth) => {
      const isRiver = way!.stretches[nth]!.mode === 'river';
      return isRiver && Math.floor(begins + slack_days) <= day && day < ends - slack_days;
    }),
  );
  return { isAfloat };
}

interface Night {
  readonly at: string;
  /** Where it goes, where it is between two places, and whether by river. */
  readonly to: string | null;
  readonly isOnRiver?: boolean;
}

/** Where a crew is when a day ends; null: it has not left. */
function nightAt(legs: readonly TripLeg[], time: number): Night | null {
  let at: string | null = null;
  for (const { from, to, way, times, leaves, arrives } of legs) {
    const begins = times[0]?.begins ?? leaves ?? Number.NEGATIVE_INFINITY;
    if (begins >= time - slack_days) return at === null ? null : { at, to: null };
    at = from;
    for (const [nth, stretch] of (way?.stretches ?? []).entries()) {
      const gone = times[nth];
      if (gone === undefined || gone.begins >= time - slack_days) return { at, to: null };
      if (gone.ends > time + slack_days) return { at, to: stretch.to, isOnRiver: stretch.mode === 'river' };
      at = stretch.to;
    }
    if (arrives !== null && arrives > time + slack_days) return { at, to: null };
    at = to;
  }
  return at === null ? null : { at, to: null };
}

/** Legs are kept in 32 bits. */
const slack_days = 1e-4;
