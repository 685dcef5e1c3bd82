import type { RolloutSheet } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';
import type { BreakTold, Cannot, MoveAnswer, NearestFound } from './moveAnswer.ts';
import { type Held, homeOf, isSamePlace, type Place, plannedOf, tripOf } from './places.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;
type Sheet = Pick<RolloutSheet, 'crews' | 'candidates' | 'from' | 'currency'>;

/** Breaks that are told one by one; of more the first are enough to know why. Ours. */
const breaks_most = 3;
/** Other sites that are named: those to whom it does most. Ours. */
const named_most = 3;

/** What a site is called on the sheet. */
export function siteName({ crews, candidates }: Pick<Sheet, 'crews' | 'candidates'>, siteId: string): string {
  for (const { trips } of crews)
    for (const { stops } of trips) {
      const stop = stops.find((one) => one.siteId === siteId);
      if (stop !== undefined) return stop.name;
    }
  return candidates.find((one) => one.siteId === siteId)?.name ?? siteId;
}

/** What the day of a site is: its people drink, water that nothing treats runs, or, where its wait for rain is not known, it is handed over. */
function waterOf({ crews, candidates }: Pick<Sheet, 'crews' | 'candidates'>, siteId: string): string {
  const stops = crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
  const stop = stops.find((one) => one.siteId === siteId);
  if (stop !== undefined && stop.handOver !== null && stop.served === null) return 'handOver';
  const candidate = candidates.find((one) => one.siteId === siteId);
  return (stop?.isUntreated ?? candidate?.isUntreated ?? false) ? 'runs' : 'drinks';
}

/** What is in hand is called. */
export function heldWords(sheet: Sheet, held: Held, { say, numbers }: Words): string {
  if (held.kind === 'site') return siteName(sheet, held.siteId);
  const found = tripOf(sheet, held.tripId);
  if (found === null) return held.tripId;
  return say('rolloutByHand.trip_name', { crew: found.crew.name, leaves: numbers.date(found.trip.leaves) });
}

/** Where a place is: "in the trip of crew 2 from 9 June, after Osk landing". */
export function placeWords(sheet: Sheet, held: Held, place: Place, words: Words): string {
  const { say, numbers } = words;
  const home = homeOf(sheet, held);
  if (home !== null && isSamePlace(home, place)) return say('rolloutByHand.at_home');
  if (place.kind === 'tray') return say('rolloutByHand.at_tray');
  if (place.kind === 'inTrip') return inTripWords(sheet, held, place, words);
  const crew = sheet.crews.find(({ crewId }) => crewId === place.crewId);
  const planned = crew === undefined ? [] : plannedOf(crew);
  const name = crew?.name ?? place.crewId;
  if (place.kind === 'newTrip') {
    const before = planned[place.index - 1];
    return say('rolloutByHand.at_new', {
      crew: name,
      isFirst: before === undefined ? 'yes' : 'no',
      leaves: before === undefined ? '' : numbers.date(before.leaves),
    });
  }
  const others_count = planned.filter(({ tripId }) => held.kind !== 'trip' || tripId !== held.tripId).length;
  return say('rolloutByHand.at_trip', {
    ...{ crew: name, nth: place.index + 1, count: others_count + 1 },
    ...{ hasDay: place.notBefore === null ? 'no' : 'yes' },
    day: place.notBefore === null ? '' : numbers.date(place.notBefore),
  });
}

function inTripWords(sheet: Sheet, held: Held, place: Place & { readonly kind: 'inTrip' }, words: Words): string {
  const { say, numbers } = words;
  const found = tripOf(sheet, place.tripId);
  if (found === null) return place.tripId;
  const { crew, trip } = found;
  const others = trip.stops.filter(({ siteId }) => held.kind !== 'site' || siteId !== held.siteId);
  const at = { crew: crew.name, leaves: numbers.date(trip.leaves) };
  const before = others[place.position - 1];
  const next = others[place.position];
  if (before !== undefined) return say('rolloutByHand.at_after', { ...at, site: before.name });
  return next === undefined
    ? say('rolloutByHand.at_only', at)
    : say('rolloutByHand.at_before', { ...at, site: next.name });
}

/** What would become of it, in a few sentences: the site's own day first, then what it does to all. */
export function becomesWords(sheet: Sheet, held: Held, answer: MoveAnswer, words: Words): readonly string[] {
  const { say } = words;
  const others = answer.moved.filter(({ siteId }) => held.kind !== 'site' || siteId !== held.siteId);
  const breaks = answer.breaks.filter(
    ({ kind, siteId }) => !(kind === 'leftOut' && held.kind === 'site' && siteId === held.siteId),
  );
  return [
    ownWords(sheet, held, answer, words),
    othersWords(sheet, others, words),
    ...allWords(sheet, answer, words),
    ...(breaks.length === 0 ? [] : [say('rolloutByHand.breaks', { what: breaksWords(sheet, breaks, words) })]),
  ];
}

/** Which other sites move, and by how much: those first to whom it does most, by people and days. */
function othersWords(sheet: Sheet, others: MoveAnswer['moved'], { say }: Words): string {
  const people = new Map([
    ...sheet.candidates.map((one) => [one.siteId, one.people] as const),
    ...sheet.crews.flatMap(({ trips }) =>
      trips.flatMap(({ stops }) => stops.map((one) => [one.siteId, one.people] as const)),
    ),
  ]);
  const felt = ({ siteId, later_days }: MoveAnswer['moved'][number]) =>
    later_days === null ? Number.POSITIVE_INFINITY : Math.abs(later_days) * (people.get(siteId) ?? 0);
  const first = [...others].sort((a, b) => (felt(a) === felt(b) ? 0 : felt(b) - felt(a))).slice(0, named_most);
  const named = first.map(({ siteId, later_days }) => {
    const site = siteName(sheet, siteId);
    if (later_days === null) return site;
    return say('rolloutByHand.moved_days', {
      site,
      days: Math.abs(later_days),
      isLater: later_days > 0 ? 'yes' : 'no',
    });
  });
  const rest_count = others.length - first.length;
  const more = rest_count === 0 ? [] : [say('rolloutByHand.tray_more', { count: rest_count })];
  return say('rolloutByHand.moved', { count: others.length, which: [...named, ...more].join(', ') });
}

function ownWords(sheet: Sheet, held: Held, { day, later_days }: MoveAnswer, { say, numbers }: Words): string {
  const days = Math.abs(later_days ?? 0);
  const way = later_days === null || later_days === 0 ? null : later_days > 0 ? 'later' : 'sooner';
  if (held.kind === 'trip') {
    if (day === null) return say('rolloutByHand.leaves_never');
    const at = { day: numbers.date(day), days };
    return way === null ? say('rolloutByHand.leaves', at) : say(`rolloutByHand.leaves_${way}`, at);
  }
  const site = siteName(sheet, held.siteId);
  const water = waterOf(sheet, held.siteId);
  if (day === null) return say('rolloutByHand.drinks_never', { site, water });
  const at = { site, water, day: numbers.date(day), days };
  if (later_days === null) return say('rolloutByHand.drinks_new', at);
  return way === null ? say('rolloutByHand.drinks', at) : say(`rolloutByHand.drinks_${way}`, at);
}

/** What it does to all: waiting, the last day, money. What stays as it is is not said. */
export function allWords(
  { currency }: Pick<Sheet, 'currency'>,
  { waiting_personDays, finish_days, cost }: Pick<MoveAnswer, 'waiting_personDays' | 'finish_days' | 'cost'>,
  { say, numbers }: Words,
): readonly string[] {
  const said: string[] = [];
  const waits = Math.round(waiting_personDays);
  if (waits !== 0)
    said.push(say(waits > 0 ? 'rolloutByHand.waits_more' : 'rolloutByHand.waits_less', { days: Math.abs(waits) }));
  const ends = Math.round(finish_days);
  if (ends !== 0)
    said.push(say(ends > 0 ? 'rolloutByHand.ends_later' : 'rolloutByHand.ends_sooner', { days: Math.abs(ends) }));
  if (currency !== null && Math.abs(cost) >= 0.5) {
    const money = numbers.money(Math.abs(cost), currency);
    said.push(say(cost > 0 ? 'rolloutByHand.costs_more' : 'rolloutByHand.costs_less', { money }));
  }
  return said;
}

/** What breaks, in one row of words. */
export function breaksWords(sheet: Sheet, breaks: readonly BreakTold[], { say }: Words): string {
  const said = breaks.map(({ kind, siteId, by, partId }) =>
    say(`rolloutByHand.break_${kind}`, {
      site: siteId === null ? '' : siteName(sheet, siteId),
      hasSite: siteId === null ? 'no' : 'yes',
      by: by === null ? 0 : kind === 'tooLong' ? Math.ceil(by * 10) / 10 : Math.ceil(by),
      part: partId ?? '',
    }),
  );
  return [...new Set(said)].slice(0, breaks_most).join('; ');
}

/** Why it cannot be taken up, or be put back where it was meant to go. */
export function cannotWords(sheet: Sheet, held: Held, why: Cannot, place: Place | null, words: Words): string {
  const { say } = words;
  const what = heldWords(sheet, held, words);
  if (why.why === 'noAnswer') return say('rolloutByHand.cannot_noAnswer');
  if (why.why === 'notToBePlanned') return say('rolloutByHand.cannot_notToBePlanned', { what, said: why.said });
  if (why.why === 'breaks') return say('rolloutByHand.cannot_here', { what: breaksWords(sheet, why.breaks, words) });
  if (place === null || why.why === 'gone') return say(`rolloutByHand.cannot_${why.why}`, { what });
  return say('rolloutByHand.cannot_here', { what: say(`rolloutByHand.cannot_into_${why.why}`) });
}

/** What is said of the nearest place while there is none to press; null: there is one. */
export function nearestWords(found: NearestFound | null, { say }: Words): string | null {
  if (found === null) return say('rolloutByHand.nearest_asked');
  return found.place === null ? say('rolloutByHand.nearest_none') : null;
}
