import type { Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import { away, bar, box, disc, line, outline, type Spot, solid, through } from './signs.ts';

/** The ground somebody stands on. */
export const ground = (from: number, to: number, y = 95.6): Shape =>
  bar(
    [
      [from + 1, y],
      [to - 1, y],
    ],
    1.2,
  );

/** A ladder from foot to head: two rails and rungs so far apart, seen a little from the side. */
export function ladder(foot: Spot, head: Spot, wide: number): readonly Shape[] {
  const turn = (Math.atan2(head[1] - foot[1], head[0] - foot[0]) * 180) / Math.PI;
  const long = Math.hypot(head[0] - foot[0], head[1] - foot[1]);
  const other = (at: Spot): Spot => [at[0] + wide, at[1]];
  const rungs = Array.from({ length: Math.floor((long - 4) / 8.2) }, (_, nth) => away(foot, turn, 6 + nth * 8.2));
  return [
    bar([foot, head], 1.2),
    bar([other(foot), other(head)], 1.2),
    ...rungs.map((at) => bar([at, other(at)], 0.9)),
  ];
}

/** The head of a broom at the end of its handle, its bristles in a direction [deg]. */
export function broomHead(at: Spot, bristles_deg: number): readonly Shape[] {
  const [left, right] = [away(at, bristles_deg - 90, 8), away(at, bristles_deg + 90, 8)];
  const bristles = Array.from({ length: 5 }, (_, nth) => {
    const root: Spot = [left[0] + ((right[0] - left[0]) * nth) / 4, left[1] + ((right[1] - left[1]) * nth) / 4];
    return through([root, away(root, bristles_deg, 7)]);
  });
  return [line(bristles.join('')), bar([left, right], 2)];
}

/** A tap on a pipe that comes from the left: its mouth's middle at x, y, pointing down. */
export function tap(x: number, y: number): readonly Shape[] {
  const handle: readonly Spot[] = [
    [x - 15, y - 22],
    [x - 1, y - 22],
  ];
  return [
    outline(`M${px(x - 24)} ${px(y - 15)}h20a9 9 0 0 1 9 9v6h-9v-5a1.5 1.5 0 0 0 -1.5 -1.5h-18.5Z`),
    solid(box(x - 26, y - 17, 3.6, 12.5)),
    bar(
      [
        [x - 8, y - 22],
        [x - 8, y - 15],
      ],
      1.6,
    ),
    bar(handle, 2),
  ];
}

/** Water that runs down in a stream: one edge of it, from a mouth to where it arrives. */
export function stream([x, y]: Spot, to: number): readonly Shape[] {
  const count = Math.max(1, Math.round((to - y) / 5));
  const step = (to - y) / count;
  const swing = (nth: number) => `q${nth % 2 === 0 ? 1.6 : -1.6} ${px(step / 2)} 0 ${px(step)}`;
  return [line(`M${px(x)} ${px(y)}${Array.from({ length: count }, (_, nth) => swing(nth)).join('')}`)];
}

/** A brush for bottles on a stiff handle, bristles on both sides of its end so long. */
export function bottleBrush(from: Spot, to: Spot, long: number): readonly Shape[] {
  const bristles = Array.from({ length: 6 }, (_, nth) => {
    const y = to[1] - (long * nth) / 5;
    return through([
      [to[0] - 8, y],
      [to[0] + 8, y],
    ]);
  });
  return [line(bristles.join('')), bar([from, to], 1.9)];
}

/** A bucket, its foot's left end at x, y, wider at its rim. */
export const bucket = (x: number, y: number, wide: number, high: number): Shape =>
  outline(
    through(
      [
        [x, y],
        [x - 0.12 * wide, y - high],
        [x + 1.12 * wide, y - high],
        [x + wide, y],
      ],
      true,
    ),
  );

/** Foam: bubbles as x, y and radius in a row. */
export const bubbles = (flat: readonly number[]): readonly Shape[] =>
  Array.from({ length: flat.length / 3 }, (_, nth) =>
    outline(disc(flat[3 * nth]!, flat[3 * nth + 1]!, flat[3 * nth + 2]!)),
  );
