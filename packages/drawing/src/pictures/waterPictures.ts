import type { Shape } from '../sheet/shapes.ts';
import { figure, hand } from './figures.ts';
import {
  arc,
  arrow,
  bar,
  box,
  clearBar,
  clearDrop,
  disc,
  drop,
  fine,
  not,
  outline,
  type Spot,
  solid,
  specks,
  spots,
  through,
  waves,
} from './signs.ts';
import { bucket, ground, tap } from './things.ts';

/** Somebody works the lever of a pump; water runs into a container. */
export function pump(): readonly Shape[] {
  return [
    ground(4, 96),
    outline(box(30, 40, 13, 55)),
    outline(through(spots([30, 52, 15, 52, 15, 62, 21, 62, 21, 58, 30, 58]), true)),
    solid(box(27, 36, 19, 5)),
    bar(spots([36.5, 38, 36.5, 26, 66, 40]), 1.7),
    drop(18, 65, 7),
    bucket(9, 95, 16, 17),
    ...figure({
      ...{
        size: 66,
        hip: [83, 60],
        shoulder: [79, 40],
        hands: spots([62, 38.6, 66, 41]),
        feet: spots([78, 92, 90, 92]),
      },
      ...{ faces: -1, elbows: [-1, -1] },
    }),
    ...arrow(spots([56, 22, 56, 6]), 1.4),
    ...arrow(spots([56, 16, 56, 28]), 1.4),
  ];
}

/** Clean water goes back through a filter, and the dirt comes out. */
export function backwash(): readonly Shape[] {
  const fibres = [20, 26, 32, 50, 56, 62].map((x) =>
    through([
      [x, 34],
      [x, 63],
    ]),
  );
  const dirt = spots([23, 59, 29, 53, 53, 61, 59, 55, 23, 47, 59, 44, 53, 49, 29, 41]);
  const below = spots([30, 82, 52, 81, 35, 88, 48, 89, 28, 94, 55, 94, 41, 94]);
  return [
    ...[25, 41, 57].map((x, nth) => clearDrop(x, nth === 1 ? 3 : 9, 12)),
    outline(box(14, 28, 54, 42)),
    bar(spots([14, 28, 68, 28]), 2.4),
    bar(spots([14, 69.5, 68, 69.5]), 2.4),
    fine(fibres.join('')),
    specks(dirt, 1.5),
    ...arrow(spots([41, 21, 41, 86]), 2.6),
    specks(below, 1.6),
    ...arrow([[79, 66], [79, 36], ...arc([85.5, 36], 6.5, 180, 360), [92, 66]], 1.7),
  ];
}

/** No cup and no hand into the tank. */
export function doNotDip(): readonly Shape[] {
  return [
    outline(through(spots([24, 44, 24, 96, 96, 96, 96, 44]))),
    waves(25.5, 62, 69, 3, 10),
    outline('M66 57h24l-2.5 24h-19Z'),
    ...hand({ palm: [63, 57], from: [12, 8], deed: 'grips', turn_deg: 80, side: -1, size: 0.85 }),
    not([92, 8], [8, 92]),
  ];
}

/** A bottle filled at the tap, looked at through a glass. */
export function test(): readonly Shape[] {
  return [
    ...tap(30, 32),
    drop(31, 36, 8),
    outline(through(spots([24, 50, 24, 56, 18, 62, 18, 95, 44, 95, 44, 62, 38, 56, 38, 50]), true)),
    waves(19.5, 70, 23, 1),
    ...clearBar(spots([80, 80, 93, 94]), 3),
    outline(disc(66, 64, 22)),
    ...germs(spots([58, 58, 70, 54, 64, 70, 76, 66])),
  ];
}

const germs = (spots: readonly Spot[]): readonly Shape[] =>
  spots.map(([x, y], nth) =>
    bar(
      [
        [x - 2.6, y - (nth % 2 === 0 ? 1.5 : -1.5)],
        [x + 2.6, y + (nth % 2 === 0 ? 1.5 : -1.5)],
      ],
      1.8,
    ),
  );

/** A hand turns a tap shut; nothing drips. */
export function closedTap(): readonly Shape[] {
  return [
    ...tap(48, 56),
    ...hand({ palm: [40, 30], from: [94, 8], deed: 'grips', turn_deg: 0, side: 1, size: 0.85 }),
    ...arrow(arc([40, 34], 24, 170, 280), 1.5),
    clearDrop(48, 62, 26),
    ...clearBar(spots([33, 64, 63, 94]), 1.9),
  ];
}
