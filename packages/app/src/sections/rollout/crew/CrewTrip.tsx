import type { RolloutSheet, RolloutTripAnswer } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { massOf } from '../trip/masses.ts';
import { partWords } from '../trip/partWords.ts';
import { type DayCard, dayCards } from './dayCards.ts';

/** One trip of a crew in day cards, today first; days that are past behind a press. */
export function CrewTrip({
  answer,
  sheet,
  today,
  programmeId,
}: {
  readonly answer: RolloutTripAnswer;
  readonly sheet: RolloutSheet;
  readonly today: string;
  readonly programmeId: string;
}) {
  const { say, numbers } = useLanguage();
  const { trip, planId, places } = answer;
  const { before, coming } = dayCards(answer, today);
  const names = new Map([
    ...sheet.places.map(({ placeId, name }) => [placeId, name] as const),
    ...places.map(({ placeId, name }) => [placeId, name] as const),
    ...trip.stops.map(({ siteId, name }) => [siteId, name] as const),
  ]);
  const cards = (all: readonly DayCard[]) =>
    all.map((card) => <Day key={card.day} card={card} isToday={card.day === today} names={names} />);
  const { tripId } = trip;
  return (
    <section aria-labelledby={`trip-${tripId}`}>
      <h2 id={`trip-${tripId}`}>
        {say('rolloutTrip.trip_head', {
          trip: tripId,
          leaves: numbers.date(trip.leaves),
          back: numbers.date(trip.back),
        })}
      </h2>
      {trip.broken.map((one) => (
        <p key={`${one.kind} ${one.siteId}`} className="w-short">
          {one.said}
        </p>
      ))}
      <p className="on-screen">
        <Link to="/p/$programmeId/rollout/trips/$tripId" params={{ programmeId, tripId }} search={{ plan: planId }}>
          {say('rolloutTrip.manifest_link', { trip: tripId })}
        </Link>
      </p>
      {before.length + coming.length === 0 ? <p>{say('rolloutTrip.no_days')}</p> : null}
      {cards(coming)}
      {before.length === 0 ? null : (
        <details className="on-screen">
          <summary>{say('rolloutTrip.days_before', { count: before.length })}</summary>
          {cards(before)}
        </details>
      )}
    </section>
  );
}

function Day({
  card,
  isToday,
  names,
}: {
  readonly card: DayCard;
  readonly isToday: boolean;
  readonly names: ReadonlyMap<string, string>;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { day, until, days_count, said, sleeps, isOnRiver, landed, aboard_kg, isAboardInPart } = card;
  const date =
    days_count === 1
      ? numbers.date(day)
      : say('rolloutTrip.days_span', { from: numbers.date(day), to: numbers.date(until) });
  return (
    <section className={isToday ? 'day-card is-today' : 'day-card'} aria-label={date}>
      <h3>{isToday ? say('rolloutTrip.day_today', { day: date }) : date}</h3>
      {isOnRiver ? <p className="on-river">{say('rolloutTrip.river_today')}</p> : null}
      <ul>
        {said.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      {landed
        .filter(({ lines }) => lines.length > 0)
        .map((stop) => {
          const count = stop.lines.reduce((sum, line) => sum + line.count, 0);
          return (
            <details key={stop.siteId}>
              <summary>{say('rolloutTrip.for_site', { site: stop.name, mass: massOf(stop, language), count })}</summary>
              <ul className="parts">
                {stop.lines.map((line) => (
                  <li key={`${line.partId} ${line.each_count}`}>
                    {numbers.given(line.count, '')} × {partWords(line, language)}
                    {line.danger === null ? null : (
                      <b className="w-short">, {say(`rolloutTrip.danger_${line.danger}`)}</b>
                    )}
                  </li>
                ))}
              </ul>
            </details>
          );
        })}
      {aboard_kg === null ? null : (
        <p>
          {say('rolloutTrip.aboard_left', {
            mass: massOf({ mass_kg: aboard_kg, unweighed_count: 0, isKitInPart: isAboardInPart }, language),
          })}
        </p>
      )}
      {sleeps === null ? null : (
        <p>{say('rolloutTrip.sleeps', { place: names.get(sleeps) ?? sleeps, count: days_count })}</p>
      )}
    </section>
  );
}
