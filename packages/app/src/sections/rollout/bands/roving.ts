import type { HullBox, HullsLaid } from './hulls.ts';

/** The trip one comes to first: that under way or the next to leave, of the crew that leaves first; null where there is none. */
export function firstTrip({ rows }: HullsLaid): string | null {
  const all = rows.flatMap(({ hulls }) => hulls);
  const open = all.filter(({ state }) => state !== 'done').sort((a, b) => a.x - b.x || a.row - b.row);
  return (open[0] ?? all[0])?.tripId ?? null;
}

const middle = ({ x, width }: HullBox) => x + width / 2;

/** The hull of the nearest row above or below that has any, nearest in time. */
function nearestInRow({ rows }: HullsLaid, from: HullBox, step: 1 | -1): HullBox | null {
  for (let row = from.row + step; row >= 0 && row < rows.length; row += step) {
    const found = rows[row]!.hulls.reduce<HullBox | null>(
      (best, one) =>
        best === null || Math.abs(middle(one) - middle(from)) < Math.abs(middle(best) - middle(from)) ? one : best,
      null,
    );
    if (found !== null) return found;
  }
  return null;
}

/**
 * Where a key leads from a trip.
 *
 * @param key - as the browser names it
 * @param isCtrl - with Home and End: of all crews
 * @returns the trip, or null where the key leads nowhere
 */
export function tripAfterKey(laid: HullsLaid, tripId: string, key: string, isCtrl = false): string | null {
  const hull = laid.hullOf.get(tripId);
  if (hull === undefined) return firstTrip(laid);
  const own = laid.rows[hull.row]!.hulls;
  const at = own.indexOf(hull);
  const all = isCtrl ? laid.rows.flatMap(({ hulls }) => hulls) : own;
  const found = {
    ArrowRight: own[at + 1],
    ArrowLeft: own[at - 1],
    ArrowDown: nearestInRow(laid, hull, 1),
    ArrowUp: nearestInRow(laid, hull, -1),
    Home: all[0],
    End: all.at(-1),
  }[key];
  return found?.tripId ?? null;
}
