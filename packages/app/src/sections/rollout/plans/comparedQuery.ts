import { answerOf, api } from '../../../api/client.ts';

/** Two plans side by side. `of`: when the second was found, where it is not kept: another may be found under the same id. */
export const comparedQuery = (programmeId: string, a: string, b: string, of = '') => ({
  queryKey: ['programme', programmeId, 'rolloutCompared', a, b, of],
  queryFn: () =>
    answerOf(
      api.GET('/api/programmes/{programmeId}/rollout/compared', {
        params: { path: { programmeId }, query: { a, b } },
      }),
    ),
  enabled: a !== b,
});
