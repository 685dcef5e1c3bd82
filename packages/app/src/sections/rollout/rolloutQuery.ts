import { queryOptions } from '@tanstack/react-query';
import { answerOf, api } from '../../api/client.ts';

/** The sheet of the rollout: the plan that is asked for, else the one in force. */
export const rolloutQuery = (programmeId: string, plan?: string) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'rollout', plan ?? ''],
    queryFn: () =>
      answerOf(
        api.GET('/api/programmes/{programmeId}/rollout', {
          params: { path: { programmeId }, query: plan === undefined ? {} : { plan } },
        }),
      ),
  });
