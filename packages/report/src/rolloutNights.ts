import { type CrewFacts, isoDay, readIsoDay, type TripLeg } from '@eavewell/engine';
import type { RolloutTripAnswer, SheetTrip } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { SheetTold } from './rolloutSheetTold.ts';

/** What the nights of a trip are told from. */
export interface NightsTold extends Pick<SheetTold, 'problem'> {
  readonly language: Pick<Language, 'say'>;
  readonly nameOf: ReadonlyMap<string, string>;
}

/**
 * Each day of a trip with the place its night is spent at: where the crew works or waits, or the last place it got to. Where it set out from there and did not
 * get to the next, it sleeps on the way, and that is said. Of a trip that left the days of its legs are not known: only its first and last are told.
 */
export function nightsOf(
  { problem, language, nameOf }: NightsTold,
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
    const to = night?.to ?? null;
    return {
      ...{ day: isoDay(day), sleeps },
      said: to === null ? [] : [language.say('rolloutAnswers.day.nightOnWay', { place: nameOf.get(to) ?? to })],
      siteIds: sleeps !== null && sites.has(sleeps) ? [sleeps] : [],
    };
  });
}

interface Night {
  readonly at: string;
  /** Where it goes, where it is between two places. */
  readonly to: string | null;
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
      if (gone.ends > time + slack_days) return { at, to: stretch.to };
      at = stretch.to;
    }
    if (arrives !== null && arrives > time + slack_days) return { at, to: null };
    at = to;
  }
  return at === null ? null : { at, to: null };
}

/** Legs are kept in 32 bits. */
const slack_days = 1e-4;
