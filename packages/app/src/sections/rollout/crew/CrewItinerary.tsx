import type { RolloutSheet } from '@eavewell/tables';
import { useQueries, useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useReadAt } from '../../../offline/useReadAt.ts';
import { WhileWorkedOut } from '../leaning/WhileWorkedOut.tsx';
import { PaperFoot } from '../paper/PaperFoot.tsx';
import { planNamed } from '../plans/planNamed.ts';
import { rolloutQuery } from '../rolloutQuery.ts';
import { TripCautions } from '../trip/TripCautions.tsx';
import { TripPapers } from '../trip/TripPapers.tsx';
import { tripQuery } from '../trip/tripQuery.ts';
import { CrewTrip } from './CrewTrip.tsx';
import { tripsToRead } from './tripsToRead.ts';
import '../trip/trip.css';

const from = '/p/$programmeId/rollout/crews/$crewId';

/** What a crew does, day by day: to be read on a phone, and without a network once the rollout was opened there. */
export function CrewItinerary() {
  const { programmeId, crewId } = useParams({ from });
  return (
    <WhileWorkedOut programmeId={programmeId} title={crewId}>
      <Shown />
    </WhileWorkedOut>
  );
}

function Shown() {
  const { programmeId } = useParams({ from });
  const { plan } = useSearch({ from });
  // The plan that is shown where none is asked for is the one that is kept: asked for by name it is the same.
  const { data: usual } = useSuspenseQuery(rolloutQuery(programmeId));
  if (plan === undefined || plan === usual.planId) return <Itinerary sheet={usual} />;
  return <OfOtherPlan plan={plan} />;
}

function OfOtherPlan({ plan }: { readonly plan: string }) {
  const { programmeId } = useParams({ from });
  const { data } = useSuspenseQuery(rolloutQuery(programmeId, plan));
  return <Itinerary sheet={data} />;
}

function Itinerary({ sheet }: { readonly sheet: RolloutSheet }) {
  const { say, numbers } = useLanguage();
  const { programmeId, crewId } = useParams({ from });
  const { planId, day } = sheet;
  const crew = sheet.crews.find((one) => one.crewId === crewId);
  const trips = crew === undefined ? [] : tripsToRead(crew.trips);
  const read = useQueries({ queries: trips.map(({ tripId }) => tripQuery(programmeId, planId, tripId)) });
  const readAt = useReadAt();
  const cautions = read.flatMap(({ data }) => data?.cautions ?? []);
  const search = planId === null ? {} : { plan: planId };
  return (
    <article className="crew-itinerary">
      <PaperFoot
        programme={sheet.programme}
        plan={planNamed(sheet)}
        sheet={say('rolloutTrip.itinerary_link', { crew: crew?.name ?? crewId })}
      />
      <div className="trip-body">
        <nav className="among on-screen" aria-label={say('rolloutTrip.back_rollout')}>
          <Link to="/p/$programmeId/rollout" params={{ programmeId }} search={search}>
            <span aria-hidden="true">‹ </span>
            {say('rolloutTrip.back_rollout')}
          </Link>
        </nav>
        <h1>{crew === undefined ? crewId : say('rolloutTrip.crew_title', { crew: crew.name })}</h1>
        {crew === undefined ? <p>{say('rolloutTrip.no_such_crew')}</p> : null}
        {readAt === null ? null : (
          <p className="small">
            {say('rolloutTrip.as_of', { moment: numbers.moment(new Date(readAt).toISOString()) })}
          </p>
        )}
        {crew === undefined || trips.length > 0 ? null : <p>{say('rolloutTrip.no_trips')}</p>}
        {trips.map(({ tripId, leaves, back }, nth) => {
          const one = read[nth];
          if (one?.data !== undefined)
            return <CrewTrip key={tripId} {...{ programmeId, sheet }} answer={one.data} today={day} />;
          return (
            <section key={tripId} aria-label={tripId}>
              <h2>
                {say('rolloutTrip.trip_head', {
                  trip: tripId,
                  ...{ leaves: numbers.date(leaves), back: numbers.date(back) },
                })}
              </h2>
              <p role="status">
                {say(one?.isError === true ? 'rolloutTrip.not_kept' : 'rolloutTrip.reading', { trip: tripId })}
              </p>
            </section>
          );
        })}
        {trips.length === 0 ? null : (
          <TripPapers
            {...{ programmeId, planId }}
            papers={[
              { path: `crews/${encodeURIComponent(crewId)}/itinerary.pdf`, name: say('rolloutTrip.itinerary_pdf') },
            ]}
          />
        )}
      </div>
      <TripCautions of={cautions} />
    </article>
  );
}
