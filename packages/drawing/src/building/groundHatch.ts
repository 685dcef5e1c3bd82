import type { GroundClass } from '@eavewell/engine';
import type { Shape } from '../sheet/shapes.ts';
import type { BuiltTank } from './building.ts';
import { footOf } from './stand.ts';
import { beyond, boxOf, line, type Point, plain, type View } from './view.ts';

/** How far under the footing the ground is hatched, and how far beyond it [m]. Ours. */
const top_m = 0.22;
const deep_m = 0.4;
const out_m = 0.25;

/** The strokes a kind of ground is hatched with; how close they stand, to that of the others. */
type Stroke = 'block' | 'pebble' | 'dot' | 'dash' | 'slant' | 'cross';
const hatches: Readonly<Record<GroundClass, readonly [Stroke, number]>> = {
  rock: ['block', 1],
  softRock: ['block', 1.5],
  denseGravel: ['pebble', 0.9],
  looseGravel: ['pebble', 1.5],
  denseSand: ['dot', 0.6],
  looseSand: ['dot', 1.1],
  silt: ['dash', 1],
  stiffClay: ['slant', 0.6],
  firmClay: ['slant', 1],
  softClay: ['slant', 1.6],
  softOrMadeGround: ['cross', 1.2],
};

/** Where the ground under a stand is hatched [m from its middle]; null where nobody said what it is. */
export const hatched_m = (tank: BuiltTank): number | null => (tank.stand.ground === null ? null : footOf(tank) + out_m);

/** What a stand rests on, hatched by its kind: the same strokes for one kind, closer where it is the firmer. */
export function groundHatch(view: View, tank: BuiltTank, x: number): readonly Shape[] {
  const half = hatched_m(tank);
  const { ground } = tank.stand;
  if (half === null || ground === null) return [];
  const [stroke, apart] = hatches[ground];
  const step = Math.max(0.13, 6 / view.k, half / 20) * apart;
  const [columns, rows] = [Math.max(1, Math.floor((2 * half) / step)), Math.max(1, Math.floor(deep_m / step))];
  const lines: (readonly Point[])[] = [];
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const shift = row % 2 === 0 ? 0.3 : 0.7;
      const at: Point = [x - half + (column + shift) * step, -top_m - (row + 0.5) * step * (deep_m / (rows * step))];
      lines.push(...strokes[stroke](at, step, column + 3 * row));
    }
  return [line(view, 'hair', stroke === 'block' ? plain : beyond, ...lines)];
}

const strokes: Readonly<Record<Stroke, (at: Point, step: number, nth: number) => readonly (readonly Point[])[]>> = {
  block: ([x, y], step, nth) => {
    const lean = 0.08 * step * (nth % 3);
    return [
      [
        [x - step * 0.4, y],
        [x + step * 0.4, y + lean],
        [x + step * 0.4, y - step * 0.5 + lean],
      ],
    ];
  },
  pebble: ([x, y], step, nth) => {
    const r = step * (0.24 + 0.06 * (nth % 3));
    const corners = Array.from({ length: 7 }, (_, corner): Point => {
      const angle = (corner * Math.PI) / 3 + nth;
      return [x + r * 1.2 * Math.cos(angle), y + r * 0.8 * Math.sin(angle)];
    });
    return [corners];
  },
  dot: ([x, y], step) => [[...boxOf(x, y, step * 0.12, step * 0.12), [x, y]]],
  dash: ([x, y], step) => [
    [
      [x - step * 0.3, y],
      [x + step * 0.3, y],
    ],
  ],
  slant: ([x, y], step) => [
    [
      [x - step * 0.45, y - step * 0.25],
      [x + step * 0.45, y + step * 0.25],
    ],
  ],
  cross: ([x, y], step, nth) => {
    const r = step * (nth % 2 === 0 ? 0.2 : 0.13);
    return [
      [
        [x - r, y - r],
        [x + r, y + r],
      ],
      [
        [x - r, y + r],
        [x + r, y - r],
      ],
    ];
  },
};
