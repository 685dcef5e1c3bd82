import type { RolloutSheet, SheetStop } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import type { ReactNode, RefObject } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { OpensWorking, WorkingOfPart } from '../working/opening.tsx';
import { massAboard } from './massAboard.ts';
import { OpenedNear } from './OpenedNear.tsx';
import { haulsFor, haulValues, statesOf, type TripOfCrew, waitWords } from './tripWords.ts';

/** A trip that was pressed: all that the sheet knows of it, and where its papers are. */
export function TripOpened({
  of,
  near,
  onClose,
  children,
  ...at
}: {
  readonly of: TripOfCrew;
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
  readonly near: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
  /** What can be done with it by hand. */
  readonly children?: ReactNode;
}) {
  const { say, numbers } = useLanguage();
  const title = say('rolloutBands.trip_name', {
    crew: of.crew.name,
    leaves: numbers.date(of.trip.leaves),
    back: numbers.date(of.trip.back),
  });
  return (
    <OpenedNear title={title} near={near} onClose={onClose}>
      <TripKnown of={of} />
      <TripPapers of={of} {...at} />
      {children}
    </OpenedNear>
  );
}

/** What is known of a trip: what is wrong with it, its stops with days and doubt, its load, what it waits for. */
export function TripKnown({ of: { trip } }: { readonly of: TripOfCrew }) {
  const language = useLanguage();
  const { say } = language;
  const states = statesOf(trip, language);
  const nights = say('rolloutBands.nights', { count: trip.nights_count });
  // Of a trip that left the load is not worked out any more.
  const load =
    trip.loaded_kg === null
      ? nights
      : say('rolloutBands.load', { kg: massAboard(trip.loaded_kg, trip, language), nights });
  return (
    <>
      {states.length === 0 ? null : <p className="small">{states.join(', ')}</p>}
      {trip.broken.map(({ said, siteId }) => (
        <p key={`${siteId} ${said}`} className="w-short">
          {said}
        </p>
      ))}
      {trip.tightSaid === null || trip.broken.length > 0 ? null : <p className="w-tight">{trip.tightSaid}</p>}
      <Stops stops={trip.stops} part={`trip ${trip.tripId}`} />
      <WorkingOfPart part={`trip ${trip.tripId}`} />
      <p className="small">
        {load}
        {trip.state === 'planned' ? `; ${waitWords(trip, language)}` : ''}
      </p>
    </>
  );
}

function Stops({ stops, part }: { readonly stops: readonly SheetStop[]; readonly part: string }) {
  const { say, numbers } = useLanguage();
  if (stops.length === 0) return null;
  return (
    <table className="trip-stops">
      <thead>
        <tr>
          <th scope="col">{say('rolloutBands.stop_head_site')}</th>
          <th scope="col">{say('rolloutBands.stop_head_handOver')}</th>
          <th scope="col">{say('rolloutBands.stop_head_served')}</th>
        </tr>
      </thead>
      <tbody>
        {stops.map((stop) => (
          <tr key={stop.siteId}>
            <th scope="row">
              {stop.name}
              <span className="doubt">{numbers.people(stop.people)}</span>
              {stop.isUntreated ? <span className="doubt w-short">{say('rolloutTrip.untreated')}</span> : null}
            </th>
            {stop.isWayUp ? (
              <StopDays stop={stop} part={part} />
            ) : (
              <td colSpan={2}>{say('rolloutBands.stop_not_done')}</td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** When it is handed over, and from when on its people drink, with how sure that is. */
function StopDays({
  stop: { siteId, arrives, handOver, served, futures },
  part,
}: {
  readonly stop: SheetStop;
  readonly part: string;
}) {
  const { say, numbers } = useLanguage();
  const between =
    futures === null || futures.p10 === null
      ? null
      : futures.p90 === null
        ? say('rolloutBands.stop_between_open', { from: numbers.date(futures.p10) })
        : say('rolloutBands.stop_between', { from: numbers.date(futures.p10), to: numbers.date(futures.p90) });
  return (
    <>
      <td>
        {handOver === null ? say('numbers.notKnown') : numbers.date(handOver)}
        {arrives === null ? null : (
          <span className="doubt">
            {say('rolloutBands.stop_head_from')} {numbers.date(arrives)}
          </span>
        )}
      </td>
      <td>
        {served === null ? (
          say('numbers.notKnown')
        ) : (
          <OpensWorking asked={{ figure: 'drinks', site: siteId }} part={part} served={served}>
            {numbers.date(served)}
          </OpensWorking>
        )}
        {between === null ? null : <span className="doubt">{between}</span>}
      </td>
    </>
  );
}

/** What is brought for a trip, and where its manifest and its crew's itinerary are. */
export function TripPapers({
  of: { trip, crew },
  sheet,
  programmeId,
}: {
  readonly of: TripOfCrew;
  readonly sheet: Pick<RolloutSheet, 'planId' | 'hauls' | 'places'>;
  readonly programmeId: string;
}) {
  const language = useLanguage();
  const { say } = language;
  const search = sheet.planId === null ? {} : { plan: sheet.planId };
  return (
    <>
      {haulsFor(sheet, trip).map((haul) => (
        <p key={haul.haulId} className="small">
          {say('rolloutBands.haul', haulValues(haul, sheet, language))}{' '}
          <Link
            to="/p/$programmeId/rollout/trips/$tripId"
            params={{ programmeId, tripId: trip.tripId }}
            search={search}
            hash="trip-hauls"
          >
            {say('rolloutBands.haul_list')}
          </Link>
        </p>
      ))}
      <p className="trip-papers on-screen">
        <Link to="/p/$programmeId/rollout/trips/$tripId" params={{ programmeId, tripId: trip.tripId }} search={search}>
          {say('rolloutBands.manifest')}
        </Link>{' '}
        <Link to="/p/$programmeId/rollout/crews/$crewId" params={{ programmeId, crewId: crew.crewId }} search={search}>
          {say('rolloutBands.itinerary', { crew: crew.name })}
        </Link>
      </p>
    </>
  );
}
