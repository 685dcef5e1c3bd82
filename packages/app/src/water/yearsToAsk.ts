import { madeDay } from '@eavewell/engine';
import type { Judged } from './siteJudge.ts';

/**
 * Of how many water years can the last ones be asked? Of all whole ones, judged or not, as the engine counts them.
 *
 * @param judged - the site as it is judged
 * @returns years [year]; null where no rain is judged, and where it is made up: such years follow no calendar, so none is nearer to now
 */
export function yearsToAsk({ storages }: Pick<Judged, 'storages'>): number | null {
  const [storage] = storages;
  if (storage === undefined || storage.series.state.includes(madeDay)) return null;
  return storage.years.length;
}
