import type { RolloutSheet } from '@eavewell/tables';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useEffectEvent, useRef } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { searchWords } from './planWords.ts';
import { type SearchState, useSearchForPlan } from './useSearch.ts';

/** The plan that was made last, and when those that are not kept were begun to be searched for. */
interface Made {
  readonly planId: string | null;
  readonly found: ReadonlyMap<string, string>;
}

const madeOf = (state: SearchState | null): Made => ({
  planId: state?.planId ?? null,
  found: new Map((state?.found ?? []).map(({ into, at }) => [into, at])),
});

/**
 * How far the search for a plan is, and what came of it. The page that waits for it is led to the plan when it is kept, and to what
 * changes where it is to be looked at first.
 */
export function Searching({ programmeId, sheet }: { readonly programmeId: string; readonly sheet: RolloutSheet }) {
  const language = useLanguage();
  const { say } = language;
  const navigate = useNavigate();
  const { state, callOff } = useSearchForPlan(programmeId);
  const running = useRef<Made | null>(null);
  const taskId = state?.taskId ?? null;
  const onTask = useEffectEvent((isRunning: boolean) => {
    const before = running.current;
    running.current = isRunning ? madeOf(state) : null;
    if (isRunning || before === null) return;
    const { planId, found } = madeOf(state);
    // One that was called off, or found nothing, leaves what was there before it.
    const into = [...found].find(([of, at]) => before.found.get(of) !== at)?.[0];
    if (into !== undefined)
      void navigate({ to: '/p/$programmeId/rollout/plans', params: { programmeId }, search: { a: into, anew: 'yes' } });
    else if (planId !== null && planId !== before.planId)
      void navigate({ to: '/p/$programmeId/rollout', params: { programmeId }, search: { plan: planId } });
  });
  useEffect(() => onTask(taskId !== null), [taskId]);
  if (state === null) return null;
  if (taskId === null)
    return state.problem === null ? null : (
      <p className="trouble" role="status">
        {say('rolloutPlans.search_failed')} {state.problem}
      </p>
    );
  return (
    <div className="plan-search on-screen">
      <label>
        {say('rolloutPlans.searching')} <progress value={state.done_fraction} max={1} />
      </label>
      <p role="status">{searchWords(state, sheet, language)}</p>
      <button type="button" className="button" disabled={callOff.isPending} onClick={() => callOff.mutate(taskId)}>
        {say('rolloutPlans.call_off')}
      </button>
    </div>
  );
}
