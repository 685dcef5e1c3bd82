import { useMutation, useQueryClient } from '@tanstack/react-query';
import { answerOf, api, NotDone } from '../../../api/client.ts';
import { askAnew } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { sayDone } from '../../../offline/lastSaved.ts';
import { type Found, useSearchForPlan } from './useSearch.ts';

/** How long is searched when a plan is made anew from today [s]. Ours: as long as the command does. */
export const anew_s = 10;

/**
 * A plan that was found in place of another: what may be done with it.
 *
 * @param programmeId - the programme
 * @param into - the plan it would take the place of
 * @returns `found`: null where there is none, undefined as long as nobody knows; `keep` and `leave` it; `begin` searches, from it where there is one
 */
export function useFound(programmeId: string, into: string | null) {
  const by = useWho();
  const client = useQueryClient();
  const { state, begin } = useSearchForPlan(programmeId);
  const found = state === null ? undefined : (state.found.find((one) => one.into === into) ?? null);
  const onSettled = () => void askAnew(client, programmeId);
  const keep = useMutation({
    mutationFn: ({ into: of, at }: Found) =>
      answerOf(
        api.POST('/api/programmes/{programmeId}/rollout/found/{into}', {
          params: { path: { programmeId, into: of } },
          body: { by, at },
        }),
      ),
    onSuccess: sayDone,
    onSettled,
  });
  const leave = useMutation({
    mutationFn: async ({ into: of }: Found) => {
      const params = { path: { programmeId, into: of } };
      const { response } = await api.DELETE('/api/programmes/{programmeId}/rollout/found/{into}', { params });
      // One that is there no more is left already.
      if (!response.ok && response.status !== 404) throw new NotDone('problems');
    },
    onSettled,
  });
  const anew = () => {
    if (into !== null) begin.mutate({ from: into, into, isHeld: true, name: null, seconds: anew_s, onlyCrews: null });
  };
  return { found, keep, leave, anew, begin, isBusy: state?.taskId != null || begin.isPending };
}
