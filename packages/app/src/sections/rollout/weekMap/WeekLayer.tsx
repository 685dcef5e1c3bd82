import { memo, useMemo } from 'react';
import { type MapOn, type PlanePoint, pathOf } from '../../map/index.ts';
import { beside } from './beside.ts';
import type { WeekPicture } from './weekPicture.ts';

/** How far from the line of a way a crew's own line runs, and how far the next crew's from it [px]. Ours. */
const [aside_px, each_px] = [3.5, 3] as const;
/** Heights of the tanks [px]: of a village that is worked at, and of the others. Ours. */
const [large_px, small_px] = [20, 10] as const;

/** What happens in a week, over the ways: closed ones hatched, each crew's way, tanks that are full where people drink. */
export const WeekLayer = memo(
  function WeekLayer({ picture, on }: { readonly picture: WeekPicture; readonly on: MapOn }) {
    const laid = useMemo(() => laidOn(picture, on.plane), [picture, on.plane]);
    const { full, empty } = tanksOf(picture, on);
    const drawn = (line: readonly PlanePoint[]) => line.map((point) => on.at(point));
    return (
      <g className="week-layer">
        {laid.closed.map(({ key, kind, line }) => (
          <g key={key} className={`closed-way of-${kind}`}>
            <path className="clear" d={pathOf(drawn(line))} />
            <path className="hatch" d={pathOf(drawn(line))} />
          </g>
        ))}
        {laid.trips.map(({ key, state, place, lines }) => (
          <g key={key} className={`week-trip is-${state}`}>
            {lines.map(({ line, isOfWeek }, i) => (
              <path
                // biome-ignore lint/suspicious/noArrayIndexKey: legs of one trip, in their order
                key={i}
                className={isOfWeek ? 'of-week' : ''}
                d={pathOf(beside(drawn(line), aside_px + place * each_px))}
              />
            ))}
          </g>
        ))}
        <path className="week-tanks is-empty" d={empty} />
        <path className="week-tanks is-full" d={full} />
      </g>
    );
  },
  (before, now) => before.picture === now.picture && before.on.at === now.on.at && before.on.near === now.on.near,
);

const laidOn = ({ closed, trips }: WeekPicture, plane: MapOn['plane']) => {
  const points = (line: WeekPicture['closed'][number]['line']) =>
    line.map((position) => plane.at(position)).filter((point) => point !== null);
  return {
    closed: closed.map((way) => ({ ...way, line: points(way.line) })),
    trips: trips.map((trip) => ({
      ...trip,
      lines: trip.lines.map(({ line, isOfWeek }) => ({ line: points(line), isOfWeek })),
    })),
  };
};

/** A small tank for each village: full where people drink, large where a crew works. */
function tanksOf(
  { isServed, worked }: WeekPicture,
  { near, at }: MapOn,
): { readonly full: string; readonly empty: string } {
  const tanks = { full: [] as string[], empty: [] as string[] };
  for (let i = 0; i < near.count; i++) {
    const key = near.keyAt(i);
    const tank = tankAt(at([near.east_km[i]!, near.south_km[i]!]), worked.has(key) ? large_px : small_px);
    tanks[isServed(key) ? 'full' : 'empty'].push(tank);
  }
  return { full: tanks.full.join(''), empty: tanks.empty.join('') };
}

/** A tank in section: a slightly domed lid, straight walls, a square foot. */
function tankAt([x, y]: PlanePoint, high: number): string {
  const unit = high / 24;
  const [half, wall, lid] = [7.5 * unit, 17 * unit, 5 * unit];
  const n = (value: number) => value.toFixed(1);
  return `M${n(x - half)} ${n(y + wall / 2)}v${n(-wall)}q${n(half)} ${n(-lid)} ${n(2 * half)} 0v${n(wall)}z`;
}
