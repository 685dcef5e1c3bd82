import { fill } from '../charts/strokes.ts';
import type { Shape } from '../sheet/shapes.ts';
import { figure, hand } from './figures.ts';
import {
  arc,
  arrow,
  away,
  bar,
  body,
  box,
  disc,
  drop,
  fine,
  line,
  not,
  outline,
  type Spot,
  solid,
  spots,
  through,
  waves,
} from './signs.ts';
import { bottleBrush, broomHead, bubbles, ground, stream, tap } from './things.ts';

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
    ...stream([5.6, 83], 93),
    ...stream([9.6, 83], 93),
  ];
}

/** A brush goes into a container through its open mouth; the cap lies beside it. */
export function cleanContainer(): readonly Shape[] {
  return [
    ground(4, 96),
    outline(through(spots([28, 32, 28, 40, 14, 52, 14, 94.5, 68, 94.5, 68, 40, 48, 40, 48, 32]))),
    outline(box(52, 46, 12, 7, 3.4)),
    ...bottleBrush([38, 12], [38, 86], 24),
    ...bubbles([21, 62, 3.2, 20, 74, 4, 22, 87, 3.6, 56, 64, 4.4, 61, 76, 3.4, 55, 86, 4.2]),
    ...hand({ palm: [38, 15], from: [94, 6], deed: 'grips', turn_deg: 90, side: -1, size: 0.85 }),
    ...arrow(spots([72, 27, 72, 17]), 1.5),
    ...arrow(spots([72, 22, 72, 36]), 1.5),
    outline(box(76, 82, 18, 12.5, 2)),
    fine('M80.5 86V93M85 86V93M89.5 86V93'),
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
    bar(spots([69, 59, 96, 59]), 1.6),
    line('M94 60V74M94 72L82 60'),
    outline('M71 57.5V40l5 -6V24h12v10l5 6V57.5Z'),
    outline(box(71, 43, 22, 8)),
    solid(box(73, 15, 18, 9)),
    ...figure({
      ...{
        size: 58,
        hip: [26, 75],
        shoulder: [30, 63.5],
        hands: spots([61, 50, 19, 75]),
        feet: spots([21, 92, 31, 92]),
      },
      ...{ faces: 1, isChild: true, head: [30, 51] },
    }),
    not(),
  ];
}

/** Somebody calls with a telephone; somebody comes with a tool. */
export function callForHelp(): readonly Shape[] {
  const size = 76;
  return [
    ground(4, 96),
    ...figure({
      ...{ size, hip: [16, 54], shoulder: [16, 35], hands: [[10, 56]], feet: spots([12, 92, 19, 92]) },
      ...{ faces: 1, elbows: [1], head: [16, 22.5] },
    }),
    bar(spots([28.6, 18, 27.8, 30]), 2.6),
    ...forearmUp([19, 37], [35, 46], [29.5, 32.5]),
    line([9, 16].map((far) => through(arc([30, 19], far, -40, 40))).join('')),
    ...spanner([69, 62], [57, 34]),
    ...figure({
      ...{ size, hip: [83, 54], shoulder: [81, 35], hands: spots([66, 55, 91, 55]), feet: spots([74, 92, 91, 92]) },
      ...{ faces: -1, elbows: [-1, -1], head: [80, 22.5] },
    }),
    ...arrow(spots([62, 82, 36, 82]), 1.7),
  ];
}

/** An arm over the body, bent up at the elbow. */
const forearmUp = (shoulder: Spot, elbow: Spot, hand: Spot): readonly Shape[] =>
  body([
    [...shoulder, 3.6, ...elbow, 3.4],
    [...elbow, 3.4, ...hand, 3],
  ]);

/** A spanner from its end to its open jaw. */
function spanner(from: Spot, to: Spot): readonly Shape[] {
  const turn_deg = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const jaw = [away(to, turn_deg, 1), away(to, turn_deg, 9)];
  return [
    bar([from, to], 2),
    solid(disc(to[0], to[1], 6.4)),
    fill(through(boxOf(jaw[0]!, jaw[1]!, 2.6), true), 'paper'),
  ];
}

/** The corners of a bar with straight ends. */
function boxOf(from: Spot, to: Spot, half: number): readonly Spot[] {
  const turn_deg = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const edge = (at: Spot, by: 1 | -1) => away(at, turn_deg + by * 90, half);
  return [edge(from, -1), edge(to, -1), edge(to, 1), edge(from, 1)];
}
