import type { SheetTrip } from '@eavewell/tables';

/** Trips that are still to be gone or come home from, those under way first, in the order they leave. */
export function tripsToRead(trips: readonly SheetTrip[]): readonly SheetTrip[] {
  const rank = ({ state }: SheetTrip) => (state === 'underWay' ? 0 : 1);
  return trips
    .filter(({ state }) => state !== 'done')
    .toSorted((a, b) => rank(a) - rank(b) || a.leaves.localeCompare(b.leaves) || a.order - b.order);
}
