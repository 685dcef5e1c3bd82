import type { RolloutSheet } from '@eavewell/tables';
import { memo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import { type TripOfCrew, tripsOf } from './tripWords.ts';

/** Sentences of a kind that stand open; the rest is folded. Ours. */
const open_most = 3;

const sitesOf = ({ trip: { stops } }: TripOfCrew) => `${stops.map(({ name }) => name).join(', ')}.`;

interface Told {
  readonly key: string;
  readonly said: string;
  readonly trip: TripOfCrew | null;
}

/** What cannot go as planned, what is tight and what is overdue: over the bands, in sentences, the gravest first. */
export const Exceptions = memo(function Exceptions({
  sheet,
  onShow,
}: {
  readonly sheet: RolloutSheet;
  readonly onShow: (tripId: string, from: HTMLElement) => void;
}) {
  const { say } = useLanguage();
  const all = tripsOf(sheet).filter(({ trip }) => trip.state !== 'done');
  const broken = all.filter(({ trip }) => trip.broken.length > 0);
  const tight = all.filter(({ trip }) => trip.isTight && trip.broken.length === 0);
  const overdue = all.filter(({ trip }) => trip.isOverdue);
  // Where no plan is kept yet, nothing of it can be wrong.
  const ofPlan = sheet.planId === null ? [] : sheet.broken.filter(({ tripId }) => tripId === null);
  const told = {
    broken: broken.flatMap((of) =>
      of.trip.broken.map(({ said }, nth): Told => ({ key: `${of.trip.tripId} ${nth}`, said, trip: of })),
    ),
    plan: ofPlan.map(({ said }, nth): Told => ({ key: String(nth), said, trip: null })),
    overdue: overdue.map((of): Told => ({ key: of.trip.tripId, said: of.trip.overdueSaid ?? sitesOf(of), trip: of })),
    tight: tight.map((of): Told => ({ key: of.trip.tripId, said: of.trip.tightSaid ?? sitesOf(of), trip: of })),
  };
  const counts = { broken: broken.length, plan: ofPlan.length, overdue: overdue.length, tight: tight.length };
  const kinds = (['broken', 'plan', 'overdue', 'tight'] as const).filter((kind) => counts[kind] > 0);
  if (kinds.length === 0) return null;
  return (
    <div className="bands-exceptions">
      {kinds.map((kind) => (
        <section key={kind} className={kind === 'tight' || kind === 'overdue' ? 'of-tight' : 'of-short'}>
          <VerdictMark verdict={kind === 'tight' || kind === 'overdue' ? 'tight' : 'short'} size={30} />
          <div>
            <h2>{say(`rolloutBands.${kind}_head`, { count: counts[kind] })}</h2>
            <Sentences told={told[kind].slice(0, open_most)} onShow={onShow} />
            {told[kind].length <= open_most ? null : (
              <details>
                <summary>{say('rolloutBands.more', { count: told[kind].length - open_most })}</summary>
                <Sentences told={told[kind].slice(open_most)} onShow={onShow} />
              </details>
            )}
          </div>
        </section>
      ))}
    </div>
  );
});

function Sentences({
  told,
  onShow,
}: {
  readonly told: readonly Told[];
  readonly onShow: (tripId: string, from: HTMLElement) => void;
}) {
  const { say, numbers } = useLanguage();
  const tripAt = ({ trip, crew }: TripOfCrew) =>
    say('rolloutBands.trip_at', { crew: crew.name, leaves: numbers.date(trip.leaves) });
  return (
    <ul>
      {told.map(({ key, said, trip }) => (
        <li key={key}>
          {trip === null ? null : <b>{tripAt(trip)}:</b>} {said}{' '}
          {trip === null ? null : (
            <button
              type="button"
              className="press on-screen"
              onClick={(event) => onShow(trip.trip.tripId, event.currentTarget)}
            >
              {say('rolloutBands.show_trip')}
              <span className="said-only"> {tripAt(trip)}</span>
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
