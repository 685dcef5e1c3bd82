import type { RolloutSheet } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { memo, useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { dateOf } from './axis.ts';
import { CrewList } from './CrewList.tsx';
import { TripMark } from './CrewRow.tsx';
import type { ByHandOnBands } from './CrewsBand.tsx';
import { HaulLink } from './HaulLink.tsx';
import { massAboard } from './massAboard.ts';
import { StockList } from './StockList.tsx';
import { goesOn, type NotThere, notThereYet, type StockAhead, stockAhead } from './stockAhead.ts';
import { goingNext, haulValues, peopleOf, type SheetHaul, statesOf, type TripOfCrew, waitWords } from './tripWords.ts';
import './phone.css';

/** Trips that leave next, and names of what is not there yet, at the most. Ours. */
const [trips_most, names_most] = [4, 2] as const;

interface At {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
}

/** The plan where there is no room for weeks side by side: who leaves next, what lies in the stores, then crew by crew. */
export const OnPhone = memo(function OnPhone({
  inTrip,
  ...at
}: At & { readonly inTrip?: ByHandOnBands['inTrip'] | undefined }) {
  const { say } = useLanguage();
  const { sheet } = at;
  const ahead = useMemo(() => stockAhead(sheet), [sheet]);
  const all = goingNext(sheet);
  const beyond = all.filter(({ kind }) => kind === 'trip')[trips_most];
  const next = beyond === undefined ? all : all.slice(0, all.indexOf(beyond));
  return (
    <>
      <section className="next-trips" aria-labelledby="next-trips">
        <h2 id="next-trips">{say('rolloutBands.leaving')}</h2>
        {next.length === 0 ? <p>{say('rolloutBands.leaving_none')}</p> : null}
        <ol>
          {next.map((one) =>
            one.kind === 'trip' ? (
              <NextTrip key={one.of.trip.tripId} of={one.of} ahead={ahead} {...at} />
            ) : (
              <NextHaul key={one.haul.haulId} haul={one.haul} {...at} />
            ),
          )}
        </ol>
      </section>
      <StockList ahead={ahead} sheet={sheet} />
      <CrewList {...at} inTrip={inTrip} />
    </>
  );
});

function NextTrip({ of, ahead, sheet, programmeId }: At & { of: TripOfCrew; ahead: readonly StockAhead[] }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { trip, crew } = of;
  const states = statesOf(trip, language);
  const leaves = numbers.date(trip.leaves);
  const kg = trip.loaded_kg === null ? null : massAboard(trip.loaded_kg, trip, language);
  const missing = notThereYet(ahead, crew.store, trip.leaves);
  return (
    <li>
      <p>
        <TripMark trip={trip} /> <b>{say('rolloutBands.next_trip', { leaves, crew: crew.name })}</b>
        {states.length === 0 ? null : ` (${states.join(', ')})`}
      </p>
      <p>
        {say('rolloutBands.next_where', {
          ...{ places: trip.stops.map(({ name }) => name).join(', '), people: numbers.people(peopleOf(trip)) },
          back: numbers.date(trip.back),
        })}{' '}
        {kg === null ? null : say('rolloutBands.next_load', { kg })}
      </p>
      {missing.length === 0 ? (
        <p className="small">
          {say('rolloutBands.next_waits', {
            why: waitWords(trip, language),
            known: goesOn(ahead, crew.store, trip.leaves) ? 'yes' : 'no',
          })}
        </p>
      ) : (
        <Missing missing={missing} />
      )}
      <Link
        className="next-manifest"
        to="/p/$programmeId/rollout/trips/$tripId"
        params={{ programmeId, tripId: trip.tripId }}
        search={sheet.planId === null ? {} : { plan: sheet.planId }}
        aria-label={say('rolloutBands.manifest_of', {
          trip: say('rolloutBands.trip_name', { crew: crew.name, leaves, back: numbers.date(trip.back) }),
        })}
      >
        {say('rolloutBands.manifest')}
      </Link>
    </li>
  );
}

function NextHaul({ haul, sheet, programmeId }: At & { readonly haul: SheetHaul }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const values = haulValues(haul, sheet, language);
  return (
    <li>
      <p>
        <b>{say('rolloutBands.haul', values)}</b>{' '}
        {say('rolloutBands.next_load', { kg: numbers.quantity(Math.round(haul.loaded_kg), 'kg') })}
      </p>
      <HaulLink className="next-manifest" haul={haul} sheet={sheet} programmeId={programmeId} />
    </li>
  );
}

/** What does not lie in the store yet: what is missing whatever comes before what is on its way. */
function Missing({ missing }: { readonly missing: readonly NotThere[] }) {
  const { say, numbers } = useLanguage();
  const short = missing.filter(({ comes }) => comes === null);
  const coming = missing.filter(({ comes }) => comes !== null);
  const named = (all: readonly NotThere[]) => ({
    names: all
      .slice(0, names_most)
      .map(({ part }) => part)
      .join('; '),
    more: Math.max(0, all.length - names_most),
  });
  const last = coming.reduce((latest, { comes }) => Math.max(latest, comes ?? latest), Number.NEGATIVE_INFINITY);
  return (
    <>
      {short.length === 0 ? null : <p className="w-short">{say('rolloutBands.next_short', named(short))}</p>}
      {coming.length === 0 ? null : (
        <p>{say('rolloutBands.next_not_there', { ...named(coming), day: numbers.date(dateOf(last)) })}</p>
      )}
    </>
  );
}
