import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { paths } from '../../api/apiTypes.ts';
import { answerOf, api } from '../../api/client.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** Where a programme stands. */
type State = paths['/api/programmes/{programmeId}']['get']['responses'][200]['content']['application/json'];

/** How far the verdicts of the present facts are: worked out now, stopped, or failed. Nothing where they are there. */
export function Progress({
  programmeId,
  state,
  count,
  isOfBefore,
}: {
  readonly programmeId: string;
  readonly state: State;
  readonly count: number;
  readonly isOfBefore: boolean;
}) {
  const { say, numbers } = useLanguage();
  const client = useQueryClient();
  const params = { params: { path: { programmeId } } };
  const onSettled = () => client.invalidateQueries({ queryKey: ['programme', programmeId] });
  const stop = useMutation({
    mutationFn: () => answerOf(api.DELETE('/api/programmes/{programmeId}/design', params)),
    onSettled,
  });
  if (state.done_fraction === 1) return null;
  const before = isOfBefore ? ` ${say('sites.of_before')}` : '';
  if (state.isFailed || state.isCalledOff)
    return (
      <div className={state.isFailed ? 'trouble' : 'heed'} role="status">
        <p>
          {say(state.isFailed ? 'sites.failed' : 'sites.called_off')}
          {before}
        </p>
        <WorkOutAgain programmeId={programmeId} isFailed={state.isFailed} />
      </div>
    );
  const done = numbers.quantity(Math.floor(state.done_fraction * count), 'count');
  return (
    <p className="progress">
      {say('sites.working_out', { done, all: count })}
      {before}{' '}
      <button type="button" className="press on-screen" onClick={() => stop.mutate()}>
        {say('sites.call_off')}
      </button>
    </p>
  );
}

/** Lets the verdicts be worked out that failed, or were stopped. */
export function WorkOutAgain({ programmeId, isFailed }: { readonly programmeId: string; readonly isFailed: boolean }) {
  const { say } = useLanguage();
  const client = useQueryClient();
  const again = useMutation({
    mutationFn: () => answerOf(api.POST('/api/programmes/{programmeId}/design', { params: { path: { programmeId } } })),
    onSettled: () => client.invalidateQueries({ queryKey: ['programme', programmeId] }),
  });
  return (
    <button type="button" className="button on-screen" onClick={() => again.mutate()}>
      {say(isFailed ? 'sites.try_again' : 'sites.begin_again')}
    </button>
  );
}
