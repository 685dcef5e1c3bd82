import type { RolloutSheet } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

interface OfPlan {
  readonly programmeId: string;
  readonly sheet: Pick<RolloutSheet, 'planId' | 'crews'>;
  /** Whether a trip may change by what is about to be done; left out: any of them may. */
  mayChange?(tripId: string, crewId: string): boolean;
}

/** Before trips change: how many of them should have left, and nobody has said whether they did. Changed, they are not asked about. */
export function UnsaidTrips({ programmeId, sheet: { planId, crews }, mayChange = () => true }: OfPlan) {
  const { say } = useLanguage();
  const unsaid = crews.flatMap(({ crewId, trips }) =>
    trips.filter((trip) => trip.isOverdue && trip.state === 'planned' && mayChange(trip.tripId, crewId)),
  );
  const count = unsaid.length;
  if (count === 0) return null;
  return (
    <p className="w-tight">
      {say('rolloutPlans.unsaid', { count })}{' '}
      <Link
        className="on-screen"
        to="/p/$programmeId/rollout/happened"
        params={{ programmeId }}
        search={planId === null ? {} : { plan: planId }}
      >
        {say('rolloutPlans.unsaid_say', { count })}
      </Link>
    </p>
  );
}
