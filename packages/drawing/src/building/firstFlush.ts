import type { Shape } from '../sheet/shapes.ts';
import type { BuiltDiverter } from './building.ts';
import type { Chamber, RoofOutline } from './roofOutline.ts';
import {
  area,
  atLeast,
  type Brush,
  boxOf,
  disc,
  isFine,
  line,
  type Point,
  plain,
  unmeasured,
  type View,
} from './view.ts';

/**
 * The first-flush pipe under the branch: full, its ball risen under the seat, its drain at the foot; at the true volume
 * of its chamber.
 */
export function firstFlush(
  view: View,
  diverter: BuiltDiverter,
  chamber: Chamber,
  outline: RoofOutline,
): readonly Shape[] {
  const brush: Brush = diverter.chamber_L.how === 'usual' || diverter.bore_m === null ? unmeasured : plain;
  // Side by side they keep their true bore, so that they take the room they do.
  const bore = chamber.count > 3 ? chamber.bore_m : atLeast(view, chamber.bore_m, 2.6);
  const top = outline.branchHeight_m - 0.05;
  const bottom = top - chamber.length_m;
  const shapes: Shape[] = [];
  for (let nth = 0; nth < chamber.count; nth++) {
    const middle = outline.rightPipe_m + nth * bore * 1.25;
    const [left, right] = [middle - bore / 2, middle + bore / 2];
    shapes.push(area(view, 'water', null, boxOf(left, bottom, bore, chamber.length_m)));
    const sides: readonly (readonly Point[])[] = [
      [
        [left, top],
        [left, bottom],
      ],
      [
        [right, top],
        [right, bottom],
      ],
    ];
    shapes.push(line(view, 'thin', brush, ...sides));
    shapes.push(area(view, 'ink', null, boxOf(left - 0.012, bottom - 0.04, bore + 0.024, 0.05)));
  }
  const middle = outline.rightPipe_m;
  const last = middle + (chamber.count - 1) * bore * 1.25;
  if (chamber.count > 1)
    shapes.push(
      line(
        view,
        'thin',
        brush,
        [
          [middle, bottom - 0.04],
          [last, bottom - 0.04],
        ],
        [
          [middle, top],
          [last, top],
        ],
      ),
    );
  if (isFine(view)) shapes.push(disc(view, 'paper', ['thin', plain], [middle, top - bore * 0.5], bore * 0.42));
  shapes.push(drain(view, last, bottom - 0.04, diverter.isBlocked));
  return shapes;
}

/** The drip at the foot; crossed out where it is blocked. */
function drain(view: View, x: number, y: number, isBlocked: boolean): Shape {
  const drip: readonly Point[] = [
    [x, y],
    [x, y - 0.09],
  ];
  const [a, b] = [0.05, y - 0.05];
  const cross: readonly (readonly Point[])[] = [
    [
      [x - a, b - a],
      [x + a, b + a],
    ],
    [
      [x - a, b + a],
      [x + a, b - a],
    ],
  ];
  return isBlocked ? line(view, 'edge', plain, drip, ...cross) : line(view, 'edge', plain, drip);
}

/** A post beside a pipe that hangs free of the wall. */
export function postOf(view: View, outline: RoofOutline): Shape {
  const { chamber, rightPipe_m, branchHeight_m } = outline;
  const x = rightPipe_m - Math.max(0.12, (chamber?.bore_m ?? 0) * 0.5 + 0.07);
  return area(
    view,
    'paper',
    ['hair', { ink: 'mark', dash: 'none' }],
    boxOf(x - 0.03, -0.35, 0.06, branchHeight_m + 0.3),
  );
}
