import type { RolloutSheet } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { wayNames } from '../bands/wayNames.ts';
import { InWords } from './InWords.tsx';
import { type DayForms, useDayForms } from './useDayForms.ts';
import type { CrewOfWeek, WeekEvent, WeekHappens } from './weekHappens.ts';
import type { Week } from './weeks.ts';

interface WordsAsked {
  readonly sheet: RolloutSheet;
  readonly happens: WeekHappens;
  readonly week: Week;
  readonly programmeId: string;
  readonly plan: string | undefined;
  /** The site that is looked for. */
  readonly site: string | undefined;
}

/** What happens in a week, as sentences: crew by crew, then who drinks from then on, then the ways that close. */
export function WeekWords(asked: WordsAsked) {
  const { say, numbers } = useLanguage();
  const { happens, sheet } = asked;
  const { crews, idle, closed, served } = happens;
  const days = useDayForms();
  const people = served.reduce((sum, stop) => sum + stop.people, 0);
  const treated = served.some(({ isUntreated }) => isUntreated) ? 'no' : 'yes';
  return (
    <div className="week-words">
      {closed.length === 0 ? null : (
        <>
          <h3>{say('rolloutMap.closed', { count: closed.length })}</h3>
          <ul>
            {closed.map((one) => (
              <Closed
                key={`${one.strip.stripId} ${one.span.from} ${one.span.kind}`}
                of={one}
                sheet={sheet}
                days={days}
              />
            ))}
          </ul>
        </>
      )}
      {crews.map((one) => (
        <Crew key={one.crew.crewId} {...asked} of={one} days={days} />
      ))}
      {crews.length === 0 ? <p>{say('rolloutMap.nobody')}</p> : null}
      {crews.length === 0 || idle.length === 0 ? null : (
        <p>{say('rolloutMap.idle', { count: idle.length, names: idle.map(({ name }) => name).join(', ') })}</p>
      )}
      <h3>{say('rolloutMap.served', { people: numbers.people(people), count: served.length, treated })}</h3>
      {served.length === 0 ? null : (
        <ul>
          {served.map((stop) => (
            <li key={stop.siteId} aria-current={stop.siteId === asked.site ? 'true' : undefined}>
              {say('rolloutMap.serves', {
                day: days.inYear(stop.served ?? ''),
                name: stop.name,
                people: numbers.people(stop.people),
                treated: stop.isUntreated ? 'no' : 'yes',
              })}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** A way that is closed or slower; of several that are alike each by its name. */
function Closed({
  of: { strip, span, isUnsure },
  sheet,
  days,
}: {
  readonly of: WeekHappens['closed'][number];
  readonly sheet: RolloutSheet;
  readonly days: DayForms;
}) {
  const language = useLanguage();
  const { say } = language;
  const values = { name: strip.name, said: span.said, from: days.inYear(span.from), to: days.inYear(span.to) };
  const names = wayNames(strip, sheet, language);
  return (
    <li className={`way-${span.kind}`}>
      {isUnsure
        ? say('rolloutMap.way_unsure', values)
        : say('rolloutMap.way_is', { ...values, isGuess: span.isToGuessed ? 'yes' : 'no' })}
      {names.length < 2 ? null : <InWords head={say('rolloutMap.way_names', { count: names.length })} names={names} />}
    </li>
  );
}

function Crew({ of, week, days, ...asked }: WordsAsked & { readonly of: CrewOfWeek; readonly days: DayForms }) {
  const { say } = useLanguage();
  const { crew, trips, events } = of;
  const { programmeId, plan } = asked;
  const next = trips[0]?.stops.find(({ starts, arrives }) => (starts ?? arrives ?? '') > week.to);
  return (
    <section>
      <h3>
        {crew.name}{' '}
        {trips.map((trip) => (
          <Link
            key={trip.tripId}
            className="small on-screen"
            to="/p/$programmeId/rollout/trips/$tripId"
            params={{ programmeId, tripId: trip.tripId }}
            search={plan === undefined ? {} : { plan }}
          >
            {say('rolloutMap.trip', { day: days.inYear(trip.leaves) })}
            <span className="said-only">, {crew.name}</span>
          </Link>
        ))}
      </h3>
      {events.length === 0 ? (
        <p>{next === undefined ? say('rolloutMap.out') : say('rolloutMap.out_next', { name: next.name })}</p>
      ) : (
        <ul>
          {events.map((event) => (
            <li
              key={`${event.trip.tripId} ${event.kind} ${event.stop?.siteId ?? ''}`}
              aria-current={event.stop !== null && event.stop.siteId === asked.site ? 'true' : undefined}
            >
              <Event event={event} days={days} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Event({
  event: { kind, from, to, trip, stop },
  days,
}: {
  readonly event: WeekEvent;
  readonly days: DayForms;
}) {
  const { say, numbers } = useLanguage();
  if (stop === null) return say('rolloutMap.moves', { day: days.inYear(from), kind });
  const values = { name: stop.name, people: numbers.people(stop.people) };
  const hands = stop.handOver === null ? null : days.inYear(stop.handOver);
  const when =
    from === to ? days.inYear(from) : say('rolloutMap.days', { from: days.inYear(from), to: days.inYear(to) });
  return (
    <>
      {say('rolloutMap.works', { when, ...values })}
      {hands === null ? null : ` ${say('rolloutMap.hands', { day: hands, isDone: stop.isHandedOver ? 'yes' : 'no' })}`}
      {trip.isTight && trip.tightSaid !== null ? <span className="w-tight"> {trip.tightSaid}</span> : null}
    </>
  );
}
