import type { Shape } from '../sheet/shapes.ts';
import { person } from './people.ts';
import { area, type Brush, boxOf, curve, isFine, line, type Point, pipe, plain, type View } from './view.ts';

const dashed: Brush = { ink: 'mark', dash: 'unknown' };

/** Where the soakaway lies in the ground, from the left edge of the taps [m]. */
export const soakaway = { from_m: 2.62, to_m: 3.22, deep_m: 0.62 } as const;

/** Taps over a bench with containers, someone who fills, the drain to a soakaway, a child who carries. Left edge at 0. */
export function tapStand(view: View): readonly Shape[] {
  return [
    area(view, 'concrete', ['thin', dashed], boxOf(0.1, -0.06, 2.3, 0.12)),
    ...pipe(
      view,
      [
        [-0.9, 0.16],
        [0.22, 0.16],
        [0.22, 0.98],
        [1.46, 0.98],
      ],
      0.05,
      plain,
    ),
    ...[0.55, 0.9, 1.25].map((x) => tap(view, x)),
    area(view, 'paper', ['thin', dashed], boxOf(0.42, 0.3, 1.1, 0.06)),
    line(
      view,
      'thin',
      dashed,
      [
        [0.5, 0.06],
        [0.5, 0.3],
      ],
      [
        [1.44, 0.06],
        [1.44, 0.3],
      ],
    ),
    ...[0.55, 0.9].flatMap((x) => container(view, x, 0.36, 0.34)),
    ...person(view, 'fills', 1.98, 0.06, -1),
    ...soak(view),
    ...person(view, 'carries', 3.6, 0),
    ...container(view, 3.565, 0.27, 0.27),
  ];
}

function tap(view: View, x: number): Shape {
  const spout = curve([x, 0.955], [x + 0.005, 0.9], [x + 0.05, 0.87], 4);
  return line(
    view,
    'edge',
    plain,
    [[x, 0.98], ...spout],
    [
      [x - 0.045, 1.04],
      [x + 0.045, 1.04],
    ],
    [
      [x, 1.0],
      [x, 1.04],
    ],
  );
}

/** A container of some 20 litres. */
function container(view: View, x: number, y: number, height: number): readonly Shape[] {
  const half = height * 0.32;
  const body: readonly Point[] = [
    [x - half, y],
    [x + half, y],
    [x + half, y + height * 0.72],
    [x + half * 0.55, y + height * 0.9],
    [x - half, y + height * 0.9],
  ];
  const neck = boxOf(x - half * 0.75, y + height * 0.9, half * 0.6, height * 0.1);
  if (!isFine(view)) return [area(view, 'paper', ['thin', plain], body)];
  return [area(view, 'paper', ['thin', plain], body, neck)];
}

/** What is spilled runs to a pit filled with stones. */
function soak(view: View): readonly Shape[] {
  const { from_m, to_m, deep_m } = soakaway;
  const pit: readonly Point[] = [
    [from_m, 0],
    [from_m + 0.08, -deep_m],
    [to_m - 0.08, -deep_m],
    [to_m, 0],
  ];
  const stones: (readonly Point[])[] = [];
  for (let row = 0; row < 4; row++)
    for (let nth = 0; nth < 4; nth++) {
      const x = from_m + 0.14 + nth * 0.115 + (row % 2) * 0.04;
      const y = -0.1 - row * 0.14;
      const r = 0.042 + 0.012 * ((row * 7 + nth * 3) % 3);
      if (x + r < to_m - 0.06) stones.push(round(x, y, r));
    }
  return [
    line(view, 'thin', dashed, [
      [2.4, 0.02],
      [from_m + 0.1, -0.03],
    ]),
    area(view, 'paper', ['thin', dashed], pit),
    ...(isFine(view) ? [area(view, 'paper', ['hair', plain], ...stones)] : []),
  ];
}

const round = (x: number, y: number, r: number): readonly Point[] =>
  Array.from({ length: 6 }, (_, nth) => [
    x + r * 1.15 * Math.cos((nth * Math.PI) / 3 + x * 9),
    y + r * Math.sin((nth * Math.PI) / 3 + x * 9),
  ]);
