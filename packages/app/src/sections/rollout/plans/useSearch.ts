import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { paths } from '../../../api/apiTypes.ts';
import { answerOf, api } from '../../../api/client.ts';
import { useWho } from '../../../api/useWho.ts';

type SearchPath = paths['/api/programmes/{programmeId}/rollout/search'];

/** How the search for a plan gets on. */
export type SearchState = SearchPath['get']['responses'][200]['content']['application/json'];

/** A plan that was found in place of another, and is not kept. */
export type Found = SearchState['found'][number];

/** What a search is asked, less who asks and the seed. */
export type SearchAsked = Omit<SearchPath['post']['requestBody']['content']['application/json'], 'by' | 'seed'>;

/** Asked for again while one runs, should no event come [ms]. Ours. */
const again_ms = 1000;

/** Reads how the search gets on. */
export const readSearch = (programmeId: string) =>
  answerOf(api.GET('/api/programmes/{programmeId}/rollout/search', { params: { path: { programmeId } } }));

/** How the search gets on; one that was begun on another page, or before this one was read, too. */
export const searchQuery = (programmeId: string) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'rolloutSearch'],
    queryFn: () => readSearch(programmeId),
    // What runs is of this moment alone.
    meta: { isNotKept: true },
    refetchInterval: ({ state }) => (state.data?.taskId == null ? false : again_ms),
  });

/** A whole number that another press does not throw again: another search looks elsewhere. */
const throwSeed = () => Math.floor(Math.random() * 2 ** 32);

/**
 * The search for a plan: how it gets on, how it is begun and called off.
 *
 * @param programmeId - the programme
 */
export function useSearchForPlan(programmeId: string) {
  const by = useWho();
  const client = useQueryClient();
  const { data: state } = useQuery(searchQuery(programmeId));
  const anew = () => client.invalidateQueries({ queryKey: ['programme', programmeId, 'rolloutSearch'] });
  const begin = useMutation({
    mutationFn: (asked: SearchAsked) =>
      answerOf(
        api.POST('/api/programmes/{programmeId}/rollout/search', {
          params: { path: { programmeId } },
          body: { ...asked, by, seed: throwSeed() },
        }),
      ),
    onSettled: anew,
  });
  const callOff = useMutation({
    mutationFn: async (taskId: string) => {
      await api.DELETE('/api/tasks/{taskId}', { params: { path: { taskId } } });
    },
    onSettled: anew,
  });
  return { state: state ?? null, begin, callOff };
}
