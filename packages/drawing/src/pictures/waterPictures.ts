import { fill } from '../charts/strokes.ts';
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
  line,
  not,
  outline,
  type Spot,
  solid,
  specks,
  spots,
  through,
  waves,
} from './signs.ts';
import { bucket, ground, stream, tap } from './things.ts';

/** Somebody works the lever of a pump; water runs into a container. */
export function pump(): readonly Shape[] {
  return [
    ground(4, 96),
    outline(box(30, 40, 13, 55)),
    outline(through(spots([30, 52, 15, 52, 15, 62, 21, 62, 21, 58, 30, 58]), true)),
    solid(box(27, 36, 19, 5)),
    bar(spots([36.5, 38, 36.5, 26, 66, 40]), 1.7),
    ...stream([16, 63], 83),
    ...stream([20, 63], 83),
    bucket(9, 95, 17, 17),
    waves(9, 85, 17),
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

/** A hand turns the lever of a filter; clean water turns round, goes up through it, and the dirt leaves by a pipe. */
export function backwash(): readonly Shape[] {
  return [
    ground(4, 30),
    outline('M28 78V40Q28 32 36 32H58Q66 32 66 40V78Z'),
    fill(box(26, 41, 6, 9), 'paper'),
    line('M29 40H8V60M18 60V50H29'),
    fine(through(spots([35, 54, 35, 72])) + through(spots([59, 42, 59, 72]))),
    specks(spots([34, 45, 41, 40, 54, 41, 40, 58, 54, 60, 40, 68, 54, 69, 26, 45, 19, 45, 13, 47, 13, 54]), 1.5),
    ...stream([9.4, 61], 92),
    ...stream([16.6, 61], 92),
    specks(spots([13, 61, 13, 68, 13, 75, 13, 82, 13, 89, 5, 91, 22, 90, 26, 92]), 1.4),
    bar(spots([28, 78, 66, 78]), 2.2),
    ...clearBar(spots([47, 84, 47, 72]), 2.4),
    ...arrow([[85, 46], [85, 85], ...arc([77, 85], 8, 0, 90), ...arc([53, 87], 6, 90, 180), [47, 48]], 2.4),
    clearDrop(85, 27, 14),
    bar(spots([47, 31, 47, 20]), 2.4),
    bar(spots([40, 20, 74, 20]), 1.9),
    ...hand({ palm: [66, 20], from: [95, 6], deed: 'grips', turn_deg: 0, side: 1, size: 0.8 }),
  ];
}

/** No cup and no hand into the tank. */
export function doNotDip(): readonly Shape[] {
  return [
    outline(through(spots([4, 44, 4, 96, 76, 96, 76, 44]))),
    waves(5.5, 62, 69, 3, 10),
    outline('M34 57h-24l2.5 24h19Z'),
    ...hand({ palm: [37, 57], from: [88, 8], deed: 'grips', turn_deg: 100, side: 1, size: 0.85 }),
    not(),
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
    clearDrop(48, 60, 33),
    not([29, 62], [66, 96]),
  ];
}
