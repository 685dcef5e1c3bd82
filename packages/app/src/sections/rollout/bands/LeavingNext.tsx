import type { RolloutSheet } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { memo, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { massAboard } from './massAboard.ts';
import { byWayOf, leavingNext, peopleOf, type TripOfCrew } from './tripWords.ts';

/** Trips that stand in the table before all are asked for. Ours. */
const first = 6;

interface At {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
}

/** Who leaves next, by way of what, with what aboard; a manifest each. */
export const LeavingNext = memo(function LeavingNext({ sheet, programmeId }: At) {
  const { say } = useLanguage();
  const [isAll, showAll] = useState(false);
  const trips = leavingNext(sheet);
  const columns = ['by', 'sites', 'people', 'nights', 'aboard'] as const;
  return (
    <section className="leaving-next" aria-labelledby="leaving-next">
      <h2 id="leaving-next">{say('rolloutBands.leaving')}</h2>
      {trips.length === 0 ? (
        <p>{say('rolloutBands.leaving_none')}</p>
      ) : (
        <table aria-labelledby="leaving-next">
          <thead>
            <tr>
              <th scope="col">{say('rolloutBands.head_leaves')}</th>
              <th scope="col">{say('rolloutBands.head_crew')}</th>
              {columns.map((column) => (
                <th key={column} scope="col" className={column === 'by' ? undefined : 'num'}>
                  {say(`rolloutBands.head_${column}`)}
                </th>
              ))}
              <th scope="col">{say('rolloutBands.head_back')}</th>
              <td className="on-screen" />
            </tr>
          </thead>
          <tbody>
            {trips.slice(0, isAll ? trips.length : first).map((of) => (
              <Row key={of.trip.tripId} of={of} sheet={sheet} programmeId={programmeId} />
            ))}
          </tbody>
        </table>
      )}
      {isAll || trips.length <= first ? null : (
        <button type="button" className="button plain on-screen" onClick={() => showAll(true)}>
          {say('rolloutBands.leaving_more', { count: trips.length })}
        </button>
      )}
    </section>
  );
});

function Row({ of: { trip, crew }, sheet, programmeId }: At & { readonly of: TripOfCrew }) {
  const language = useLanguage();
  const { say, numbers } = language;
  return (
    <tr>
      <th scope="row">{numbers.date(trip.leaves)}</th>
      <td>{crew.name}</td>
      <td>{byWayOf(trip, sheet, language)}</td>
      <td className="num">{numbers.fixed(trip.stops.length, 0)}</td>
      <td className="num">{numbers.fixed(peopleOf(trip), 0)}</td>
      <td className="num">{numbers.fixed(trip.nights_count, 0)}</td>
      <td className="num">{trip.kg === null ? say('numbers.notKnown') : massAboard(trip.kg, trip, language)}</td>
      <td>{numbers.date(trip.back)}</td>
      <td className="on-screen">
        <Link
          to="/p/$programmeId/rollout/trips/$tripId"
          params={{ programmeId, tripId: trip.tripId }}
          search={sheet.planId === null ? {} : { plan: sheet.planId }}
          aria-label={say('rolloutBands.manifest_of', {
            trip: say('rolloutBands.trip_name', {
              crew: crew.name,
              leaves: numbers.date(trip.leaves),
              back: numbers.date(trip.back),
            }),
          })}
        >
          {say('rolloutBands.manifest')}
        </Link>
      </td>
    </tr>
  );
}
