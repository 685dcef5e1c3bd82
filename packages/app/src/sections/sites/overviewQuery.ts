import { queryOptions } from '@tanstack/react-query';
import { loadOverview } from './overviewThread.ts';

/** While verdicts are being worked out the list is read again this often [ms], or less often where it is long [ms a site]. Ours. */
const [least_ms, each_ms] = [3000, 3] as const;

/**
 * The list of sites.
 *
 * @param programmeId - whose
 * @param language - the language of its sentences
 * @param isRunning - are verdicts being worked out? Then it is read again from time to time
 */
export const overviewQuery = (programmeId: string, language: string, isRunning: boolean) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'overview', language],
    queryFn: () => loadOverview(programmeId, language),
    // Ten thousand sites are not compared one by one with those of before.
    structuralSharing: false,
    refetchInterval: ({ state }) => (isRunning ? Math.max(least_ms, (state.data?.sites.length ?? 0) * each_ms) : false),
  });
