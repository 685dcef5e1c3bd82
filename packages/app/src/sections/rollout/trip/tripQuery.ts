import { queryOptions } from '@tanstack/react-query';
import { answerOf, api } from '../../../api/client.ts';

/** One trip of a plan in full; without a plan, of the one in force. */
export const tripQuery = (programmeId: string, planId: string | null, tripId: string) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'rolloutTrip', planId ?? '', tripId],
    queryFn: () =>
      answerOf(
        api.GET('/api/programmes/{programmeId}/rollout/trips/{tripId}', {
          params: { path: { programmeId, tripId }, query: planId === null ? {} : { plan: planId } },
        }),
      ),
  });
