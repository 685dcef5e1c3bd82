import type { RolloutComparison } from '@eavewell/tables';
import { useId, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

type Anew = NonNullable<RolloutComparison['anew']>;
type Trip = Anew['trips'][number];

/** Trips shown before one asks for more. Ours. */
const first_most = 12;

/** Trips that go on another day, by another crew or to other sites: those that leave next first, as people may be packing. */
export function ChangedTrips({ trips }: { readonly trips: readonly Trip[] }) {
  const { say } = useLanguage();
  const id = useId();
  const [isAll, setAll] = useState(false);
  const soon_count = soonOf(trips);
  if (trips.length === 0) return <p>{say('rolloutPlans.anew_trips_none')}</p>;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{say('rolloutPlans.anew_trips', { count: trips.length })}</h2>
      <ul className="plain-list changed-trips">
        {(isAll ? trips : trips.slice(0, Math.max(first_most, soon_count))).map((trip) => (
          <li key={trip.tripId}>
            <details>
              <summary className="press">{trip.isSoon ? <b>{trip.said}</b> : trip.said}</summary>
              <Goes head={say('rolloutPlans.anew_stops_before')} of={trip.before} />
              <Goes head={say('rolloutPlans.anew_stops_after')} of={trip.after} />
            </details>
          </li>
        ))}
      </ul>
      {isAll || trips.length <= Math.max(first_most, soon_count) ? null : (
        <button type="button" className="button on-screen" onClick={() => setAll(true)}>
          {say('rolloutPlans.anew_trips_all', { count: trips.length })}
        </button>
      )}
    </section>
  );
}

const soonOf = (trips: readonly Trip[]) => trips.filter(({ isSoon }) => isSoon).length;

/** That some of the trips leave in the next days: people may be packing. */
export function LeavingSoon({ trips }: { readonly trips: readonly Trip[] }) {
  const { say } = useLanguage();
  const count = soonOf(trips);
  return count === 0 ? null : (
    <p>
      <b className="w-tight">{say('rolloutPlans.anew_trips_soon', { count })}</b>
    </p>
  );
}

/** Who goes when and where under one of the plans. */
function Goes({ head, of }: { readonly head: string; readonly of: Trip['before'] }) {
  const { say, numbers } = useLanguage();
  const said =
    of === null
      ? say('rolloutPlans.anew_stops_none')
      : say('rolloutPlans.anew_goes', {
          ...{ crew: of.crew, places: of.stops.join(', '), isWithin: of.leaves === null ? 'no' : 'yes' },
          leaves: of.leaves === null ? '' : numbers.date(of.leaves),
        });
  return (
    <p>
      <span className="small">{head}</span> {said}
    </p>
  );
}

/** What does not hold under it; what holds as things stand is named as new. */
export function NotHoldingAnew({ broken }: { readonly broken: Anew['broken'] }) {
  const { say } = useLanguage();
  const id = useId();
  if (broken.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{say('rolloutPlans.anew_broken', { count: broken.length })}</h2>
      <ul className="plain-list">
        {broken.map(({ said, isNew }) => (
          <li key={said}>
            {said} {isNew ? <b className="w-short">{say('rolloutPlans.anew_broken_new')}</b> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}
