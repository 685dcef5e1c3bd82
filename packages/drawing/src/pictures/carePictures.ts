import { fill } from '../charts/strokes.ts';
import type { Shape } from '../sheet/shapes.ts';
import { figure, hand } from './figures.ts';
import {
  arc,
  arrow,
  bar,
  body,
  box,
  disc,
  drop,
  line,
  not,
  outline,
  type Spot,
  solid,
  spots,
  through,
  waves,
} from './signs.ts';
import { broomHead, bubbles, ground, jerrican, tap } from './things.ts';

/** Somebody scrubs a tank with a brush on a long handle through its hatch, from outside; the dirty water runs out at its foot. */
export function washTank(): readonly Shape[] {
  return [
    ground(4, 96),
    outline('M16 95V54Q24 47 33 46V40H51V46Q60 47 66 54V95Z'),
    outline(through(spots([16, 73, 4, 73, 4, 82, 11, 82, 11, 80, 16, 80]))),
    ...bubbles([53, 73, 4, 59, 65, 3, 47, 81, 3]),
    bar(spots([26.5, 70, 58, 22]), 1.3),
    ...broomHead([26.5, 70], 180),
    waves(17, 88, 48),
    ...figure({
      ...{
        size: 66,
        hip: [82, 60],
        shoulder: [78, 40],
        hands: spots([57, 25, 53, 34]),
        feet: spots([77, 92, 89, 92]),
      },
      ...{ faces: -1, elbows: [-1, -1] },
    }),
    drop(7.5, 84.5, 8),
  ];
}

/** A container is scrubbed with brush and foam. */
export function cleanContainer(): readonly Shape[] {
  return [
    ground(4, 96),
    ...jerrican(10, 94.5, 48, 66),
    ...bubbles([30, 66, 5, 42, 74, 4, 26, 78, 3.4, 40, 60, 3, 36, 84, 3.6, 56, 90, 3]),
    ...broomHead([62, 70], 180),
    ...hand({ palm: [70, 70], from: [94, 92], deed: 'grips', turn_deg: 90, side: -1, size: 0.85 }),
    ...arrow(spots([80, 44, 80, 28]), 1.5),
    ...arrow(spots([80, 36, 80, 54]), 1.5),
  ];
}

/** Two hands with soap under a tap. */
export function washHands(): readonly Shape[] {
  return [
    ...tap(46, 28),
    ...[36, 46, 56].map((x, nth) => drop(x, nth === 1 ? 32 : 36, 8)),
    ...hand({ palm: [36, 66], from: [6, 88], deed: 'lies', turn_deg: 0 }),
    ...hand({ palm: [64, 60], from: [94, 84], deed: 'lies', turn_deg: 180 }),
    ...bubbles([30, 50, 4, 74, 44, 4.4, 66, 36, 3, 50, 86, 4.4, 60, 80, 3, 22, 58, 3]),
  ];
}

/** A child must not reach the bottle. */
export function keepChlorineAway(): readonly Shape[] {
  return [
    ground(4, 96),
    bar(spots([58, 47, 96, 47]), 1.6),
    line('M94 48V63M94 61L80 48'),
    outline('M66 45.5V27l6 -6V15h12v6l6 6V45.5Z'),
    outline(box(66, 31, 24, 8)),
    solid(box(69, 7, 18, 8)),
    ...figure({
      ...{
        size: 50,
        hip: [20, 66],
        shoulder: [21, 53],
        hands: spots([36, 47, 18, 67]),
        feet: spots([16, 92, 24, 92]),
      },
      ...{ faces: 1, isChild: true },
    }),
    not([6, 6], [94, 94]),
  ];
}

/** Somebody calls with a telephone; somebody comes with a tool. */
export function callForHelp(): readonly Shape[] {
  return [
    ground(4, 96),
    ...figure({
      ...{
        size: 84,
        hip: [21, 49.5],
        shoulder: [21, 28],
        hands: [[14, 52]],
        feet: spots([17, 92, 24, 92]),
      },
      ...{ faces: 1, elbows: [1], head: [21, 14] },
    }),
    bar(spots([20.6, 9.6, 22.6, 19.6]), 1.9),
    ...forearmUp([24, 31], [36, 35], [27, 20]),
    line([10, 17, 24].map((far) => through(arc([34, 18], far, -35, 35))).join('')),
    ...spanner([72, 62], [67, 78]),
    ...figure({
      ...{
        size: 58,
        hip: [84, 64],
        shoulder: [83, 46.5],
        hands: spots([72, 62, 90, 65]),
        feet: spots([77, 92, 91, 92]),
      },
      ...{ faces: -1, elbows: [-1, -1] },
    }),
    ...arrow(spots([62, 86, 40, 86]), 1.6),
  ];
}

/** An arm over the body, bent up at the elbow. */
const forearmUp = (shoulder: Spot, elbow: Spot, hand: Spot): readonly Shape[] =>
  body([
    [...shoulder, 3.6, ...elbow, 3.4],
    [...elbow, 3.4, ...hand, 3],
  ]);

/** A spanner from one end to the other. */
function spanner(from: Spot, to: Spot): readonly Shape[] {
  return [bar([from, to], 1.6), solid(disc(to[0], to[1], 4.4)), fill(disc(to[0] - 0.6, to[1] + 2.6, 2.2), 'paper')];
}
