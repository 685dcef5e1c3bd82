import type { RolloutSheet, SheetCrew } from '@eavewell/tables';
import { memo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { TripMark } from './CrewRow.tsx';
import type { ByHandOnBands } from './CrewsBand.tsx';
import { HaulList } from './HaulList.tsx';
import { TripKnown, TripPapers } from './TripOpened.tsx';
import { crewWords, peopleOf, spanWords, type TripOfCrew } from './tripWords.ts';
import { closingWays, namesOfWays } from './wayNames.ts';

/** Trips of a crew that stand open before the later ones. Ours. */
const next_most = 3;

/** There is nothing to close: the trip is opened in its place. */
const nothing = () => undefined;

interface At {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
  /** At the foot of a trip that is opened. */
  readonly inTrip?: ByHandOnBands['inTrip'] | undefined;
}

/** Where there is no room for weeks side by side: ways that close, then each crew with its trips, the next first. */
export const CrewList = memo(function CrewList({ sheet, programmeId, inTrip }: At) {
  const language = useLanguage();
  const { say } = language;
  const closing = closingWays(sheet);
  return (
    <div className="crew-list">
      {closing.length === 0 ? null : (
        <details>
          <summary>{say('rolloutBands.closing_ways', { count: closing.length })}</summary>
          <ul>
            {closing.map(({ strip, spans }) => (
              <li key={strip.stripId}>
                {say('rolloutBands.closes', {
                  name: namesOfWays(strip, sheet, language),
                  said: spans.map((span) => spanWords(span, language)).join('; '),
                })}
              </li>
            ))}
          </ul>
        </details>
      )}
      <HaulList sheet={sheet} programmeId={programmeId} />
      {sheet.crews.map((crew) => (
        <Crew key={crew.crewId} {...{ crew, sheet, programmeId, inTrip }} />
      ))}
    </div>
  );
});

function Crew({ crew, ...at }: At & { readonly crew: SheetCrew }) {
  const language = useLanguage();
  const { say } = language;
  const done = crew.trips.filter(({ state }) => state === 'done');
  const open = crew.trips.filter(({ state }) => state !== 'done');
  const ofCrew = (trips: typeof done) => trips.map((trip): TripOfCrew => ({ trip, crew }));
  const later = open.slice(next_most);
  return (
    <section>
      <h2>{crew.name}</h2>
      <p className="small">{crewWords(crew, at.sheet, language)}</p>
      {crew.trips.length === 0 ? <p>{say('rolloutBands.crew_no_trips')}</p> : null}
      <Trips trips={ofCrew(open.slice(0, next_most))} {...at} />
      {later.length === 0 ? null : (
        <details>
          <summary>{say('rolloutBands.list_later', { count: later.length })}</summary>
          <Trips trips={ofCrew(later)} {...at} />
        </details>
      )}
      {done.length === 0 ? null : (
        <details>
          <summary>{say('rolloutBands.list_done', { count: done.length })}</summary>
          <Trips trips={ofCrew(done)} {...at} />
        </details>
      )}
    </section>
  );
}

function Trips({ trips, ...at }: At & { readonly trips: readonly TripOfCrew[] }) {
  const { say, numbers } = useLanguage();
  return (
    <ul className="trips">
      {trips.map((of) => (
        <li key={of.trip.tripId}>
          <details className="trip">
            <summary>
              <TripMark trip={of.trip} />{' '}
              <b>
                {say('rolloutBands.list_trip', {
                  leaves: numbers.date(of.trip.leaves),
                  back: numbers.date(of.trip.back),
                })}
              </b>
              <span className="small">
                {of.trip.stops.map(({ name }) => name).join(', ')}; {numbers.people(peopleOf(of.trip))}
              </span>
            </summary>
            <TripKnown of={of} />
            <TripPapers of={of} {...at} />
            {at.inTrip?.(of.trip, of.crew, nothing)}
          </details>
        </li>
      ))}
    </ul>
  );
}
