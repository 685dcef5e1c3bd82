import { daysOfTrip, loadOfTrip, type StopLoad } from '@eavewell/report/trip';
import type { RolloutTripAnswer } from '@eavewell/tables';

/** One day of a trip as it is read: what is done, what is aboard after, where one sleeps, and whether one is on a river. */
export interface DayCard {
  readonly day: string;
  readonly said: readonly string[];
  readonly sleeps: string | null;
  readonly isOnRiver: boolean;
  /** What is taken ashore that day, stop by stop. */
  readonly landed: readonly StopLoad[];
  /** Left aboard after the day's stops; null: nothing was taken ashore. */
  readonly aboard_kg: number | null;
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
    const over = (known?.events ?? []).flatMap((event) => (event.kind === 'handOver' ? [event.aboard_kg] : []));
    return { day, said, sleeps, isOnRiver: known?.isOnRiver ?? false, landed, aboard_kg: over.at(-1) ?? null };
  });
  return { before: cards.filter(({ day }) => day < today), coming: cards.filter(({ day }) => day >= today) };
}
