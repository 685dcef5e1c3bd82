import type { Shape } from '../sheet/shapes.ts';
import type { BuiltStops } from './building.ts';
import { usualUnitHeight_m } from './constants.ts';
import { person } from './people.ts';
import { legsUnder, unitLift_m } from './tapStand.ts';
import {
  area,
  type Brush,
  boxOf,
  disc,
  isFine,
  line,
  type Point,
  pipe,
  plain,
  raised,
  unmeasured,
  type View,
} from './view.ts';

/** Nobody named the unit, so nothing of it is known: its frame is dashed. */
const dashed: Brush = { ink: 'mark', dash: 'unknown' };

/** As many cartridges as are usual, where nobody said [count]: common practice, no source. */
const usualCartridges_count = 3;

/** The treatment unit: its cartridges between two pipes, a hand pump beside them, someone who pumps. Left edge at 0. */
export function treatmentUnit(view: View, stops: BuiltStops): readonly Shape[] {
  const lift = unitLift_m(stops);
  const up = raised(view, lift);
  const edge = stops.cartridges_count === null ? dashed : plain;
  const inlet = Math.min(usualUnitHeight_m, stops.unitHeight_m.value);
  const pumping = stops.hasHandPump === false ? [] : [...handPump(up, 1.24), ...person(up, 'pumps', 2.02, 0.06, -1)];
  return [
    ...legsUnder(view, lift, [0.1, 1.1, 2.1]),
    area(up, 'concrete', ['thin', edge], boxOf(0, -0.06, 2.2, 0.12)),
    ...frame(up, inlet, stops.unitHeight_m.how === 'usual' ? unmeasured : plain, edge),
    ...cartridgesAt(stops).flatMap((x) => cartridge(up, x, inlet)),
    ...pumping,
  ];
}

/** Where the cartridges stand, between the posts of the frame [m]. */
function cartridgesAt({ cartridges_count }: BuiltStops): readonly number[] {
  const count = cartridges_count ?? usualCartridges_count;
  if (count === 1) return [0.5];
  return Array.from({ length: count }, (_, nth) => 0.22 + (0.56 * nth) / (count - 1));
}

function frame(view: View, inlet: number, brush: Brush, edge: Brush): readonly Shape[] {
  const posts = [0.04, 0.94].map((x) => boxOf(x, 0.06, 0.06, 1.14));
  return [
    area(view, 'paper', ['thin', edge], ...posts),
    area(view, 'paper', ['edge', edge], boxOf(0, 1.2, 1.06, 0.07)),
    ...pipe(
      view,
      [
        [-0.02, inlet],
        [0.98, inlet],
      ],
      0.06,
      brush,
    ),
    ...pipe(
      view,
      [
        [0.06, 1.07],
        [1.24, 1.07],
      ],
      0.06,
      plain,
    ),
    ...(isFine(view)
      ? [
          line(view, 'thin', plain, [
            [0.16, 1.27],
            [0.16, 1.34],
          ]),
          disc(view, 'paper', ['thin', plain], [0.16, 1.4], 0.07),
          line(view, 'hair', plain, [
            [0.16, 1.4],
            [0.2, 1.44],
          ]),
        ]
      : []),
  ];
}

/** A housing with its fibres, open at both ends to the pipes. */
function cartridge(view: View, x: number, inlet: number): readonly Shape[] {
  const [width, low, tall] = [0.15, 0.42, 0.54];
  const shapes: Shape[] = [
    line(
      view,
      'thin',
      plain,
      [
        [x, inlet + 0.03],
        [x, low],
      ],
      [
        [x, low + tall],
        [x, 1.04],
      ],
    ),
    area(view, 'waterline', ['edge', plain], boxOf(x - width / 2, low, width, tall)),
    area(view, 'ink', null, boxOf(x - 0.1, low - 0.03, 0.2, 0.05), boxOf(x - 0.1, low + tall - 0.02, 0.2, 0.05)),
  ];
  if (!isFine(view)) return shapes;
  const fibres = [-0.04, 0, 0.04].map((by): readonly Point[] => [
    [x + by, low + 0.04],
    [x + by, low + tall - 0.04],
  ]);
  shapes.push(line(view, 'hair', { ink: 'paper', dash: 'none' }, ...fibres));
  return shapes;
}

function handPump(view: View, x: number): readonly Shape[] {
  return [
    ...pipe(
      view,
      [
        [x, 0.06],
        [x, 0.5],
      ],
      0.06,
      plain,
    ),
    area(view, 'paper', ['thin', plain], boxOf(x - 0.09, 0.42, 0.18, 0.5)),
    line(view, 'thin', plain, [
      [x, 0.92],
      [x, 1.13],
    ]),
    line(view, 'edge', plain, [
      [x - 0.1, 1.0],
      [x + 0.36, 1.17],
    ]),
    disc(view, 'ink', null, [x, 1.045], Math.max(0.025, 1.2 / view.k)),
  ];
}
