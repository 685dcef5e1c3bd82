import { hashKey, queryOptions } from '@tanstack/react-query';
import { overviewOf } from './overviewOpened.ts';
import { loadOverview } from './overviewThread.ts';

/** While verdicts are being worked out the list is read again this often [ms], or less often where it is long [ms a site]. Ours. */
const [least_ms, each_ms] = [3000, 3] as const;

const keyOf = (programmeId: string, language: string) =>
  ['programme', programmeId, 'sites-in-short', language] as const;

/** Under what the list is kept in this browser. */
export const overviewName = (programmeId: string, language: string): string => hashKey(keyOf(programmeId, language));

/**
 * The list of sites.
 *
 * @param programmeId - whose
 * @param language - the language of its sentences
 * @param isRunning - are verdicts being worked out? Then it is read again from time to time
 */
export const overviewQuery = (programmeId: string, language: string, isRunning: boolean) =>
  queryOptions({
    queryKey: keyOf(programmeId, language),
    queryFn: () => loadOverview(programmeId, language, overviewName(programmeId, language)),
    select: overviewOf,
    // Its thread keeps it.
    meta: { isNotKept: true },
    // Ten thousand sites are not compared one by one with those of before.
    structuralSharing: false,
    refetchInterval: ({ state: { data } }) =>
      isRunning ? Math.max(least_ms, data === undefined ? 0 : overviewOf(data).count * each_ms) : false,
  });
