import type { RolloutSheet, SheetTrip } from '@eavewell/tables';
import { useQueryClient } from '@tanstack/react-query';
import { queries } from '../../../api/queries.ts';
import { useChange } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { cannotTake } from './hand.ts';
import { cannotWords } from './moveWords.ts';
import type { Held } from './places.ts';

/** In a trip that is opened: what of it may be taken up, and whether it is locked. */
export function TakeUp({
  programmeId,
  sheet,
  trip,
  onTake,
}: {
  readonly programmeId: string;
  readonly sheet: RolloutSheet;
  readonly trip: SheetTrip;
  onTake(held: Held): void;
}) {
  const language = useLanguage();
  const { say } = language;
  if (sheet.planId === null) return <p className="small">{say('rolloutByHand.no_plan')}</p>;
  const whole: Held = { kind: 'trip', tripId: trip.tripId };
  const why = cannotTake(sheet, whole);
  return (
    <div className="by-hand-take on-screen">
      {why === null ? (
        <>
          <button type="button" className="button plain" onClick={() => onTake(whole)}>
            {say('rolloutByHand.move_trip')}
          </button>
          {trip.stops.map(({ siteId, name }) => (
            <button
              key={siteId}
              type="button"
              className="button plain"
              onClick={() => onTake({ kind: 'site', siteId })}
            >
              {say('rolloutByHand.move_site', { site: name })}
            </button>
          ))}
        </>
      ) : (
        <p className="small">{cannotWords(sheet, whole, why, null, language)}</p>
      )}
      {trip.state === 'planned' ? <Lock {...{ programmeId, trip }} planId={sheet.planId} /> : null}
    </div>
  );
}

/** Locked, a trip stays as it is when the plan is made anew or changed by hand. */
function Lock({
  programmeId,
  planId,
  trip,
}: {
  readonly programmeId: string;
  readonly planId: string;
  readonly trip: SheetTrip;
}) {
  const { say } = useLanguage();
  const who = useWho();
  const client = useQueryClient();
  const { change, state, outcome } = useChange(programmeId);
  const turn = async () => {
    const { rows } = await client.fetchQuery({ ...queries.table(programmeId, 'planTrips'), staleTime: 0 });
    const row = rows.find(({ cells }) => cells['planId'] === planId && cells['tripId'] === trip.tripId);
    if (row === undefined) return;
    const before = { isLocked: row.cells['isLocked'] ?? null };
    const after = { isLocked: trip.isLocked ? 'no' : 'yes' };
    await change([{ kind: 'edited', table: 'planTrips', key: row.key, before, after }]);
  };
  return (
    <>
      {who === '' ? <Who /> : null}
      <NotSaved outcome={outcome} />
      <button
        type="button"
        className="button plain"
        disabled={who === '' || state === 'saving'}
        onClick={() => void turn()}
      >
        {say(trip.isLocked ? 'rolloutByHand.unlock' : 'rolloutByHand.lock')}
      </button>
    </>
  );
}
