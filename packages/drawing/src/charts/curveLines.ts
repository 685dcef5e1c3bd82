import { px } from '../sheet/svgOf.ts';
import type { BandPoint } from './waterCurve.ts';

/** A frame of the curve: sizes along it, a count up it [px]. */
export interface CurveFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Greatest count shown, and the size at the right end [L]. */
  readonly most: number;
  readonly end_L: number;
}

export const xOf = ({ left, right, end_L }: CurveFrame, volume_L: number): number =>
  left + (Math.min(volume_L, end_L) / end_L) * (right - left);
export const yOf = ({ top, bottom, most }: CurveFrame, count: number): number =>
  bottom - (Math.min(Math.max(count, 0), most) / most) * (bottom - top);

/**
 * A count that steps at each of these volumes, as a path of true steps: the line is cut where it leaves the frame above.
 *
 * @param frame - the frame [px]
 * @param ascending_L - volumes at which the count goes down, or up, by one [L]; Infinity: it never does
 * @param countAt - the count when so many of them are reached
 * @returns path of SVG [px]; steps nearer than a quarter px are drawn as one
 */
export function stepPath(frame: CurveFrame, ascending_L: Float64Array, countAt: (reached: number) => number): string {
  const { end_L, most, left, right } = frame;
  let reached = 0;
  while (reached < ascending_L.length && ascending_L[reached]! <= 0) reached++;
  const parts: string[] = [];
  let isDrawn = false;
  const level = (count: number, x: number) => {
    if (count > most) return;
    parts.push(
      isDrawn
        ? `V${px(yOf(frame, count))}`
        : `M${px(x)} ${px(yOf(frame, parts.length === 0 && x > left ? most : count))}V${px(yOf(frame, count))}`,
    );
    isDrawn = true;
  };
  level(countAt(reached), left);
  let atX = left;
  while (reached < ascending_L.length && ascending_L[reached]! <= end_L) {
    const x = xOf(frame, ascending_L[reached]!);
    while (
      reached < ascending_L.length &&
      ascending_L[reached]! <= end_L &&
      xOf(frame, ascending_L[reached]!) < x + 0.25
    )
      reached++;
    if (isDrawn) parts.push(`H${px(x)}`);
    level(countAt(reached), x);
    atX = x;
  }
  if (isDrawn && atX < right) parts.push(`H${px(right)}`);
  return parts.join('');
}

/** A band between its low and high ends, straight between the sizes it was drawn at, cut at the frame; empty where it has no two. */
export function bandPath(frame: CurveFrame, band: readonly BandPoint[]): string {
  const inside = cutAt(band, frame.end_L);
  if (inside.length < 2) return '';
  const high = edgeOf(
    frame,
    inside.map(({ tankVolume_L, high: count }) => ({ tankVolume_L, count })),
  );
  const low = edgeOf(
    frame,
    inside.map(({ tankVolume_L, low: count }) => ({ tankVolume_L, count })),
  );
  return `M${high.join('L')}L${low.reverse().join('L')}Z`;
}

interface EdgePoint {
  readonly tankVolume_L: number;
  readonly count: number;
}

/** Points of an edge, with one more where it crosses the top of the frame, so that it is cut and not bent. */
function edgeOf(frame: CurveFrame, points: readonly EdgePoint[]): string[] {
  const place = (volume_L: number, count: number) => `${px(xOf(frame, volume_L))} ${px(yOf(frame, count))}`;
  const found: string[] = [];
  for (const [index, { tankVolume_L, count }] of points.entries()) {
    const before = points[index - 1];
    if (before && before.count > frame.most !== count > frame.most) {
      const share = (frame.most - before.count) / (count - before.count);
      found.push(place(before.tankVolume_L + share * (tankVolume_L - before.tankVolume_L), frame.most));
    }
    found.push(place(tankVolume_L, count));
  }
  return found;
}

/** The part of a band up to a size. */
function cutAt(band: readonly BandPoint[], end_L: number): readonly BandPoint[] {
  const found: BandPoint[] = [];
  for (const [index, point] of band.entries()) {
    if (point.tankVolume_L <= end_L) {
      found.push(point);
      continue;
    }
    const before = band[index - 1];
    if (before) {
      const share = (end_L - before.tankVolume_L) / (point.tankVolume_L - before.tankVolume_L);
      const between = (from: number, to: number) => from + share * (to - from);
      found.push({ tankVolume_L: end_L, low: between(before.low, point.low), high: between(before.high, point.high) });
    }
    break;
  }
  return found;
}
