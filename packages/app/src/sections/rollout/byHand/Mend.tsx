import type { RolloutSheet } from '@eavewell/tables';
import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useEffectEvent, useState } from 'react';
import { useWho } from '../../../api/useWho.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { NotBegun } from '../plans/MakePlan.tsx';
import { UnsaidTrips } from '../plans/UnsaidTrips.tsx';
import { useSearchForPlan } from '../plans/useSearch.ts';
import { rolloutQuery } from '../rolloutQuery.ts';
import { mendAsked, mendedWords } from './mended.ts';
import type { Laid } from './moveAnswer.ts';

/** So long is searched for a better order around a move [s]. Ours. */
const search_s = 4;

/** A search that mends: of which plan, as it was before it, and what came of it. */
interface Mending {
  readonly before: RolloutSheet;
  readonly taskId: string | null;
  /** Null: it is going on. */
  readonly said: string | null;
}

/** After a move: a better order of the trips around it is searched for, and kept as one step. */
// long: the press, how far it is, and what came of it
export function Mend({
  programmeId,
  sheet,
  laid,
}: {
  readonly programmeId: string;
  readonly sheet: RolloutSheet;
  readonly laid: Laid;
}) {
  const language = useLanguage();
  const { say } = language;
  const who = useWho();
  const client = useQueryClient();
  const { state, begin } = useSearchForPlan(programmeId);
  const [mending, setMending] = useState<Mending | null>(null);
  const { planId } = sheet;
  const { keepTrips, onlyCrews } = mendAsked(sheet, laid);
  const start = async () => {
    if (planId === null) return;
    const wanted = { from: planId, into: planId, name: null, seconds: search_s };
    try {
      const { taskId } = await begin.mutateAsync({ ...wanted, keepTrips: [...keepTrips], onlyCrews: [...onlyCrews] });
      setMending({ before: sheet, taskId, said: null });
    } catch {
      // Why it was not begun is said below.
      setMending(null);
    }
  };
  const isRunning = mending !== null && mending.said === null && state?.taskId === mending.taskId;
  const onEnd = useEffectEvent(async () => {
    if (mending === null || mending.said !== null || planId === null) return;
    const after = await client.fetchQuery({ ...rolloutQuery(programmeId, planId), staleTime: 0 });
    const moved = mendedWords(mending.before, after, language);
    const said = moved === null ? say('rolloutByHand.mended_none') : say('rolloutByHand.mended', { moved });
    setMending({ ...mending, said: state?.problem ?? said });
    void client.invalidateQueries({ queryKey: ['programme', programmeId] });
  });
  const ended = mending !== null && mending.said === null && state !== null && state.taskId === null;
  useEffect(() => {
    if (ended) void onEnd();
  }, [ended]);
  return (
    <div className="by-hand-mend">
      <UnsaidTrips
        {...{ programmeId, sheet }}
        mayChange={(tripId, crewId) => onlyCrews.includes(crewId) && !keepTrips.includes(tripId)}
      />
      <p>
        <button
          type="button"
          className="button"
          disabled={who === '' || begin.isPending || state?.taskId != null}
          onClick={() => void start()}
        >
          {say('rolloutByHand.mend')}
        </button>{' '}
        <span className="small">{say('rolloutByHand.mend_about')}</span>
      </p>
      <NotBegun error={begin.error} />
      {isRunning ? (
        <label>
          {say('rolloutByHand.mending')} <progress value={state?.done_fraction ?? 0} max={1} />
        </label>
      ) : null}
      <p role="status">{mending?.said}</p>
    </div>
  );
}
