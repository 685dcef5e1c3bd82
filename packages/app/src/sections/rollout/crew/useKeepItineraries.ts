import type { RolloutSheet } from '@eavewell/tables';
import { type QueryClient, useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { tripQuery } from '../trip/tripQuery.ts';
import { tripsToRead } from './tripsToRead.ts';

/** Trips of each crew that are read ahead, and of all of them: what a phone is taken along for. Ours. */
export const ahead = { ofCrew: 4, ofAll: 120 } as const;
/** After a sheet stands so long nobody waits for it any more; and so long the pages keep what was read ahead in their memory [ms]. Ours. */
const [settled_ms, held_ms] = [1500, 1000] as const;
const waits_ms = 200;

/** Which trips are read ahead: the next of each crew first, then the ones after. */
export function tripsAhead({ crews }: Pick<RolloutSheet, 'crews'>): readonly string[] {
  const each = crews.map(({ trips }) => tripsToRead(trips).slice(0, ahead.ofCrew));
  const inTurn = Array.from({ length: ahead.ofCrew }, (_, nth) => each.flatMap((trips) => trips[nth] ?? []));
  return inTurn
    .flat()
    .slice(0, ahead.ofAll)
    .map(({ tripId }) => tripId);
}

/**
 * Reads the trips that come next of every crew of the plan in force (where none is, of the plan that is shown), one after the other, so that this device keeps them: a crew that opened the rollout
 * once reads its days without a network. What fails is asked for again when it is opened.
 */
export function useKeepItineraries(sheet: RolloutSheet, programmeId: string): void {
  const client = useQueryClient();
  useEffect(() => {
    const { planId, plans } = sheet;
    const followed = plans.find(({ isInForce }) => isInForce)?.planId ?? planId;
    if (planId === null || planId !== followed) return;
    const stop = new AbortController();
    const timer = setTimeout(
      () => void readAhead(client, programmeId, planId, tripsAhead(sheet), stop.signal),
      settled_ms,
    );
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [client, programmeId, sheet]);
}

async function readAhead(
  client: QueryClient,
  programmeId: string,
  planId: string,
  tripIds: readonly string[],
  signal: AbortSignal,
): Promise<void> {
  // While something is entered, or the plan is asked for anew, its trips may be others: they are waited for.
  const isOpen = () =>
    client.isMutating() > 0 || client.isFetching({ queryKey: ['programme', programmeId, 'rollout'] }) > 0;
  for (const tripId of tripIds) {
    while (isOpen() && !signal.aborted) await new Promise((later) => setTimeout(later, waits_ms));
    if (signal.aborted) return;
    await client.prefetchQuery({ ...tripQuery(programmeId, planId, tripId), gcTime: held_ms, staleTime: 0 });
  }
}
