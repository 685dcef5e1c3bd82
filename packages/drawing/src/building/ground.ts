import type { Shape } from '../sheet/shapes.ts';
import { line, type Point, penOf, plain, ring, type View } from './view.ts';

/** Stretches of the ground line that are broken, because something is sunk there [m]. */
export type Sunk = readonly (readonly [number, number])[];

/** The ground is nowhere quite level: two slow waves of some two centimetres. */
export const groundAt = (x: number): number => 0.018 * Math.sin(x * 1.31) + 0.012 * Math.sin(x * 0.47 + 1);

/** Alternating bundles of slanting strokes under the ground, and a few stones, all the way across. */
export function earth(view: View, width: number, sunk: Sunk): readonly Shape[] {
  const { k, x0 } = view;
  const [from, to] = [-x0 / k, (width - x0) / k];
  const step = Math.max(1.35, 26 / k);
  const size = Math.max(0.3, 7 / k);
  const strokes: (readonly Point[])[] = [];
  let stones = '';
  for (let nth = Math.floor(from / step); nth * step < to; nth++) {
    const start = nth * step + 0.25 * step * Math.sin(nth * 1.7);
    const lean = nth % 2 === 0 ? -1 : 1;
    for (let stroke = 0; stroke < 5; stroke++) {
      const x = start + stroke * size * 0.3;
      const long = size * (0.75 + 0.25 * Math.sin(nth + stroke * 2));
      if (isIn(x, sunk) || isIn(x + lean * long * 0.6, sunk)) continue;
      strokes.push([
        [x, groundAt(x) - 0.05],
        [x + lean * long * 0.6, groundAt(x) - 0.05 - long],
      ]);
    }
    const x = start + step * 0.7;
    if (nth % 3 === 0 && !isIn(x, sunk)) stones += pebbles(view, x, size);
  }
  return [
    line(view, 'hair', { ink: 'mark', dash: 'none' }, ...strokes),
    { kind: 'path', d: stones, pen: penOf(view, 'hair', { ink: 'mark', dash: 'none' }), ground: 'none' },
  ].filter(({ d }) => d !== '') as readonly Shape[];
}

const pebbles = (view: View, x: number, size: number): string =>
  ring(view, [x, -size * 1.7], size * 0.11) + ring(view, [x + size * 0.34, -size * 1.5], size * 0.15);

const isIn = (x: number, sunk: Sunk): boolean => sunk.some(([from, to]) => x > from - 0.1 && x < to + 0.1);

/** The line of the ground, running off both edges, broken over what is sunk in it. */
export function groundLine(view: View, width: number, sunk: Sunk): Shape {
  const { k, x0 } = view;
  const [from, to] = [-x0 / k, (width - x0) / k];
  const gaps = [...sunk].sort(([a], [b]) => a - b);
  const lines: (readonly Point[])[] = [];
  let start = from;
  for (const [gapFrom, gapTo] of [...gaps, [to, to] as const]) {
    if (gapFrom > start) lines.push(wave(start, Math.min(gapFrom, to)));
    start = Math.max(start, gapTo);
  }
  return line(view, 'cut', plain, ...lines.filter((points) => points.length > 1));
}

function wave(from: number, to: number): readonly Point[] {
  const count = Math.min(300, Math.max(1, Math.ceil((to - from) / 0.5)));
  return Array.from({ length: count + 1 }, (_, nth) => {
    const x = from + ((to - from) * nth) / count;
    return [x, groundAt(x)] as const;
  });
}
