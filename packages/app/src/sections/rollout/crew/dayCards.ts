import { daysOfTrip, loadOfTrip, type StopLoad } from '@eavewell/report/trip';
import type { RolloutTripAnswer } from '@eavewell/tables';

/** One day of a trip, or days on which nothing else begins, as it is read: what is done, what is aboard after, where one sleeps, and whether one is on a river. */
export interface DayCard {
  readonly day: string;
  /** The last of days that are alike; the day itself where there is but one. */
  readonly until: string;
  readonly days_count: number;
  readonly said: readonly string[];
  readonly sleeps: string | null;
  readonly isOnRiver: boolean;
  /** What is taken ashore that day, stop by stop. */
  readonly landed: readonly StopLoad[];
  /** Left aboard after the day's stops; null: nothing was taken ashore. */
  readonly aboard_kg: number | null;
  /** It is at least so much: something of the kit it is of could not be counted. */
  readonly isAboardInPart: boolean;
}

/** Days of a trip in order: those that are past apart, today and what comes first. */
export function dayCards(
  answer: RolloutTripAnswer,
  today: string,
): { readonly before: readonly DayCard[]; readonly coming: readonly DayCard[] } {
  const stops = new Map(loadOfTrip(answer).stops.map((stop) => [stop.siteId, stop] as const));
  const byDay = new Map(daysOfTrip(answer, answer.crew.store).map((one) => [one.day, one] as const));
  const cards = answer.days.map(({ day, said, sleeps }): DayCard => {
    const known = byDay.get(day);
    const landed = (known?.events ?? []).flatMap((event) => {
      const stop = event.kind === 'work' ? stops.get(event.stop.siteId) : undefined;
      return stop === undefined ? [] : [stop];
    });
    const over = (known?.events ?? []).flatMap((event) => (event.kind === 'handOver' ? [event] : []));
    return {
      ...{ day, until: day, days_count: 1 },
      ...{ said, sleeps, isOnRiver: known?.isOnRiver ?? false, landed },
      aboard_kg: over.at(-1)?.aboard_kg ?? null,
      isAboardInPart: over.at(-1)?.isAboardFor.some(({ isKitInPart }) => isKitInPart) ?? false,
    };
  });
  const folded = foldedDays(cards, today);
  return { before: folded.filter(({ until }) => until < today), coming: folded.filter(({ until }) => until >= today) };
}

/** Days in a row on which nothing begins and the night is at one place stand as one; today stands by itself. */
function foldedDays(cards: readonly DayCard[], today: string): readonly DayCard[] {
  const isQuiet = ({ day, said, landed, isOnRiver }: DayCard) =>
    day !== today && said.length === 0 && landed.length === 0 && !isOnRiver;
  const found: DayCard[] = [];
  for (const card of cards) {
    const last = found.at(-1);
    if (
      last !== undefined &&
      isQuiet(last) &&
      isQuiet(card) &&
      last.sleeps === card.sleeps &&
      last.day < today === card.day < today
    )
      found[found.length - 1] = { ...last, until: card.day, days_count: last.days_count + 1 };
    else found.push(card);
  }
  return found;
}
