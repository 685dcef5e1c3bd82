import { type Limb, limb } from '../building/people.ts';
import { fill, group, pen, stroke } from '../charts/strokes.ts';
import type { PathShape, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';

/**
 * What all care pictures are made of, in a square of 100 by 100 that is printed 30 mm wide: one unit is 0.3 mm. Ink and paper alone. The
 * least line is 0.35 mm and the least gap 0.5 mm, so that a worn copy of a copy still shows them.
 */

/** x to the right, y down, in a square of 100 by 100. */
export type Spot = readonly [number, number];

/** Spots from x and y in a row. */
export const spots = (flat: readonly number[]): readonly Spot[] =>
  Array.from({ length: flat.length / 2 }, (_, nth) => [flat[2 * nth]!, flat[2 * nth + 1]!]);

/** Side of a picture, and half as thick as an outline round a person or a hand. */
export const side = 100;
const halfLine = 0.9;

/** Lines: of a thing's outline, and within it. */
const heavy = pen('cut', 'ink');
const light = pen('edge', 'ink');

export const outline = (d: string): PathShape => fill(d, 'paper', heavy);
export const solid = (d: string): PathShape => fill(d, 'ink');
export const line = (d: string): PathShape => stroke(d, heavy);
export const fine = (d: string): PathShape => stroke(d, light);

/** Lines through spots. */
export const through = (way: readonly Spot[], isClosed = false): string =>
  way.map(([x, y], nth) => `${nth === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('') + (isClosed ? 'Z' : '');

/** The way to a spot so far in a direction [deg, clockwise from the right]. */
export function away([x, y]: Spot, turn_deg: number, far: number): Spot {
  const turn = (turn_deg * Math.PI) / 180;
  return [x + far * Math.cos(turn), y + far * Math.sin(turn)];
}

/** A bar with round ends: a handle, a pole, the shaft of an arrow. */
export function bar(way: readonly Spot[], half = 1.2): PathShape {
  return solid(chain(way, half));
}

/** The same with paper beside it, where it runs over something else. */
export function clearBar(way: readonly Spot[], half = 1.2): readonly PathShape[] {
  return [fill(chain(way, half + 1.8), 'paper'), bar(way, half)];
}

const chain = (way: readonly Spot[], half: number): string =>
  way
    .slice(1)
    .map((to, nth) => limb(...way[nth]!, half, ...to, half))
    .join('');

/** Limbs as one body: an outline round all, without inner lines; and what is open at an end, so much wider [px]. */
export function body(limbs: readonly Limb[], open: (wider: number) => string = () => ''): readonly PathShape[] {
  const grown = (by: number) =>
    limbs
      .map(([ax, ay, ar, bx, by_, br]) => limb(ax, ay, Math.max(0.8, ar + by), bx, by_, Math.max(0.8, br + by)))
      .join('');
  return [fill(grown(halfLine) + open(halfLine), 'ink'), fill(grown(-halfLine) + open(-halfLine), 'paper')];
}

/** An arrow: something moves this way. Its last two spots tell where the head points. */
export function arrow(way: readonly Spot[], half = 1.6): readonly PathShape[] {
  const [tip, before] = [way.at(-1)!, way.at(-2)!];
  const turn = (Math.atan2(tip[1] - before[1], tip[0] - before[0]) * 180) / Math.PI;
  const head = 3.3 * half + 1.5;
  const neck = away(tip, turn, -0.8 * head);
  const shaft = [...way.slice(0, -1), neck];
  return [
    bar(shaft, half),
    solid(
      through(
        [
          tip,
          away(away(tip, turn, -head), turn + 90, 0.66 * head),
          away(away(tip, turn, -head), turn - 90, 0.66 * head),
        ],
        true,
      ),
    ),
  ];
}

/** Spots along an arc, from one direction to another [deg]. */
export function arc(middle: Spot, radius: number, from_deg: number, to_deg: number): readonly Spot[] {
  const steps = 14;
  return Array.from({ length: steps + 1 }, (_, nth) =>
    away(middle, from_deg + ((to_deg - from_deg) * nth) / steps, radius),
  );
}

/** A drop: water. Its tip stands at x, y. */
export function drop(x: number, y: number, high = 8): PathShape {
  return solid(dropPath(x, y, high));
}

/** A drop as an outline: clean water. */
export const clearDrop = (x: number, y: number, high = 8): PathShape => outline(dropPath(x, y, high));

function dropPath(x: number, y: number, high: number): string {
  const r = px(high * 0.32);
  const wide = high * 0.3;
  const low = y + high * 0.62;
  return `M${px(x)} ${px(y)}L${px(x + wide)} ${px(low)}A${r} ${r} 0 1 1 ${px(x - wide)} ${px(low)}Z`;
}

/** Water that stands: waves from x to so much further. */
export function waves(x: number, y: number, wide: number, rows = 1, apart = 6): Shape {
  const count = Math.max(1, Math.round(wide / 9));
  const half = wide / count / 2;
  const row = (nth: number) =>
    `M${px(x)} ${px(y + nth * apart)}` +
    `q${px(half / 2)} -3 ${px(half)} 0q${px(half / 2)} 3 ${px(half)} 0`.repeat(count);
  return line(Array.from({ length: rows }, (_, nth) => row(nth)).join(''));
}

/** A leaf with its rib, from its stalk so long in a direction [deg]. */
export function leaf(at: Spot, turn_deg: number, long = 10): readonly PathShape[] {
  const tip = away(at, turn_deg, long);
  const middle = away(at, turn_deg, long * 0.5);
  const [left, right] = [away(middle, turn_deg - 90, long * 0.48), away(middle, turn_deg + 90, long * 0.48)];
  const curve = (by: Spot, to: Spot) => `Q${px(by[0])} ${px(by[1])} ${px(to[0])} ${px(to[1])}`;
  return [
    solid(`M${px(at[0])} ${px(at[1])}${curve(left, tip)}${curve(right, at)}Z`),
    bar([away(at, turn_deg, -long * 0.28), at], 0.6),
  ];
}

/** Dirt: specks at spots. */
export function specks(way: readonly Spot[], half = 1.1): PathShape {
  return solid(way.map(([x, y]) => disc(x, y, half)).join(''));
}

/** A circle. */
export const disc = (x: number, y: number, r: number): string =>
  `M${px(x - r)} ${px(y)}a${px(r)} ${px(r)} 0 1 0 ${px(2 * r)} 0a${px(r)} ${px(r)} 0 1 0 ${px(-2 * r)} 0Z`;

/** A rectangle, its corners cut round. */
export function box(x: number, y: number, wide: number, high: number, round = 0): string {
  if (round === 0) return `M${px(x)} ${px(y)}h${px(wide)}v${px(high)}h${px(-wide)}Z`;
  const corner = (dx: number, dy: number) => `a${px(round)} ${px(round)} 0 0 1 ${px(dx)} ${px(dy)}`;
  return (
    `M${px(x + round)} ${px(y)}h${px(wide - 2 * round)}${corner(round, round)}v${px(high - 2 * round)}${corner(-round, round)}` +
    `h${px(2 * round - wide)}${corner(-round, -round)}v${px(2 * round - high)}${corner(round, -round)}Z`
  );
}

/** Not: a stroke across the whole picture, with paper beside it so that it stands out. */
export function not(from: Spot = [6, 6], to: Spot = [94, 94]): Shape {
  return group('not', [fill(chain([from, to], 5), 'paper'), solid(chain([from, to], 2.9))]);
}
