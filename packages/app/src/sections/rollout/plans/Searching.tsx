import type { RolloutSheet } from '@eavewell/tables';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useEffectEvent, useRef } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { searchWords } from './planWords.ts';
import { useSearchForPlan } from './useSearch.ts';

/** How far the search for a plan is, and what came of it. The page that waits for it is led to the plan when it is kept. */
export function Searching({ programmeId, sheet }: { readonly programmeId: string; readonly sheet: RolloutSheet }) {
  const language = useLanguage();
  const { say } = language;
  const navigate = useNavigate();
  const { state, callOff } = useSearchForPlan(programmeId);
  const running = useRef<{ readonly madeBefore: string | null } | null>(null);
  const taskId = state?.taskId ?? null;
  const onTask = useEffectEvent((isRunning: boolean) => {
    const made = state?.planId ?? null;
    const before = running.current;
    running.current = isRunning ? { madeBefore: made } : null;
    // One that was called off, or found nothing, leaves the plan that was made before it.
    if (isRunning || before === null || made === null || made === before.madeBefore) return;
    void navigate({ to: '/p/$programmeId/rollout', params: { programmeId }, search: { plan: made } });
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
