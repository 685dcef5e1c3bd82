import { answerOf, api } from '../../../api/client.ts';
import { type Found, readSearch } from './useSearch.ts';

const read = (programmeId: string, a: string, b: string) =>
  answerOf(
    api.GET('/api/programmes/{programmeId}/rollout/compared', { params: { path: { programmeId }, query: { a, b } } }),
  );

/** Two plans that are kept, side by side. */
export const comparedQuery = (programmeId: string, a: string, b: string) => ({
  queryKey: ['programme', programmeId, 'rolloutCompared', a, b],
  queryFn: () => read(programmeId, a, b),
  enabled: a !== b,
});

/** A plan that was found beside the one it would take the place of; null: somebody kept it or left it, or another was found since. */
export const foundQuery = (programmeId: string, { into, planId, at }: Found) => ({
  queryKey: ['programme', programmeId, 'rolloutCompared', into, planId, at],
  queryFn: async () => {
    const { found } = await readSearch(programmeId);
    const isHeld = found.some((one) => one.into === into && one.at === at);
    return isHeld ? read(programmeId, into, planId) : null;
  },
  meta: { isNotKept: true },
});
