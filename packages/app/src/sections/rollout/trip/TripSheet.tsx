import { loadOfTrip, type TripLoad } from '@eavewell/report/trip';
import type { RolloutTripAnswer } from '@eavewell/tables';
import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { WhileWorkedOut } from '../leaning/WhileWorkedOut.tsx';
import { PaperFoot } from '../paper/PaperFoot.tsx';
import { LoadList } from './LoadList.tsx';
import { massOf } from './masses.ts';
import { TripBoat } from './TripBoat.tsx';
import { TripCautions } from './TripCautions.tsx';
import { TripHauls, TripLegs } from './TripLegs.tsx';
import { TripPapers } from './TripPapers.tsx';
import { tripQuery } from './tripQuery.ts';
import './trip.css';

const from = '/p/$programmeId/rollout/trips/$tripId';

/** One trip: what is aboard in the order it is put in, the boat from the side, by which way it goes, and what can hurt. */
export function TripSheet() {
  const { say } = useLanguage();
  const { programmeId, tripId } = useParams({ from });
  return (
    <WhileWorkedOut programmeId={programmeId} title={say('rolloutTrip.manifest_link', { trip: tripId })}>
      <Trip />
    </WhileWorkedOut>
  );
}

function Trip() {
  const { say, numbers } = useLanguage();
  const { programmeId, tripId } = useParams({ from });
  const { plan } = useSearch({ from });
  const { data: answer } = useSuspenseQuery(tripQuery(programmeId, plan ?? null, tripId));
  const load = useMemo(() => loadOfTrip(answer), [answer]);
  const { trip, crew, planId } = answer;
  const [leaves, back] = [numbers.date(trip.leaves), numbers.date(trip.back)];
  const search = { plan: planId };
  return (
    <article className="trip-sheet">
      <PaperFoot
        programme={answer.programme}
        plan={answer.plan}
        sheet={say('rolloutTrip.manifest_link', { trip: tripId })}
      />
      <div className="trip-body">
        <nav className="among on-screen" aria-label={say('rolloutTrip.back_rollout')}>
          <Link to="/p/$programmeId/rollout" params={{ programmeId }} search={search}>
            <span aria-hidden="true">‹ </span>
            {say('rolloutTrip.back_rollout')}
          </Link>
          <Link
            to="/p/$programmeId/rollout/crews/$crewId"
            params={{ programmeId, crewId: crew.crewId }}
            search={search}
          >
            {say('rolloutTrip.itinerary_link', { crew: crew.name })}
          </Link>
        </nav>
        <h1>{say('rolloutTrip.title', { trip: tripId, leaves, back })}</h1>
        <p className="facts-line">{[crew.name, crew.goesBy, answer.plan].filter(Boolean).join('. ')}</p>
        <p className="sentence">{trip.said}</p>
        {trip.broken.map((one) => (
          <p key={`${one.kind} ${one.siteId}`} className="w-short">
            {one.said}
          </p>
        ))}
        {trip.tightSaid === null ? null : <p className="w-tight">{trip.tightSaid}</p>}
        <TripPapers
          {...{ programmeId, planId }}
          papers={[
            { path: `trips/${encodeURIComponent(tripId)}/manifest.pdf`, name: say('rolloutTrip.manifest_pdf') },
            ...(answer.hauls.length === 0
              ? []
              : [{ path: `trips/${encodeURIComponent(tripId)}/hauls.pdf`, name: say('rolloutTrip.hauls_pdf') }]),
            { path: `trips/${encodeURIComponent(tripId)}/notices.pdf`, name: say('rolloutTrip.notices_pdf') },
          ]}
        />
        <TripHauls answer={answer} />
        <Facts load={load} answer={answer} />
        {load.isAfloat ? <TripBoat load={load} /> : null}
        <LoadList {...{ load, programmeId }} trip={answer} />
        <TripLegs legs={answer.legs} />
      </div>
      <TripCautions of={answer.cautions} />
    </article>
  );
}

/** Four things that are read first. */
function Facts({ load, answer: { trip } }: { readonly load: TripLoad; readonly answer: RolloutTripAnswer }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const unweighed_count = load.unweighed_count + (load.fuel_kg === null ? 1 : 0);
  const { freeboard, longest } = load;
  return (
    <dl className="trip-facts">
      <div>
        <dt>{say('rolloutTrip.fact_load')}</dt>
        <dd>{massOf({ mass_kg: load.loaded_kg, unweighed_count, isKitInPart: load.isKitInPart }, language)}</dd>
      </div>
      {load.isAfloat ? (
        <div>
          <dt>{say(freeboard === null ? 'rolloutTrip.fact_freeboard_unknown' : 'rolloutTrip.fact_freeboard')}</dt>
          <dd>
            {freeboard === null ? '?' : say('kit.cm', { amount: numbers.fixed(Math.floor(freeboard.freeboard_cm), 0) })}
          </dd>
        </div>
      ) : null}
      <div>
        <dt>
          {longest === null ? say('rolloutTrip.longest_none') : say('rolloutTrip.fact_longest', { name: longest.name })}
        </dt>
        <dd>{longest === null ? '?' : numbers.quantity(longest.length_m, 'm')}</dd>
      </div>
      <div>
        <dt>{say('rolloutTrip.fact_nights', { count: trip.nights_count, day: numbers.date(trip.back) })}</dt>
        <dd>{numbers.fixed(trip.nights_count, 0)}</dd>
      </div>
    </dl>
  );
}
