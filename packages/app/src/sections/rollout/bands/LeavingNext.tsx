import type { RolloutSheet } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { memo, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { HaulLink } from './HaulLink.tsx';
import { massAboard } from './massAboard.ts';
import { byWayOf, type Going, goingNext, haulsFor, haulValues, peopleOf, type TripOfCrew } from './tripWords.ts';

/** Trips, and what is brought for them, that stand in the table before all are asked for. Ours. */
const first = 6;

interface At {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
}

/** Who leaves next, by way of what, with what aboard, and what is brought before to a store; a manifest each. */
export const LeavingNext = memo(function LeavingNext({ sheet, programmeId }: At) {
  const { say } = useLanguage();
  const [isAll, showAll] = useState(false);
  const going = goingNext(sheet);
  const columns = ['by', 'sites', 'people', 'nights', 'aboard'] as const;
  return (
    <section className="leaving-next" aria-labelledby="leaving-next">
      <h2 id="leaving-next">{say('rolloutBands.leaving')}</h2>
      {going.length === 0 ? (
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
            {going
              .slice(0, isAll ? going.length : first)
              .map((one) =>
                one.kind === 'trip' ? (
                  <Row key={one.of.trip.tripId} of={one.of} sheet={sheet} programmeId={programmeId} />
                ) : (
                  <HaulRow key={one.haul.haulId} going={one} sheet={sheet} programmeId={programmeId} />
                ),
              )}
          </tbody>
        </table>
      )}
      {isAll || going.length <= first ? null : (
        <button type="button" className="button plain on-screen" onClick={() => showAll(true)}>
          {say('rolloutBands.leaving_more', { count: going.length })}
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
      <td>
        {byWayOf(trip, sheet, language)}
        {haulsFor(sheet, trip).map(({ haulId, arrives }) => (
          <a key={haulId} className="small needs-haul" href={`#haul-${haulId}`}>
            {say('rolloutBands.waits_until', { arrives: numbers.date(arrives) })}
          </a>
        ))}
      </td>
      <td className="num">{numbers.fixed(trip.stops.length, 0)}</td>
      <td className="num">{numbers.fixed(peopleOf(trip), 0)}</td>
      <td className="num">{numbers.fixed(trip.nights_count, 0)}</td>
      <td className="num">
        {trip.loaded_kg === null ? say('numbers.notKnown') : massAboard(trip.loaded_kg, trip, language)}
      </td>
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

function HaulRow({
  going: { haul, of },
  sheet,
  programmeId,
}: At & { readonly going: Extract<Going, { readonly kind: 'haul' }> }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const values = haulValues(haul, sheet, language);
  const trip = say('rolloutBands.trip_at', { crew: of.crew.name, leaves: numbers.date(of.trip.leaves) });
  return (
    // Links of trips lead here: to be read from here on, it takes the focus.
    <tr id={`haul-${haul.haulId}`} tabIndex={-1}>
      <th scope="row">{values.leaves}</th>
      <td>{say('rolloutBands.haul_by', values)}</td>
      <td colSpan={4}>{say('rolloutBands.haul_where', { ...values, trip })}</td>
      <td className="num">{numbers.quantity(Math.round(haul.loaded_kg), 'kg')}</td>
      <td>{haul.back === null ? say('numbers.notKnown') : values.back}</td>
      <td className="on-screen">
        <HaulLink haul={haul} sheet={sheet} programmeId={programmeId} />
      </td>
    </tr>
  );
}
